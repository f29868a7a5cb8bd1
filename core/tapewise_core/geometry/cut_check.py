"""A cut line measured again, all along: how far it is from each edge's allowance."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from typing import NamedTuple

from tapewise_core.geometry.cut_spots import Spot, distance, measured
from tapewise_core.geometry.outline import Margin
from tapewise_core.geometry.point import Point

CORNER, ROOM = 1.6, 3.0
"""Within this many of the wider allowance, and so many mm more, of an edge's end the corner
decides how far away the cut line is (our choice; a mitre of a right angle reaches 1.41). Beside
a corner that points inwards by more it is as far as the two allowances meet (exact)."""

TRUE = 0.05
"""How far a drawn allowance may be from the one asked for [mm]."""

SHARPEST = 0.34
"""A corner's mitre is cut off where the cosine of half its turn is less than a third; a little
more, for corners whose sides are not of one width (exact)."""


def allowances_off(cut: Sequence[Point], margins: Sequence[Margin]) -> list[float]:
    """Return by how much each edge's allowance is wrong at its worst place [mm].

    Measured from the stitch line to the nearest place of the cut line. Near a corner the cut
    line may be nearer only as far as the neighbour's allowance is narrower, and is cut off by a
    fold; it may be farther only by what a corner needs, one that points inwards too. Beside an
    edge without an allowance, such as a fold, the cut line is the edge itself. In a sharp corner
    the nearest place may be the neighbour's cut line, straight across the piece.
    """
    pairs = zip(margins, [*margins[1:], margins[0]], strict=True)
    turns = [(_hollow(*pair), _blunted(*pair), _sharp(*pair)) for pair in pairs]
    lengths = [edge.path.length() for edge in margins]
    spots = measured(cut, margins)
    return [
        _worst(edge, spots.worst_first(i, edge.width), tuple(_corners(margins, turns, lengths, i)))
        for i, edge in enumerate(margins)
    ]


def _worst(edge: Margin, spots: Iterable[tuple[float, Spot]], corners: Sequence[_Corner]) -> float:
    """The worst difference along one edge [mm]: its spots from the worst on, until what is left
    can't be worse whatever a corner excuses."""
    worst = 0.0
    for off, spot in spots:
        if off <= worst:
            break
        left = min((off, *(corner.excused(edge, spot, off) for corner in corners)))
        if left > worst:
            across = (corner.across(edge, spot) for corner in corners if corner.near(edge))
            worst = max(worst, min((left, *across)))
    return worst


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

    def excused(self, edge: Margin, spot: Spot, off: float) -> float:
        """Return by how much a spot's allowance is wrong where the corner decides it [mm]."""
        most = max(edge.width, self.beyond.width)
        if self._decides(edge, spot, most):
            least = 0.0 if self.beyond.fold else min(edge.width, self.beyond.width) * self.left
            off = min(off, max(least - spot.far, spot.far - most * self.longer, 0.0))
        return off

    def near(self, edge: Margin) -> bool:
        """Say whether the neighbour's cut line may be nearer to an edge than its own, straight
        across the piece; one that stands off as far never is."""
        return self.sharp and self.beyond.width < edge.width

    def across(self, edge: Margin, spot: Spot) -> float:
        """Return by how much a spot's allowance is wrong if that cut line may be nearer [mm]."""
        across = distance(spot, self.beyond) + self.beyond.width
        return abs(spot.far - min(edge.width, across))

    def _decides(self, edge: Margin, spot: Spot, most: float) -> bool:
        """Whether the corner is so near that it decides how far away the cut line is; a fold is
        near wherever it cuts off what would lie beyond it."""
        off = self.away + (spot.from_start if self.at_start else spot.from_end)
        if off < max(CORNER, math.sqrt(self.longer * self.longer - 1)) * most + ROOM:
            return True
        return self.beyond.fold and _from_line(self.beyond, spot) < edge.width + TRUE


def _from_line(fold: Margin, spot: Spot) -> float:
    """How far a spot lies from a fold's straight line [mm]."""
    square, start = fold.path.leaving().square(), fold.path.start
    return abs((spot.x - start.x) * square.x + (spot.y - start.y) * square.y)


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
