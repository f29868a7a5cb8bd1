"""The options of a top with raglan sleeves: the jersey top's, with its own sleeve and underarm.

Amounts are common practice in the trade unless a row names a source.
"""

from __future__ import annotations

from tapewise_core.blocks.set_in.options import KINDS, with_sleeve
from tapewise_core.blocks.top.options import TOP
from tapewise_core.blocks.top.words import BODY
from tapewise_core.garments.raglan_top.words import USUALLY
from tapewise_core.parts.bare_options import ARMHOLE_DROP
from tapewise_core.parts.centre_options import CENTRE
from tapewise_core.parts.end_options import ENDS
from tapewise_core.parts.hem_style import HemShape
from tapewise_core.parts.neck_style import NeckFinish, Neckline
from tapewise_core.style.cloth import CLOTH
from tapewise_core.style.options import Options
from tapewise_core.text.told import said

OF_THE_TOP = (
    "fit", "body-length", "ease", "bust-ease", "waist-ease", "hip-ease", "waist-shaping",
    "waist-darts", "bust-room", "hem", "hem-rise",
    "shoulder-drop", "forward-shoulder", "broad-neck", "round-back",
    "neckline", "neck-finish", "neck-half-width", "neck-rise", "back-neck-depth", "neck-depth",
    "sleeve", "sleeve-ease", "sleeve-length", "sleeve-hem-ease",
    "band-width", "band-ratio", "collar", "collar-height",
    "full-belly", "front-hem-drop",
    *CLOTH.keys,
    "seam-allowance", "neck-allowance", "hem-allowance",
)  # fmt: skip
"""The jersey top's options that this garment has too."""

WORDS = {
    **{key: words for key, words in BODY.items() if key != "band-sewn"},
    "neckline": (Neckline.ROUND, Neckline.SCOOP, Neckline.V, Neckline.BOAT, Neckline.HIGH),
    "hem": (HemShape.STRAIGHT, HemShape.CURVED),
    "neck-finish": (NeckFinish.BAND, NeckFinish.TURNED),
    "sleeve": tuple(KINDS),
}
"""The jersey top's words that it is drafted for."""


def options_from(top: Options) -> Options:
    """Return this garment's options: what it takes from the jersey top's, and its sleeve's."""
    options = (
        with_sleeve(top.only(*OF_THE_TOP))
        .changed("hem", says=said("the hem's shape: straight or curved"))
        .changed("seam-allowance", says=said("at side, underarm, overarm and raglan seam"))
        .narrowed(WORDS)
        + Options.of(ARMHOLE_DROP)
        + ENDS
        + CENTRE
    )
    for key, says in USUALLY.items():
        options = options.changed(key, default_says=says)
    return options


OPTIONS = options_from(TOP)
