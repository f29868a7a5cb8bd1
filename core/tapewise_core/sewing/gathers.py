"""Sewing gathered edges: tiers to each other, a skirt to a bodice or to a band.

Common practice in the trade.
"""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.drafting.seam import Seam
from tapewise_core.sewing.edges import TAKEN_OUT
from tapewise_core.sewing.operation import Meeting, Operation, Sort, Stage
from tapewise_core.sewing.waist import PULLED
from tapewise_core.sewing.waist import band as waistband
from tapewise_core.sewing.waist import joined as joined_waist
from tapewise_core.sewing.way import Way, Work, sewn_at
from tapewise_core.text.amounts import About
from tapewise_core.text.told import LineName, Told, said
from tapewise_core.text.told import joined as joined_words
from tapewise_core.units import mm

PER = 100.0
"""Gathers are told for so much of what they are gathered to [mm]."""


def tiers(work: Work) -> tuple[Operation, ...]:
    """Each tier gathered and sewn to the one above."""
    return tuple(operation for seam in work.seams for operation in _tier(work, seam))


def _tier(work: Work, seam: Seam) -> tuple[Operation, ...]:
    lower, upper = (LineName(side[0].piece) for side in (seam.first, seam.second))
    key, at, stitch = seam.first[0].piece, sewn_at(work.pattern, seam), work.stitching.seam
    edge = said("{}'s upper edge", lower)
    do = said(
        "Sew it to the lower edge of the {}, right sides together, marks and middles matched, {} "
        "from the edge with the gathers uppermost: {}.",
        upper, at, stitch.words,
    )  # fmt: skip
    sewn = work.do(
        key, f"Sew the {lower} on", do, Stage.ROUND,
        meets=(Meeting(seam.first, seam.second),), stitches=(stitch,), ease=SPREAD,
        press=("Press the allowance up, the gathers flat in the allowance alone.",),
        check=(TAKEN_OUT,),
    )  # fmt: skip
    named = replace(sewn, allowance=at)
    return gathered(
        work, f"{key}-gather", f"Gather the {lower}", edge, (upper,), seam.ratio, Stage.ROUND
    ), named


SPREAD: Told = ("spread the gathers evenly between the marks",)
"""What is eased, and where."""


def gathered(
    work: Work, key: str, title: str, edge: Told, to: Told, ratio: float, stage: Stage
) -> Operation:
    """Return how an edge is gathered, told for a length of what it is sewn to."""
    stitch = work.stitching.gathering
    do = said(
        "Gather the {}: {} within its allowance, the threads left long; draw up one thread of each "
        "until it is as long as the edge of the {}, and spread the gathers, {} of this edge to "
        "each {} of that.",
        edge, stitch.words, to, About(PER * ratio), About(PER),
    )  # fmt: skip
    return work.do(key, title, do, stage, sort=Sort.PREPARE, after=("panels",), stitches=(stitch,))


def joined(work: Work) -> tuple[Operation, ...]:
    """A skirt gathered to a bodice on a stay."""
    stay, pin, sewn = joined_waist(work)
    skirt = gathered(
        work, "waist-gather", GATHER, SKIRT, ("bodice",), work.seams[0].ratio, Stage.WAIST
    )
    pinned = said(
        "Pin bodice and skirt together at their marks, right sides facing, the gathers spread "
        "evenly between."
    )
    if work.elastic:
        pinned += said(" {}.", PULLED.capitalize())
    ease = joined_words((SPREAD, sewn.ease), "; ") if work.elastic else SPREAD
    return stay, skirt, replace(pin, do=pinned), _with_gathers(sewn, ease)


SKIRT: Told = ("skirt's upper edge",)
GATHER = "Gather the skirt"


def _with_gathers(sewn: Operation, ease: Told = SPREAD) -> Operation:
    """A seam into which gathers are sewn."""
    return replace(sewn, ease=ease, check=(*sewn.check, f" {TAKEN_OUT}"))


def band(work: Work) -> tuple[Operation, ...]:
    """A skirt gathered to what its band stretches to."""
    seam, (pin, sewn) = work.seams[0], waistband(work)
    ratio, edge = 1 / seam.drawn_in, work.pattern.run_length(seam.second) * seam.drawn_in
    to = said("band stretched to {}", mm(edge))
    return (
        gathered(work, "waist-gather", GATHER, SKIRT, to, ratio, Stage.WAIST),
        pin,
        _with_gathers(sewn),
    )


TIER = Way("tier gathered to the one above", tiers)
GATHERED_WAIST = Way("skirt gathered to a bodice on a stay", joined)
GATHERED_BAND = Way("skirt gathered to a waistband", band)
