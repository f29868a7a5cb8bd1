"""Which skirt is sewn to a bodice, and the options of all of them together."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.blocks.skirt.gathered_options import GATHERED
from tapewise_core.blocks.skirt.ring_options import SKIRT, circle
from tapewise_core.blocks.skirt.straight_options import ABOVE_KNEE, HIP_EASE, STRAIGHT
from tapewise_core.blocks.skirt.straight_options import vent as vent_for
from tapewise_core.blocks.skirt.straight_style import Vent
from tapewise_core.measures.body import Body
from tapewise_core.parts.end_style import hem_band
from tapewise_core.parts.stride import USUAL_TO_KNEE, to_knee
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import said
from tapewise_core.units import Length, cm


class Skirt(StrEnum):
    """A skirt by its cut."""

    CIRCLE = "circle"
    GATHERED = "gathered"
    STRAIGHT = "straight"

    @classmethod
    def of(cls, style: Style) -> Skirt:
        """Read it from a style."""
        return cls(style.choice("skirt"))


def _length(body: Body, style: Style) -> Length:
    """To the knee; a straight skirt ends above it, where the leg is free."""
    less = ABOVE_KNEE if Skirt.of(style) is Skirt.STRAIGHT else cm(0)
    return to_knee(body) - less


def _hem(body: Body, style: Style) -> Length:
    """1.5 cm at a circle's curve, 2 at a straight edge."""
    return cm(1.5) if Skirt.of(style) is Skirt.CIRCLE else cm(2)


def _vent(body: Body, style: Style) -> str:
    """A straight skirt's own; a hem band closes it, and the others are wide enough."""
    straight = Skirt.of(style) is Skirt.STRAIGHT and not hem_band(style).mm
    return vent_for(body, style) if straight else Vent.NONE


def _only(options: Options, kind: Skirt) -> Options:
    """Options that one skirt alone has a use for."""
    where = ("skirt", kind.value)
    for option in options:
        if not option.where:
            options = options.changed(option.key, where=where)
    return options


HUNG = STRAIGHT.changed(
    "vent",
    default=_vent,
    default_says=said("at the back where a stride needs it and there is no hem band, else none"),
)
"""A straight skirt's own under a bodice."""

SKIRTS = (
    Options.of(
        Option(
            key="skirt",
            group=Group.STYLE,
            says=said("the skirt: part of a circle, gathered, or straight"),
            kind=ValueKind.CHOICE,
            default=Skirt.CIRCLE,
            choices=tuple(Skirt),
        )
    )
    + _only(Options.of(circle("1/2")), Skirt.CIRCLE)
    + SKIRT.only("skirt-length").changed(
        "skirt-length",
        default=_length,
        default_says=said(
            "waist to knee, else {}, and {} less where straight", USUAL_TO_KNEE, ABOVE_KNEE
        ),
    )
    + _only(SKIRT.only("panels"), Skirt.CIRCLE)
    + _only(GATHERED, Skirt.GATHERED)
    + _only(Options.of(HIP_EASE) + HUNG, Skirt.STRAIGHT)
    + SKIRT.only("skirt-hem-allowance").changed(
        "skirt-hem-allowance",
        says=said("at the skirt's hem; narrow at a circle's, whose edge is the longer"),
        default=_hem,
        default_says=said("{} for a circle, else {}", cm(1.5), cm(2)),
        high=5,
    )
)
"""The skirt, and each one's own."""
