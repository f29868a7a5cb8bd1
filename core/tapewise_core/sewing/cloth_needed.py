"""How much cloth to buy: pieces opened out and laid in rows on the cloth's usable width."""

from __future__ import annotations

import math
from dataclasses import dataclass

from tapewise_core.drafting.cloth import SELVEDGES, Cloth
from tapewise_core.drafting.extent import least_across, size_of
from tapewise_core.drafting.piece import Pattern, Piece
from tapewise_core.geometry.outline import area
from tapewise_core.sewing.laying import copies, in_rows, is_turned
from tapewise_core.sewing.wedges import is_wedge, laid
from tapewise_core.text.told import LineName, Told, joined, said
from tapewise_core.units import mm

BOUGHT_IN = 100.0
"""Cloth is bought by this much [mm]."""

COTTON = 0.08
"""What cotton jersey may lose in length, a fraction (common practice, 0.05 to 0.08)."""


@dataclass(frozen=True, slots=True)
class ClothNeeded:
    """``length`` to lay on, ``buy`` to buy before washing [mm]; ``used`` share of the area.

    ``too_wide`` names pieces that are wider than the cloth, which takes at least ``width`` [mm]
    from edge to edge; ``turned`` names those that lie across it; ``nested`` if panels lie head to
    tail.
    """

    length: float
    buy: float
    used: float
    too_wide: tuple[str, ...]
    turned: tuple[str, ...] = ()
    nested: bool = False
    width: float = 0.0


def cloth_needed(pattern: Pattern, cloth: Cloth) -> ClothNeeded:
    """Return how much cloth a pattern takes, rows of whole pieces, the tallest first.

    By the pieces' outer boxes, and panels head to tail, so never too little; a careful
    lay saves some.
    """
    usable = cloth.usable_width
    wedges = [piece for piece in pattern.pieces if is_wedge(piece)]
    others = [piece for piece in pattern.pieces if not is_wedge(piece)]
    lying = [one for piece in others for one in copies(piece, usable)]
    too_wide = tuple(
        sorted(
            {one.piece.name for one in lying if one.size[0] > usable}
            | {piece.name for piece in wedges if min(size_of(piece)) > usable}
        )
    )
    _, length = in_rows(lying, usable)
    length += sum(laid(piece, usable) for piece in wedges)
    covered = sum(_area(piece) * piece.count for piece in pattern.pieces)
    buy = bought(length, cloth.shrinkage)
    turned = tuple(piece.name for piece in others if is_turned(piece, usable))
    return ClothNeeded(
        length, buy, covered / (length * cloth.width), too_wide, turned, bool(wedges),
        _wide_enough(pattern, cloth),
    )  # fmt: skip


def bought(length: float, shrinkage: float) -> float:
    """Return what to buy so that a length [mm] is left after washing, whole tens of cm."""
    return math.ceil(length / (1 - shrinkage) / BOUGHT_IN - 1e-9) * BOUGHT_IN


def _wide_enough(pattern: Pattern, cloth: Cloth) -> float:
    """The width of a cloth that holds every piece, selvedges and all, to the next cm [mm]."""
    widest = max(least_across(piece) for piece in pattern.pieces)
    return math.ceil((widest + SELVEDGES) / 10 - 1e-9) * 10


def _area(piece: Piece) -> float:
    return area(piece.cut) * (2 if piece.on_fold else 1)


def cloth_words(needed: ClothNeeded, cloth: Cloth) -> Told:
    """Say how much to buy, and why; or that this cloth should not be bought."""
    if needed.too_wide:
        return said(
            "DO NOT BUY YET: {} {} wider than this cloth. Take cloth at least {} wide.",
            _names(needed.too_wide),
            "is" if len(needed.too_wide) == 1 else "are",
            mm(needed.width),
        )
    buy = said(
        "Jersey {} wide: buy {}. The pieces lie on {} after washing. {}",
        mm(cloth.width),
        mm(needed.buy),
        mm(needed.length),
        _shrinking(needed, cloth),
    )
    return joined((buy, *_lying(needed)))


def _shrinking(needed: ClothNeeded, cloth: Cloth) -> Told:
    """The amount and its reason; more of it where cotton may lose more than is allowed for."""
    allowed = f"This amount allows for {cloth.shrinkage * 100:.0f} % shrinkage"
    more = bought(needed.length, COTTON)
    if more <= needed.buy:
        return (f"{allowed}.",)
    return said("{}; cotton can lose 8 %, so test a piece or buy {}.", allowed, mm(more))


def _lying(needed: ClothNeeded) -> tuple[Told, ...]:
    """How pieces are laid that do not simply follow the grain."""
    lie: tuple[Told, ...] = ()
    if needed.nested:
        lie = (("Lay the panels head to tail, side by side.",),)
    if needed.turned:
        names = _names(needed.turned)
        lie = (*lie, said("Lay the {} with fold or middle across the cloth.", names))
    return lie


def _names(pieces: tuple[str, ...]) -> Told:
    return joined([(LineName(piece),) for piece in pieces], " and ")
