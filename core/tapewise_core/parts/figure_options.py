"""Options for a body that is not an average, each with its amount from measures where they exist.

FIGURE comes before the neck's options, which build on it; FIGURE_LENGTHS after
them. Amounts and limits are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.measures.body import Body
from tapewise_core.parts.figure_style import LowerShoulder
from tapewise_core.parts.sleeve_style import WITH_SLEEVE
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import Length, cm

MOST_BELLY, MOST_SEAT = 2.0, 2.0
"""The most extra length taken from measures alone [cm]; more can be asked for."""

FULL_SEAT = 18.0
"""A hip larger than bust and waist by no more than this needs no length over the seat [cm]."""


def shoulder_drop(body: Body, style: Style) -> Length:
    """The body's own."""
    return body["shoulder_drop"]


def front_hem_drop(body: Body, style: Style) -> Length:
    """A belly's own length."""
    return style.length("full-belly")


def full_belly(body: Body, style: Style) -> Length:
    """An eighth of what the waist is larger than the bust, up to 2 cm."""
    more = (body["waist"].mm - body["bust"].mm) / 80
    return cm(round(min(max(more, 0.0), MOST_BELLY), 1))


def full_seat(body: Body, style: Style) -> Length:
    """An eighth of what the hip exceeds bust and waist by beyond 18 cm, up to 2 cm."""
    more = body["hip"].mm / 10 - max(body["bust"].mm, body["waist"].mm) / 10 - FULL_SEAT
    return cm(round(min(max(more / 8, 0.0), MOST_SEAT), 1))


FIGURE = Options.of(
    Option(
        key="shoulder-drop",
        group=Group.FIGURE,
        says=said(
            "how far the shoulder point lies below the side neck: less is square, more is sloping"
        ),
        default=shoulder_drop,
        default_says=said("the body's own shoulder drop"),
        low=0.5,
        high=15,
    ),
    Option(
        key="lower-shoulder",
        group=Group.FIGURE,
        says=said(
            "which shoulder hangs lower; left and right are then drafted apart, without a fold"
        ),
        kind=ValueKind.CHOICE,
        default=LowerShoulder.NONE,
        choices=tuple(LowerShoulder),
    ),
    Option(
        key="lower-shoulder-by",
        group=Group.FIGURE,
        says=said("how far the lower shoulder point hangs below the other"),
        default=1.5,
        where=("lower-shoulder", "left", "right"),
        low=0.3,
        high=4,
    ),
    Option(
        key="forward-shoulder",
        group=Group.FIGURE,
        says=said("how far the shoulder seam moves to the front at the shoulder point"),
        default=0.0,
        low=0,
        high=2.5,
    ),
    Option(
        key="broad-neck",
        group=Group.FIGURE,
        says=said("how much broader each side of the neck is than its girth tells"),
        default=0.0,
        low=0,
        high=3,
    ),
    Option(
        key="round-back",
        group=Group.FIGURE,
        says=said(
            "how far a round back lifts the nape above the side neck's usual place; "
            "a minus is for a flat back"
        ),
        default=0.0,
        low=-1.5,
        high=2,
    ),
    Option(
        key="full-arm",
        group=Group.FIGURE,
        says=said("more room round the upper arm, tapering to the sleeve's hem"),
        default=0.0,
        where=("sleeve", *WITH_SLEEVE),
        low=0,
        high=8,
    ),
)
FIGURE_LENGTHS = Options.of(
    Option(
        key="full-belly",
        group=Group.FIGURE,
        says=said("more length on the centre front over a full belly"),
        default=full_belly,
        default_says=said("(waist − bust) ÷ 8, from 0 to {}", cm(MOST_BELLY)),
        low=0,
        high=5,
    ),
    Option(
        key="full-seat",
        group=Group.FIGURE,
        says=said("more length on the centre back over a full seat"),
        default=full_seat,
        default_says=said(
            "(hip − the larger of bust and waist − {}) ÷ 8, from 0 to {}",
            cm(FULL_SEAT),
            cm(MOST_SEAT),
        ),
        low=0,
        high=5,
    ),
    Option(
        key="front-hem-drop",
        group=Group.FIGURE,
        says=said("extra length at the centre front's hem"),
        default=front_hem_drop,
        default_says=said("{}", OptionKey("full-belly")),
        low=0,
        high=8,
    ),
)
