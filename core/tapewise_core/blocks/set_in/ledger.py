"""What the drafted pieces measure at the body's levels, beside what was asked."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.set_in.trunk import Trunk
from tapewise_core.drafting.facts import Level
from tapewise_core.drafting.pattern import Girth
from tapewise_core.drafting.piece import Piece
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.crossings import point_at_height
from tapewise_core.measures.body import Body
from tapewise_core.parts.arm import arm_at
from tapewise_core.parts.darts import open_side
from tapewise_core.parts.shape.cap import Cap
from tapewise_core.parts.trunk_levels import FLARES, HANGS, sleeve_level, trunk_levels
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm


class Made(Frozen):
    """A sleeve, its solved cap, and how long its hem was to be [mm]."""

    sleeve: Piece
    solved: Cap
    hem: float


def levels_of(trunks: tuple[Trunk, ...], made: Made | None, body: Body) -> tuple[Level, ...]:
    """Return every level that the garment covers, from the top down, then a sleeve's.

    ``trunks`` are both sides where they differ, else the one that both are like.
    """
    trunk = trunks[0]
    seam, style = trunk.drawn.seam, trunk.style
    at = trunk.plan.wish.levels
    under = replace(at.armscye, depth=seam.at.underarm)
    at = replace(at, armscye=under, bust=replace(at.bust, depth=seam.at.bust))
    asked = sum(one.drawn.seam.asked for one in trunks) / len(trunks)
    held = next((one.drawn.seam.held_back for one in trunks if one.drawn.seam.held_back), ())
    hip = HANGS if seam.hip_held_back else FLARES
    why = {"waist": held, "hip": hip, "bust": _dart_told(trunk)}
    found = trunk_levels(at, style.trunk, 4 * asked, _both(trunks), why)
    return (*found, *_sleeve(style, made, body)) if made else found


def _both(trunks: tuple[Trunk, ...]) -> dict[str, float]:
    """The girths of both sides, at the levels that all reach [mm]."""
    sides = [_given(trunk) for trunk in trunks]
    names = [name for name in sides[0] if all(name in side for side in sides)]
    return {name: sum(side[name] for side in sides) / len(sides) for name in names}


def _given(trunk: Trunk) -> dict[str, float]:
    """The girths at the levels that both pieces reach, waist darts closed [mm]."""
    ends = trunk.sides.back.start.x, trunk.sides.front.upper.start.x
    found = {"armscye": 2 * sum(ends)}
    here, there = (trunk.levels(front=front) for front in (False, True))
    for name in here:
        if name == "armscye":
            continue
        back = point_at_height(trunk.sides.back, here[name])
        front = point_at_height(open_side(trunk.sides.front), there[name])
        if back and front:
            taken = 4 * trunk.drawn.seam.dart if name == "waist" else 0.0
            found[name] = 2 * (back.x + front.x) - taken
    return found


def _dart_told(trunk: Trunk) -> Told:
    """Why the bust line is not what was asked, where a dart or what is eased lies across it."""
    if trunk.sides.front.dart:
        return said("the side dart opens there; folded, the front takes its shape from the dart")
    if trunk.full:
        return said("the front's side is let down there for the length over the bust")
    return ()


def _sleeve(style: SetInStyle, made: Made, body: Body) -> tuple[Level, Level]:
    solved, arm = made.solved, body["upper_arm"].mm
    upper = sleeve_level(
        "upper_arm", arm, solved.asked - arm, _width(made.sleeve), solved.held_back(arm)
    )
    wrist = arm_at(body, style.sleeve.length.mm).mm
    hem = made.sleeve.length("sleeve_hem")
    return upper, sleeve_level("sleeve_hem", wrist, made.hem - wrist, hem, HEM)


HEM = said("the sleeve's seams may slant no more than they do")


def _width(sleeve: Piece) -> float:
    """The sleeve's width under the arm, as drawn [mm]."""
    return (sleeve.points["front_underarm"] - sleeve.points["back_underarm"]).length()


def girths(levels: tuple[Level, ...]) -> tuple[Girth, ...]:
    """Return the finished girths beside the body's."""
    names = ("bust", "waist", "hip", "upper_arm", "sleeve_hem")
    return tuple(
        Girth(level.name.replace("_", " "), level.given, level.body)
        for level in levels
        if level.name in names
    )


def moved_bust(trunk: Trunk) -> Told:
    """Say that the bust line was moved to lie between underarm and waist."""
    by = trunk.drawn.seam.at.bust - trunk.plan.wish.levels.bust.depth
    if abs(by) < 1:
        return ()
    words = "The bust line lies {} {} than measured, to keep clear of underarm and waist."
    return said(words, mm(abs(by)), "lower" if by > 0 else "higher")
