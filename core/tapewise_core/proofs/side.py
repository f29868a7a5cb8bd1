"""The side: where the underarm lies, and how far in the seam goes at the waist.

Limits are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.facts import Underarm
from tapewise_core.drafting.piece import Piece
from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.limits import at_most, in_cm, keeps_to, off_by, reaches
from tapewise_core.proofs.proof import Proof, ProofId, Silent, lacking
from tapewise_core.text.told import LineName, OptionKey, said
from tapewise_core.units import Length, mm

TRUE = 0.1
"""How far a drawn seam may be from its limit [mm]; what the record promises."""

HALFWAY = 0.5
"""How far down from the armscye line to the waist the underarm may lie."""

RISE = 2.2
"""The sleeve's ease must shrink by this much for each unit the underarm is to rise: half of the
ease lies below the arm, and a little more is taken to be sure (our geometry)."""

LEAST_EASE = 0.5
"""Less ease round the arm than this is not offered [mm] (our choice)."""


def not_too_high(case: Case) -> Answer:
    """The underarm lies at or below the armscye line."""
    under = case.facts.underarm
    if under is None:
        return lacking(ProofId.UNDERARM_TOP, "underarm")
    holds = reaches(under.level, under.armscye)
    says = said(
        "The underarm lies {} below the nape, at or below the armscye line at {}.",
        mm(under.level), mm(under.armscye),
    )  # fmt: skip
    if not holds:
        above = off_by(under.armscye - under.level)
        says = said("The underarm lies {} above the armscye line; too narrow to wear.", above)
    return (in_cm(ProofId.UNDERARM_TOP, "", under.level, under.armscye, holds, says),)


def not_too_low(case: Case) -> Answer:
    """The underarm lies no lower than halfway from the armscye line to the waist."""
    under = case.facts.underarm
    if under is None:
        return lacking(ProofId.UNDERARM_FOOT, "underarm")
    lowest = under.armscye + (under.waist - under.armscye) * HALFWAY
    return (_low(case, under, lowest),)


def _low(case: Case, under: Underarm, lowest: float) -> Proof:
    lower, holds = under.level - lowest, keeps_to(under.level, lowest)
    says = said(
        "The underarm at {} is no lower than halfway to the waist, {}.",
        mm(under.level), mm(lowest),
    )  # fmt: skip
    if not holds:
        says = said(
            "The underarm lies {} lower than halfway to the waist, so lifting an arm drags up the "
            "side; take less {}.",
            off_by(lower), OptionKey("sleeve-ease"),
        )  # fmt: skip
    offer = None if holds else _less_sleeve(case, lower)
    return in_cm(ProofId.UNDERARM_FOOT, "", under.level, lowest, holds, says, offer)


def _less_sleeve(case: Case, lower: float) -> dict[str, Length | str] | None:
    """Less ease round the arm, half of which the underarm rises by, where that is enough."""
    if not case.offers("sleeve-ease"):
        return None
    ease = case.style.length("sleeve-ease").mm - RISE * lower
    return {"sleeve-ease": at_most(ease)} if ease > LEAST_EASE else None


def waist_limit(case: Case) -> Answer:
    """The side seam never passes inside a quarter of the waist and its ease."""
    side = case.facts.side
    if side is None:
        return lacking(ProofId.SIDE, "side seam that follows the waist")
    found = tuple(_outside(p, side.waist) for p in case.pattern.pieces if _at_waist(p))
    return found or Silent(ProofId.SIDE, said("Every side seam ends above the waist."))


def _at_waist(piece: Piece) -> list[float]:
    """How far from the centre a piece's side seams pass the waist [mm]; empty if they do not."""
    names = ("waist_side", "waist_side_2")
    return [abs(piece.points[name].x) for name in names if name in piece.points]


def _outside(piece: Piece, limit: float) -> Proof:
    x, part = min(_at_waist(piece)), LineName(piece.name)
    holds = reaches(x, limit - TRUE)
    says = said(
        "The {}'s side seam passes the waist {} from the centre, where {} is the least.",
        part, mm(x), mm(limit),
    )  # fmt: skip
    if not holds:
        says += said(" It is {} too far in; take less {}.", off_by(limit - x), OptionKey(SHAPING))
    return in_cm(ProofId.SIDE, str(part), x, limit, holds, says)


SHAPING = "waist-shaping"
