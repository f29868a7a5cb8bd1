"""Draw one drafting step in characters: the same as on paper, letters where there is room."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from tapewise_core.drafting.marks import NotchMark
from tapewise_core.drafting.picturing.scene import Scene, Spot
from tapewise_core.drafting.picturing.window import window
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.units import Unit
from tapewise_tui.canvas import Canvas, Dot

OLD, GUIDE, NEW, MARK, LETTER = "stitch", "cut", "chosen", "mark", "name"
"""Tones, for widgets that colour."""

EDGE = 4
"""Room for letters left and right of what is shown [characters]."""

NEAR = (
    (1, -1), (1, 1), (-1, -1), (-1, 1), (1, 0), (-1, 0), (0, -1), (0, 1), (2, 0), (-2, 0),
    (2, -1), (2, 1), (-2, -1), (-2, 1), (0, -2), (0, 2), (3, 0), (-3, 0), (2, -2), (2, 2),
    (-2, -2), (-2, 2), (4, -1), (4, 1), (-4, -1), (-4, 1), (0, -3), (0, 3), (5, -2), (5, 2),
    (-5, -2), (-5, 2),
)  # fmt: skip
"""Where a letter may stand from its point, best first: columns and rows."""

CLOSE = 8
"""How many of those are close enough for a letter that the step does not name."""

NOTCH = 4.0
"""How far a notch reaches out of its line [dots]."""


def draw_step(canvas: Canvas, scene: Scene, unit: Unit) -> None:
    """Draw a step: old lines thin, guides dotted, its own heavy, its letters and lengths."""
    view = _View(canvas, scene)
    for path in scene.guides:
        canvas.polyline(view.dots(path), "dotted", tone=GUIDE)
    for path in scene.new_guides:
        canvas.polyline(view.dots(path), "dashed", tone=NEW)
    for path in scene.lines:
        canvas.polyline(view.dots(path), tone=OLD)
    for path in scene.new_lines:  # the cut line, round the finished piece, as elsewhere
        pattern, width = ("dotted", 1) if scene.shown else ("solid", 2)
        canvas.polyline(view.dots(path), pattern, width=width, tone=NEW)
    for mark in (*scene.marks, *scene.new_marks):
        view.notch(mark, 1 if mark in scene.marks else 2)
    spots = () if scene.shown else scene.spots
    for one in scene.measures:
        canvas.polyline([view.dot(one.start), view.dot(one.end)], tone=NEW)
    for spot in spots:
        view.point(spot)
    _letters(view, scene, spots, unit)


def _letters(view: _View, scene: Scene, spots: Iterable[Spot], unit: Unit) -> None:
    """The step's own letters and lengths first, then what it names, then others close by."""
    for spot in spots:
        if spot.new:
            view.write(spot.names, spot.at)
    for one in scene.measures:
        view.write((unit.spell(one.by),), one.start.toward(one.end, 0.5))
    for mark in scene.new_marks:
        view.write((mark.name,), mark.at)
    for spot in spots:
        if spot.named and not spot.new:
            view.write(spot.names, spot.at)
    if scene.shown:
        for size in scene.shown.sizes:
            view.size(size.start, size.end, unit.spell(size.by.mm))
        for edge in scene.shown.edges:
            view.write((unit.spell(edge.by.mm),), edge.at)
    for spot in spots:
        if not (spot.named or spot.new):
            view.write(spot.names, spot.at, CLOSE)


def draw_corner(canvas: Canvas, scene: Scene, unit: Unit) -> None:
    """Draw how the corner of a finished piece's hem is mirrored."""
    corner = scene.shown.corner if scene.shown else None
    if corner is None:
        return
    reach = (corner.below - corner.above).length()
    at = corner.corner
    view = _View(canvas, scene, Box(at.x, at.y - reach * 0.8, at.x, at.y + reach * 0.8))
    for path in scene.lines:
        canvas.polyline(view.dots(path), tone=OLD)
    for path in scene.new_lines:
        canvas.polyline(view.dots(path), "dotted", tone=NEW)
    foot = corner.above.toward(corner.below, 0.5)
    for spot in (corner.above, corner.below):
        canvas.polyline([view.dot(spot), view.dot(foot)], width=2, tone=NEW)
        view.write((unit.spell(reach / 2),), spot.toward(foot, 0.5))
    view.write(("fold line",), at + corner.along * (reach * 0.6))


class _View:
    """A part of the draft's paper on a canvas."""

    def __init__(self, canvas: Canvas, scene: Scene, part: Box | None = None) -> None:
        self.canvas = canvas
        wide, high = max(canvas.width - 4 * EDGE, 8), max(canvas.height - 8, 8)
        part = part or (_whole(scene) if scene.shown else window(scene, high / wide))
        self.times = min(wide / max(part.width, 1.0), high / max(part.height, 1.0))
        self.left = (part.left + part.right) / 2 - canvas.width / self.times / 2
        self.top = (part.top + part.bottom) / 2 - canvas.height / self.times / 2
        self._written: set[tuple[int, int]] = set()

    def dot(self, point: Point) -> Dot:
        return (point.x - self.left) * self.times, (point.y - self.top) * self.times

    def dots(self, path: Path) -> list[Dot]:
        return [self.dot(point) for point in path.flattened(0.5 / self.times)]

    def _cell(self, point: Point) -> tuple[int, int]:
        x, y = self.dot(point)
        return int(x // 2), int(y // 4)

    def _holds(self, point: Point) -> bool:
        column, row = self._cell(point)
        return 0 <= column < self.canvas.columns and 0 <= row < self.canvas.rows

    def point(self, spot: Spot) -> None:
        """Mark a point: a heavy dot if it is new, a small one if it was there."""
        if self._holds(spot.at):
            sign = "●" if spot.new else "○" if spot.named else "·"
            cell = self._cell(spot.at)
            self.canvas.text(*cell, sign, NEW if spot.new else LETTER)
            self._written.add(cell)

    def notch(self, mark: NotchMark, width: int) -> None:
        """Draw a notch across its line; two strokes stand beside each other."""
        along = mark.out.square() * (2 / self.times)
        for aside in (0.0,) if mark.strokes == 1 else (-1.0, 1.0):
            at = mark.at + along * aside
            ends = (at + mark.out * (-1 / self.times), at + mark.out * (NOTCH / self.times))
            self.canvas.polyline([self.dot(end) for end in ends], width=width, tone=MARK)

    def size(self, start: Point, end: Point, told: str) -> None:
        """Draw a size of the finished piece and write it beside its middle."""
        self.canvas.polyline([self.dot(start), self.dot(end)], "dashed", tone=MARK)
        self.write((told,), start.toward(end, 0.5))

    def write(self, names: tuple[str, ...], at: Point, many: int = len(NEAR)) -> None:
        """Write words beside a point: on blank paper, else over lines, never over words."""
        if not self._holds(at):
            return
        text = ", ".join(names)
        places = list(self._places(text, at, many))
        blank = (place for place in places if self.canvas.is_free(*place, len(text)))
        over = (place for place in places if many == len(NEAR) and self._bare(*place, len(text)))
        place = next(blank, None) or next(over, None)
        if place is not None:
            self.canvas.text(*place, text, LETTER)
            self._written |= {(place[0] + step, place[1]) for step in range(len(text))}

    def _places(self, text: str, at: Point, many: int) -> Iterator[tuple[int, int]]:
        column, row = self._cell(at)
        for across, down in NEAR[:many]:
            left = across if across > 0 else across - len(text) + 1 if across else -(len(text) // 2)
            yield column + left, row + down

    def _bare(self, column: int, row: int, many: int) -> bool:
        """Say whether nothing is written on some characters, whatever is drawn there."""
        inside = column >= 0 and column + many <= self.canvas.columns
        within = inside and 0 <= row < self.canvas.rows
        return within and not self._written.intersection(
            (column + step, row) for step in range(-1, many + 1)
        )


def _whole(scene: Scene) -> Box:
    """All of a finished piece."""
    paths = (*scene.lines, *scene.new_lines)
    return box_of(point for path in paths for point in path.flattened(1.0))
