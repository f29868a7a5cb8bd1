"""A side that flares from the waist or the hip, and the hem that hangs level under it.

The flared side is as long as the centre below the same level; because it slants
its end lies higher by L − √(L² − f²), for a length L and a flare f (exact).
"""

from __future__ import annotations

import math

from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.errors import DraftError
from tapewise_core.garments.flared_dress.style import FlareFrom, FlareStyle
from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import Point, Vector, crossing
from tapewise_core.measures.body import Body
from tapewise_core.parts.hem import HEM, HEM_MANNER, draw_underarm, slit_told, waist_check
from tapewise_core.parts.hem_style import HemStyle
from tapewise_core.parts.side_draft import quarter
from tapewise_core.parts.side_seam import SideSeam, side_seam
from tapewise_core.parts.underarm import Underarm
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import Length, mm

ROUNDED = 140.0
"""The side is rounded so far before and after the level it flares from, at the most [mm]."""

SHORTEST = 100.0
"""The least length below the level that a side flares from [mm]."""


def risen(length: float, flare: float) -> float:
    """Return how much higher a flared side ends than the centre [mm].

    >>> [round(risen(l, f), 2) for l, f in ((500, 80), (600, 150), (700, 200))]
    [6.44, 19.05, 29.18]
    """
    return length - math.sqrt(length * length - flare * flare)


def flared_side(
    draft: Draft, underarm: Underarm, body: Body, style: TopStyle, flared: FlareStyle
) -> tuple[Draft, Underarm]:
    """Return the draft with its side seam flared to the hem, and its underarm."""
    waist, hip = quarter(body, style.trunk, "waist"), quarter(body, style.trunk, "hip")
    seam = side_seam(
        underarm.side,
        Point(waist.mm, draft["W"].y),
        Point(hip.mm, draft["J"].y),
        style.trunk.shaping,
    )
    draft = draft.across("W", "I", waist, "the waist's quarter, a limit for the side seam")
    if flared.start is FlareFrom.WAIST:
        return _from_waist(draft, underarm, seam, hip, style, flared)
    above, lean = _above_hip(seam, underarm.side, draft)
    if above.end.x - hip.mm > 0.05:
        hip = Length(above.end.x, ("hip ÷ 4, let out to follow the wider waist",))
    draft = draft.across("J", "G", hip, "the side at the hip, where the flare begins")
    return _flared(draft, underarm, above, "G", style, flared, lean * (draft["B"].y - draft["J"].y))


def _above_hip(seam: SideSeam, top: Point, draft: Draft) -> tuple[Path, float]:
    """The top's own side seam and its lean; straight past a waist that would bulge it outwards."""
    waist = draft["I"]
    slope = (waist.x - top.x) / (waist.y - top.y)
    if slope <= (seam.hip.x - top.x) / (seam.hip.y - top.y):
        return seam.path, seam.lean
    end = Point(top.x + slope * (seam.hip.y - top.y), seam.hip.y)
    return ruled(top, end), slope


def _from_waist(
    draft: Draft,
    underarm: Underarm,
    seam: SideSeam,
    hip: Length,
    style: TopStyle,
    flared: FlareStyle,
) -> tuple[Draft, Underarm]:
    """Straight from the underarm to the waist, and from there past the hip to the hem."""
    top, level = underarm.side, draft["W"].y
    straight = top.x + (hip.mm - top.x) * (level - top.y) / (draft["J"].y - top.y)
    limit = draft["I"].x
    share = style.trunk.shaping
    at = max(limit, straight - share * max(0.0, straight - limit))
    called = "the side at the waist, where the flare begins: not inside I"
    draft = draft.across("W", "D", mm(at), called)
    draft = draft.across("J", "G", hip, "the hip's quarter, which the side must clear")
    below = draft["B"].y - level
    least = below * max((hip.mm - at) / (draft["J"].y - level), (at - top.x) / (level - top.y))
    return _flared(draft, underarm, ruled(top, draft["D"]), "D", style, flared, least)


def _flared(
    draft: Draft,
    underarm: Underarm,
    above: Path,
    start: str,
    style: TopStyle,
    flared: FlareStyle,
    least: float,
) -> tuple[Draft, Underarm]:
    """Set off the flare below its level and draw the whole side."""
    length = draft["B"].y - draft[start].y
    asked = flared.amount
    flare = asked if asked.mm >= least else mm(least).called("the side's own slant, carried on,")
    if length < SHORTEST or flare.mm > 0.8 * length:
        raise DraftError(
            said(
                "A flare of {} needs more than the {} that are left below the level it begins at; "
                "choose a longer {} or less flare.",
                mm(flare.mm),
                mm(length),
                OptionKey("body-length"),
            )
        )
    rise = risen(length, flare.mm)
    down = Length(length - rise, ("√(", length, "² − ", flare.mm, "²)"))
    height = "the height of the side's hem: the side is as long as the centre, and slants"
    draft = draft.down(start, "m", down, height).across("m", "M", flare, "the side at the hem")
    whole = _rounded(above, draft["M"])
    underarm = underarm.leaning(whole.leaving())
    draft = draw_underarm(draft, underarm)
    side = underarm.rounding.then(whole) if underarm.rounding else whole
    top = ("V",) if underarm.rounding else ()
    name = "U" if "U" in draft.paper.points else "H"
    manner = f"One gentle curve, rounded at {start} without a corner; straight below to the hem."
    check = waist_check(draft, side)
    draft = draft.curve("side", side, (name, *top, start, "M"), manner, check)
    return slit_told(draft, style.hem), underarm


def _rounded(above: Path, end: Point) -> Path:
    """The side above the level and the straight flare below, their corner rounded off."""
    corner, coming = above.end, above.arriving()
    going = (end - corner).unit()
    if coming.angle_to(going) < 0.2:
        return above.then(ruled(corner, end))
    reach = min(ROUNDED, 0.5 * above.length(), 0.5 * (end - corner).length())
    before, _ = above.split(above.length() - reach)
    meets = crossing(before.end, before.arriving(), corner, going) or corner
    after = corner + going * reach
    first, last = before.end.toward(meets, 0.6), after.toward(meets, 0.6)
    bend = curved(before.end, first, last, after)
    return before.then(bend).then(ruled(after, end))


def flared_hem(draft: Draft, centre: str, lean: float, style: HemStyle, lower: str = HEM) -> Draft:
    """Return the draft with its hem: level, then swung up to meet the flared side square."""
    start, side = draft[centre], draft.paper.line("side").end
    run = (start.y - side.y) / lean if lean > 1e-6 else side.x * 0.3
    run = min(max(run, side.x * 0.1), 0.45 * side.x)
    before = Point(side.x - 2 * run, start.y)
    grip = run * 0.6
    swing = curved(before, before + Vector(grip * 1.2, 0), side + Vector(-grip, grip * lean), side)
    return draft.curve(lower, ruled(start, before).then(swing), (centre, "M"), HEM_MANNER)
