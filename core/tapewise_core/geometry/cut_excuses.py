"""What corners excuse: where a cut line can't be as far from an edge as its allowance."""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.cut_ends import folds
from tapewise_core.geometry.cut_spots import Spot
from tapewise_core.geometry.outline import Margin

CORNER, ROOM = 1.6, 3.0
"""Within this many of the wider allowance, and so many mm more, of an edge's end the corner
decides how far away the cut line is (our choice; a mitre of a right angle reaches 1.41). Beside
a corner that points inwards by more it is as far as the two allowances meet (exact)."""

TRUE = 0.05
"""How far a drawn allowance may be from the one asked for [mm]."""

SHARPEST = 0.34
"""A corner's mitre is cut off where the cosine of half its turn is less than a third; a little
more, for corners whose sides are not of one width (exact)."""


class Turn(Frozen):
    """What a corner does to the allowances on both sides of it.

    The cut line may be away from it by ``longer`` of the wider one, and by no more than ``left`` of
    the narrower; ``sharp`` says that the two edges lie so close that one may be nearer to the
    other's cut line than to its own. Where one of the two turns up, the other may be away by
    ``opened`` of its own allowance.
    """

    longer: float
    left: float
    sharp: bool
    opened: float = 1.0


def turn(before: Margin, after: Margin) -> Turn:
    """Return what the corner between two edges does to their allowances."""
    coming, going = before.path.arriving(), after.path.leaving()
    inward, degrees = coming.cross(going) < 0, coming.angle_to(going)
    tip = math.cos(math.radians(degrees) / 2)
    return Turn(
        longer=_hollow(before, after, degrees) if inward else 1.0,
        left=tip if tip < SHARPEST else 1.0,
        sharp=not inward and coming.dot(going) < 0,
        opened=1.0 if inward else _opened(before, after, degrees),
    )


def _opened(before: Margin, after: Margin, turn: float) -> float:
    """How much farther than its allowance the cut line lies from an edge beside one that turns up,
    by a turn outwards [degrees]: from its corner to where the hem's own line cuts it off.

    Exact for straight sides; a corner of a right angle or less keeps all of it.
    """
    if before.turned == after.turned or turn >= 90:
        return 1.0
    if not folds(before.path.arriving(), after.path.leaving()):
        return 1.0
    return 1 / math.sin(math.radians(turn))


def _hollow(before: Margin, after: Margin, turn: float) -> float:
    """How much farther than an allowance the cut line lies from a corner that points inwards, by a
    turn [degrees], where the two sides of it meet.

    Exact for straight sides; where they bend, their turn as far away as the allowance is wide
    counts too.
    """
    most = max(before.width, after.width)
    coming = before.path.at(max(before.path.length() - most, 0.0))[1]
    going = after.path.at(min(most, after.path.length()))[1]
    turn = max(coming.angle_to(going), turn)
    return 1 / max(math.cos(math.radians(turn) / 2), 0.1)


class Excuse(Frozen):
    """What a corner excuses along an edge near it: its own, or one beyond a short neighbour.

    Less than ``reach`` from the edge's end the cut line may be as near as ``least`` and as far as
    ``most`` [mm], and so it may within ``slanting`` of a ``fold`` that lies beyond the corner. That
    is the edge number ``at``, ``beyond`` its allowance; where it may lie nearer to its neighbour's
    stitch line than that one's own, straight ``across`` the piece, that is told.
    """

    at_start: bool
    reach: float
    least: float
    most: float
    fold: Margin | None
    slanting: float
    at: int
    beyond: float
    across: bool

    def excused(self, spot: Spot, off: float) -> float:
        """Return by how much a spot's allowance is wrong where the corner decides it [mm]."""
        if (spot.from_start if self.at_start else spot.from_end) < self.reach or (
            self.fold and _from_line(self.fold, spot) < self.slanting
        ):
            return min(off, max(self.least - spot.far, spot.far - self.most, 0.0))
        return off


def excuse(
    edge: Margin, beyond: Margin, corner: Turn, at: int, at_start: bool, away: float
) -> Excuse:
    """Return what a corner excuses along an edge from whose end it lies so far away [mm]; beyond it
    lies the edge number ``at``."""
    least, most = sorted((edge.width, beyond.width))
    return Excuse(
        at_start=at_start,
        reach=max(CORNER, math.sqrt(corner.longer**2 - 1)) * most + ROOM - away,
        least=0.0 if beyond.fold else least * corner.left,
        most=max(most * corner.longer, 0.0 if edge.turned else edge.width * corner.opened),
        fold=beyond if beyond.fold else None,
        slanting=edge.width + TRUE,
        at=at,
        beyond=beyond.width,
        across=corner.sharp and beyond.width < edge.width,
    )


def _from_line(fold: Margin, spot: Spot) -> float:
    """How far a spot lies from a fold's straight line [mm]."""
    square, start = fold.path.leaving().square(), fold.path.start
    return abs((spot.x - start.x) * square.x + (spot.y - start.y) * square.y)
