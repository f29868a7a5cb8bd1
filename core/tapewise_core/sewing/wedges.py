"""Laying panels that narrow upwards head to tail, so that their slanting sides lie together."""

from __future__ import annotations

import math
from typing import NamedTuple

from tapewise_core.drafting.piece import Piece
from tapewise_core.geometry.outline import box_of

SPACE = 10.0
"""Room kept between pieces [mm]."""

LEVELS = 40
"""At how many heights two neighbours are held against each other."""


def is_wedge(piece: Piece) -> bool:
    """Say whether a piece is a whole panel cut several times, without a grain of its own."""
    return piece.turnable and not piece.on_fold and piece.count > 1


def laid(piece: Piece, usable: float) -> float:
    """Return the length of cloth [mm] that all panels of a kind take, upright or across it."""
    return best(piece, usable).length


class Ranks(NamedTuple):
    """Panels head to tail, so many in each rank, ``apart`` from middle to middle [mm]; ranks lie
    across the cloth, or along it if ``turned``; the ``length`` of cloth that all take [mm]."""

    length: float
    many: int
    apart: float
    turned: bool

    def place(self, piece: Piece, number: int) -> tuple[float, float]:
        """Return how far across and along the cloth a panel's place begins [mm]."""
        beside = (number % self.many) * self.apart
        rank = (number // self.many) * (box_of(piece.cut).height + SPACE)
        return (rank, beside) if self.turned else (beside, rank)


def best(piece: Piece, usable: float) -> Ranks:
    """Return how panels lie on the least length of cloth so wide [mm]."""
    box, apart = box_of(piece.cut), pitch(piece)
    ways = []
    if box.width <= usable:
        abreast = min(piece.count, 1 + int((usable - box.width) / apart))
        length = math.ceil(piece.count / abreast) * (box.height + SPACE)
        ways.append(Ranks(length, abreast, apart, turned=False))
    if box.height <= usable:
        ranks = 1 + int((usable - box.height) / (box.height + SPACE))
        a_rank = math.ceil(piece.count / ranks)
        length = box.width + (a_rank - 1) * apart + SPACE
        ways.append(Ranks(length, a_rank, apart, turned=True))
    alone = Ranks(piece.count * (box.height + SPACE), 1, apart, turned=False)
    return min(ways, key=lambda way: way.length, default=alone)


def pitch(piece: Piece) -> float:
    """Return how far apart the middles of two panels lie, one of them upside down [mm]."""
    halves = _half_widths(piece)
    return max(a + b for a, b in zip(halves, reversed(halves), strict=True)) + SPACE


def _half_widths(piece: Piece) -> list[float]:
    """Half the panel's width at even heights from top to bottom [mm]."""
    from shapely.geometry import LineString, Polygon

    box, outline = box_of(piece.cut), Polygon([(p.x, p.y) for p in piece.cut])
    reach = []
    for i in range(LEVELS + 1):
        height = box.top + 0.01 + (box.height - 0.02) * i / LEVELS
        across = outline.intersection(LineString([(box.left - 1, height), (box.right + 1, height)]))
        reach.append(max(abs(across.bounds[0]), abs(across.bounds[2])))
    return reach
