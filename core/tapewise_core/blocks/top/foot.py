"""The lower end of a top: its side seam down to the hem, and the hem."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.errors import DraftError
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.crossings import distance_at_height, point_at_height
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.grown_arm import Grown
from tapewise_core.parts.hem import CURVED_PART, curved_hem
from tapewise_core.parts.hem_style import HemStyle
from tapewise_core.parts.shape.side_hem import levelled, squared_hem
from tapewise_core.text.told import LineName, OptionKey, said
from tapewise_core.units import mm

LEAST_BELOW = 30.0
"""A side seam goes on so far below the underarm's curve at the least [mm] (our choice)."""


class Foot(Frozen):
    """``side`` from the underarm to the hem, which meets the fold at the height ``fold`` [mm]."""

    side: Path
    fold: float


def foot_of(made: Grown, fold: float, style: TopStyle) -> Foot:
    """Return a top's side seam, cut off where its hem hangs level.

    Below the hip line it is as long as the fold, less what a curved hem rises.
    """
    rise = style.hem.rise.mm if style.hem.curved else 0.0
    seam, end = made.seam, fold - rise
    if seam.at.hip is None:
        return Foot(seam.path, fold)
    if end >= seam.path.end.y:
        return Foot(levelled(seam, end)[0], fold)
    return Foot(_cropped(made, end, curved=style.hem.curved), fold)


def taken_up(foot: Foot, by: float) -> Foot:
    """Return a foot whose hem lies higher at the side by a length [mm], or lower below nothing."""
    side = foot.side
    if by > 0:
        return replace(foot, side=side.split(side.length() - by)[0])
    if by < 0:
        end = side.end + side.arriving().unit() * -by
        return replace(foot, side=side.then(ruled(side.end, end)))
    return foot


def _cropped(made: Grown, hem: float, *, curved: bool) -> Path:
    """The side seam cut off where a hem that meets it square ends, found by closing in.

    A curved hem swings up by itself.
    """
    path, least = made.seam.path, curve_end(made) + LEAST_BELOW
    end = point_at_height(path, hem)
    if hem <= least or end is None:
        raise too_short(hem, least)
    for _ in range(0 if curved else 6):
        along = path.at(distance_at_height(path, end.y) or 0.0)[1]
        wanted = hem - end.x * CURVED_PART * along.x / along.y
        end = point_at_height(path, max(wanted, least)) or end
    return path.split(distance_at_height(path, end.y) or 0.0)[0]


def curve_end(made: Grown) -> float:
    """Return the height at which the underarm's curve ends [mm]."""
    return made.sleeve.ends.y if made.sleeve else made.seam.path.start.y


def too_short(hem: float, least: float) -> DraftError:
    """Return the refusal of a hem that would lie above the underarm."""
    words = "The {} at {} below the nape would lie above the underarm at {}; choose a longer {}."
    key = OptionKey("body-length")
    return DraftError(said(words, LineName("hem"), mm(hem), mm(least), key))


def hem_to(side: Path, fold: float, style: HemStyle) -> Path:
    """Return a hem from the fold to the end of a side seam, square to both."""
    if style.curved:
        along = side.arriving()
        return curved_hem(Point(0, fold), side.end, along.x / along.y)
    return squared_hem(side, fold).reversed()
