"""Lines of the draft on a picture: reduced, cut off at its edges, and taken on its ground."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise, starmap

from tapewise_core.drafting.picturing.ground import Place
from tapewise_core.drafting.picturing.placing import Placing
from tapewise_core.geometry.clipping import inside
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Dash, Layer, Stroke

TRIM = 0.6
"""Lines end so far from a picture's edge [mm]."""

CLEAR = 0.25
"""Kept free beside a line, besides half its width [mm]."""

FINE = 0.25
"""How far a flattened line may be from the true one, on the draft [mm]."""


class Flattened:
    """Lines of one draft as points, and the boxes round them, each worked out once."""

    def __init__(self) -> None:
        self._known: dict[int, tuple[Path, list[Point], Box]] = {}

    def points(self, path: Path) -> list[Point]:
        """Return a path's points [mm]."""
        return self.boxed(path)[0]

    def boxed(self, path: Path) -> tuple[list[Point], Box]:
        """Return a path's points and the box round them [mm]."""
        if id(path) not in self._known:
            points = path.flattened(FINE)
            self._known[id(path)] = path, points, box_of(points)
        return self._known[id(path)][1:]


class Sheet:
    """A part of the draft's paper on a picture of one size; words find room on ``placing``."""

    def __init__(self, part: Box, scale: float, width: float, height: float) -> None:
        self.scale = scale
        self.left = (part.left + part.right) / 2 - width / scale / 2
        self.top = (part.top + part.bottom) / 2 - height / scale / 2
        self.width, self.height = width, height
        self.box = Box(TRIM, TRIM, width - TRIM, height - TRIM)
        self.placing = Placing(width, height)

    def at(self, point: Point) -> Place:
        """Return where a point of the draft lies on the picture."""
        return (point.x - self.left) * self.scale, (point.y - self.top) * self.scale

    def holds(self, point: Point) -> bool:
        """Say whether a point of the draft lies on the picture."""
        return self.inside(self.at(point))

    def draw(
        self, path: Path, flat: Flattened, layer: Layer, dash: Dash = Dash.SOLID, width: float = 0.3
    ) -> None:
        """Draw a line of the draft."""
        left, top, scale, box = self.left, self.top, self.scale, self.box
        points, extent = flat.boxed(path)
        near = (extent.left - left) * scale, (extent.top - top) * scale
        far = (extent.right - left) * scale, (extent.bottom - top) * scale
        if near[0] > box.right or near[1] > box.bottom or far[0] < box.left or far[1] < box.top:
            return
        places = [((p.x - left) * scale, (p.y - top) * scale) for p in points]
        if self.inside(near) and self.inside(far):
            self.placing.ground.polyline(places, CLEAR + width / 2)
            self.placing.inks.append(Stroke(path.placed(self._placed), layer, dash, width))
        else:
            for run in _clipped(places, box):
                self.stroke(run, layer, dash, width)

    def stroke(
        self, places: Sequence[Place], layer: Layer, dash: Dash = Dash.SOLID, width: float = 0.3
    ) -> None:
        """Draw straight lines on the picture."""
        self.placing.ground.polyline(places, CLEAR + width / 2)
        path = ruled(*starmap(Point, places))
        self.placing.inks.append(Stroke(path, layer, dash, width))

    def frame(self, box: Box, layer: Layer, width: float) -> None:
        """Draw the outline of a box of the picture."""
        left, top, right, low = box.left, box.top, box.right, box.bottom
        corners = ((left, top), (right, top), (right, low), (left, low), (left, top))
        self.stroke(corners, layer, width=width)

    def dot(self, at: Place, size: float) -> None:
        """Draw a point as a small square, which is one stroke as long as wide; as wide all round
        is what it takes of the ground."""
        x, y = at
        self.placing.ground.line(at, at, CLEAR + size / 2)
        path = ruled(Point(x - size / 2, y), Point(x + size / 2, y))
        self.placing.inks.append(Stroke(path, Layer.MARKS, width=size))

    def inside(self, place: Place) -> bool:
        """Say whether a place lies on the picture."""
        (x, y), box = place, self.box
        return box.left <= x <= box.right and box.top <= y <= box.bottom

    def _placed(self, point: Point) -> Point:
        return Point((point.x - self.left) * self.scale, (point.y - self.top) * self.scale)


def _clipped(places: Iterable[Place], box: Box) -> Iterator[list[Place]]:
    """The stretches of a line that lie inside a box."""
    run: list[Place] = []
    for a, b in pairwise(places):
        kept = _part(a, b, box)
        if kept is None or (run and kept[0] != run[-1]):
            yield from _long(run)
            run = []
        if kept is not None:
            run = [*(run or [kept[0]]), kept[1]]
    yield from _long(run)


def _part(a: Place, b: Place, box: Box) -> tuple[Place, Place] | None:
    """The part of a straight line inside a box, or None."""
    shares = inside(a, b, box)
    if shares is None:
        return None
    low, high = shares
    x, y = b[0] - a[0], b[1] - a[1]
    start = a if low == 0.0 else (a[0] + x * low, a[1] + y * low)
    end = b if high == 1.0 else (a[0] + x * high, a[1] + y * high)
    return start, end


def _long(run: list[Place]) -> Iterator[list[Place]]:
    if len(run) > 1 and run[0] != run[-1]:
        yield run
