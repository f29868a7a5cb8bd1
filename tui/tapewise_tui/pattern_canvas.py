"""Draw the pieces of a pattern beside each other, as large as a canvas has room."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import accumulate

from tapewise_core.drafting.labels import title
from tapewise_core.drafting.piece import Piece
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.units import Unit
from tapewise_tui.canvas import Canvas, Dot

GAP = 6
"""Dots left free beside each piece and, for its name, below it."""

ROOM = 1.6
"""Dots an allowance of 1 cm needs for the cut line to be told from the stitch line."""

NOTCH, HEAD = 3.0, 3.0
"""How long a notch and the grain's arrow heads are drawn [dots]."""

STITCH, CUT, FOLD, MARK, NAME, CHOSEN = "stitch", "cut", "fold", "mark", "name", "chosen"
"""Tones, for widgets that colour."""


@dataclass(frozen=True, slots=True)
class Placed:
    """A piece with its place: ``left`` and ``top`` are where its own zero lies [dots]."""

    piece: Piece
    box: Box
    times: float
    left: float
    top: float

    def dot(self, point: Point) -> Dot:
        """Return a point of the piece [mm] on the canvas [dots]."""
        return point.x * self.times + self.left, point.y * self.times + self.top

    def dots(self, path: Path) -> list[Dot]:
        """Return a path on the canvas, true within half a dot."""
        return [self.dot(point) for point in path.flattened(0.5 / self.times)]

    def holds(self, x: float, y: float) -> bool:
        """Say whether a place on the canvas [dots] is in the piece's box or at its name."""
        left, top = self.dot(Point(self.box.left, self.box.top))
        right, low = self.dot(Point(self.box.right, self.box.bottom))
        half = GAP / 2
        return left - half <= x <= right + half and top - half <= y <= low + GAP


def placed(pieces: Sequence[Piece], width: float, height: float) -> tuple[Placed, ...]:
    """Return pieces in rows, in their own order, at the one scale that fits width and height [dots]."""
    if not pieces or width <= GAP or height <= GAP:
        return ()
    boxes = [box_of(piece.cut) for piece in pieces]
    rows, times = max(
        ((rows, _scale(boxes, rows, width, height)) for rows in _arrangements(boxes)),
        key=lambda found: found[1],
    )
    return tuple(_set_out(pieces, boxes, rows, times)) if times > 0 else ()


def _arrangements(boxes: Sequence[Box]) -> Iterator[list[list[int]]]:
    """Ways to break the pieces into rows: filled up to each width some run of pieces has."""
    widths = {
        sum(box.width for box in boxes[i : j + 1])
        for i in range(len(boxes))
        for j in range(i, len(boxes))
    }
    for limit in widths:
        rows: list[list[int]] = [[]]
        for number, box in enumerate(boxes):
            used = sum(boxes[i].width for i in rows[-1])
            if rows[-1] and used + box.width > limit + 1e-6:
                rows.append([])
            rows[-1].append(number)
        yield rows


def _scale(boxes: Sequence[Box], rows: list[list[int]], width: float, height: float) -> float:
    """Dots a millimetre at which rows fit, gaps and names kept."""
    across = min((width - GAP * (len(row) + 1)) / sum(boxes[i].width for i in row) for row in rows)
    down = (height - (GAP + 2) * len(rows)) / sum(_tallest(boxes, row) for row in rows)
    return min(across, down)


def _tallest(boxes: Sequence[Box], row: list[int]) -> float:
    return max(boxes[i].height for i in row)


def _set_out(
    pieces: Sequence[Piece], boxes: Sequence[Box], rows: list[list[int]], times: float
) -> Iterator[Placed]:
    tops = accumulate((_tallest(boxes, row) * times + GAP + 2 for row in rows), initial=2.0)
    for row, top in zip(rows, tops, strict=False):
        left = float(GAP)
        for i in row:
            box = boxes[i]
            yield Placed(pieces[i], box, times, left - box.left * times, top - box.top * times)
            left += box.width * times + GAP


def draw_pattern(canvas: Canvas, places: Sequence[Placed], selected: str | None) -> None:
    """Draw every piece: stitch line solid, cut line dotted, fold chain, notches, grain, name."""
    for place in places:
        chosen = place.piece.name == selected
        _cut(canvas, place)
        _stitch(canvas, place, chosen)
        _notches(canvas, place)
        _grain(canvas, place)
    for place in places:
        _name(canvas, place, place.piece.name == selected)


def _cut(canvas: Canvas, place: Placed) -> None:
    if place.times * 10 < ROOM:
        return
    points = [place.dot(point) for point in place.piece.cut]
    canvas.polyline(_thinned([*points, points[0]]), "dotted", tone=CUT)


def _thinned(points: Sequence[Dot]) -> list[Dot]:
    """Points at least two thirds of a dot apart; the cut line has many more than can be seen."""
    kept = [points[0]]
    for point in points[1:-1]:
        if abs(point[0] - kept[-1][0]) + abs(point[1] - kept[-1][1]) > 0.67:
            kept.append(point)
    return [*kept, points[-1]]


def _stitch(canvas: Canvas, place: Placed, chosen: bool) -> None:
    for edge in place.piece.edges:
        points = place.dots(edge.path)
        if edge.fold:
            canvas.wipe(points, 0)
            canvas.polyline(points, "chain", tone=FOLD)
        else:
            tone, width = (CHOSEN, 2) if chosen else (STITCH, 1)
            canvas.polyline(points, width=width, tone=tone)


def _notches(canvas: Canvas, place: Placed) -> None:
    """Ticks outwards, across the stitch line, one or two side by side."""
    for notch in place.piece.notches:
        path = place.piece.edge(notch.edge).path
        apart = 3 / place.times if notch.strokes == 2 else 0.0
        for aside in {-apart / 2, apart / 2}:
            spot, along = path.at(min(max(notch.distance + aside, 0.0), path.length()))
            out = -along.square() * (NOTCH / place.times)
            canvas.polyline([place.dot(spot), place.dot(spot + out)], tone=MARK)


def _grain(canvas: Canvas, place: Placed) -> None:
    """A line with a head at both ends, where it is long enough to be told from a notch."""
    start, end = place.piece.grain
    along = (end - start).unit()
    if (end - start).length() * place.times < 5 * HEAD:
        return
    canvas.polyline([place.dot(start), place.dot(end)], "dashed", tone=MARK)
    for tip, way in ((start, along), (end, -along)):
        for angle in (40, -40):
            head = tip + way.turned(angle) * (HEAD / place.times)
            canvas.polyline([place.dot(tip), place.dot(head)], tone=MARK)


def _name(canvas: Canvas, place: Placed, chosen: bool) -> None:
    """The name inside the piece if it has room, else below; the chosen one in brackets."""
    words = f"[{title(place.piece.name)}]" if chosen else title(place.piece.name)
    box = place.box
    x, top = place.dot(Point((box.left + box.right) / 2, box.top))
    column = min(max(int(x / 2 - len(words) / 2), 0), canvas.columns - len(words))
    high, low = int(top) // 4, int(place.dot(Point(0, box.bottom))[1]) // 4
    inside = sorted(range(high, low + 1), key=lambda row: abs(row - (high + low) / 2))
    free = (row for row in inside if canvas.is_free(column - 1, row, len(words) + 2))
    canvas.text(column, next(free, low + 1), words, NAME)


def seam_lengths(piece: Piece, unit: Unit) -> list[tuple[str, str]]:
    """Return the name and the sewn length of every edge of a piece, in the reader's unit."""
    return [
        (f"{edge.name.replace('_', ' ')}{', on the fold' if edge.fold else ''}",
         unit.spell(edge.path.length()))
        for edge in piece.edges
    ]  # fmt: skip


def pairs(lines: Sequence[tuple[str, str]], width: int) -> list[str]:
    """Set names left and lengths right in a column, names cut where they must be.

    >>> pairs([("neckline", "23 cm")], 16)
    ['neckline   23 cm']
    """
    return [
        f"{name[: max(width - len(told) - 1, 0)]:<{width - len(told)}}{told}"
        for name, told in lines
    ]
