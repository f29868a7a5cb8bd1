"""Words on a piece, each where it lies on nothing: as it stands best, or else moved along its line,
to its other side, or set smaller."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from itertools import product

from tapewise_core.drafting.label_places import Search
from tapewise_core.drafting.labels import SMALLEST, set_label
from tapewise_core.drafting.picturing.words import CAPITAL
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.piece_room import Room
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Ink, Layer, Stroke, TextLine

FARTHER = (0.0, 2.0, 4.5, 8.0, 13.0, 20.0)
"""How much farther off their line words may stand, the nearest first [mm] (our choice)."""

SMALLER = (1.0, 0.85)
"""The sizes words are tried in, as shares of their own (our choice)."""

STEPS = 24
"""So many places along a line are tried (our choice)."""


class Wish(Frozen):
    """Words where they stand best, and where else they may, the better place first."""

    best: TextLine
    others: Callable[[], Iterable[TextLine]]


class Beside(Frozen):
    """Words beside a line of a piece: how far off it, to the left of the walker if positive, and
    in what type [mm]."""

    text: str
    line: Path
    lift: float
    size: float
    part: str
    layer: Layer = Layer.TEXT

    def at(self, share: float) -> Wish:
        """Return the wish to stand at a share of the line's length."""
        length = self.line.length()
        best = self._set(length * share, self.lift, self.size)

        def others() -> Iterator[TextLine]:
            spots = (share, *sorted(_spread(), key=lambda one: abs(one - share)))
            for smaller, more, side in product(SMALLER, FARTHER, (1, -1)):
                lift = side * (self.lift + math.copysign(more, self.lift))
                size = max(self.size * smaller, SMALLEST)
                yield from (self._set(length * spot, lift, size) for spot in spots)

        return Wish(best, others)

    def _set(self, distance: float, lift: float, size: float) -> TextLine:
        at, along = self.line.at(distance)
        return along_line(self.text, at, along, (lift, size), self.part, self.layer)


def _spread() -> list[float]:
    return [(i + 0.5) / STEPS for i in range(STEPS)]


def along_line(
    text: str, at: Point, along: Vector, lift_and_size: tuple[float, float], part: str, layer: Layer
) -> TextLine:
    """Words centred on a line, never upside down, ``lift`` mm off it.

    A positive lift is to the left of the walker, which is outside an outline.
    """
    lift, size = lift_and_size
    backwards = along.x < -1e-9 or (abs(along.x) <= 1e-9 and along.y > 0)
    reading = -along if backwards else along
    side = -along.square() if lift > 0 else along.square()
    above = (-reading.square()).dot(side) > 0
    clear = abs(lift) + (0.0 if above else CAPITAL * size)
    angle = math.degrees(math.atan2(reading.y, reading.x))
    return TextLine(text, at + side * clear, size, "middle", angle, layer=layer, part=part)


def settled(
    piece: Piece, inks: Sequence[Ink | Wish], lines: list[str], box: Box
) -> tuple[Ink, ...]:
    """Return what is drawn on a piece with its words and its label set where they lie on nothing;
    ``box`` is where a label stands best."""
    strokes = [ink for ink in inks if isinstance(ink, Stroke)]
    wishes = [ink for ink in inks if isinstance(ink, Wish)]
    room, label = Room(piece, strokes), set_label(lines, box, piece.name)
    clash = room.clashing([*(wish.best for wish in wishes), *label])
    room.take(wish.best for i, wish in enumerate(wishes) if i not in clash)
    moved = {id(wish): _moved(room, wish) for i, wish in enumerate(wishes) if i in clash}
    shown = [one for ink in inks for one in _shown(ink, moved)]
    if max(clash, default=-1) >= len(wishes) or (moved and room.clashing(label)):
        middle = Point((box.left + box.right) / 2, (box.top + box.bottom) / 2)
        return (*shown, *Search(room, middle, piece.name).set(lines))
    return (*shown, *label)


def _shown(ink: Ink | Wish, moved: Mapping[int, tuple[TextLine, ...]]) -> tuple[Ink, ...]:
    if isinstance(ink, Wish):
        return moved.get(id(ink), (ink.best,))
    return (ink,)


def _moved(room: Room, wish: Wish) -> tuple[TextLine, ...]:
    """The first free place; none where there is none."""
    for words in wish.others():
        if not room.clashing((words,)):
            room.take((words,))
            return (words,)
    return ()
