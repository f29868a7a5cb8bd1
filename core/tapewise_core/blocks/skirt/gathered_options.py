"""The options of a gathered skirt, alone or sewn to a bodice.

Amounts are common practice in the trade unless a row names a source.
"""

from __future__ import annotations

import math

from tapewise_core.blocks.skirt.gathered_style import GatheredStyle
from tapewise_core.measures.body import Body
from tapewise_core.parts.stride import skirt_hem
from tapewise_core.proofs.gathers import most_gathers
from tapewise_core.proofs.stride import least_round
from tapewise_core.style.cloth import ClothStyle
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import cm, mm

USUAL_FULLNESS, TIER_FULLNESS = 1.5, 1.5
"""What jersey is usually gathered by: heavier than woven cotton, which takes twice its length."""

OVER_HIP = 1.3
"""What the upper edge has for the hips' girth at the least, unasked: less hangs like a tube."""

LEAST_TIER = 80.0
"""No tier is lower [mm] (our choice): its seams would lie on each other's gathers."""

LONGEST_HEM = 12000.0
"""No hem is longer [mm] (our choice)."""


def fullness(body: Body, style: Style) -> float:
    """1.5, or what hips and stride need, as far as the cloth can be gathered."""
    edge = (body["waist"] + style.length("waist-ease")).mm
    lower = style.number("tier-fullness") ** (int(style.choice("tiers")) - 1)
    most = min(most_gathers(ClothStyle.of(style).weight), MOST)
    if edge <= 0:  # less ease than there is waist; the draft refuses it
        return _down(most)
    needed = max(body["hip"].mm * OVER_HIP, _stride(body, style) / lower) / edge
    return min(max(USUAL_FULLNESS, _up(needed)), _down(most))


def _stride(body: Body, style: Style) -> float:
    """What the hem needs for a stride [mm], nothing where that is not known."""
    hem = skirt_hem(body, style.length("skirt-length").mm, 0.0)
    if hem.knee is None or hem.ankle is None or hem.below_waist < hem.knee:
        return 0.0
    return float(least_round(hem.below_waist, hem.knee, hem.ankle))


def tier_fullness(body: Body, style: Style) -> float:
    """1.5, as far as the cloth can be gathered."""
    return min(TIER_FULLNESS, _down(most_gathers(ClothStyle.of(style).weight)))


def _up(ratio: float) -> float:
    return math.ceil(ratio * 100 - 1e-6) / 100


def _down(ratio: float) -> float:
    return math.floor(ratio * 100 + 1e-6) / 100


LEAST, MOST = 1.1, 3.0
"""Less is no gathering, more no cloth can be drawn up to."""

GATHERED = Options.of(
    Option(
        key="tiers",
        group=Group.STYLE,
        says=said("of how many tiers the skirt is made, each gathered to the one above"),
        kind=ValueKind.CHOICE,
        default="1",
        choices=("1", "2", "3", "4"),
    ),
    Option(
        key="tier-fullness",
        group=Group.STYLE,
        says=said("how much of each lower tier is gathered into each length of the one above"),
        kind=ValueKind.RATIO,
        default=tier_fullness,
        default_says=said("1.5, less where the cloth is heavy"),
        where=("tiers", "2", "3", "4"),
        low=LEAST,
        high=MOST,
    ),
    Option(
        key="fullness",
        group=Group.STYLE,
        says=said("how much cloth is gathered into each length of the waist"),
        kind=ValueKind.RATIO,
        default=fullness,
        default_says=said("1.5, more for hips and stride, less where the cloth is heavy"),
        low=LEAST,
        high=MOST,
    ),
)


def gathers_agree(wanted: GatheredStyle, edge: float) -> tuple[Told, ...]:
    """Return a sentence where tiers are too low, or the hem of an ``edge`` [mm] is too long."""
    if wanted.length.mm / wanted.tiers < LEAST_TIER:
        return (
            said(
                "{} tiers of {} in all would be {} each; choose fewer {}, or at least {}.",
                f"{wanted.tiers}", wanted.length, mm(wanted.length.mm / wanted.tiers),
                OptionKey("tiers"), mm(LEAST_TIER * wanted.tiers),
            ),
        )  # fmt: skip
    hem = edge * wanted.growth
    if hem > LONGEST_HEM:
        return (
            said(
                "The hem would be {} round, and {} is the most; take less {} or fewer {}.",
                mm(hem), cm(LONGEST_HEM / 10), OptionKey("tier-fullness"), OptionKey("tiers"),
            ),
        )  # fmt: skip
    return ()
