"""The options of a top with set-in sleeves: the jersey top's, with an armhole and its own sleeve.

Amounts are common practice in the trade unless a row names a source.
"""

from __future__ import annotations

from dataclasses import replace

from tapewise_core.blocks.top.options import OPTIONS as TOP
from tapewise_core.measures.body import Body
from tapewise_core.style.option import Kind, Option, Style
from tapewise_core.units import Length, cm, mm

NOT_SET_IN = (
    "lower-shoulder",
    "lower-shoulder-by",
    "forward-shoulder",
    "full-arm",
    "full-seat",
    "split-length",
    "facing-width",
)
"""The top's options that this garment does without."""

KINDS = {"short": 0.36, "elbow": 0.56, "three-quarter": 0.78, "long": 1.0}
"""A named sleeve's length as a share of the arm's (common practice)."""

USUAL_ARM = cm(58)
"""An arm's length where it is not known (common practice)."""


def sleeve_length(body: Body, style: Style) -> Length:
    """The named share of the arm."""
    known = "arm_length" in body
    arm = body["arm_length"] if known else USUAL_ARM
    share = KINDS[style.choice("sleeve")]
    return arm if share == 1 else arm * share


OWN = {
    "hem": {"choices": ("straight", "curved"), "says": "the hem's shape: straight or curved"},
    "neck-finish": {"choices": ("band", "turned")},
    "sleeve": {"choices": tuple(KINDS), "default": "short"},
    "sleeve-length": {
        "says": "length from the shoulder point to the sleeve's hem",
        "default": sleeve_length,
        "default_says": "a share of the arm length",
        "low": 14,
    },
    "sleeve-ease": {"default": 4.0},
}
"""What differs from the top's options of the same name."""


def _own(option: Option) -> Option:
    return replace(option, **OWN.get(option.key, {}))  # type: ignore[arg-type]


ARMHOLE = (
    Option(
        key="armhole-drop",
        says="how far the underarm lies below the armscye line",
        default=1.5,
        low=0,
        high=10,
    ),
    Option(
        key="front-hollow",
        says="how much further in the front's armhole lies than the back's",
        default=1.0,
        low=0,
        high=3,
    ),
    Option(
        key="cap-shortening",
        says="how much shorter than the armhole the sleeve's cap is, in jersey",
        kind=Kind.PERCENT,
        default=0.5,
        low=-3,
        high=5,
    ),
)

OPTIONS: tuple[Option, ...] = (
    *(_own(option) for option in TOP if option.key not in NOT_SET_IN),
    *ARMHOLE,
)


def as_top(style: Style) -> Style:
    """Return the style with what this garment does without set to nothing, for the top's own
    parts to read."""
    for option in TOP:
        if option.key not in style.chosen:
            nothing = "none" if option.kind is Kind.CHOICE else mm(0)
            style = style.replaced(option, nothing)
    return style
