"""The options of a grown-on sleeve: its kind, its length, and its ease at the arm and at the hem.

Amounts are common practice in the trade.
"""

from __future__ import annotations

import math

from tapewise_core.measures.body import Body
from tapewise_core.parts.figure_style import FigureStyle
from tapewise_core.parts.neck_options import fall_of, lowest_fall, own_half_width
from tapewise_core.parts.sleeve_style import SleeveKind
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import Length, cm, mm

SLEEVES = {
    SleeveKind.SHORT: 0.32,
    SleeveKind.ELBOW: 0.56,
    SleeveKind.THREE_QUARTER: 0.78,
    SleeveKind.LONG: 1.0,
}
"""A named sleeve's length as a share of the arm's (common practice)."""

USUAL_ARM = 580.0
"""An arm's length where it is not known [mm] (common practice)."""

SHORTEST_CAP, LONGEST_CAP = 80.0, 200.0
"""A cap sleeve's length past the shoulder point [mm] (common practice)."""

USUAL_EASE, LEAST_EASE = 6.0, 1.0
"""The ease round the arm, and the least of it that a low underarm leaves [cm] (common practice)."""

UNDERARM_CLEAR = 10.0
"""How far a cap's underarm is kept above halfway to the waist [mm]; a rounded one twice that."""

WRIST_EASE = 3.0
"""What is left of the sleeve's ease at the wrist, so that a hand passes [cm] (common practice)."""

ELBOW_AT = 0.56
"""Down to here along the arm a sleeve keeps its ease, then it tapers (common practice)."""


def sleeve_length(body: Body, style: Style) -> Length:
    """The named sleeve's share of the arm; a cap as long as its square hem needs."""
    cap = cap_length(body, style)
    share = SLEEVES.get(SleeveKind(style.choice("sleeve")))
    if share is None:
        return cap
    if "arm_length" not in body:
        return cm(max(cap.mm, USUAL_ARM * share) / 10)
    arm = body["arm_length"] if share == 1 else body["arm_length"] * share
    return cap if arm.mm < cap.mm else arm


def cap_length(body: Body, style: Style) -> Length:
    """8 cm, or up to 20 where a square hem needs it to end outside the body's quarter."""
    fall = math.radians(fall_of(body, FigureStyle.of(style)))
    half = (body["upper_arm"].mm + style.length("sleeve-ease").mm) / 2
    quarter = (body["bust"].mm + style.length("ease").mm) / 4
    reach = quarter + half * math.sin(fall) - own_half_width(body, FigureStyle.of(style)).mm
    needed = reach / math.cos(fall) - body["shoulder_length"].mm
    return cm(min(max(SHORTEST_CAP, math.ceil(needed / 5 + 0.1) * 5), LONGEST_CAP) / 10)


def sleeve_ease(body: Body, style: Style) -> Length:
    """6 cm, or as much as keeps the underarm above halfway from armscye line to waist."""
    fall = math.radians(lowest_fall(body, FigureStyle.of(style)))
    quarter = (body["bust"].mm + style.length("ease").mm) / 4
    out = max(quarter - own_half_width(body, FigureStyle.of(style)).mm, 0.0)
    overarm = out * math.tan(fall) - style.length("neck-rise").mm + style.length("round-back").mm
    armscye, waist = body["armscye_depth"].mm, body["back_waist_length"].mm
    clear = UNDERARM_CLEAR if style.choice("sleeve") == SleeveKind.CAP else 2 * UNDERARM_CLEAR
    room = (armscye + waist) / 2 - clear - overarm
    arm = body["upper_arm"].mm + style.length("full-arm").mm
    ease = 2 * room * math.cos(fall) - arm
    return cm(min(max(math.floor(ease / 5) / 2, LEAST_EASE), USUAL_EASE))


def sleeve_hem_ease(body: Body, style: Style) -> Length:
    """The sleeve's ease down to the elbow, tapering to 3 cm at the wrist."""
    full = style.length("sleeve-ease")
    arm = body["arm_length"].mm if "arm_length" in body else USUAL_ARM
    past = (style.length("sleeve-length").mm / arm - ELBOW_AT) / (1 - ELBOW_AT)
    if past <= 0 or full.mm <= WRIST_EASE * 10:
        return full
    return cm(full.mm / 10 + (WRIST_EASE - full.mm / 10) * min(past, 1.0))


SLEEVE = Options.of(
    Option(
        key="sleeve",
        group=Group.STYLE,
        says=said("the sleeve's kind; sets {}", OptionKey("sleeve-length")),
        kind=ValueKind.CHOICE,
        default=SleeveKind.CAP,
        choices=tuple(SleeveKind),
    ),
    Option(
        key="sleeve-ease",
        group=Group.EASE,
        says=said("ease round the arm"),
        default=sleeve_ease,
        default_says=said("{}, less where the underarm would lie too low", cm(USUAL_EASE)),
        low=0,
        high=24,
    ),
    Option(
        key="sleeve-length",
        group=Group.LENGTHS,
        says=said("length from the shoulder point to the sleeve's hem, from a cap to the wrist"),
        default=sleeve_length,
        default_says=said(
            "cap: {}, or as the body's width needs; else a share of the arm length",
            mm(SHORTEST_CAP),
        ),
        low=3,
        high=90,
    ),
    Option(
        key="sleeve-hem-ease",
        group=Group.EASE,
        says=said("ease round the arm at the sleeve's hem"),
        default=sleeve_hem_ease,
        default_says=said(
            "{} down to the elbow, tapering to {} at the wrist",
            OptionKey("sleeve-ease"),
            cm(WRIST_EASE),
        ),
        low=0,
        high=40,
    ),
)
