"""How a draft's pieces lie on the cloth, as it is shown before anybody buys."""

from __future__ import annotations

from tapewise_core.drafting.labels import title
from tapewise_core.frozen import dataclass
from tapewise_core.geometry.point import Point
from tapewise_core.sewing.cloth_needed import cloth_needed, cloth_words
from tapewise_core.sewing.lay_plan import lying
from tapewise_core.tasks.drafting import Drafted


@dataclass(frozen=True, slots=True)
class LaidPiece:
    """A piece on the cloth: its number and name in the checklist, and the lines it is cut along
    [mm]."""

    number: int
    name: str
    lines: tuple[tuple[Point, ...], ...]


@dataclass(frozen=True, slots=True)
class Laid:
    """The cloth as it lies there: its ``width`` and the ``length`` that is used [mm], where it is
    folded across its width [mm], and the pieces on it.

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
    pattern, cloth = drafted.pattern, drafted.cloth
    needed = cloth_needed(pattern, cloth)
    names = [piece.name for piece in pattern.pieces]
    pieces = tuple(
        LaidPiece(
            names.index(one.piece.name) + 1,
            title(one.piece.name),
            tuple(map(tuple, one.outlines())),
        )
        for one in ([] if needed.too_wide else lying(pattern, cloth))
    )
    says = drafted.reader.spell(cloth_words(needed, cloth))
    return Laid(cloth.width, needed.length, (), pieces, not needed.too_wide, says)
