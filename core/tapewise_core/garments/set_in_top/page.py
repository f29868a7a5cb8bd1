"""A jersey top with set-in sleeves: armholes in the body, and a sleeve drafted to them.

The body is drawn by :mod:`blocks.set_in`, each piece with its lettered figure: an armhole through
the across widths [baldt], made for the arm in it, and a sleeve whose cap goes into it without
fullness.
"""

from __future__ import annotations

from types import MappingProxyType

from tapewise_core.blocks.set_in.assemble import assemble
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.top.agree import agree as top_agrees
from tapewise_core.blocks.top.needs import (
    ACROSS,
    ARMHOLE_MEASURED_ONLY,
    BARE_PROOFS,
    COVERS,
    LONG_HELPS,
    MOVES,
    NEEDS,
    idle_below,
)
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.set_in_top import SAYS, TITLE
from tapewise_core.garments.set_in_top.options import OPTIONS
from tapewise_core.measures.body import Body
from tapewise_core.parts.centre_seam import with_centre_seams
from tapewise_core.parts.centre_style import CentreStyle
from tapewise_core.parts.end_agree import ends_agree
from tapewise_core.parts.end_finish import with_ends
from tapewise_core.parts.end_style import EndStyle
from tapewise_core.parts.fitted_options import SET_IN_FITTED
from tapewise_core.parts.placket import with_placket
from tapewise_core.parts.placket_options import placket_agrees
from tapewise_core.proofs.proof import ProofId
from tapewise_core.style.style import Style
from tapewise_core.text.told import Told


def draft(body: Body, style: Style) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    pattern = assemble("set-in-top", TITLE, body, SetInStyle.of(style))
    whole = with_placket(with_ends(pattern, body, EndStyle.of(style)), style)
    return with_centre_seams(whole, CentreStyle.of(style))


def agree(body: Body, style: Style) -> tuple[Told, ...]:
    """Return a sentence for every pair of values that disagree; none if all agree."""
    return (*top_agrees(body, TopStyle.of(style)), *ends_agree(style), *placket_agrees(body, style))


SET_IN_TOP = Garment(
    name="set-in-top",
    title=TITLE,
    says=SAYS,
    needs=NEEDS,
    helps=(*LONG_HELPS, *ACROSS),
    measured_only=ARMHOLE_MEASURED_ONLY,
    idle=idle_below,
    options=OPTIONS,
    fitted=SET_IN_FITTED,
    agree=agree,
    draft=draft,
    covers=COVERS | BARE_PROOFS | {ProofId.CAP, ProofId.CAP_HEIGHT, ProofId.BAND_OVER},
    moves=MappingProxyType({**MOVES, **ACROSS}),
    sources=("ansur1", "ansur2", "baldt", "conover", "iso8559-1"),
)
