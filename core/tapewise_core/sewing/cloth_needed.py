"""How much cloth to buy: pieces opened out and laid in rows on the cloth's usable width."""

from __future__ import annotations

import math
from dataclasses import dataclass

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.piece import Pattern, Piece
from tapewise_core.geometry.outline import area, box_of
from tapewise_core.units import Unit

SPACE = 10.0
"""Room kept between pieces [mm]."""

BOUGHT_IN = 100.0
"""Cloth is bought by this much [mm]."""


@dataclass(frozen=True, slots=True)
class ClothNeeded:
    """``length`` to lay on, ``buy`` to buy before washing [mm]; ``used`` share of the area.

    ``too_wide`` names pieces that are wider than the cloth.
    """

    length: float
    buy: float
    used: float
    too_wide: tuple[str, ...]


def cloth_needed(pattern: Pattern, cloth: Cloth) -> ClothNeeded:
    """Return how much cloth a pattern takes, rows of whole pieces, the tallest first.

    By the pieces' outer boxes, so never too little; a careful lay saves some.
    """
    usable = cloth.usable_width
    sizes = [_opened(piece) for piece in pattern.pieces for _ in range(piece.count)]
    too_wide = tuple(sorted({name for name, width, _ in sizes if width > usable}))
    rows: list[tuple[float, float]] = []
    for _, width, height in sorted(sizes, key=lambda size: -size[2]):
        for i, (filled, tall) in enumerate(rows):
            if filled + SPACE + width <= usable:
                rows[i] = (filled + SPACE + width, tall)
                break
        else:
            rows.append((width, height))
    length = sum(tall for _, tall in rows) + SPACE * len(rows)
    covered = sum(_area(piece) * piece.count for piece in pattern.pieces)
    buy = math.ceil(length / (1 - cloth.shrinkage) / BOUGHT_IN - 1e-9) * BOUGHT_IN
    return ClothNeeded(length, buy, covered / (length * cloth.width), too_wide)


def _opened(piece: Piece) -> tuple[str, float, float]:
    box = box_of(piece.cut)
    return piece.name, box.width * (2 if piece.on_fold else 1), box.height


def _area(piece: Piece) -> float:
    return area(piece.cut) * (2 if piece.on_fold else 1)


def cloth_words(needed: ClothNeeded, cloth: Cloth, unit: Unit) -> str:
    """Say how much to buy, and why."""
    says = (
        f"Jersey {unit.spell(cloth.width)} wide: buy {unit.spell(needed.buy)}. The pieces lie on "
        f"{unit.spell(needed.length)} after washing; {cloth.shrinkage * 100:.0f} % is kept for "
        "shrinking."
    )
    if needed.too_wide:
        says += f" Too wide for this cloth: {', '.join(needed.too_wide)}; take a wider one."
    return says
