"""What the figure in line art is drawn with: poses, smooth curves, halves and their images.

The figure is our own, 170 cm high, proportioned like the middle of adults; it
stands for nobody and is not to measure from. Points are given in cm, x out
from the middle line (in the side view towards the front), y down from the
crown; paths come in mm like all paths.
"""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.geometry.segments import Cubic

Spot = tuple[float, float]
"""A place on the figure [cm]."""

FLOOR = 170.0
"""Where it stands [cm]."""


class Pose(StrEnum):
    """What the arms do."""

    HANGING = "arms hanging"
    ON_HIP = "one hand on the hip"


class Croquis(Frozen):
    """The figure from one side: its outline, and lines to leave out where it is small."""

    outline: tuple[Path, ...]
    details: tuple[Path, ...]
    fine: tuple[Path, ...]


def smooth(*spots: Spot) -> Path:
    """Return a smooth curve through spots [cm], by Catmull-Rom's rule with the ends repeated.

    Each piece's handles lie a sixth of the chord between its neighbours away
    (Catmull and Rom, A class of local interpolating splines, 1974).
    """
    knots = [at(spot) for spot in (spots[0], *spots, spots[-1])]
    pieces = []
    for before, start, end, after in zip(knots, knots[1:], knots[2:], knots[3:], strict=False):
        leave, arrive = start + (end - before) * (1 / 6), end + (start - after) * (1 / 6)
        pieces.append(Cubic(start, leave, arrive, end))
    return Path(tuple(pieces))


def at(spot: Spot) -> Point:
    """Return a spot [cm] as a point [mm]."""
    return Point(spot[0] * 10, spot[1] * 10)


def both(*halves: Path) -> tuple[Path, ...]:
    """Return paths of one half of the body with their images on the other."""
    top, foot = Point(0, 0), Point(0, 1)
    return tuple(path for half in halves for path in (half, half.mirrored(top, foot)))
