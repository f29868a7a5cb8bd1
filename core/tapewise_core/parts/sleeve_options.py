"""The options of a grown-on sleeve: its kind, its length, and its ease at the arm and at the hem.

What is not asked for is what this body can have: kinds and lengths are tried
(:mod:`parts.grown_arm`). Amounts are common practice in the trade.
"""

from __future__ import annotations

import math
from itertools import product

from tapewise_core.measures.body import Body
from tapewise_core.parts.arm import arm_length, past_elbow
from tapewise_core.parts.figure_style import FigureStyle
from tapewise_core.parts.grown_arm import SleeveWish, arm_of, found_length
from tapewise_core.parts.grown_body import body_shoulder, side_of
from tapewise_core.parts.sleeve_style import WITH_SLEEVE, SleeveKind
from tapewise_core.parts.trunk_style import TrunkStyle
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

SHORTEST_CAP = 80.0
"""A cap sleeve's length past the shoulder point [mm] (common practice)."""

USUAL_EASE = 6.0
"""The ease round the arm [cm] (common practice)."""

TRIED = (USUAL_EASE, 5.0, 4.0, 3.0, 2.0)
"""What is tried of it where no more can be had [cm] (our choice)."""

WRIST_EASE = 3.0
"""What is left of the sleeve's ease at the wrist, so that a hand passes [cm] (common practice)."""


def sleeve_kind(body: Body, style: Style) -> str:
    """The shortest kind that this body can have as wide as asked, with the usual ease or with less;
    else one whose hem is wider; else a cap."""
    tried = product(WIDENED, TRIED, WITH_SLEEVE)
    found = (kind for wider, ease, kind in tried if _had(body, style, kind, ease, widened=wider))
    return next(found, SleeveKind.CAP)


def sleeve_ease(body: Body, style: Style) -> Length:
    """6 cm, or as much as this body can have of the kind chosen, down to 2 cm."""
    kind = SleeveKind(style.choice("sleeve"))
    if kind is SleeveKind.NONE:
        return cm(USUAL_EASE)
    tried = product(WIDENED, TRIED)
    found = (ease for wider, ease in tried if _had(body, style, kind, ease, widened=wider))
    return cm(next(found, USUAL_EASE))


def sleeve_length(body: Body, style: Style) -> Length:
    """The named sleeve's share of the arm; a cap as long as it needs."""
    kind = SleeveKind(style.choice("sleeve"))
    if kind is SleeveKind.NONE:
        return mm(SHORTEST_CAP)
    ease = style.length("sleeve-ease").mm / 10
    had = (_had(body, style, kind, ease, widened=wider) for wider in WIDENED)
    length, found = kind_length(body, kind), next(filter(None, had), None)
    if not found or found <= length.mm + 0.1:
        return length
    even = math.ceil(found / 5 - 0.02) * 5.0
    return cm((even if _found(body, style, even, ease) else found) / 10)


def kind_length(body: Body, kind: SleeveKind) -> Length:
    """Return a kind's usual length; no sleeve is shorter than a cap."""
    share = SLEEVES.get(kind)
    if share is None:
        return mm(SHORTEST_CAP)
    arm = arm_length(body) if share == 1 else arm_length(body) * share
    return arm if arm.mm > SHORTEST_CAP else mm(SHORTEST_CAP)


def _had(body: Body, style: Style, kind: SleeveKind, ease: float, *, widened: bool) -> float | None:
    """How long a sleeve of a kind gets on this body [mm], or None where it cannot be had.

    A cap or a short sleeve may be up to 6 cm longer than usual.
    """
    usual = kind_length(body, kind).mm
    tried = LONGER if kind is SleeveKind.SHORT else LONGER[:1]
    lengths = (_found(body, style, usual + more, ease, widened=widened) for more in tried)
    return next((length for length in lengths if length), None)


TAKEN_UP = 25.0
"""A bodice is cut up to about this much shorter for its skirt's weight [mm] (our choice)."""


def _found(
    body: Body, style: Style, length: float, ease: float, *, widened: bool = True
) -> float | None:
    """How long a sleeve of a length [mm] and an ease [cm] gets on this body, or None."""
    figure = FigureStyle.of(style)
    bodice = "body-length" not in style.chosen
    waist = body["back_waist_length"] - mm(TAKEN_UP) if bodice else None
    trunk = TrunkStyle.of(style, waist)
    half, rise = style.length("neck-half-width"), style.length("neck-rise")
    shoulder = body_shoulder(body, figure, half, rise)
    side, bust = side_of(body, trunk, figure, bodice=bodice), trunk.bust_ease.mm
    wish = SleeveWish(length, ease * 10, _hem_ease(body, length, ease) * 10)
    arm = arm_of(body, figure, shoulder, wish)
    return found_length(arm, side, bust, widened=widened)


WIDENED = (False, True)
"""First a sleeve as wide as asked, then one whose hem is wider so that it meets the body."""


LONGER = (0.0, 20.0, 40.0, 60.0)
"""By so much a short sleeve may be longer than usual where that lets it meet the body [mm]."""


def sleeve_hem_ease(body: Body, style: Style) -> Length:
    """The sleeve's ease down to the elbow, tapering to 3 cm at the wrist."""
    full, length = style.length("sleeve-ease"), style.length("sleeve-length").mm
    hem = _hem_ease(body, length, full.mm / 10)
    return full if hem == full.mm / 10 else cm(hem)


def _hem_ease(body: Body, length: float, full: float) -> float:
    """The ease at a hem [cm] for a sleeve's length [mm], from its ease at the arm [cm]."""
    past = past_elbow(body, length)
    if not past or full <= WRIST_EASE:
        return full
    return full + (WRIST_EASE - full) * past


SLEEVE = Options.of(
    Option(
        key="sleeve",
        group=Group.STYLE,
        says=said("the sleeve's kind; sets {}", OptionKey("sleeve-length")),
        kind=ValueKind.CHOICE,
        default=sleeve_kind,
        default_says=said("the shortest that this body can have"),
        choices=WITH_SLEEVE,
    ),
    Option(
        key="sleeve-ease",
        group=Group.EASE,
        says=said("ease round the arm"),
        default=sleeve_ease,
        default_says=said("{}, less where no more can be had", cm(USUAL_EASE)),
        where=("sleeve", *WITH_SLEEVE),
        low=0,
        high=24,
    ),
    Option(
        key="sleeve-length",
        group=Group.LENGTHS,
        says=said("length from the shoulder point to the sleeve's hem, from a cap to the wrist"),
        default=sleeve_length,
        default_says=said(
            "cap: {}, or as much longer as the body needs; else a share of the arm length",
            mm(SHORTEST_CAP),
        ),
        where=("sleeve", *WITH_SLEEVE),
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
        where=("sleeve", *WITH_SLEEVE),
        low=0,
        high=40,
    ),
)
