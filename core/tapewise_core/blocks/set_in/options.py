"""The options of armholes and set-in sleeves, whatever they are set into.

Amounts are common practice in the trade unless a row names a source.
"""

from __future__ import annotations

import math

from tapewise_core.measures.body import Body
from tapewise_core.parts.arm import arm_at, arm_length, past_elbow
from tapewise_core.parts.bare_options import ARMHOLE_DROP
from tapewise_core.parts.hand import hand_of
from tapewise_core.parts.neck_style import Sewn
from tapewise_core.parts.shape.underarm import SLEEVE_EASES, by_fit
from tapewise_core.parts.sleeve_style import SleeveKind
from tapewise_core.parts.sleeve_trials import WRIST_EASE
from tapewise_core.proofs.neck import BAND_SHARE
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import Length, cm, mm

KINDS = {
    SleeveKind.SHORT: 0.36,
    SleeveKind.ELBOW: 0.56,
    SleeveKind.THREE_QUARTER: 0.78,
    SleeveKind.LONG: 1.0,
}
"""A named sleeve's length as a share of the arm's (common practice)."""


def sleeve_length(body: Body, style: Style) -> Length:
    """The named share of the arm, at least a cap's height; a short sleeve's for a kind that is not
    set in."""
    arm, kind = arm_length(body), SleeveKind(style.choice("sleeve"))
    if kind is SleeveKind.NONE:
        return mm(0)
    share = KINDS.get(kind, KINDS[SleeveKind.SHORT])
    length = arm if share == 1 else arm * share
    return length if length.mm >= LEAST_SLEEVE * 10 else cm(LEAST_SLEEVE)


def sleeve_ease(body: Body, style: Style) -> Length:
    """The fit's own; unasked, it grows until the cap is calm."""
    return cm(by_fit(style.length("ease").mm).sleeve_ease / 10)


def sleeve_hem_ease(body: Body, style: Style) -> Length:
    """The sleeve's ease down to the elbow, from there on 3 cm at the wrist, or what a hand needs to
    pass with this cloth."""
    full, length = style.length("sleeve-ease").mm, style.length("sleeve-length")
    past = past_elbow(body, length.mm)
    if not past:
        return style.length("sleeve-ease")
    tapered = full + (WRIST_EASE * 10 - full) * past
    return cm(math.ceil(max(tapered, _for_hand(body, style, length)) - 1e-6) / 10)


def _for_hand(body: Body, style: Style, length: Length) -> float:
    """The ease that lets a hand through a sleeve's hem [mm]."""
    hand = hand_of(body, length)
    if hand is None:
        return 0.0
    return hand / (1 + BAND_SHARE * style.number("stretch") / 100) - arm_at(body, length.mm).mm


def front_hem_drop(body: Body, style: Style) -> Length:
    """A belly's own length."""
    return style.length("full-belly")


ARMHOLE = Options.of(
    ARMHOLE_DROP,
    Option(
        key="cap-shortening",
        group=Group.EASE,
        says=said("how much shorter than the armhole the sleeve's cap is, in jersey"),
        kind=ValueKind.PERCENT,
        default=0.5,
        where=("sleeve", *KINDS),
        low=-3,
        high=5,
    ),
    Option(
        key="sleeve-sewn",
        group=Group.EASE,
        says=said("how sleeves are set in: flat before the sides are closed, or in the round"),
        kind=ValueKind.CHOICE,
        default=Sewn.FLAT,
        choices=tuple(Sewn),
        where=("sleeve", *KINDS),
    ),
)

LEAST_SLEEVE = 14.0
"""No set-in sleeve is shorter [cm]: its cap alone takes as much (common practice)."""


def with_sleeve(top: Options) -> Options:
    """Return a top's options with those of a sleeve that is cut by itself."""
    return (
        top.changed("sleeve", default=SleeveKind.SHORT)
        .changed(
            "sleeve-length",
            says=LENGTH_SAYS,
            default=sleeve_length,
            default_says=SHARE_SAYS,
            low=LEAST_SLEEVE,
        )
        .changed("sleeve-hem-ease", default=sleeve_hem_ease, default_says=HEM_SAYS)
        .changed("sleeve-ease", default=sleeve_ease, default_says=EASE_SAYS)
        .changed(
            "front-hem-drop",
            default=front_hem_drop,
            default_says=said("{}", OptionKey("full-belly")),
        )
    )


LENGTH_SAYS = said("length from the shoulder point to the sleeve's hem")
SHARE_SAYS = said("a share of the arm length")
EASE_SAYS = said(
    "fitted {}, straight {}, eased {}, more for a cap that is not too high",
    *map(mm, SLEEVE_EASES),
)
HEM_SAYS = said(
    "{} down to the elbow, tapering to {} at the wrist or what a hand needs",
    OptionKey("sleeve-ease"), cm(WRIST_EASE),
)  # fmt: skip
"""What a set-in sleeve's options say of themselves."""
