"""The waist: whether a joined seam, an edge or a band passes the body, and a casing turns down.

Limits are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.facts import Waist
from tapewise_core.drafting.seam import Seam, SeamKind
from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.limits import at_least, beyond, enough, in_cm, keeps_to, off_by, reaches
from tapewise_core.proofs.proof import Proof, ProofId, Silent, lacking
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import Length, mm

TURNED_SHARE = 0.6
"""The share of the cloth's stretch by which an edge may be stretched as it is sewn on or down."""


def waist_passes(case: Case) -> Answer:
    """The smallest waist, stretched, goes over the easier way in: the hips, or the shoulders."""
    waist = case.facts.waist
    if waist is None:
        return lacking(ProofId.WAIST, "waist that is drawn in")
    stretched = waist.opening * (1 + case.cloth.usable)
    holds = reaches(stretched, waist.way_in)
    says = said(
        f"The {waist.what} of {{}} stretches to {{}}; the easier way in needs {{}}.",
        mm(waist.opening), mm(stretched), mm(waist.way_in),
    )  # fmt: skip
    offer: dict[str, Length | str] = {}
    if not holds:
        least = waist.way_in / (1 + case.cloth.usable)
        says += said(
            " It is {} too short: make it longer, or take a cloth and seam that stretch {} %.",
            off_by(least - waist.opening), enough((waist.way_in / waist.opening - 1) * 100),
        )  # fmt: skip
        offer = _wider(case, _more(waist, least))
    of = waist.what.value
    return (in_cm(ProofId.WAIST, of, stretched, waist.way_in, holds, says, offer or None),)


def _more(waist: Waist, least: float) -> dict[str, float]:
    """The options that widen a waist to a length [mm], each by how much it must be raised [mm]."""
    drawn = {"waist-ease": waist.edge}
    if waist.band is not None:
        drawn = {"band-length": waist.band, **drawn}
    return {key: least - given for key, given in drawn.items() if not reaches(given, least)}


def _wider(case: Case, more: dict[str, float]) -> dict[str, Length | str]:
    offered = {key: by for key, by in more.items() if case.offers(key)}
    return {key: at_least(case.style.length(key).mm + by * MORE) for key, by in offered.items()}


MORE = 1.01
"""A waist seam that bends grows by a little less than its ease (our geometry)."""


def casing_turns(case: Case) -> Answer:
    """A casing is cut on a smaller circle than it is sewn to, and must stretch as far."""
    casing = case.facts.casing
    if casing is None:
        return _without(case, ProofId.CASING, "casing", "The waist has a band, and no casing.")
    needed, limit = casing.seam / casing.edge - 1, TURNED_SHARE * case.cloth.stretch
    holds = keeps_to(needed, limit)
    shown = f"{needed * 100:.0f}" if holds else beyond(needed * 100, limit * 100)
    says = said(f"The casing's edge is stretched by {shown} % as it is turned down.")
    if not holds:
        says += said(
            f" This cloth gives {limit * 100:.0f} % there: take a narrower {{}}, {{}} band, or a "
            f"cloth that stretches {enough(needed / TURNED_SHARE * 100)} %.",
            OptionKey("elastic-width"), OptionKey("waist-finish"),
        )  # fmt: skip
    offer = {"waist-finish": "band"} if not holds and case.offers("waist-finish") else None
    value, edge = round(needed * 100, 2), round(limit * 100, 2)
    return (Proof(ProofId.CASING, "", value, edge, "%", holds, says, offer),)


def _without(case: Case, about: ProofId, thing: str, why: str) -> Silent:
    """Silent by the style, if the garment can be finished in another way; else by the garment."""
    if case.offers("waist-finish"):
        return Silent(about, said(why))
    return lacking(about, thing)


def waistband_fits(case: Case) -> Answer:
    """A waistband is stretched to the skirt's waist as it is sewn on, and must be able to."""
    bands = [seam for seam in case.pattern.seams if seam.kind is SeamKind.WAISTBAND]
    if not bands:
        why = "The waist has an elastic in a casing, and no band."
        return _without(case, ProofId.WAISTBAND, "waistband", why)
    return tuple(_band(case, seam) for seam in bands)


def _band(case: Case, seam: Seam) -> Proof:
    band = case.pattern.run_length(seam.first)
    edge = case.pattern.run_length(seam.second) * seam.drawn_in
    limit = edge / (1 + TURNED_SHARE * case.cloth.band)
    holds = reaches(band, limit)
    says = said("The waistband of {} is stretched to {} of waist.", mm(band), mm(edge))
    offer: dict[str, Length | str] | None = None
    if not holds:
        key = "band-length"
        offer = {key: at_least(limit)} if case.offers(key) else None
        says += said(" This cloth can't give that: it is {} too short.", off_by(limit - band))
    return in_cm(ProofId.WAISTBAND, seam.where, band, limit, holds, says, offer)
