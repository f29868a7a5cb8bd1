"""Draw the pieces of a pattern beside each other, as large as a canvas has room."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import chain

from tapewise_core.drafting.labels import title
from tapewise_core.drafting.piece import Piece
from tapewise_core.geometry.point import Point
from tapewise_core.units import Unit
from tapewise_tui.canvas import Canvas, Dot
from tapewise_tui.pattern_places import GAP, Placed, placed

ROOM = 1.6
"""Dots an allowance of 1 cm needs for the cut line to be told from the stitch line."""

NOTCH, HEAD = 3.0, 3.0
"""How long a notch and the grain's arrow heads are drawn [dots]."""

BELOW = 4
"""A name stands fewer rows than that below a piece: its neighbour's may be in the first."""

STITCH, CUT, FOLD, MARK, NAME, CHOSEN = "stitch", "cut", "fold", "mark", "name", "chosen"
"""Tones, for widgets that colour."""


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


def draw_piece(canvas: Canvas, piece: Piece) -> None:
    """Draw one piece as large as there is room, as it is printed; fold and grain are named."""
    for place in placed((piece,), canvas.width, canvas.height + GAP):
        _cut(canvas, place)
        _stitch(canvas, place, chosen=False)
        _notches(canvas, place)
        _grain(canvas, place)
        for edge in piece.edges:
            if edge.fold:
                spots = [edge.path.at(edge.path.length() * share)[0] for share in ALONG]
                _beside(canvas, map(place.dot, spots), "fold", FOLD)
        start, end = piece.grain
        _beside(canvas, (place.dot(start.toward(end, share)) for share in ALONG), "grain", NAME)


ALONG = (0.5, 0.35, 0.65, 0.2, 0.8)
"""Where along a line its name may stand, best first."""


def _beside(canvas: Canvas, spots: Iterable[Dot], words: str, tone: str) -> None:
    """Write words beside the first place of a line where there is blank room, if anywhere."""
    for x, y in spots:
        column, row = int(x) // 2, int(y) // 4
        for left in (column + 2, column - 1 - len(words), column + 3):
            if canvas.is_free(left - 1, row, len(words) + 2):
                canvas.text(left, row, words, tone)
                return


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
    first, long = max(column - 1, 0), len(words) + 1
    below = (row for row in range(low + 1, low + BELOW) if canvas.is_free(first, row, long))
    canvas.text(column, next(chain(free, below), low + 1), words, NAME)


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
