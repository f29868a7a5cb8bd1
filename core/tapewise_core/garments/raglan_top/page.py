"""A jersey top with raglan sleeves: what lies over the shoulder goes from the body to the sleeves.

The body is the set-in top's, drawn by :mod:`blocks.set_in`. On back and front a raglan line runs
from the neckline, a third of its curve from the shoulder, into the armhole; what lies above it
goes to the sleeve, which is drafted in two halves joined over shoulder and arm (common practice):
their seam takes the place of a shoulder dart and can follow any shoulder.
"""

from __future__ import annotations

from types import MappingProxyType

from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.top.agree import agree as top_agrees
from tapewise_core.blocks.top.needs import (
    ACROSS,
    ARMHOLE_MEASURED_ONLY,
    COVERS,
    LONG_HELPS,
    MOVES,
    NEEDS,
    idle_below,
)
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.raglan_top import SAYS, TITLE
from tapewise_core.garments.raglan_top.assemble import assemble
from tapewise_core.garments.raglan_top.options import OPTIONS
from tapewise_core.measures.body import Body
from tapewise_core.parts.centre_seam import with_centre_seams
from tapewise_core.parts.centre_style import CentreStyle
from tapewise_core.parts.end_agree import ends_agree
from tapewise_core.parts.end_finish import with_ends
from tapewise_core.parts.end_style import EndStyle
from tapewise_core.parts.fitted_options import RAGLAN_FITTED
from tapewise_core.proofs.proof import ProofId
from tapewise_core.style.style import Style
from tapewise_core.text.told import Told


def draft(body: Body, style: Style) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    pattern = assemble("raglan-top", TITLE, body, SetInStyle.of(style))
    return with_centre_seams(with_ends(pattern, body, EndStyle.of(style)), CentreStyle.of(style))


def agree(body: Body, style: Style) -> tuple[Told, ...]:
    """Return a sentence for every pair of values that disagree; none if all agree."""
    return (*top_agrees(body, TopStyle.of(style)), *ends_agree(style))


RAGLAN_TOP = Garment(
    name="raglan-top",
    title=TITLE,
    says=SAYS,
    needs=NEEDS,
    helps=(*LONG_HELPS, *ACROSS),
    measured_only=ARMHOLE_MEASURED_ONLY,
    idle=idle_below,
    options=OPTIONS,
    fitted=RAGLAN_FITTED,
    agree=agree,
    draft=draft,
    covers=COVERS | {ProofId.BAND, ProofId.BAND_OVER},
    moves=MappingProxyType({**MOVES, **ACROSS}),
    sources=("ansur1", "ansur2", "baldt", "conover", "iso8559-1"),
)
