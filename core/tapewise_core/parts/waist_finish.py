"""What holds a skirt at the waist: the casing's depth and the elastic to cut."""

from __future__ import annotations

from tapewise_core.measures.body import Body
from tapewise_core.parts.waist_style import WaistStyle
from tapewise_core.units import Length, cm

CASING_MORE = cm(0.8)
"""What a casing is deeper than its elastic, to draw it in and to stitch (common practice)."""

ELASTIC_SHARE, ELASTIC_LAP = 0.92, cm(2)
"""An elastic's length as a share of the waist, and what its ends overlap (common practice)."""


def casing_of(style: WaistStyle) -> Length:
    """Return how deep a casing is turned down."""
    return style.elastic_width + CASING_MORE


def elastic_length(body: Body) -> Length:
    """Return the elastic to cut, lap and all."""
    return body["waist"] * ELASTIC_SHARE + ELASTIC_LAP
