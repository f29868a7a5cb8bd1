"""The neck: whether the head gets through, and whether the band can be sewn on.

Limits are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.piece import Pattern, Seam, SeamKind
from tapewise_core.proofs.proof import HAIR, Proof
from tapewise_core.units import Unit

HEAD_ROOM = 10.0
"""What the opening must have over the head's girth [mm]."""

BAND_SHARE = 0.6
"""The share of the cloth's stretch that a band may be stretched by when it is sewn on."""

GROWTH = 3.0
"""A neckline grows by at least this much for each unit its half width grows (our geometry)."""


def _band(pattern: Pattern) -> Seam | None:
    return next((seam for seam in pattern.seams if seam.kind is SeamKind.NECKBAND), None)


def head_passes(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """Judge the smallest opening: the band's free edge, or the neckline where there is none."""
    head = pattern.facts.get("head")
    opening = _opening(pattern)
    if head is None or opening is None:
        return ()
    stretched, limit = opening * (1 + cloth.usable), head + HEAD_ROOM
    holds = stretched >= limit - HAIR
    says = (
        f"The neck opening of {unit.spell(opening)} stretches to {unit.spell(stretched)}; "
        f"the head needs {unit.spell(limit)}."
    )
    mend = None
    if not holds:
        more, mend = _widening(pattern, cloth, limit)
        says += (
            f" Widen neck-half-width by {unit.spell(more)} a side, deepen the neckline, or take a "
            f"cloth and seam that stretch {(limit / opening - 1) * 100:.0f} %."
        )
    value, edge = round(stretched / 10, 3), round(limit / 10, 3)
    return (Proof("head through the neck", value, edge, "cm", holds, says, mend),)


def _opening(pattern: Pattern) -> float | None:
    seam = _band(pattern)
    if seam is not None:
        return pattern.facts.get("band free edge", pattern.run_length(seam.first))
    return pattern.facts.get("neck opening")


def _widening(pattern: Pattern, cloth: Cloth, limit: float) -> tuple[float, dict[str, str] | None]:
    """How much wider each side of the neck must be [mm], and the option that says so."""
    seam = _band(pattern)
    ratio = seam.ratio if seam else 1.0
    opening = _opening(pattern) or 0.0
    more = (limit / (1 + cloth.usable) - opening) / ratio / GROWTH
    width = pattern.facts.get("neck half width")
    if width is None:
        return more, None
    return more, {"neck-half-width": f"{(width + more) / 10 + 0.05:.1f} cm"}


def band_fits(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """The band is stretched to the neckline when it is sewn on, and must be able to."""
    seam = _band(pattern)
    if seam is None:
        return ()
    ratio = pattern.run_length(seam.first) / pattern.run_length(seam.second)
    limit = 1 / (1 + BAND_SHARE * cloth.band)
    holds = ratio >= limit - HAIR
    says = (
        f"The neckband is {ratio:.2f} of the neckline: it is stretched by "
        f"{(1 / ratio - 1) * 100:.0f} % as it is sewn on."
    )
    mend = None
    if not holds:
        needed = (1 / ratio - 1) / BAND_SHARE * 100
        mend = {"band-ratio": f"{limit + 0.005:.2f}"}
        says += (
            f" This cloth can't give that: set band-ratio to {limit + 0.005:.2f}, "
            f"or take a band that stretches {needed:.0f} %."
        )
    return (
        Proof(
            "neckband against neckline", round(ratio, 4), round(limit, 4), "1", holds, says, mend
        ),
    )
