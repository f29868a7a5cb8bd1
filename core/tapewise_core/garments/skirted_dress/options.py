"""The options of a dress whose skirt is sewn to its bodice."""

from __future__ import annotations

from tapewise_core.blocks.skirt.hung_options import SKIRTS
from tapewise_core.blocks.top.options import TOP
from tapewise_core.blocks.top.words import GROWN_ON
from tapewise_core.measures.body import Body
from tapewise_core.parts.hanging import growth
from tapewise_core.style.cloth import CLOTH, WEIGHT
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import Length

LEAST_SIDE = 85.0
"""What is left between armscye and waist, whatever the skirt weighs [mm] (common practice)."""


def shortened_by(grams: float, body: Body) -> float:
    """Return how much shorter a bodice is cut for a skirt's weight [mm]."""
    room = body["back_waist_length"].mm - body["armscye_depth"].mm - LEAST_SIDE
    return max(0.0, min(growth(grams), room))


def bust_lift(body: Body, style: Style) -> Length:
    """One more allowance."""
    return style.length("seam-allowance")


JOINED = Options.of(
    Option(
        key="bust-lift",
        group=Group.CLOTH,
        says=said(
            "how much longer the bodice is at the centre front's waist, because the bust lifts it"
        ),
        default=bust_lift,
        default_says=said("one more {}", OptionKey("seam-allowance")),
        low=0,
        high=5,
    ),
    Option(
        key="weight-allowance",
        group=Group.CLOTH,
        says=said("cut the bodice shorter by what the skirt's weight will stretch it"),
        kind=ValueKind.SWITCH,
        default="yes",
    ),
)

OF_THE_TOP = (
    "fit", "ease", "bust-ease", "waist-ease", "waist-darts", "bust-room",
    "shoulder-drop", "lower-shoulder", "lower-shoulder-by", "forward-shoulder", "broad-neck",
    "round-back", "full-arm",
    "neckline", "neck-finish", "neck-half-width", "neck-rise", "back-neck-depth", "neck-depth",
    "sleeve", "sleeve-ease", "sleeve-length", "sleeve-hem-ease",
    "band-width", "band-ratio", "band-sewn", "facing-width",
    "full-belly", "front-hem-drop",
    *CLOTH.keys,
    "seam-allowance", "neck-allowance", "hem-allowance",
)  # fmt: skip
"""The top's options that a bodice has: none of the hem, which is the waist seam."""


def options_from(top: Options) -> Options:
    """Return the dress's options: what its bodice takes from the top's, the skirt's, and its own
    where both are joined."""
    return top.only(*OF_THE_TOP).narrowed(GROWN_ON) + Options.of(WEIGHT) + SKIRTS + JOINED


OPTIONS = options_from(TOP)
