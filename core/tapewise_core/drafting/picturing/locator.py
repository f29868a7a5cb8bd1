"""The whole pattern, very small, with a frame round the part that a picture shows."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cached_property

from tapewise_core.drafting.picturing.ground import Place, Rows
from tapewise_core.drafting.picturing.sheet import Flattened, Sheet
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Layer, Stroke

PART = 0.3
"""A picture that shows less than this share of the pattern says where on it that is."""

PLACE = 13.0
"""The longer side of the small drawing [mm]."""

ROUGH = 0.05
"""How far its lines may be from the true ones [mm]: it is drawn again in most pictures."""

OFF = 1.0
"""Kept free between it and the picture's edges [mm]."""


class Locator:
    """The lines of one pattern as they are in the end, drawn small once for all its pictures."""

    def __init__(self, lines: Sequence[Path], flat: Flattened) -> None:
        self.lines, self.flat = lines, flat
        self._drawn: dict[Vector, tuple[Stroke, ...]] = {}

    @cached_property
    def _whole(self) -> Box:
        return box_of(point for path in self.lines for point in self.flat.points(path))

    @cached_property
    def _times(self) -> float:
        return PLACE / max(self._whole.width, self._whole.height, 1.0)

    @cached_property
    def _small(self) -> tuple[tuple[Place, ...], ...]:
        """The lines, the upper left corner of all at nothing."""
        return tuple(
            tuple(self._at(point.x, point.y) for point in path.flattened(ROUGH / self._times))
            for path in self.lines
        )

    def _at(self, x: float, y: float) -> Place:
        return (x - self._whole.left) * self._times, (y - self._whole.top) * self._times

    def draw(self, shown: Box, sheet: Sheet) -> None:
        """Draw where ``shown`` is into a free corner, if there is one, unless most is shown."""
        if not self.lines or shown.width * shown.height > PART * _area(self._whole):
            return
        left, top = max(shown.left, self._whole.left), max(shown.top, self._whole.top)
        right, low = min(shown.right, self._whole.right), min(shown.bottom, self._whole.bottom)
        corner, rows = next(self._free(sheet), (None, []))
        if corner is None or left > right or top > low:
            return
        sheet.placing.inks += self._strokes(corner)
        part = Box(*self._at(left, top), *self._at(right, low)).moved(corner)
        sheet.frame(part, Layer.MARKS, width=0.35)
        sheet.placing.take(rows)

    def _strokes(self, corner: Vector) -> tuple[Stroke, ...]:
        """The small drawing in a corner; many pictures have it in the same one."""
        if corner not in self._drawn:
            paths = (
                ruled(*(Point(x + corner.x, y + corner.y) for x, y in line)) for line in self._small
            )
            self._drawn[corner] = tuple(Stroke(path, Layer.GUIDE, width=0.15) for path in paths)
        return self._drawn[corner]

    def _free(self, sheet: Sheet) -> Iterator[tuple[Vector, Rows]]:
        """The corners with nothing drawn in them, best first, and the cells they take."""
        wide, high = self._whole.width * self._times, self._whole.height * self._times
        right, low = sheet.width - wide - OFF, sheet.height - high - OFF
        for left, top in ((right, low), (OFF, low), (right, OFF), (OFF, OFF)):
            middle = left + wide / 2, top + high / 2
            rows = sheet.placing.ground.box(*middle, wide / 2, high / 2)
            if rows is not None:
                yield Vector(left, top), rows


def _area(box: Box) -> float:
    return box.width * box.height
