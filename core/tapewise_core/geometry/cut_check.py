"""A cut line measured again, all along: how far it is from each edge's allowance, and its teeth."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from typing import TYPE_CHECKING, NamedTuple

from tapewise_core.geometry.outline import Margin
from tapewise_core.geometry.point import Point

if TYPE_CHECKING:
    import numpy as np
    from shapely import LineString

APART = 10.0
"""The stitch line is measured from at least this often [mm] (our choice)."""

CORNER, ROOM = 1.6, 3.0
"""Within this many of the wider allowance, and so many mm more, of an edge's end the corner
decides how far away the cut line is (our choice; a mitre of a right angle reaches 1.41). Beside
a corner that points inwards by more it is as far as the two allowances meet (exact)."""

TRUE = 0.05
"""How far a drawn allowance may be from the one asked for [mm]."""

NEAR = 0.01
"""How near to the true curve the stitch line is measured from [mm]."""

SHARPEST = 0.34
"""A corner's mitre is cut off where the cosine of half its turn is less than a third; a little
more, for corners whose sides are not of one width (exact)."""

SHARP = 135.0
"""A cut line that turns by more at one point has a tooth [degrees] (our choice)."""

SHORTEST = 0.2
"""Turns are taken between points at least so far apart [mm]; rounding makes nearer ones wild."""


def allowances_off(cut: Sequence[Point], margins: Sequence[Margin]) -> list[float]:
    """Return by how much each edge's allowance is wrong at its worst place [mm].

    Measured from the stitch line to the nearest place of the cut line. Near a corner the cut
    line may be nearer only as far as the neighbour's allowance is narrower, and is cut off by a
    fold; it may be farther only by what a corner needs, one that points inwards too. Beside an
    edge without an allowance, such as a fold, the cut line is the edge itself. In a sharp corner
    the nearest place may be the neighbour's cut line, straight across the piece.
    """
    import shapely

    line = shapely.linestrings([(p.x, p.y) for p in [*cut, cut[0]]])
    pairs = zip(margins, [*margins[1:], margins[0]], strict=True)
    turns = [(_hollow(*pair), _blunted(*pair), _sharp(*pair)) for pair in pairs]
    lengths = [edge.path.length() for edge in margins]
    return [
        _worst(line, edge, tuple(_corners(margins, turns, lengths, i)))
        for i, edge in enumerate(margins)
    ]


def _corners(
    margins: Sequence[Margin], turns: Sequence[tuple[float, float, bool]], lengths: Sequence[float],
    index: int,
) -> Iterator[_Corner]:  # fmt: skip
    """The corners near an edge: its own, and beyond short neighbours theirs."""
    count, reach = len(margins), CORNER * max(edge.width for edge in margins) + ROOM
    for way in (-1, 1):
        away = 0.0
        for step in range(1, count):
            at = (index + way * step) % count
            turn = turns[at] if way < 0 else turns[(at - 1) % count]
            yield _Corner(way < 0, away, margins[at], *turn)
            away += lengths[at]
            if away > reach:
                break


class _Corner(NamedTuple):
    """A corner that an edge may be near to, its own or one beyond a short neighbour.

    ``away`` is how far beyond the edge's own end it lies [mm], ``beyond`` the edge on its other
    side; ``longer`` and ``left`` are what it does to the allowance there, and ``sharp`` says that
    the two edges lie so close that one may be nearer to the other's cut line than to its own.
    """

    at_start: bool
    away: float
    beyond: Margin
    longer: float
    left: float
    sharp: bool


def _worst(line: LineString, edge: Margin, corners: Sequence[_Corner]) -> float:
    """The worst difference along one edge [mm]."""
    import numpy as np
    import shapely

    spots = shapely.get_coordinates(shapely.segmentize(_chords(edge), APART))
    places = shapely.points(spots)
    far = np.asarray(shapely.distance(places, line))
    walked = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(spots, axis=0).T))])
    off = np.abs(far - edge.width)
    for at_start, away, beyond, longer, left, sharp in corners:
        most = max(edge.width, beyond.width)
        to_corner = away + (walked if at_start else walked[-1] - walked)
        near = to_corner < max(CORNER, math.sqrt(longer * longer - 1)) * most + ROOM
        if beyond.fold:  # the fold cuts off what would lie beyond it
            near |= _from_fold(spots, beyond) < edge.width + TRUE
        least = 0.0 if beyond.fold else min(edge.width, beyond.width) * left
        here = np.maximum(np.maximum(least - far, far - most * longer), 0.0)
        off = np.where(near, np.minimum(off, here), off)
        if sharp:
            across = shapely.distance(places, _chords(beyond)) + beyond.width
            off = np.minimum(off, np.abs(far - np.minimum(edge.width, across)))
    return float(off.max())


def _chords(edge: Margin) -> LineString:
    """An edge as a line of points."""
    import shapely

    return shapely.LineString([(p.x, p.y) for p in edge.path.flattened(NEAR)])


def _hollow(before: Margin, after: Margin) -> float:
    """How much farther than an allowance the cut line lies from a corner that points inwards,
    where the two sides of it meet; 1 at any other.

    Exact for straight sides; where they bend, their turn as far away as the allowance is wide
    counts too.
    """
    if before.path.arriving().cross(after.path.leaving()) >= 0:
        return 1.0
    most = max(before.width, after.width)
    coming = before.path.at(max(before.path.length() - most, 0.0))[1]
    going = after.path.at(min(most, after.path.length()))[1]
    turn = max(coming.angle_to(going), before.path.arriving().angle_to(after.path.leaving()))
    return 1 / max(math.cos(math.radians(turn) / 2), 0.1)


def _blunted(before: Margin, after: Margin) -> float:
    """How much of an allowance is left at the tip of a corner so sharp that its mitre is cut off
    (:data:`tapewise_core.geometry.cut_corners.MITRE`); all of it, 1, at any other."""
    turn = math.radians(before.path.arriving().angle_to(after.path.leaving()))
    tip = math.cos(turn / 2)
    return tip if tip < SHARPEST else 1.0


def _sharp(before: Margin, after: Margin) -> bool:
    """Say whether a corner that points outwards is of less than a right angle."""
    coming, going = before.path.arriving(), after.path.leaving()
    return coming.cross(going) >= 0 and coming.dot(going) < 0


def _from_fold(spots: np.ndarray, fold: Margin) -> np.ndarray:
    """How far places lie from a fold's straight line [mm]."""
    square, start = fold.path.leaving().square(), fold.path.start
    return abs((spots[:, 0] - start.x) * square.x + (spots[:, 1] - start.y) * square.y)


def teeth(cut: Sequence[Point]) -> tuple[Point, ...]:
    """Return every point of a closed cut line at which it turns back on itself."""
    points = list(_apart(cut))
    ring = [points[-1], *points, points[0]]
    found, back = [], math.cos(math.radians(SHARP))
    for a, b, c in zip(ring[:-2], ring[1:-1], ring[2:], strict=True):
        x, y, u, v = b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y
        if x * u + y * v < back * math.hypot(x, y) * math.hypot(u, v):
            found.append(b)
    return tuple(found)


def _apart(cut: Sequence[Point]) -> Iterable[Point]:
    """The points of a closed line that are not all but on the one before."""
    last = cut[-1]
    for point in cut:
        if math.hypot(point.x - last.x, point.y - last.y) > SHORTEST:
            yield point
            last = point
