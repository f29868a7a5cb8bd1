"""The options of a skirt's waist: an elastic in a casing, or a wide band of the cloth.

Amounts are common practice in the trade unless a row names a source.
"""

from __future__ import annotations

from tapewise_core.measures.body import Body
from tapewise_core.parts.circle import PARTS, radius_of
from tapewise_core.parts.waist_finish import CASING_MORE
from tapewise_core.parts.waist_style import WaistFinish
from tapewise_core.proofs.waist import TURNED_SHARE
from tapewise_core.style.cloth import ClothStyle
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import said
from tapewise_core.units import Length, cm, mm

CLOSE = 0.5
"""The share of the stretch that a close fit may use up (common practice)."""

LEAST_EASE = cm(2)
"""What the waist's edge has over the waist at the least, to be drawn in (common practice)."""

BAND_SHARE = 0.95
"""A band's length as a share of the waist, where the hips allow it (common practice)."""

PULLED = 0.9
"""How much of the stretch what passes the hips may give, some being kept (common practice)."""

SEAM_GIVES = 0.3
"""What the least stretchy seam gives, a narrow zigzag (common practice)."""


def waist_ease(body: Body, style: Style) -> Length:
    """Enough to pass the hips with half of the stretch, and with the least stretchy seam."""
    gives = min(CLOSE * ClothStyle.of(style).stretch, SEAM_GIVES)
    needed = body["hip"].mm / (1 + gives) - body["waist"].mm
    return LEAST_EASE if needed <= LEAST_EASE.mm else mm(rounded_up(needed))


def band_length(body: Body, style: Style) -> Length:
    """A little less than the waist, and never too short for the hips."""
    gives = min(PULLED * ClothStyle.of(style).stretch, SEAM_GIVES)
    least = body["hip"].mm / (1 + gives)
    held = body["waist"] * BAND_SHARE
    return held if held.mm >= least else mm(rounded_up(least))


WIDEST = 25.0
"""The usual elastic [mm] (common practice)."""


def elastic_width(body: Body, style: Style) -> Length:
    """Up to 2.5 cm, narrower where the waist's circle is too small to turn a deep casing down."""
    waist = (body["waist"] + style.length("waist-ease")).mm
    radius = radius_of(waist, PARTS[style.choice("circle")])
    give = TURNED_SHARE * ClothStyle.of(style).stretch
    most = radius * give / (1 + give) - CASING_MORE.mm
    return mm(min(max(int(most / 5) * 5.0, 5.0), WIDEST))


def rounded_up(length: float) -> float:
    """Return the next whole millimetre above a length [mm]."""
    return float(int(length) + 1)


WAIST = Options.of(
    Option(
        key="waist-finish",
        group=Group.STYLE,
        says=said("an elastic in a casing, or a wide band of the cloth"),
        kind=ValueKind.CHOICE,
        default=WaistFinish.ELASTIC,
        choices=tuple(WaistFinish),
    ),
    Option(
        key="waist-ease",
        group=Group.EASE,
        says=said("what the waist's edge has over the waist, drawn in by elastic or band"),
        default=waist_ease,
        default_says=said("enough for the hips to pass, at least {}", LEAST_EASE),
        low=-10,
        high=60,
    ),
    Option(
        key="elastic-width",
        group=Group.BANDS,
        says=said("width of the elastic"),
        default=elastic_width,
        default_says=said("{}, or less where the waist's circle is small", mm(WIDEST)),
        where=("waist-finish", "elastic"),
        low=0.5,
        high=6,
    ),
    Option(
        key="band-width",
        group=Group.BANDS,
        says=said("finished width of the band"),
        default=8.0,
        where=("waist-finish", "band"),
        low=2,
        high=20,
    ),
    Option(
        key="band-length",
        group=Group.BANDS,
        says=said("the band's length round the body, before it is stretched"),
        default=band_length,
        default_says=said("waist × 0.95, or more where the hips need it"),
        where=("waist-finish", "band"),
        low=30,
        high=200,
    ),
)

SEAM = Option(
    key="seam-allowance",
    group=Group.ALLOWANCES,
    says=said("at seams and band"),
    default=0.8,
    low=0,
    high=3,
)
"""What a skirt's seams and its band get."""

STRAIGHT_WAIST = WAIST.changed("elastic-width", default=WIDEST / 10, default_says=())
"""The same at an edge that is hardly bent, where any elastic's casing turns down."""


def gathered_ease(body: Body, style: Style) -> Length:
    """None on an elastic, which lets the gathers open; on a band enough for the hips to pass."""
    held = style.choice("waist-finish") == WaistFinish.ELASTIC
    return mm(0) if held else waist_ease(body, style)


GATHERED_WAIST = STRAIGHT_WAIST.changed(
    "waist-ease",
    says=said("what the gathered edge has over the waist"),
    default=gathered_ease,
    default_says=said("none on an elastic; on a band enough for the hips to pass"),
)
"""The same where the edge is gathered."""
