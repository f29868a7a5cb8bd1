"""The drawn shapes themselves: underarm, waist, outlines, allowances, notches.

Limits are common practice in the trade, or plain geometry.
"""

from __future__ import annotations

from dataclasses import replace

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.piece import Pattern, Piece, Seam
from tapewise_core.geometry.cutting import allowance_kept
from tapewise_core.geometry.outline import is_simple
from tapewise_core.proofs.proof import HAIR, Proof, in_cm
from tapewise_core.units import Unit

TRUE = 0.1
"""How far a drawn allowance may be from the one asked for [mm]; what the record promises."""

NOTCH_APART = 1.0
"""How far two partners may be apart when their seam is walked [mm]."""


def underarm_level(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """Not above the armscye line, not lower than halfway from there to the waist."""
    facts = pattern.facts
    if "underarm level" not in facts:
        return ()
    at, line, waist = facts["underarm level"], facts["armscye level"], facts["waist level"]
    lowest = line + (waist - line) / 2
    above, below = at >= line - HAIR, at <= lowest + HAIR
    low = "The underarm lies {} below the nape, at or below the armscye line at {}."
    high = "The underarm at {} is no lower than halfway to the waist, {}."
    first = low.format(unit.spell(at), unit.spell(line))
    last = high.format(unit.spell(at), unit.spell(lowest))
    if not above:
        first = (
            f"The underarm lies {unit.spell(line - at)} above the armscye line; too narrow to wear."
        )
    if not below:
        last = (
            f"The underarm lies {unit.spell(at - lowest)} lower than halfway to the waist, so "
            "lifting an arm drags up the side; take less sleeve-ease."
        )
    lower = in_cm(at, below, lowest, "underarm above halfway to the waist", last)
    if not below:
        lower = replace(lower, mend=_less_sleeve(pattern, at - lowest))
    return (in_cm(at, above, line, "underarm below the armscye line", first), lower)


def _less_sleeve(pattern: Pattern, lower: float) -> dict[str, str] | None:
    """Less ease round the arm, half of which the underarm rises by, where that is enough."""
    ease = pattern.facts.get("option sleeve-ease", 0.0) - 2.2 * lower
    return {"sleeve-ease": f"{ease / 10 - 0.05:.1f} cm"} if ease > 0.5 else None


def waist_limit(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """The side seam never passes inside a quarter of the waist and its ease."""
    limit = pattern.facts.get("waist limit")
    if limit is None:
        return ()
    sides = {p.name: p.points["waist_side"].x for p in pattern.pieces if "waist_side" in p.points}
    return tuple(_outside(name, x, limit, unit) for name, x in sides.items())


def _outside(name: str, x: float, limit: float, unit: Unit) -> Proof:
    holds = x >= limit - TRUE
    says = f"The {name}'s side seam passes the waist at {unit.spell(x)}, limit {unit.spell(limit)}."
    if not holds:
        says += f" It is {unit.spell(limit - x)} too far in; take less waist-shaping."
    return in_cm(x, holds, limit, f"{name} side seam at the waist", says)


def outlines(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """Every stitch line and cut line is closed and never crosses itself."""
    return tuple(_simple(piece) for piece in pattern.pieces)


def _simple(piece: Piece) -> Proof:
    crossed = sum(not is_simple(line) for line in (piece.stitch_line(), piece.cut))
    part = piece.name.replace("_", " ")
    says = f"The {part}'s outline is closed and does not cross itself."
    if crossed:
        says = f"The {part}'s outline crosses itself; its measures can't be drawn like this."
    return Proof(f"{part} outline", float(crossed), 0.0, "1", crossed == 0, says)


def allowances(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """The cut line lies outside the stitch line by each edge's own allowance."""
    return tuple(_allowed(piece, unit) for piece in pattern.pieces)


def _allowed(piece: Piece, unit: Unit) -> Proof:
    worst, where = 0.0, ""
    for edge in piece.edges:
        if not edge.fold and edge.allowance > 0:
            least, most = allowance_kept(piece.cut, edge.margin())
            off = max(edge.allowance - least, most - edge.allowance)
            worst, where = max((worst, where), (off, edge.name.replace("_", " ")))
    holds = worst <= TRUE
    part = piece.name.replace("_", " ")
    says = f"Every allowance of the {part} is as wide as asked for."
    if not holds:
        says = f"The {part}'s allowance at the {where} is off by {unit.spell(worst)}."
    return in_cm(worst, holds, TRUE, f"{part} allowances", says)


def notches_pair(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[Proof, ...]:
    """Every notch has its partner at the same walked distance along the seam."""
    worst, lonely = 0.0, []
    for seam in pattern.seams:
        first, second = _walked(pattern, seam, 0), _walked(pattern, seam, 1)
        for pair in sorted(set(first) | set(second)):
            if pair in first and pair in second:
                worst = max(worst, abs(first[pair] - second[pair]))
            else:
                lonely.append(pair)
    holds = worst <= NOTCH_APART + HAIR and not lonely
    says = "Every notch meets its partner."
    if lonely:
        says = f"A notch has no partner: {', '.join(lonely)}."
    elif not holds:
        says = f"Two notches that should meet are {unit.spell(worst)} apart."
    return (in_cm(worst, holds, NOTCH_APART, "notches", says),)


def _walked(pattern: Pattern, seam: Seam, side: int) -> dict[str, float]:
    """Pair name to walked distance from the seam's start, along one side of a seam.

    The first side is measured as if stretched to the second.
    """
    found: dict[str, float] = {}
    before, stretch = 0.0, (1 / seam.ratio if side == 0 else 1.0)
    for run in (seam.first, seam.second)[side]:
        piece = pattern.piece(run.piece)
        for name in filter(piece.has_edge, run.edges):
            length = piece.length(name)
            for notch in (notch for notch in piece.notches if notch.edge == name):
                walked = length - notch.distance if run.backwards else notch.distance
                found.setdefault(notch.pair, (before + walked) * stretch)
            before += length
    return found
