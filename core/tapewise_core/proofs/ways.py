"""Which options may mend a proof, and which way: what is tried, in this order.

Common practice at the drafting table: first the option that names the place, then its neighbours,
then two together. Whether one helps is never taken for granted: each is drafted and proved.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Literal, NamedTuple

from tapewise_core.proofs.proof import Proof, ProofId


class Move(NamedTuple):
    """One option: more or less of it, or a word."""

    key: str
    way: Literal["more", "less"] | None
    word: str = ""


Way = tuple[Move, ...]
"""Options that are moved together."""


def more(*keys: str) -> Way:
    """Return more of some options."""
    return tuple(Move(key, "more") for key in keys)


def less(*keys: str) -> Way:
    """Return less of some options."""
    return tuple(Move(key, "less") for key in keys)


def word(key: str, choice: str) -> Way:
    """Return another word for an option."""
    return (Move(key, None, choice),)


WAYS: Mapping[ProofId, tuple[Way, ...]] = MappingProxyType(
    {
        ProofId.HEAD: (
            more("band-ratio"), more("neck-half-width"), more("neck-depth"),
            more("cowl-depth"),
            more("neck-half-width", "neck-depth"), more("band-ratio", "neck-half-width"),
            word("neck-finish", "turned"),
        ),
        ProofId.NECKBAND: (
            more("band-ratio"), more("band-ratio", "neck-half-width"),
            word("neck-finish", "turned"),
        ),
        ProofId.WAIST: (
            more("waist-ease"), more("band-length"), more("waist-ease", "band-length"),
            more("ease", "waist-ease"),
        ),
        ProofId.WAISTBAND: (more("band-length"), word("waist-finish", "elastic")),
        ProofId.CASING: (less("elastic-width"), word("waist-finish", "band"), more("waist-ease")),
        ProofId.GATHERS: (
            less("fullness"), less("tier-fullness"), less("fullness", "tier-fullness"),
        ),
        ProofId.STRIDE: (
            more("flare"), more("vent-length"), word("vent", "back"), more("hip-ease"),
            less("body-length"), less("skirt-length"), word("hem", "split"),
            word("hem-finish", "turned"), word("circle", "1"),
        ),
        ProofId.EASE: (more("ease"),),
        ProofId.HAND: (
            more("sleeve-hem-ease"), more("sleeve-ease", "sleeve-hem-ease"),
            less("sleeve-length"), word("sleeve", "elbow"),
        ),
        ProofId.BAND: (
            more("hem-band-ratio"), more("cuff-ratio"), more("armhole-band-ratio"),
            word("hem-finish", "turned"), word("sleeve-finish", "turned"),
        ),
        ProofId.BAND_OVER: (more("hem-band-ratio"), more("cuff-ratio"), more("sleeve-hem-ease")),
        ProofId.CAP: (more("cap-shortening"), less("cap-shortening")),
        ProofId.CAP_HEIGHT: (
            more("sleeve-ease"), less("sleeve-ease"), more("armhole-drop"), less("armhole-drop"),
        ),
        ProofId.ARMHOLE: (more("armhole-drop"), less("armhole-drop"), more("bust-ease")),
        ProofId.GAPE: (
            word("armhole-finish", "band"), less("armhole-band-ratio"), less("bust-ease"),
        ),
        ProofId.LINE: (
            less("waist-shaping"), less("sleeve-ease"), more("sleeve-length"),
            less("neck-depth"), less("back-neck-depth"),
        ),
        ProofId.UNDERARM_TOP: (more("armhole-drop"), more("sleeve-ease")),
        ProofId.UNDERARM_FOOT: (
            less("sleeve-ease"), less("armhole-drop"), more("sleeve-length"), word("sleeve", "cap"),
        ),
        ProofId.CLOTH: (
            word("panels", "fewest"), less("skirt-length"), less("flare"), less("body-length"),
            less("ease"), less("sleeve-length"), word("lay", "open"),
            word("centre-seams", "back"), word("centre-seams", "both"), more("cloth-width"),
        ),
        ProofId.CLOTH_LENGTH: (
            word("lay", "open"), word("nap", "no"), less("sleeve-length"), less("body-length"),
            less("skirt-length"), less("flare"), less("body-length", "sleeve-length"),
            word("panels", "2"), word("panels", "4"), word("panels", "6"),
            word("circle", "1/2"), more("cloth-width"),
        ),
        ProofId.SIDE: (less("waist-shaping"), more("hip-ease", "bust-ease")),
    }
)  # fmt: skip
"""By the proof they may mend; girths and drawn lines follow below."""

GIRTHS: Mapping[str, tuple[Way, ...]] = MappingProxyType(
    {
        "bust": (more("bust-ease"), more("ease")),
        "waist": (more("waist-ease"), less("waist-shaping"), more("ease")),
        "hip": (more("hip-ease"), more("ease")),
        "high hip": (more("hip-ease"), more("waist-ease")),
        "hem": (more("flare"), more("hip-ease")),
        "upper arm": (more("sleeve-ease"),),
        "sleeve hem": (more("sleeve-hem-ease"), more("sleeve-ease", "sleeve-hem-ease")),
    }
)
"""By the girth that is too close."""

LINES: tuple[Way, ...] = (
    less("back-neck-depth"), less("neck-depth"), less("neck-half-width"),
    less("neck-allowance"), less("seam-allowance"), less("hem-allowance"), less("waist-shaping"),
    more("sleeve-ease"), less("sleeve-ease"),
)  # fmt: skip
"""What bends a drawn line or its allowance most."""

DRAWN = frozenset(
    {
        ProofId.FOLD,
        ProofId.BEHIND_FOLD,
        ProofId.OUTLINE,
        ProofId.ALLOWANCES,
        ProofId.TEETH,
        ProofId.SEAM,
        ProofId.NOTCHES,
    }
)
"""Proofs of drawn lines."""


AGAINST: Mapping[ProofId, str] = MappingProxyType(
    {
        ProofId.HEAD: "a head of this girth, in a cloth that stretches no more,",
        ProofId.NECKBAND: "a cloth that stretches no more",
        ProofId.WAIST: "a body of these girths, in a cloth that stretches no more,",
        ProofId.CASING: "a cloth that stretches no more",
        ProofId.GIRTH: "a body of this girth, in a cloth that stretches no more,",
        ProofId.STRIDE: "legs of this length",
        ProofId.HAND: "a hand of this girth",
        ProofId.CLOTH: "a cloth of this width",
        ProofId.CLOTH_LENGTH: "a cloth of this length",
        ProofId.UNDERARM_TOP: "an armscye of this depth",
        ProofId.UNDERARM_FOOT: "an arm of this girth on a back of this length",
    }
)
"""What the body has against a style where nothing mends a proof."""


def ways_of(proof: Proof) -> tuple[Way, ...]:
    """Return what may be tried to mend a proof."""
    if proof.id is ProofId.GIRTH:
        return GIRTHS.get(proof.of, ())
    return LINES if proof.id in DRAWN else WAYS.get(proof.id, ())
