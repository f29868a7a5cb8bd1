"""How much cloth to buy: pieces opened out and laid in rows on the cloth's usable width."""

from __future__ import annotations

import math
from dataclasses import dataclass

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.labels import title
from tapewise_core.drafting.piece import Pattern, Piece
from tapewise_core.geometry.outline import area, box_of
from tapewise_core.sewing.wedges import SPACE, is_wedge, laid
from tapewise_core.units import Unit

BOUGHT_IN = 100.0
"""Cloth is bought by this much [mm]."""


@dataclass(frozen=True, slots=True)
class ClothNeeded:
    """``length`` to lay on, ``buy`` to buy before washing [mm]; ``used`` share of the area.

    ``too_wide`` names pieces that are wider than the cloth, ``turned`` those that lie across it;
    ``nested`` if panels lie head to tail.
    """

    length: float
    buy: float
    used: float
    too_wide: tuple[str, ...]
    turned: tuple[str, ...] = ()
    nested: bool = False


def cloth_needed(pattern: Pattern, cloth: Cloth) -> ClothNeeded:
    """Return how much cloth a pattern takes, rows of whole pieces, the tallest first.

    By the pieces' outer boxes, and panels head to tail, so never too little; a careful
    lay saves some.
    """
    usable = cloth.usable_width
    wedges = [piece for piece in pattern.pieces if is_wedge(piece)]
    others = [piece for piece in pattern.pieces if not is_wedge(piece)]
    sizes = [_opened(piece, usable) for piece in others for _ in range(piece.count)]
    too_wide = tuple(
        sorted(
            {name for name, width, _ in sizes if width > usable}
            | {piece.name for piece in wedges if min(_size(piece)) > usable}
        )
    )
    rows: list[tuple[float, float]] = []
    for _, width, height in sorted(sizes, key=lambda size: -size[2]):
        for i, (filled, tall) in enumerate(rows):
            if filled + SPACE + width <= usable:
                rows[i] = (filled + SPACE + width, tall)
                break
        else:
            rows.append((width, height))
    length = sum(tall for _, tall in rows) + SPACE * len(rows)
    length += sum(laid(piece, usable) for piece in wedges)
    covered = sum(_area(piece) * piece.count for piece in pattern.pieces)
    buy = math.ceil(length / (1 - cloth.shrinkage) / BOUGHT_IN - 1e-9) * BOUGHT_IN
    turned = tuple(piece.name for piece in others if _is_turned(piece, usable))
    return ClothNeeded(
        length, buy, covered / (length * cloth.width), too_wide, turned, bool(wedges)
    )


def _opened(piece: Piece, usable: float) -> tuple[str, float, float]:
    """A piece's name with its size across and along the cloth, turned where that saves length."""
    across, along = _size(piece)
    return (piece.name, along, across) if _is_turned(piece, usable) else (piece.name, across, along)


def _size(piece: Piece) -> tuple[float, float]:
    """How wide and how high a piece is, unfolded [mm]."""
    box = box_of(piece.cut)
    return box.width * (2 if piece.on_fold else 1), box.height


def _is_turned(piece: Piece, usable: float) -> bool:
    """Say whether a piece without a grain of its own lies better across the cloth."""
    across, along = _size(piece)
    return piece.turnable and along <= usable and (across > usable or across < along)


def _area(piece: Piece) -> float:
    return area(piece.cut) * (2 if piece.on_fold else 1)


def cloth_words(needed: ClothNeeded, cloth: Cloth, unit: Unit) -> str:
    """Say how much to buy, and why."""
    says = (
        f"Jersey {unit.spell(cloth.width)} wide: buy {unit.spell(needed.buy)}. The pieces lie on "
        f"{unit.spell(needed.length)} after washing; {cloth.shrinkage * 100:.0f} % is kept for "
        "shrinking."
    )
    if needed.nested:
        says += " Lay the panels head to tail, side by side."
    if needed.turned:
        names = " and ".join(title(name).lower() for name in needed.turned)
        says += f" Lay the {names} with fold or middle across the cloth."
    if needed.too_wide:
        says += f" Too wide for this cloth: {', '.join(needed.too_wide)}; take a wider one."
    return says
