"""The options of a straight skirt, alone or sewn to a bodice.

Amounts are common practice in the trade unless a row names a source.
"""

from __future__ import annotations

from tapewise_core.blocks.skirt.lengths import LENGTHS
from tapewise_core.blocks.skirt.straight_style import StraightStyle, Vent
from tapewise_core.measures.body import Body
from tapewise_core.parts.shape.skirt_side import SHORTEST
from tapewise_core.parts.stride import skirt_hem, to_knee
from tapewise_core.proofs.stride import strides
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import Length, cm, mm

ABOVE_KNEE = cm(5)
"""A straight skirt usually ends so far above the knee, where the leg is free."""

LEAST_VENT, OVER_KNEE = cm(10), cm(5)
"""A vent is no shorter, and opens so far above the knee."""

MOST_BELLY = cm(2)
"""The most extra length over a belly taken from measures alone; more can be asked for."""

FLAT = 0.85
"""A waist of no more than this share of the hip has no belly to go over (our choice)."""

MOST_FLARE = 0.6
"""No flare is more than this share of the length below the hip (our choice)."""

SHORTEST_VENTED = 30.0
"""What is left of the side between the hip and a vent, at the least [mm] (our choice)."""


def above_knee(body: Body, style: Style) -> Length:
    """From the waist to a hand above the knee."""
    return to_knee(body) - ABOVE_KNEE


def vent(body: Body, style: Style) -> str:
    """At the back where a stride needs it."""
    length = style.length("skirt-length").mm
    hem = skirt_hem(body, length, _round(body, style))
    return Vent.NONE if strides(hem) in (True, None) else Vent.BACK


def _round(body: Body, style: Style) -> float:
    """The hem's girth as asked [mm]."""
    hip = max((body["hip"] + style.length("hip-ease")).mm, body["waist"].mm)
    return hip + 4 * style.length("flare").mm


def vent_length(body: Body, style: Style) -> Length:
    """From the hem to above the knee."""
    if "waist_to_knee" not in body:
        return LEAST_VENT
    room = (style.length("skirt-length") - body["hip_depth"]).mm - SHORTEST_VENTED
    up = (style.length("skirt-length") - body["waist_to_knee"] + OVER_KNEE).mm
    return mm(max(min(up, room), LEAST_VENT.mm))


def full_belly(body: Body, style: Style) -> Length:
    """An eighth of what the waist is larger than 0.85 of the hip, up to 2 cm."""
    more = (body["waist"].mm - FLAT * body["hip"].mm) / 8
    return mm(round(min(max(more, 0.0), MOST_BELLY.mm)))


HIP_EASE = Option(
    key="hip-ease",
    group=Group.EASE,
    says=said("what the skirt has over the hip's girth"),
    default=2.0,
    low=-15,
    high=40,
)

STRAIGHT = Options.of(
    Option(
        key="flare",
        group=Group.STYLE,
        says=said("how far each side goes out from hip to hem; a minus pegs it in"),
        default=0.0,
        low=-4,
        high=25,
    ),
    Option(
        key="vent",
        group=Group.STYLE,
        says=said("what opens the hem for a stride: slits at the sides, or a vent at the back"),
        kind=ValueKind.CHOICE,
        default=vent,
        default_says=said("at the back where a stride needs it, else none"),
        choices=tuple(Vent),
    ),
    Option(
        key="vent-length",
        group=Group.LENGTHS,
        says=said("how far the vent or the slits open upwards from the hem"),
        default=vent_length,
        default_says=said("{} above the knee, at least {}", OVER_KNEE, LEAST_VENT),
        where=("vent", Vent.SLITS, Vent.BACK),
        low=5,
        high=80,
    ),
)

BELLY = Option(
    key="full-belly",
    group=Group.FIGURE,
    says=said("more length on the centre front over a full belly"),
    default=full_belly,
    default_says=said("(waist − hip × 0.85) ÷ 8, from 0 to {}", MOST_BELLY),
    low=0,
    high=5,
)

STRAIGHT_LENGTHS = LENGTHS.changed(
    "skirt-length",
    default=above_knee,
    default_says=said("waist to knee − {}, else {}", ABOVE_KNEE, cm(55)),
)
"""The same for a straight skirt, which ends above the knee."""


def length_agrees(body: Body, wanted: StraightStyle) -> tuple[Told, ...]:
    """Return a sentence for every length that leaves the side no room."""
    below = (wanted.length - body["hip_depth"]).mm
    if below < SHORTEST:
        return (
            said(
                "{} is {}, and the hip line lies {} below the waist; choose at least {}.",
                OptionKey("skirt-length"), mm((wanted.length + wanted.band).mm),
                mm(body["hip_depth"].mm), mm(body["hip_depth"].mm + SHORTEST + wanted.band.mm),
            ),
        )  # fmt: skip
    if wanted.flare.mm > MOST_FLARE * below:
        return (
            said(
                "A {} of {} on {} below the hip is a circle's; choose at most {}.",
                OptionKey("flare"), mm(wanted.flare.mm), mm(below), mm(MOST_FLARE * below),
            ),
        )  # fmt: skip
    room = below - SHORTEST_VENTED
    if wanted.vent is not Vent.NONE and wanted.vent_length.mm > max(room, LEAST_VENT.mm):
        return (
            said(
                "{} is {}, and there are {} below the hip; choose at most {}.",
                OptionKey("vent-length"), mm(wanted.vent_length.mm), mm(below), mm(room),
            ),
        )  # fmt: skip
    return ()
