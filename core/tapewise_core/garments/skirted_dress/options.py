"""The options of a dress with a circle skirt, and the top that its bodice is cut from."""

from __future__ import annotations

from dataclasses import replace
from types import MappingProxyType

from tapewise_core.blocks.skirt.ring_options import SKIRT, circle
from tapewise_core.blocks.top.options import OPTIONS as TOP
from tapewise_core.measures.body import Body
from tapewise_core.style.cloth import WEIGHT
from tapewise_core.style.option import Kind, Option, Style
from tapewise_core.units import Length, cm, mm

OF_THE_HEM = ("body-length", "hem", "hem-rise", "split-length", "full-seat")
"""The top's options that a bodice has no use for: its hem is the waist seam."""

GROWTH, AT_WEIGHT = 20.0, 340.0
"""A jersey waist grows by 20 to 50 mm under a full skirt of 340 g (common practice). The lower
end is taken, in proportion to the weight: a bodice too long can be taken up, one too short not."""

MOST_GROWTH = 50.0
"""No more than this is taken off for weight [mm] (common practice)."""

LEAST_SIDE = 85.0
"""What is left between armscye and waist, whatever the skirt weighs [mm] (common practice)."""


def shortened_by(grams: float, body: Body) -> float:
    """Return how much shorter a bodice is cut for a skirt's weight [mm]."""
    room = body["back_waist_length"].mm - body["armscye_depth"].mm - LEAST_SIDE
    return max(0.0, min(GROWTH * grams / AT_WEIGHT, MOST_GROWTH, room))


def bust_lift(body: Body, style: Style) -> Length:
    """One more allowance."""
    return style.length("seam-allowance")


JOINED = (
    Option(
        key="bust-lift",
        says="how much longer the bodice is at the centre front's waist, because the bust lifts it",
        default=bust_lift,
        default_says="one more seam-allowance",
        low=0,
        high=5,
    ),
    Option(
        key="weight-allowance",
        says="cut the bodice shorter by what the skirt's weight will stretch it",
        kind=Kind.SWITCH,
        default="yes",
    ),
    Option(
        key="round-shoulders",
        says="girth round both shoulders and arms, if measured: how the dress may also be got into",
        default=0.0,
        low=0,
        high=190,
    ),
)

SHAPING = {"fitted": 90.0, "straight": 0.0, "eased": 40.0}
"""How far the side seam goes in [%]: further than on a top, for it ends at the waist."""


def waist_shaping(body: Body, style: Style) -> float:
    """The fit's own shaping, for a bodice that ends at the waist."""
    return SHAPING[style.choice("fit")]


def _own(option: Option) -> Option:
    """A top's option as the dress has it."""
    if option.key != "waist-shaping":
        return option
    return replace(option, default=waist_shaping, default_says="fitted 90, straight 0, eased 40 %")


OPTIONS: tuple[Option, ...] = (
    *(_own(option) for option in TOP if option.key not in OF_THE_HEM),
    WEIGHT,
    circle("1/2"),
    *SKIRT,
    *JOINED,
)


def carried_down(body: Body) -> Body:
    """Return the body that the bodice is drafted for: its side seam ends at the waist, so below
    it the waist's width is carried down, and the seam can follow the waist without a corner."""
    values = {**body.values, "hip": body.values["waist"]}
    names = {**body.names, "hip": "waist, carried down,"}
    return Body(MappingProxyType(values), MappingProxyType(names))


def as_top(body: Body, style: Style, shorter: float) -> Style:
    """Return the style of the top whose hem is the waist seam, shorter by an amount [mm]."""
    known = {option.key: option for option in TOP}
    waist = body["back_waist_length"] - mm(shorter)
    lifted = style.length("front-hem-drop") + style.length("bust-lift")
    return (
        style.replaced(known["body-length"], waist)
        .replaced(known["hem"], "straight")
        .replaced(known["hem-rise"], cm(1))
        .replaced(known["split-length"], cm(2))
        .replaced(known["full-seat"], cm(0))
        .replaced(known["front-hem-drop"], lifted)
    )
