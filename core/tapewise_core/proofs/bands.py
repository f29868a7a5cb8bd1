"""Bands round armholes, sleeves' ends and hems: they can be sewn on, and the body passes them.

Limits are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.facts import EndBand
from tapewise_core.drafting.seam import Seam, SeamKind
from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.limits import enough, in_cm, off_by, reaches
from tapewise_core.proofs.neck import BAND_SHARE
from tapewise_core.proofs.proof import Proof, ProofId, Silent, lacking
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

KINDS = {
    SeamKind.ARMBAND: ("armhole band", "armhole-band-ratio"),
    SeamKind.CUFF: ("cuff", "cuff-ratio"),
    SeamKind.HEM_BAND: ("hem band", "hem-band-ratio"),
}
"""The seams that a band is stretched on by: what it is called, and the option for its length."""

TURNED = said("No armhole, sleeve or hem has a band.")


def bands_fit(case: Case) -> Answer:
    """Each band is stretched to its edge when it is sewn on, and must be able to."""
    found = {seam.kind: seam for seam in case.pattern.seams if seam.kind in KINDS}
    if found:
        return tuple(_stretched(case, seam) for seam in found.values())
    if case.offers("armhole-finish"):
        return Silent(ProofId.BAND, TURNED)
    return _without(case, ProofId.BAND)


def _without(case: Case, about: ProofId) -> Silent:
    if case.offers("hem-finish"):
        return Silent(about, TURNED)
    return lacking(about, "band round a sleeve or a hem")


def _stretched(case: Case, seam: Seam) -> Proof:
    name, option = KINDS[seam.kind]
    ratio, limit = seam.ratio, 1 / (1 + BAND_SHARE * case.cloth.band)
    holds, longer = reaches(ratio, limit), 1 / ratio - 1
    says = said(
        f"The {name} is {ratio:.2f} of its edge: it is stretched by {longer * 100:.0f} % as it is "
        "sewn on."
    )
    if not holds:
        says += said(
            " This cloth can't give that: take a longer band, or one that stretches {} %.",
            enough(longer / BAND_SHARE * 100),
        )  # fmt: skip
    offer = None if holds else {option: f"{limit + 0.005:.2f}"}
    return Proof(
        ProofId.BAND, name, round(ratio, 4), round(limit, 4), "1", holds, says, offer
    )  # fmt: skip


def bands_pass(case: Case) -> Answer:
    """A hem band is pulled over bust and hip, a cuff over the hand."""
    found = tuple(_passes(case, end, end.over) for end in case.facts.ends if end.over is not None)
    if found:
        return found
    if case.facts.ends:
        return Silent(ProofId.BAND_OVER, said("The cuffs end above the elbow."))
    return _without(case, ProofId.BAND_OVER)


def opening_left(case: Case, end: EndBand) -> float:
    """Return what a band is long when it is stretched over what passes [mm]."""
    return end.opening * (1 + BAND_SHARE * case.cloth.stretch)


def _passes(case: Case, end: EndBand, over: float) -> Proof:
    stretched = opening_left(case, end)
    holds = reaches(stretched, over)
    what = "hand" if end.name == "cuff" else "bust or hip"
    says: Told = said(
        f"The {end.name} of {{}} stretches to {{}}; a {what} of {{}} passes it.",
        mm(end.opening), mm(stretched), mm(over),
    )  # fmt: skip
    if not holds:
        says = said(
            f"The {end.name} of {{}} stretches to {{}}; a {what} of {{}} needs {{}} more.",
            mm(end.opening), mm(stretched), mm(over), off_by(over - stretched),
        )  # fmt: skip
    return in_cm(ProofId.BAND_OVER, end.name, stretched, over, holds, says)
