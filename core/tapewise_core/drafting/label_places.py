"""Where a piece's label goes: as large as there is room for, upright before it is turned, in
columns or in parts where the piece is narrow."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import product

from msgspec.structs import replace

from tapewise_core.drafting.free_cells import FreeCells
from tapewise_core.drafting.labels import LARGEST, LEADING, SMALLEST, TITLE
from tapewise_core.drafting.picturing.ground import Place
from tapewise_core.drafting.picturing.words import CAPITAL, TAIL, breadth
from tapewise_core.drafting.piece_room import CLEAR, Room
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Ink, Layer, Stroke, TextLine
from tapewise_core.paper.lettering import broken

SIZES = (LARGEST, 4.2, 3.5, 3.0, 2.6, SMALLEST)
"""The type that is tried [mm], the largest first."""

NAMED = 4.2
"""From this type on a label has its name twice as large [mm] (our choice)."""

STRAIGHT = (0.0, -90.0)
ANGLES = (*STRAIGHT, -45.0, 45.0, -65.0, 65.0, -25.0, 25.0)
"""How labels may be turned, the easiest to read first [degrees]; slanting only on a piece that is
no strip."""

LENGTHS = (46, 34, 26)
"""How many characters a line may have; in shorter ones a label is narrower and higher."""

BELOW = 4.0
"""How far below a piece those lines stand that have no room on it [mm] (our choice)."""

OWN = 3
"""So many lines say which piece it is and whose; they stay together longest."""

GUTTER = 2.0
"""Between two columns, in sizes of the type."""


class Form(Frozen):
    """Lines set in a type and in columns: what each needs, from the upper left corner [mm]."""

    words: tuple[TextLine, ...]
    wide: float
    high: float


def form_of(lines: Sequence[str], size: float, columns: int, *, named: bool) -> Form:
    """Return lines set in columns; ``named``: the first one is a name, set bold, and larger where
    the type is large."""
    words: list[TextLine] = []
    left = top = widest = lowest = 0.0
    if named:
        own = min(TITLE, 2 * size) if size >= NAMED else size
        words.append(TextLine(lines[0], Point(0, CAPITAL * own), own, bold=True))
        widest, top = breadth(lines[0], own, bold=True), own * LEADING
        lowest, lines = CAPITAL * own + TAIL * own, lines[1:]
    rows = max(-(-len(lines) // columns), 1)
    for column in (lines[i : i + rows] for i in range(0, len(lines), rows)):
        for row, line in enumerate(column):
            at = Point(left, top + size * (CAPITAL + LEADING * row))
            words.append(TextLine(line, at, size))
            lowest = max(lowest, at.y + TAIL * size)
        widest = max(widest, left + max(breadth(line, size) for line in column))
        left += max(breadth(line, size) for line in column) + GUTTER * size
    return Form(tuple(words), widest, lowest)


def forms(lines: Sequence[str], size: float, *, named: bool) -> list[Form]:
    """Return the forms of some lines in one type, the plainest first."""
    shown = [[part for line in lines for part in broken(line, most)] for most in LENGTHS]
    return [
        form_of(each, size, columns, named=named)
        for each, columns in product(shown, (1, 2, 3, 4))
        if columns <= len(each)
    ]


class Search:
    """A search for room on one piece: within its stitch line before its allowances are taken."""

    def __init__(self, room: Room, near: Point, part: str) -> None:
        self.room, self.near, self.part = room, (near.x, near.y), part
        self.angles = STRAIGHT if _is_square(room.stitched) else ANGLES
        self._cells: dict[tuple[int, float], FreeCells] = {}

    def set(self, lines: Sequence[str]) -> tuple[Ink, ...]:
        """Return lines as large as there is room for, in parts where there is none for all, and
        what has no room at all beside the piece, with a line that leads to it."""
        homeless: list[str] = []
        found = self._in_parts(lines, homeless, named=True)
        return (*found, *self._beside(homeless)) if homeless else found

    def _in_parts(
        self, lines: Sequence[str], homeless: list[str], *, named: bool, part: bool = False
    ) -> tuple[TextLine, ...]:
        part = part or len(lines) == 1
        found = next(self._found(lines, named=named, beyond=part), ())
        if found:
            self.room.take(found)
            self._cells.clear()
            return found
        if len(lines) == 1:
            homeless += lines
            return ()
        half = OWN if named and len(lines) > OWN else (len(lines) + 1) // 2
        return (
            *self._in_parts(lines[:half], homeless, named=named, part=True),
            *self._in_parts(lines[half:], homeless, named=False, part=True),
        )

    def _found(
        self, lines: Sequence[str], *, named: bool, beyond: bool
    ) -> Iterator[tuple[TextLine, ...]]:
        """The first form there is room for, also ``beyond`` the stitch line if need be."""
        for outline, size in product((0, 1) if beyond else (0,), SIZES):
            for angle, form in product(self.angles, forms(lines, size, named=named)):
                cells = self._free(outline, angle)
                x, y = cells.into(self.near)
                corner = cells.room(form.wide, form.high, (x - form.wide / 2, y - form.high / 2))
                if corner is not None:
                    yield tuple(self._set(cells, corner, words) for words in form.words)

    def _free(self, outline: int, angle: float) -> FreeCells:
        """What is free within the stitch line (0) or the cut line (1), for words so turned."""
        if (outline, angle) not in self._cells:
            room = self.room
            within = (room.stitched, room.cut)[outline]
            self._cells[outline, angle] = FreeCells(within, room.lines, room.words, angle)
        return self._cells[outline, angle]

    def _set(self, cells: FreeCells, corner: Place, words: TextLine) -> TextLine:
        at = cells.back((corner[0] + words.at.x, corner[1] + words.at.y))
        return replace(words, at=Point(*at), angle=cells.angle, part=self.part)

    def _beside(self, lines: Sequence[str]) -> tuple[Ink, ...]:
        """Lines below the piece, and a thin one from them up to it."""
        lowest = max(self.room.cut, key=lambda place: place[1])
        foot = Point(lowest[0], lowest[1] + BELOW)
        form = form_of(lines, SMALLEST, 1, named=False)
        words = (one.moved(foot - Point(-2 * CLEAR, 0)) for one in form.words)
        leads = ruled(Point(*lowest), foot)
        led = Stroke(leads, Layer.GUIDE, width=0.15, part=self.part)
        return (led, *(replace(one, part=self.part) for one in words))


def _is_square(outline: Sequence[Place]) -> bool:
    """Whether an outline runs across and down alone."""
    ends = zip(outline, (*outline[1:], outline[0]), strict=True)
    return all(abs(a[0] - b[0]) < EVEN or abs(a[1] - b[1]) < EVEN for a, b in ends)


EVEN = 0.01
"""What is nearer than this is taken to be as far across or down [mm]."""
