"""Where a back's draft begins on the paper."""

from __future__ import annotations

from tapewise_core.text.amounts import About
from tapewise_core.text.told import said

NAPE_AT = said(
    "the nape, on the fold near the top left of the paper, {} from its top", About(100.0)
)
"""Where a back's first point goes, with room above it for the side neck."""
