"""How a draft's pieces lie on the cloth, as it is shown before anybody buys."""

from __future__ import annotations

from tapewise_core.drafting.labels import title
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Point
from tapewise_core.lay.buying import purchase
from tapewise_core.lay.lay import folds
from tapewise_core.sewing.cloth_words import cloth_words
from tapewise_core.tasks.cloth import fits
from tapewise_core.tasks.drafted import Drafted


class LaidPiece(Frozen):
    """A piece on the cloth: its number and name in the checklist, and the lines it is cut along
    [mm]."""

    number: int
    name: str
    lines: tuple[tuple[Point, ...], ...]


class Laid(Frozen):
    """The cloth as it lies there: the ``width`` of one layer and the ``length`` that is used [mm],
    where across its width it is folded [mm], and the pieces on it.

    ``fits`` is whether it may be bought; ``says`` is what to buy, or why not yet.
    """

    width: float
    length: float
    folds: tuple[float, ...]
    pieces: tuple[LaidPiece, ...]
    fits: bool
    says: str


def laid(drafted: Drafted) -> Laid:
    """Return how a draft lies on its cloth."""
    cloth, lay = drafted.cloth.as_cut, drafted.lay
    names = [piece.name for piece in drafted.pattern.pieces]
    pieces = tuple(
        LaidPiece(
            names.index(one.piece.name) + 1,
            title(one.piece.name),
            tuple(map(tuple, one.outlines())),
        )
        for one in ([] if lay.too_wide else lay.pieces)
    )
    width = cloth.laid_width / cloth.layers
    bill = purchase(lay, cloth, drafted.unit)
    says = drafted.reader.spell(cloth_words(lay, drafted.cloth, drafted.unit, bill))
    return Laid(width, lay.length, folds(cloth), pieces, fits(drafted), says)
