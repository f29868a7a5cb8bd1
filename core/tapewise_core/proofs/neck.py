"""The neck: whether the head gets through, and whether the band can be sewn on.

Limits are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.facts import Neck
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.seam import Seam, SeamKind
from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.limits import at_least, enough, in_cm, reaches
from tapewise_core.proofs.proof import Proof, ProofId, Silent, lacking
from tapewise_core.text.told import LineName, said
from tapewise_core.units import Length, mm

HEAD_ROOM = 10.0
"""What the opening must have over the head's girth [mm]."""

BAND_SHARE = 0.6
"""The share of the cloth's stretch that a band may be stretched by when it is sewn on."""

GROWTH = 3.0
"""A neckline grows by at least this much for each unit its half width grows (our geometry)."""


def _band(pattern: Pattern) -> Seam | None:
    return next((seam for seam in pattern.seams if seam.kind is SeamKind.NECKBAND), None)


def head_passes(case: Case) -> Answer:
    """Judge the smallest opening: the band's free edge, or the neckline where there is none."""
    neck, head = case.facts.neck, case.facts.head
    if neck is None:
        return lacking(ProofId.HEAD, "neck to be pulled over a head")
    if head is None:
        return Silent(ProofId.HEAD, said("The head's girth is not known."))
    return (_passes(case, neck, head + HEAD_ROOM),)


def _passes(case: Case, neck: Neck, limit: float) -> Proof:
    stretched = neck.opening * (1 + case.cloth.usable) + neck.opens
    holds = reaches(stretched, limit)
    says = said(
        "The neck opening of {} stretches to {}; the head needs {}.",
        mm(neck.opening), mm(stretched), mm(limit),
    )  # fmt: skip
    if neck.opens:
        says = said(
            "The neck opening of {} stretches, with the placket open, to {}; the head needs {}.",
            mm(neck.opening), mm(stretched), mm(limit),
        )  # fmt: skip
    if holds:
        return in_cm(ProofId.HEAD, "", stretched, limit, True, says)
    more = _widening(case, neck, limit)
    says += said(
        " Widen or deepen the neckline, or take a cloth and seam that stretch {} %.",
        enough(((limit - neck.opens) / neck.opening - 1) * 100),
    )  # fmt: skip
    width = neck.half_width
    offer: dict[str, Length | str] | None = None
    if width is not None:
        offer = {"neck-half-width": at_least(width + more)}
    return in_cm(ProofId.HEAD, "", stretched, limit, False, says, offer)


def _widening(case: Case, neck: Neck, limit: float) -> float:
    """How much wider each side of the neck must be [mm]."""
    seam = _band(case.pattern)
    ratio = seam.ratio if seam else 1.0
    return ((limit - neck.opens) / (1 + case.cloth.usable) - neck.opening) / ratio / GROWTH


def band_fits(case: Case) -> Answer:
    """The band is stretched to the neckline when it is sewn on, and must be able to."""
    seam = _band(case.pattern)
    if seam is None and not case.offers("band-ratio"):
        return lacking(ProofId.NECKBAND, "neckband")
    if seam is None:
        return Silent(ProofId.NECKBAND, said("The neckline is finished without a band."))
    ratio = case.pattern.run_length(seam.first) / case.pattern.run_length(seam.second)
    return (_stretched(case, ratio, LineName(seam.first[0].piece)),)


def _stretched(case: Case, ratio: float, strip: LineName) -> Proof:
    limit = 1 / (1 + BAND_SHARE * case.cloth.band)
    holds, longer = reaches(ratio, limit), 1 / ratio - 1
    says = said(
        f"The {{}} is {ratio:.2f} of the neckline: it is stretched by {longer * 100:.0f} % as it "
        "is sewn on.",
        strip,
    )
    offer: dict[str, Length | str] | None = None
    if not holds:
        offer = {"band-ratio": f"{limit + 0.005:.2f}"} if case.offers("band-ratio") else None
        says += said(
            " This cloth can't give that: take a longer band, or one that stretches {} %.",
            enough(longer / BAND_SHARE * 100),
        )  # fmt: skip
    value, edge = round(ratio, 4), round(limit, 4)
    return Proof(ProofId.NECKBAND, "", value, edge, "1", holds, says, offer)
