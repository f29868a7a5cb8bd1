"""A body's levels for a style, and what a drafted trunk gives there beside what was asked."""

from __future__ import annotations

from collections.abc import Mapping

from tapewise_core.drafting.facts import Level
from tapewise_core.measures.body import Body
from tapewise_core.parts.shape.levels import Levels, Trunk, levels
from tapewise_core.parts.shape.side_slopes import SideQuarters
from tapewise_core.parts.trunk_style import TrunkStyle
from tapewise_core.text.told import Told, said

WORTH_A_WORD = 1.0
"""Asked and given may differ by so much without a reason [mm]: what a tape can tell."""

HANGS: Told = ("it hangs straight from the wider waist.",)
"""Why a hip is wider than asked where the waist is the wider."""

FLARES = said("the side seam flares from the waist")
"""Why it is wider where the side flares there."""


def hangs_told(body: Body, style: TrunkStyle) -> Told:
    """Say that a hip has more ease because it hangs from the waist, where nobody asked for it."""
    hangs = body["waist"].mm + style.waist_ease.mm - body["hip"].mm
    if abs(style.hip_ease.mm - hangs) > WORTH_A_WORD or hangs <= style.ease.mm + WORTH_A_WORD:
        return ()
    words = "The hip hangs straight from the wider waist, which gives it {} of ease."
    return said(words, style.hip_ease)


def levels_for(body: Body, style: TrunkStyle) -> Levels:
    """Return the levels of a body; a close fit's lie lower by what the cloth loses in length."""
    return levels(trunk_of(body, style.lengthened))


def trunk_of(body: Body, lengthened: float = 0.0) -> Trunk:
    """Return what is known of a trunk, its lengths made longer by a fraction.

    The measures that only a tape can tell (front waist length, neck to bust point) count where
    they were taken; the rest may be estimated.
    """
    longer = 1 + lengthened

    def taken(key: str) -> float | None:
        return body[key].mm * longer if body.has(key) else None

    def known(key: str) -> float | None:
        return body[key].mm if key in body else None

    return Trunk(
        body["back_waist_length"].mm * longer,
        body["armscye_depth"].mm * longer,
        body["bust"].mm,
        body["waist"].mm,
        body["hip"].mm,
        body["hip_depth"].mm * longer,
        known("high_bust"),
        known("under_bust"),
        known("high_hip"),
        taken("front_waist_length"),
        taken("neck_to_bust_point"),
        body.reference,
        body.waist_site,
    )


def quarters(body: Body, style: TrunkStyle) -> SideQuarters:
    """Return bust, waist and hip in quarters, each with its ease [mm]."""
    return SideQuarters(
        ((body["bust"] + style.bust_ease) / 4).mm,
        ((body["waist"] + style.waist_ease) / 4).mm,
        ((body["hip"] + style.hip_ease) / 4).mm,
    )


def trunk_levels(
    at: Levels,
    style: TrunkStyle,
    asked_waist: float,
    given: Mapping[str, float],
    why: Mapping[str, Told],
) -> tuple[Level, ...]:
    """Return the facts of the levels that a garment covers, from the top down.

    ``given`` holds the finished girths as measured on the pieces, darts closed, by level; a
    level that is not in it is not covered. ``why`` says why one is held back [mm].
    """
    eases = {"bust": style.bust_ease.mm, "waist": style.waist_ease.mm, "hip": style.hip_ease.mm}
    found = []
    for level in at.all():
        if level.name in given:
            ease = eases.get(level.name)
            asked = None if ease is None else level.girth + ease
            if level.name == "waist":
                asked = asked_waist
            found.append(_level(level.name, level.depth, level.girth, ease, asked,
                                given[level.name], why.get(level.name, ())))  # fmt: skip
    return tuple(found)


def sleeve_level(name: str, body: float, ease: float | None, given: float, why: Told = ()) -> Level:
    """Return a level of a sleeve: ``upper_arm`` or ``sleeve_hem`` [mm].

    Without an ease it is shown, never aimed at.
    """
    asked = None if ease is None else body + ease
    return _level(name, None, body, ease, asked, given, why)


def _level(
    name: str,
    depth: float | None,
    body: float,
    ease: float | None,
    asked: float | None,
    given: float,
    why: Told,
) -> Level:
    off = asked is not None and abs(given - asked) > WORTH_A_WORD
    return Level(name, depth, body, ease, asked, given, (why or None) if off else None)
