"""How a skirt is held at the waist: an elastic in a casing, or a wide band of the cloth.

Amounts are common practice in the trade unless a row names a source.
"""

from __future__ import annotations

from tapewise_core.measures.body import Body
from tapewise_core.parts.circle import PARTS
from tapewise_core.style.option import Kind, Option, Style
from tapewise_core.units import Length, cm, mm

ELASTIC, BAND = "elastic", "band"

CLOSE = 0.5
"""The share of the stretch that a close fit may use up (common practice)."""

LEAST_EASE = cm(2)
"""What the waist's edge has over the waist at the least, to be drawn in (common practice)."""

CASING_MORE = cm(0.8)
"""What a casing is deeper than its elastic, to draw it in and to stitch (common practice)."""

TURNED_SHARE = 0.6
"""The share of the stretch by which a casing's edge may be stretched as it is sewn down."""

ELASTIC_SHARE, ELASTIC_LAP = 0.92, cm(2)
"""An elastic's length as a share of the waist, and what its ends overlap (common practice)."""

BAND_SHARE = 0.95
"""A band's length as a share of the waist, where the hips allow it (common practice)."""

PULLED = 0.9
"""How much of the stretch a band may give to pass the hips, some being kept (common practice)."""

SEAM_GIVES = 0.3
"""What the least stretchy seam gives, a narrow zigzag (common practice)."""


def stretch_of(style: Style) -> float:
    """Return the cloth's stretch as a fraction."""
    return style.number("stretch") / 100


def waist_ease(body: Body, style: Style) -> Length:
    """Enough to pass the hips with half of the stretch, and with the least stretchy seam."""
    gives = min(CLOSE * stretch_of(style), SEAM_GIVES)
    needed = body["hip"].mm / (1 + gives) - body["waist"].mm
    return LEAST_EASE if needed <= LEAST_EASE.mm else mm(_up(needed))


def band_length(body: Body, style: Style) -> Length:
    """A little less than the waist, and never too short for the hips."""
    gives = min(PULLED * stretch_of(style), SEAM_GIVES)
    least = body["hip"].mm / (1 + gives)
    held = body["waist"] * BAND_SHARE
    return held if held.mm >= least else mm(_up(least))


def elastic_width(body: Body, style: Style) -> Length:
    """Up to 2.5 cm, narrower where the waist's circle is too small to turn a deep casing down."""
    waist = (body["waist"] + style.length("waist-ease")).mm
    radius = waist / (6.283185307 * PARTS[style.choice("circle")])
    give = TURNED_SHARE * stretch_of(style)
    most = radius * give / (1 + give) - CASING_MORE.mm
    return mm(min(max(int(most / 5) * 5.0, 5.0), 25.0))


def casing_of(style: Style) -> Length:
    """Return how deep a casing is turned down."""
    return style.length("elastic-width") + CASING_MORE


def elastic_length(body: Body) -> Length:
    """Return the elastic to cut, lap and all."""
    return body["waist"] * ELASTIC_SHARE + ELASTIC_LAP


def _up(length: float) -> float:
    """Round up to the millimetre [mm]."""
    return float(int(length) + 1)


WAIST = (
    Option(
        key="waist-finish",
        says="an elastic in a casing, or a wide band of the cloth",
        kind=Kind.CHOICE,
        default=ELASTIC,
        choices=(ELASTIC, BAND),
    ),
    Option(
        key="waist-ease",
        says="what the waist's edge has over the waist, drawn in by elastic or band",
        default=waist_ease,
        default_says="enough for the hips to pass, at least 2 cm",
        low=-10,
        high=60,
    ),
    Option(
        key="elastic-width",
        says="width of the elastic",
        default=elastic_width,
        default_says="2.5 cm, or less where the waist's circle is small",
        low=0.5,
        high=6,
    ),
    Option(key="band-width", says="finished width of the band", default=8.0, low=2, high=20),
    Option(
        key="band-length",
        says="the band's length round the body, before it is stretched",
        default=band_length,
        default_says="waist × 0.95, or more where the hips need it",
        low=30,
        high=200,
    ),
)
