"""The options of a top with set-in sleeves: the jersey top's, with an armhole and its own sleeve.

Amounts are common practice in the trade unless a row names a source.
"""

from __future__ import annotations

from tapewise_core.blocks.set_in.options import ARMHOLE, KINDS, with_sleeve
from tapewise_core.blocks.top.options import TOP
from tapewise_core.blocks.top.words import BODY
from tapewise_core.parts import cowl_options
from tapewise_core.parts.bare_options import BARE
from tapewise_core.parts.centre_options import CENTRE
from tapewise_core.parts.end_options import ENDS
from tapewise_core.parts.figure_style import LowerShoulder
from tapewise_core.parts.hem_style import HemShape
from tapewise_core.parts.neck_style import NeckFinish
from tapewise_core.parts.placket_options import PLACKET
from tapewise_core.parts.sleeve_style import WITH_SLEEVE, SleeveKind
from tapewise_core.style.cloth import CLOTH
from tapewise_core.style.options import Options
from tapewise_core.text.told import said

OF_THE_TOP = (
    "fit", "body-length", "ease", "bust-ease", "waist-ease", "hip-ease", "waist-shaping",
    "waist-darts", "bust-room", "hem", "hem-rise",
    "shoulder-drop", "lower-shoulder", "lower-shoulder-by", "forward-shoulder",
    "broad-neck", "round-back",
    "neckline", "neck-finish", "neck-half-width", "neck-rise", "back-neck-depth", "neck-depth",
    "cowl-depth",
    "sleeve", "sleeve-ease", "sleeve-length", "sleeve-hem-ease",
    "band-width", "band-ratio", "collar", "collar-height", "band-sewn",
    "full-belly", "front-hem-drop",
    *CLOTH.keys,
    "seam-allowance", "neck-allowance", "hem-allowance",
)  # fmt: skip
"""The jersey top's options that this garment has too."""

WORDS = {
    **BODY,
    "lower-shoulder": tuple(LowerShoulder),
    "hem": (HemShape.STRAIGHT, HemShape.CURVED),
    "neck-finish": (NeckFinish.BAND, NeckFinish.TURNED),
    "sleeve": (SleeveKind.NONE, *KINDS),
}
"""The jersey top's words that it is drafted for."""


def options_from(top: Options) -> Options:
    """Return this garment's options: what it takes from the jersey top's, and its armhole's."""
    return (
        with_sleeve(top.only(*OF_THE_TOP))
        .changed("cowl-depth", default=cowl_options.SET_IN)
        .changed("hem", says=said("the hem's shape: straight or curved"))
        .changed("sleeve", choices=(SleeveKind.NONE, *WITH_SLEEVE))
        .narrowed(WORDS)
        + ARMHOLE
        + BARE
        + ENDS
        + PLACKET
        + CENTRE
    )


OPTIONS = options_from(TOP)
