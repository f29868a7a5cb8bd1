"""The lay of a pattern on a cloth: every piece where it lies, and what of the cloth that takes."""

from __future__ import annotations

import math
from collections.abc import Iterable

import numpy as np
from msgspec.structs import replace

from tapewise_core.drafting.cloth import Cloth, Spread
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Piece
from tapewise_core.frozen import Frozen
from tapewise_core.lay.lying import Floats, Lying, lines_of
from tapewise_core.lay.packing import USUAL, Effort, Found, packed
from tapewise_core.lay.pulling import ending, pulled
from tapewise_core.lay.sorts import Sort, room, sorts


class Lay(Frozen):
    """``pieces`` where they lie on the cloth, and the ``length`` they take of it as it is cut
    [mm]; ``used`` is the share of the usable area that they cover.

    ``too_wide`` names pieces for which the cloth is too narrow, and ``width`` is what a cloth must
    have from edge to edge to hold all [mm]. ``closer`` if a better lay was looked for.
    """

    pieces: tuple[Lying, ...]
    length: float
    used: float
    too_wide: tuple[str, ...]
    width: float
    closer: bool = False

    @property
    def turned(self) -> tuple[str, ...]:
        """The pieces that lie with their grain arrow across the cloth."""
        return _names(one for one in self.pieces if one.turned)

    @property
    def head_to_tail(self) -> tuple[str, ...]:
        """The pieces of which some lie upside down to others of the same kind."""
        ways = {(one.piece.name, one.way.quarters) for one in self.pieces}
        return _names(
            one for one in self.pieces if (one.piece.name, (one.way.quarters + 2) % 4) in ways
        )


def _names(pieces: Iterable[Lying]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(one.piece.name for one in pieces))


def lay_of(pattern: Pattern, cloth: Cloth, effort: Effort = USUAL) -> Lay:
    """Return how a pattern's pieces lie on a cloth; the same pieces always lie the same.

    Pieces drawn larger for a later wash are laid on :attr:`Cloth.as_cut`. Where a piece is too
    wide, the others are laid.
    """
    wide, all_of_them = room(cloth), sorts(pattern, cloth)
    fitting = [one for sort in all_of_them if (one := _fitting(sort, wide)).turns]
    found = packed(fitting, wide, cloth.repeat, effort)
    tallest = max((sort.tall for sort in fitting), default=0.0)
    if found.length > tallest + 1e-6 and not cloth.repeat:
        found = _pulled(found)
    too_wide = sorted({one.piece.name for one in all_of_them if not _fitting(one, wide).turns})
    widest = max((sort.wide for sort in all_of_them), default=0.0)
    needed = cloth.width_for(widest * cloth.layers)
    placed = tuple(replace(one, across=one.across + start(cloth)) for one in found.pieces)
    return Lay(
        placed,
        found.length,
        share(pattern, cloth, found.length),
        tuple(too_wide),
        math.ceil(needed / 10 - 1e-9) * 10,
    )


def _pulled(found: Found) -> Found:
    """The same, its pieces pulled into each other's gaps."""
    pieces = pulled(found.pieces)
    return Found(pieces, ending(pieces)) if pieces != found.pieces else found


def _fitting(sort: Sort, wide: float) -> Sort:
    """A sort with the choices that the width allows."""
    turns = (tuple(one for one in turn if one.profile.wide <= wide + 1e-6) for turn in sort.turns)
    return sort._replace(turns=tuple(filter(None, turns)))


def start(cloth: Cloth) -> float:
    """Return where on the laid cloth's width pieces may begin [mm]: past a selvedge, or at a
    fold."""
    return cloth.selvedges / 2 if cloth.spread is Spread.OPEN else 0.0


def folds(cloth: Cloth) -> tuple[float, ...]:
    """Return where across the width of one layer the cloth is folded [mm]."""
    right = cloth.laid_width / cloth.layers
    return {Spread.OPEN: (), Spread.FOLDED: (0.0,), Spread.TUBE: (0.0, right)}[cloth.spread]


def share(pattern: Pattern, cloth: Cloth, length: float) -> float:
    """Return which share of a cloth's usable area the pieces cover on a length [mm]."""
    covered = sum(_area(piece) * piece.count for piece in pattern.pieces)
    return covered / (length * room(cloth) * cloth.layers) if length else 0.0


def _area(piece: Piece) -> float:
    """What a piece covers [mm²]; of two lines the inner one is a hole."""
    areas = sorted((_inside(line) for line in lines_of(piece)), reverse=True)
    return areas[0] - sum(areas[1:])


def _inside(line: Floats) -> float:
    x, y = line.T
    return abs(float(x @ np.roll(y, -1) - y @ np.roll(x, -1))) / 2
