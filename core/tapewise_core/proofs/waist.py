"""The waist: whether a joined seam, an edge or a band passes the body, and a casing turns down.

Limits are common practice in the trade.
"""

from __future__ import annotations

from dataclasses import replace

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.piece import Pattern, Seam, SeamKind
from tapewise_core.proofs.proof import HAIR, Proof, in_cm
from tapewise_core.units import Unit

TURNED_SHARE = 0.6
"""The share of the cloth's stretch by which an edge may be stretched as it is sewn on or down."""

NAMES = {
    SeamKind.WAIST: "joined waist",
    SeamKind.WAISTBAND: "waistband",
    SeamKind.CASING: "waist edge",
}
"""What has to pass the body, by the seam that is there."""

MENDED_BY = {
    "joined waist": (("ease", "waist opening"),),
    "waistband": (("band-length", "band length"), ("waist-ease", "waist edge")),
    "waist edge": (("waist-ease", "waist opening"),),
}
"""The options that widen each, by as much as they are themselves raised, and what they widen."""


def waist_passes(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """The smallest waist, stretched, goes over the easier way in: the hips, or the shoulders."""
    opening, needed = pattern.facts.get("waist opening"), pattern.facts.get("way in")
    name = next((NAMES[seam.kind] for seam in pattern.seams if seam.kind in NAMES), None)
    if opening is None or needed is None or name is None:
        return ()
    stretched = opening * (1 + cloth.usable)
    holds = stretched >= needed - HAIR
    says = (
        f"The {name} of {unit.spell(opening)} stretches to {unit.spell(stretched)}; "
        f"the easier way in needs {unit.spell(needed)}."
    )
    proof = in_cm(stretched, holds, needed, f"{name} over the body", says)
    if holds:
        return (proof,)
    return (_mended(proof, pattern, needed / (1 + cloth.usable), needed / opening - 1, unit),)


def _mended(proof: Proof, pattern: Pattern, least: float, stretch: float, unit: Unit) -> Proof:
    """The proof with what would mend it: lengths of at least ``least`` [mm], or more stretch."""
    facts, longer = pattern.facts, []
    mend: dict[str, str] = {}
    for key, what in MENDED_BY[proof.name.removesuffix(" over the body")]:
        more = least - facts.get(what, facts["waist opening"])
        if more > HAIR:
            longer.append(f"{unit.spell(more)} with {key}")
            if f"option {key}" in facts:
                mend[key] = f"{(facts[f'option {key}'] + more) / 10 + 0.05:.1f} cm"
    says = (
        f"{proof.says} Make it longer by {' and '.join(longer)}, or take a cloth and seam that "
        f"stretch {stretch * 100:.0f} %."
    )
    return replace(proof, says=says, mend=mend or None)


def casing_turns(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """A casing is cut on a smaller circle than it is sewn to, and must stretch as far."""
    edge, seam = pattern.facts.get("casing edge"), pattern.facts.get("casing seam")
    if edge is None or seam is None:
        return ()
    needed, limit = seam / edge - 1, TURNED_SHARE * cloth.stretch
    holds = needed <= limit + HAIR
    says = f"The casing's edge is stretched by {needed * 100:.0f} % as it is turned down."
    mend = None
    if not holds:
        mend = {"waist-finish": "band"}
        says += (
            f" This cloth gives {limit * 100:.0f} % there: take a narrower elastic-width, "
            f"waist-finish band, or a cloth that stretches {needed / TURNED_SHARE * 100:.0f} %."
        )
    value, edge_of = round(needed * 100, 2), round(limit * 100, 2)
    return (Proof("casing turned down", value, edge_of, "%", holds, says, mend),)


def waistband_fits(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """A waistband is stretched to the skirt's waist as it is sewn on, and must be able to."""
    return tuple(
        _band(pattern, s, cloth, unit) for s in pattern.seams if s.kind is SeamKind.WAISTBAND
    )


def _band(pattern: Pattern, seam: Seam, cloth: Cloth, unit: Unit) -> Proof:
    band, edge = pattern.run_length(seam.first), pattern.run_length(seam.second)
    limit = edge / (1 + TURNED_SHARE * cloth.band)
    holds = band >= limit - HAIR
    says = f"The waistband of {unit.spell(band)} is stretched to {unit.spell(edge)} of waist."
    mend = None
    if not holds:
        mend = {"band-length": f"{limit / 10 + 0.05:.1f} cm"}
        says += f" This cloth can't give that: set band-length to {unit.spell(limit)}."
    return replace(in_cm(band, holds, limit, "waistband against waist", says), mend=mend)
