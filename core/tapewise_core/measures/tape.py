"""What a tape's path on the figure is made of; the paths are in :mod:`.tapes`."""

from __future__ import annotations

import math
from typing import Literal

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.measures.croquis_parts import Pose, Spot, at, smooth
from tapewise_core.measures.measure import View

BAR = 0.017
"""Half of an end mark's length, as a share of the frame's height."""


class Landmark(Frozen):
    """A place the tape goes by, its name set on one side of the figure."""

    name: str
    at: Point
    side: Literal["left", "right"] = "right"


class Tape(Frozen, kw_only=True):
    """Where one measure's tape lies on the figure [mm].

    ``seen`` is the tape in view and ``hidden`` what goes behind the body;
    ``guides`` are helping lines such as the elastic or a ruler. ``frame`` is
    the part of the figure worth looking at.
    """

    view: View
    frame: Box
    seen: Path
    hidden: Path | None = None
    guides: tuple[Path, ...] = ()
    landmarks: tuple[Landmark, ...] = ()
    pose: Pose = Pose.HANGING

    def ends(self) -> tuple[Path, ...]:
        """Return a short mark across each end of a length; a girth has none."""
        if self.hidden is not None:
            return ()
        half = self.frame.height * BAR
        path = self.seen
        places = ((path.start, path.leaving()), (path.end, path.arriving()))
        return tuple(
            ruled(spot + way.square() * half, spot + -way.square() * half) for spot, way in places
        )


def framed(left: float, top: float, right: float, bottom: float) -> Box:
    """Return a frame given in cm."""
    return Box(left * 10, top * 10, right * 10, bottom * 10)


def named(name: str, spot: Spot, side: Literal["left", "right"] = "right") -> Landmark:
    """Return a landmark at a spot [cm]."""
    return Landmark(name, at(spot), side)


def line(*spots: Spot) -> Path:
    """Return straight lines through spots [cm]."""
    return ruled(*map(at, spots))


def around(left: Spot, right: Spot, sag: float) -> tuple[Path, Path]:
    """Return the near and the far half of a band seen from a little above.

    ``left`` and ``right`` are where it goes out of sight [cm], ``sag`` how much
    lower than them its near half hangs.
    """
    return _half(left, right, sag), _half(left, right, -sag)


def _half(left: Spot, right: Spot, sag: float) -> Path:
    x, y = (left[0] + right[0]) / 2, (left[1] + right[1]) / 2
    dx, dy = (right[0] - left[0]) / 2, (right[1] - left[1]) / 2
    turns = [math.pi * i / 8 for i in range(9)]
    return smooth(
        *((x - dx * math.cos(a), y - dy * math.cos(a) + sag * math.sin(a)) for a in turns)
    )
