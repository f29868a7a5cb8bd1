"""What the picture of an operation shows: its pieces in a row, one side of the cloth up.

Where right sides meet, what lies on top shows its wrong side; an edge is turned to the wrong side
too. A piece that lies wrong side up is turned over, left to right.
"""

from __future__ import annotations

from collections.abc import Iterator
from enum import StrEnum

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import EdgeRun
from tapewise_core.drafting.unfolding import loops, opens
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.sewing.operation import Laid, Meeting, Operation

AXIS = Point(0, 0), Point(0, 1)
"""What a piece is turned over about."""


class Up(StrEnum):
    """Which side of the cloth is seen."""

    RIGHT = "right side up"
    WRONG = "wrong side up"


class Marked(Frozen):
    """An edge that is sewn: its line, the letter of its meeting, and whether it is turned."""

    line: tuple[Point, ...]
    letter: str
    turned: bool


class Shown(Frozen):
    """A piece as it lies: closed outlines, which side is up, and the edges that are sewn."""

    piece: Piece
    up: Up
    outlines: tuple[tuple[Point, ...], ...]
    marked: tuple[Marked, ...]


def shown(pattern: Pattern, operation: Operation) -> tuple[Shown, ...]:
    """Return the pieces of an operation from left to right; none where nothing is sewn."""
    found: dict[tuple[str, Up], list[Marked]] = {}
    for letter, meeting in zip(LETTERS, operation.meets, strict=False):
        for up, runs in _sides(meeting):
            for run in runs:
                lines = _marked(pattern, meeting, run, letter, up)
                found.setdefault((run.piece, up), []).extend(lines)
    return tuple(_shown(pattern.piece(name), up, tuple(all_)) for (name, up), all_ in found.items())


LETTERS = "ABCDEFGHIJKLMNOP"
"""What meets has one letter; more meetings than these are left unmarked."""


def _sides(meeting: Meeting) -> Iterator[tuple[Up, tuple[EdgeRun, ...]]]:
    if meeting.laid in (Laid.TURNED, Laid.NEATENED):
        yield Up.WRONG, meeting.first
        return
    on_top = Up.RIGHT if meeting.laid is Laid.FOLDED else Up.WRONG
    yield on_top, meeting.first
    yield Up.RIGHT, meeting.second


def _shown(piece: Piece, up: Up, marked: tuple[Marked, ...]) -> Shown:
    over = up is Up.WRONG
    outlines = tuple(
        tuple(_laid(point, over=over) for point in line) for line in outlines_of(piece)
    )
    return Shown(piece, up, outlines, marked)


def _marked(
    pattern: Pattern, meeting: Meeting, run: EdgeRun, letter: str, up: Up
) -> Iterator[Marked]:
    """The lines of a run that are sewn, as they lie."""
    piece = pattern.piece(run.piece)
    part = _pairs(pattern, meeting) if meeting.partly and run in meeting.second else None
    for name in filter(piece.has_edge, run.edges):
        path = _between(piece, name, part) if part is not None else piece.edge(name).path
        for line in _both(piece, path) if path else ():
            laid = tuple(_laid(point, over=up is Up.WRONG) for point in line)
            yield Marked(laid, letter, meeting.laid is Laid.TURNED)


def _pairs(pattern: Pattern, meeting: Meeting) -> frozenset[str]:
    """The names of the notches by which a part of an edge is found."""
    return frozenset(
        notch.pair
        for run in meeting.first
        for notch in pattern.piece(run.piece).notches
        if notch.edge in run.edges
    )


def _between(piece: Piece, name: str, pairs: frozenset[str]) -> Path | None:
    """The part of an edge between its notches of some names; None where it has not two."""
    places = sorted(n.distance for n in piece.notches if n.edge == name and n.pair in pairs)
    if len(places) < 2:
        return None
    return piece.edge(name).path.split(places[-1])[0].split(places[0])[1]


def _laid(point: Point, *, over: bool) -> Point:
    return point.mirrored(*AXIS) if over else point


def outlines_of(piece: Piece) -> tuple[tuple[Point, ...], ...]:
    """Return a piece's closed cut lines, a half opened out about its fold."""
    if not opens(piece):
        return (piece.cut,)
    return tuple(map(tuple, loops(piece.cut, _axis(piece))))


def _both(piece: Piece, path: Path) -> Iterator[tuple[Point, ...]]:
    """A line, and its image where the piece is opened out."""
    line = path.flattened()
    yield tuple(line)
    if opens(piece):
        axis = _axis(piece)
        yield tuple(point.mirrored(*axis) for point in reversed(line))


def _axis(piece: Piece) -> tuple[Point, Point]:
    fold = next(edge.path for edge in piece.edges if edge.fold)
    return fold.start, fold.end
