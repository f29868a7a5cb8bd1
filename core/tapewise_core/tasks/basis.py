"""What a tick rests on: a cloth, a piece as it is cut, all pieces, and what was sewn before.

Each is told by six signs that are the same exactly where it is. A tick is kept under the signs
of what it rests on, so that another draft takes over what is still true, and nothing else.
"""

from __future__ import annotations

import re
from collections.abc import Mapping

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Piece
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Point
from tapewise_core.tasks.fingerprint import LONG, SIGNS, signs_of


class Basis(Frozen):
    """Signs of what ticks of one draft rest on.

    ``cloth`` is a cloth for a garment; ``pieces`` are pieces as they are cut from it, ``marked``
    with all that is marked and sewn along, ``whole`` all of them.
    """

    cloth: str
    pieces: Mapping[str, str]
    marked: Mapping[str, str]
    whole: str

    @classmethod
    def of(cls, garment: str, cloth: Cloth, pattern: Pattern, called: str = "") -> Basis:
        """Return what ticks of a pattern rest on; ``called`` is the cloth's name, if it has one.

        A cloth of one name is the same whatever was found out about it; one without a name is
        known by its stretch, width, shrinkage and weight alone. How it is laid out changes nothing.
        """
        own = signs_of([garment, called or cloth_signs(cloth)])
        pieces = {one.name: signs_of([own, _cut(one)]) for one in pattern.pieces}
        marked = {
            one.name: signs_of([pieces[one.name], _lines(one), _notches(one)])
            for one in pattern.pieces
        }
        return cls(own, pieces, marked, signs_of([own, marked]))


def cloth_signs(cloth: Cloth) -> str:
    """Return the signs of a cloth without a name."""
    shrinks = cloth.shrinkage, cloth.shrinkage_across, cloth.washed
    return signs_of([cloth.stretch, cloth.stretch_along, cloth.width, shrinks, cloth.weight])


def after(signs: str, what: object) -> str:
    """Return the signs of a thing done after another; ``what`` it is, as plain data."""
    return signs_of([signs, what])


def plain_key(key: str) -> str:
    """Return what is done, without the signs of what it rests on.

    >>> plain_key("7K3Q9A Back: cut 1"), plain_key("Back: cut 1")
    ('Back: cut 1', 'Back: cut 1')
    """
    return _SIGNED.sub("", key)


_SIGNED = re.compile(f"^[{SIGNS}]{{{LONG}}} ")


def _cut(piece: Piece) -> list[object]:
    """A piece as it lies under the scissors."""
    how = [piece.name, piece.count, piece.on_fold, piece.mirrored, piece.turnable]
    return [*how, _plain(piece.cut), _plain(piece.grain)]


def _lines(piece: Piece) -> list[object]:
    """The lines it is sewn along."""
    return [[edge.name, edge.allowance, _plain(edge.path.flattened())] for edge in piece.edges]


def _notches(piece: Piece) -> list[object]:
    return [[one.edge, round(one.distance, 1), one.pair, one.strokes] for one in piece.notches]


def _plain(points: tuple[Point, ...] | list[Point]) -> list[tuple[float, float]]:
    """Points as the record keeps them, to a tenth of a millimetre [cm]."""
    return [(round(point.x / 10, 2), round(point.y / 10, 2)) for point in points]
