"""The options of the flared dress: the top's own, longer and looser, and what a dress has besides.

Amounts are common practice in the trade.
"""

from __future__ import annotations

import math

from tapewise_core.blocks.top.options import TOP
from tapewise_core.blocks.top.words import GROWN_ON
from tapewise_core.garments.flared_dress.style import FlareFrom
from tapewise_core.measures.body import Body
from tapewise_core.parts.bare_options import BARE_OR_GROWN_ON
from tapewise_core.parts.centre_options import CENTRE
from tapewise_core.parts.end_agree import MOST_FLARE
from tapewise_core.parts.end_options import ENDS
from tapewise_core.parts.end_ratio import free_for
from tapewise_core.parts.end_style import hem_band
from tapewise_core.parts.hem_style import HemShape
from tapewise_core.parts.shape.below_hip import BEND_BELOW
from tapewise_core.parts.sleeve_style import WITH_SLEEVE, SleeveKind
from tapewise_core.parts.stride import skirt_hem, to_knee
from tapewise_core.style.cloth import CLOTH
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import Length, cm, mm

ALL_ROUND = 6.0
"""The ease of an easy dress, the same all round [cm]."""

FLARES = {FlareFrom.HIP: cm(10), FlareFrom.WAIST: cm(14)}
"""How far a side flares: further from the waist, which lies higher."""

BANDED = cm(5)
"""How far a side flares from the hip above a hem band, which holds the hem in."""

MOST_BANDED = {FlareFrom.HIP: MOST_FLARE, FlareFrom.WAIST: cm(11)}
"""No hem flares further above a band; from the waist, which lies higher, about half as much again
(our choice)."""


def to_the_knee(body: Body, style: Style) -> Length:
    """The back waist length, and on to the knee."""
    return body["back_waist_length"] + to_knee(body)


def flare(body: Body, style: Style) -> Length:
    """10 cm from the hip, 14 from the waist; above a hem band half, or what a stride needs."""
    start = FlareFrom(style.choice("flare-from"))
    return _banded(body, style, start) if hem_band(style).mm else FLARES[start]


def _banded(body: Body, style: Style, start: FlareFrom) -> Length:
    """What a hem needs above its band; from the waist as much more as that lies higher, and as the
    side takes to bend out below the hip."""
    below = (style.length("body-length") - body["back_waist_length"]).mm
    around = (body["hip"] + style.length("hip-ease")).mm
    out, free = BANDED.mm, (free_for(skirt_hem(body, below, 0.0), 0.0) - around) / 4
    if start is FlareFrom.WAIST:
        left = max(below - body["hip_depth"].mm, BEND_BELOW)
        out, free = out * below / left, free * below / (left - BEND_BELOW / 2)
    return mm(min(math.ceil(max(out, free)), MOST_BANDED[start].mm))


OF_THE_TOP = (
    "fit", "body-length", "ease", "bust-ease", "waist-ease", "hip-ease", "waist-shaping",
    "waist-darts", "bust-room", "hem", "split-length",
    "shoulder-drop", "lower-shoulder", "lower-shoulder-by", "forward-shoulder", "broad-neck",
    "round-back", "full-arm",
    "neckline", "neck-finish", "neck-half-width", "neck-rise", "back-neck-depth", "neck-depth",
    "cowl-depth",
    "sleeve", "sleeve-ease", "sleeve-length", "sleeve-hem-ease",
    "band-width", "band-ratio", "collar", "collar-height", "band-sewn", "facing-width",
    "full-belly", "full-seat", "front-hem-drop",
    *CLOTH.keys,
    "seam-allowance", "neck-allowance", "hem-allowance",
)  # fmt: skip
"""The top's options that the dress has too."""

WORDS = {
    **GROWN_ON,
    "hem": (HemShape.STRAIGHT, HemShape.SPLIT),
    "sleeve": (SleeveKind.NONE, *GROWN_ON["sleeve"]),
}
"""The top's words that the dress is drafted for."""

FLARE = Options.of(
    Option(
        key="flare-from",
        group=Group.STYLE,
        says=said("where the side begins to flare"),
        kind=ValueKind.CHOICE,
        default=FlareFrom.HIP,
        choices=tuple(FlareFrom),
    ),
    Option(
        key="flare",
        group=Group.LENGTHS,
        says=said("how far each side flares out to the hem"),
        default=flare,
        default_says=said(
            "{} from the hip, {} from the waist; above a hem band {}, or what a stride needs, and "
            "more from the waist",
            *FLARES.values(),
            BANDED,
        ),
        low=0,
        high=50,
    ),
)
EXTRAS = Options.of(
    Option(
        key="belt",
        group=Group.STYLE,
        says=said("a belt to tie, with marks for its loops"),
        kind=ValueKind.SWITCH,
        default="no",
    ),
    Option(
        key="belt-width",
        group=Group.BANDS,
        says=said("finished width of the belt"),
        default=4.0,
        where=("belt", "yes"),
        low=1.5,
        high=12,
    ),
    Option(
        key="belt-ends",
        group=Group.BANDS,
        says=said("what the belt has beyond the waist to tie it with"),
        default=90.0,
        where=("belt", "yes"),
        low=20,
        high=200,
    ),
    Option(
        key="pockets",
        group=Group.STYLE,
        says=said("pockets in the side seams"),
        kind=ValueKind.SWITCH,
        default="no",
    ),
    Option(
        key="pocket-below-waist",
        group=Group.LENGTHS,
        says=said("from the waist line down to the pocket's opening"),
        default=6.0,
        where=("pockets", "yes"),
        low=0,
        high=20,
    ),
    Option(
        key="pocket-opening",
        group=Group.LENGTHS,
        says=said("length of a pocket's opening"),
        default=16.0,
        where=("pockets", "yes"),
        low=12,
        high=22,
    ),
)


def options_from(top: Options) -> Options:
    """Return the dress's options: what it takes from the top's, changed, and its own."""
    top = top.changed("sleeve", choices=(SleeveKind.NONE, *WITH_SLEEVE))
    own = _from_top(top.only(*OF_THE_TOP).narrowed(WORDS))
    return own + BARE_OR_GROWN_ON + ENDS + FLARE + EXTRAS + CENTRE


def _from_top(top: Options) -> Options:
    fit = said("the side seam's shape; sets {}", OptionKey("waist-shaping"))
    length = said("back waist length + waist to knee")
    hem = said("the hem's shape: straight, or with a slit at each side")
    return (
        top.changed("fit", says=fit)
        .changed("body-length", default=to_the_knee, default_says=length, low=60, high=170)
        .changed("ease", default=ALL_ROUND, default_says=())
        .changed("hem", says=hem)
    )


OPTIONS = options_from(TOP)
