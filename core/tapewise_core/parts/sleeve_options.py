"""The options of a grown-on sleeve: its kind, its length, and its ease at the arm and at the hem.

What is not asked for is what this body can have: kinds and lengths are tried
(:mod:`parts.sleeve_trials`). Amounts are common practice in the trade.
"""

from __future__ import annotations

import math
from itertools import product

from tapewise_core.measures.body import Body
from tapewise_core.parts.figure_style import FigureStyle
from tapewise_core.parts.grown_body import body_shoulder, side_of
from tapewise_core.parts.sleeve_style import WITH_SLEEVE, SleeveKind
from tapewise_core.parts.sleeve_trials import (
    SHORTEST_CAP,
    WRIST_EASE,
    Trials,
    hem_ease,
    kind_length,
)
from tapewise_core.parts.trunk_style import TrunkStyle
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import Length, cm, mm

USUAL_EASE = 6.0
"""The ease round the arm [cm] (common practice)."""

TRIED = (USUAL_EASE, 5.0, 4.0, 3.0, 2.0)
"""What is tried of it where no more can be had [cm] (our choice)."""

WIDENED = (False, True)
"""First a sleeve as wide as asked, then one whose hem is wider so that it meets the body."""

TAKEN_UP = 25.0
"""A bodice is cut up to about this much shorter for its skirt's weight [mm] (our choice)."""


def _trials(body: Body, style: Style) -> Trials:
    """The sleeves tried on a body, the same for each option here that asks."""
    return style.once("sleeves tried", lambda: _begun(body, style))


def _begun(body: Body, style: Style) -> Trials:
    """Trials by what the options above the sleeve's settle."""
    figure = FigureStyle.of(style)
    bodice = "body-length" not in style.chosen
    waist = body["back_waist_length"] - mm(TAKEN_UP) if bodice else None
    trunk = TrunkStyle.of(style, waist)
    half, rise = style.length("neck-half-width"), style.length("neck-rise")
    shoulder = body_shoulder(body, figure, half, rise)
    side = side_of(body, trunk, figure, bodice=bodice)
    return Trials(body, figure, shoulder, side, trunk.bust_ease.mm)


def sleeve_kind(body: Body, style: Style) -> str:
    """The shortest kind that this body can have as wide as asked, with the usual ease or with less;
    else one whose hem is wider; else a cap."""
    tried, trials = product(WIDENED, TRIED, WITH_SLEEVE), _trials(body, style)
    found = (kind for wider, ease, kind in tried if trials.had(kind, ease, widened=wider))
    return next(found, SleeveKind.CAP)


def sleeve_ease(body: Body, style: Style) -> Length:
    """6 cm, or as much as this body can have of the kind chosen, down to 2 cm."""
    kind = SleeveKind(style.choice("sleeve"))
    if kind is SleeveKind.NONE:
        return cm(USUAL_EASE)
    tried, trials = product(WIDENED, TRIED), _trials(body, style)
    found = (ease for wider, ease in tried if trials.had(kind, ease, widened=wider))
    return cm(next(found, USUAL_EASE))


def sleeve_length(body: Body, style: Style) -> Length:
    """The named sleeve's share of the arm; a cap as long as it needs."""
    kind = SleeveKind(style.choice("sleeve"))
    if kind is SleeveKind.NONE:
        return mm(SHORTEST_CAP)
    ease, trials = style.length("sleeve-ease").mm / 10, _trials(body, style)
    had = (trials.had(kind, ease, widened=wider) for wider in WIDENED)
    length, found = kind_length(body, kind), next(filter(None, had), None)
    if not found or found <= length.mm + 0.1:
        return length
    even = math.ceil(found / 5 - 0.02) * 5.0
    return cm((even if trials.length(even, ease) else found) / 10)


def sleeve_hem_ease(body: Body, style: Style) -> Length:
    """The sleeve's ease down to the elbow, tapering to 3 cm at the wrist."""
    full, length = style.length("sleeve-ease"), style.length("sleeve-length").mm
    hem = hem_ease(body, length, full.mm / 10)
    return full if hem == full.mm / 10 else cm(hem)


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
