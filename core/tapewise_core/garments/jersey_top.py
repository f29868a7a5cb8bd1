"""The grown-on-sleeve jersey top: dropped shoulder, no darts, no closure.

The back (:mod:`top_back`), the front traced from it (:mod:`top_front`) and the
neckline's finish (:mod:`neck_finish`).
"""

from __future__ import annotations

from dataclasses import replace
from types import MappingProxyType

from tapewise_core.drafting.piece import Pattern
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.option import Style
from tapewise_core.garments.stride import hem_facts
from tapewise_core.garments.top_agree import agree
from tapewise_core.garments.top_back import draft_back
from tapewise_core.garments.top_block import assemble
from tapewise_core.garments.top_front import draft_front
from tapewise_core.garments.top_options import OPTIONS
from tapewise_core.measures.body import Body

TITLE = "Jersey top with grown-on sleeves"


def draft(body: Body, style: Style) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    pattern = assemble("jersey-top", TITLE, body, style, draft_back, draft_front)
    facts = {**pattern.facts, **hem_facts(body, style, *pattern.pieces[:2])}
    return replace(pattern, facts=MappingProxyType(facts))


def idle(style: Style) -> tuple[str, ...]:
    """The lower arm matters only to sleeves that reach it, high bust where its amount is used."""
    unused = () if style.length("sleeve-length").mm > SHORT_SLEEVE else ("wrist", "arm_length")
    return (*unused, "high_bust") if style.asked("full-bust") else unused


def _idle(style: Style) -> tuple[str, ...]:
    """Nor does the knee matter to a top that ends above it."""
    long = style.length("body-length").mm > ABOVE_KNEE
    return idle(style) if long else (*idle(style), *BELOW_WAIST)


SHORT_SLEEVE = 130.0
"""A sleeve no longer ends above the fullest upper arm of nearly everybody [mm] [ansur1]."""

ABOVE_KNEE = 850.0
"""A top no longer from the nape ends above everybody's knee [mm] [ansur1]."""

NEEDS = (
    "bust", "waist", "hip", "upper_arm", "head",
    "back_waist_length", "hip_depth", "armscye_depth", "shoulder_length", "shoulder_drop",
)  # fmt: skip
HELPS = ("neck", "front_waist_length", "high_bust", "wrist", "arm_length")
BELOW_WAIST = ("waist_to_knee", "waist_to_floor")
LONG_HELPS = (*HELPS, *BELOW_WAIST)

MOVES = MappingProxyType({
    "bust": (1.0, "round the bust"),
    "waist": (0.5, "round the waist"),
    "hip": (1.0, "round the hip"),
    "upper_arm": (1.0, "round the sleeve"),
    "head": (1.0, "at the neckline"),
    "back_waist_length": (1.0, "the waist line"),
    "hip_depth": (1.0, "the length"),
    "armscye_depth": (1.0, "the underarm"),
    "shoulder_length": (1.0, "the sleeve's length"),
    "shoulder_drop": (1.5, "the sleeve's slope"),
    "neck": (0.4, "the neckline's width"),
    "front_waist_length": (1.0, "the front's length"),
    "high_bust": (0.2, "the front's length"),
    "arm_length": (0.3, "the sleeve's width"),
    "wrist": (0.5, "the sleeve's hem"),
})  # fmt: skip

JERSEY_TOP = Garment(
    name="jersey-top",
    title=TITLE,
    says="A close top without darts or closure, its sleeves cut in one with the body.",
    needs=NEEDS,
    helps=LONG_HELPS,
    measured_only=("front_waist_length", "high_bust"),
    idle=_idle,
    options=OPTIONS,
    agree=agree,
    draft=draft,
    moves=MOVES,
)
