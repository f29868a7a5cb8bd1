"""Sleeves and armholes: a hand goes through, an armhole is no keyhole, a cap is neither flat nor
steep.

Limits are common practice in the trade unless one names another source.
"""

from __future__ import annotations

import math

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.piece import Edge, Piece
from tapewise_core.drafting.seam import SeamKind
from tapewise_core.geometry.point import Point
from tapewise_core.proofs.case import Answer, Case, without
from tapewise_core.proofs.limits import at_least, beyond, in_cm, keeps_to, off_by, reaches
from tapewise_core.proofs.neck import BAND_SHARE
from tapewise_core.proofs.proof import Proof, ProofId, Silent, lacking
from tapewise_core.text.told import LineName, OptionKey, said
from tapewise_core.units import mm

LOWEST, HIGHEST = 0.16, 0.36
"""A cap's height over its armhole's length; a quarter is usual, lower is a tent under the arm,
higher does not let the arm lift (our choice)."""

FROM_SQUARE = 4.0
"""An armhole leaves the shoulder within this of square [degrees] (our choice)."""


def hand_passes(case: Case) -> Answer:
    """A sleeve that ends below the elbow is pulled over the hand."""
    girth = next((one for one in case.pattern.girths if one.name == "sleeve hem"), None)
    if girth is None:
        return without(case, ProofId.HAND, "sleeve", "sleeve for a hand to pass")
    if case.facts.hand is None:
        why = "The sleeves end above the elbow, or the wrist is not known."
        return Silent(ProofId.HAND, said(why))
    return (_passes(case, girth.garment, case.facts.hand),)


def hand_share(cloth: Cloth) -> float:
    """Return the smallest hem that a hand passes, as a share of the hand's girth."""
    return 1 / (1 + BAND_SHARE * cloth.stretch)


def _passes(case: Case, hem: float, hand: float) -> Proof:
    limit = hand * hand_share(case.cloth)
    holds = reaches(hem, limit)
    says = said("A hand of {} goes through the sleeve's hem of {}.", mm(hand), mm(hem))
    if holds:
        return in_cm(ProofId.HAND, "", hem, limit, True, says)
    says = said(
        "A hand of {} does not go through the sleeve's hem of {}, which is {} too narrow.",
        mm(hand), mm(hem), off_by(limit - hem),
    )  # fmt: skip
    offer = None
    if case.offers("sleeve-hem-ease"):
        offer = {"sleeve-hem-ease": at_least(case.style.length("sleeve-hem-ease").mm + limit - hem)}
    return in_cm(ProofId.HAND, "", hem, limit, False, says, offer)


def armholes_inside(case: Case) -> Answer:
    """An armhole goes in from the shoulder's end, no further than square to the shoulder."""
    found = tuple(
        _inside(
            piece, edge, piece.points[f"shoulder_point{twin}"], piece.points[f"side_neck{twin}"]
        )
        for piece in case.pattern.pieces
        for twin in ("", "_2")
        for edge in piece.edges
        if edge.name == f"armhole{twin}" and f"side_neck{twin}" in piece.points
    )
    if not found and (case.offers("armhole-finish") or case.offers("sleeve-cut")):
        return Silent(ProofId.ARMHOLE, said("The sleeves are grown on: no armhole is cut."))
    return found or lacking(ProofId.ARMHOLE, "armhole")


def _inside(piece: Piece, edge: Edge, shoulder: Point, neck: Point) -> Proof:
    out = math.copysign(1.0, shoulder.x - neck.x)
    deepest = min(edge.path.flattened(), key=lambda point: out * point.x)
    inside = out * (shoulder.x - deepest.x)
    slope = math.degrees(math.atan2(shoulder.y - neck.y, abs(shoulder.x - neck.x)))
    most = (deepest.y - shoulder.y) * math.tan(math.radians(slope + FROM_SQUARE))
    holds, part = reaches(inside, 0.0) and keeps_to(inside, most), LineName(piece.name)
    says = said("The {}'s armhole lies up to {} inside the shoulder's end.", part, mm(inside))
    if not holds:
        says += said(
            " More than {} is a keyhole: the shoulder is too long for the width across, measure "
            "both again.",
            mm(most),
        )  # fmt: skip
    of = str(LineName(f"{piece.name} {edge.name.removeprefix('armhole')}".strip("_ ")))
    return in_cm(ProofId.ARMHOLE, of, inside, most, holds, says)


def cap_height(case: Case) -> Answer:
    """A cap is as high as lets the arm both hang and lift."""
    found = tuple(
        _height(case, run.piece, case.pattern.run_length(seam.second), seam.where)
        for seam in case.pattern.seams
        if seam.kind is SeamKind.SLEEVE
        for run in seam.first[:1]
    )
    return found or without(case, ProofId.CAP_HEIGHT, "cap-shortening", "set-in sleeve")


def _percent(share: float) -> str:
    """A share of the armhole in whole percents, never told as a limit that it misses."""
    if share > HIGHEST:
        return beyond(share * 100, HIGHEST * 100)
    return f"{math.floor(share * 100) if share < LOWEST else round(share * 100)}"


def _height(case: Case, piece: str, armhole: float, where: str) -> Proof:
    heights = [point.y for point in case.pattern.piece(piece).edge("cap").path.flattened()]
    share = (max(heights) - min(heights)) / armhole
    low, high = reaches(share, LOWEST), keeps_to(share, HIGHEST)
    says = said(
        f"The sleeve's cap is {{}} high, {_percent(share)} % of the armhole.",
        mm(max(heights) - min(heights)),
    )
    if not low:
        says += said(
            f" Under {LOWEST * 100:.0f} % a sleeve stands off like a tent: take less {{}}.",
            OptionKey("sleeve-ease"),
        )
    if not high:
        says += said(
            f" Over {HIGHEST * 100:.0f} % the arm does not lift: take more {{}}.",
            OptionKey("sleeve-ease"),
        )
    limit = HIGHEST if low else LOWEST
    return Proof(ProofId.CAP_HEIGHT, where, round(share, 4), limit, "1", low and high, says)
