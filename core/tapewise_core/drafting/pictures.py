"""One picture for each step of a draft: what is on the paper, the step's own part heavier."""

from __future__ import annotations

import itertools
from collections.abc import Iterator, Sequence

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.segments import Cubic, Line, Segment
from tapewise_core.paper.drawing import Dash, Drawing, Ink, Layer, Stroke, TextLine

WIDE, HIGH = 58.0, 74.0
"""A picture's largest size [mm], so that several stand on a page."""

NEW, OLD = 3.6, 2.6
"""Type of a step's own letters and of those before it [mm]: 7 points and more."""

EDGE = 9.0
"""Room for letters round the drawing [mm]."""


def step_pictures(draft: Draft) -> Iterator[Drawing]:
    """Yield one picture for each step, all of one draft at the same reduced scale."""
    frame = _frame(draft.paper)
    scale = min(WIDE / max(frame.width, 1.0), HIGH / max(frame.height, 1.0), 1.0)
    before = DraftingPaper()
    for number, (step, paper) in enumerate(zip(draft.steps, draft.papers, strict=True), start=1):
        inks = tuple(_inks(paper, before, frame, scale))
        box = Box(0, 0, frame.width * scale + 2 * EDGE, frame.height * scale + 2 * EDGE)
        title = f"{draft.title}, step {number}"
        yield Drawing(
            title, f"{type(step).__name__.lower()}; reduced, not to measure from", box, inks
        )
        before = paper


def _frame(paper: DraftingPaper) -> Box:
    """Everything ever drawn, so that pictures of one draft do not jump."""
    points = list(paper.points.values())
    for path in (*paper.lines.values(), *paper.guides.values()):
        points += path.flattened(1.0)
    return box_of(points)


def _inks(paper: DraftingPaper, before: DraftingPaper, frame: Box, scale: float) -> Iterator[Ink]:
    for name, path in paper.guides.items():
        new = before.guides.get(name) != path
        width = 0.35 if new else 0.15
        yield Stroke(_reduced(path, frame, scale), Layer.GUIDE, Dash.DOTTED, width, name=name)
    for name, path in paper.lines.items():
        width = 0.8 if before.lines.get(name) != path else 0.35
        yield Stroke(_reduced(path, frame, scale), Layer.STITCH, width=width, name=name)
    spots = [(name, _placed(at, frame, scale), new) for name, at, new in _spots(paper, before)]
    yield from (_dot(at, 0.9 if new else 0.5) for _, at, new in spots)
    yield from _lettered(spots)


def _lettered(spots: Sequence[tuple[str, Point, bool]]) -> Iterator[TextLine]:
    """A letter beside each point, the step's own first, none over another or over a point."""
    taken = [Box(at.x - 0.6, at.y - 0.6, at.x + 0.6, at.y + 0.6) for _, at, _ in spots]
    for name, at, new in sorted(spots, key=lambda spot: not spot[2]):
        size = NEW if new else OLD
        found = [_beside(name, at, size, new, way) for way in _WAYS]
        boxes = [box_of(words.corners()) for words in found]
        hits = [sum(_meet(box, other) for other in taken) for box in boxes]
        best = hits.index(min(hits))
        taken.append(boxes[best])
        yield found[best]


_WAYS = (
    (1.0, -1.0), (1.0, 1.0), (-1.0, -1.0), (-1.0, 1.0), (0.0, -1.3), (0.0, 1.3), (1.6, 0.0),
    (-1.6, 0.0), (2.2, -2.2), (2.2, 2.2), (-2.2, -2.2), (-2.2, 2.2), (0.0, -3.0), (0.0, 3.0),
    (3.4, 0.0), (-3.4, 0.0), (3.4, -3.0), (3.4, 3.0), (-3.4, -3.0), (-3.4, 3.0), (0.0, -4.6),
    (0.0, 4.6), (5.6, 0.0), (-5.6, 0.0), (5.6, -2.4), (5.6, 2.4), (-5.6, -2.4), (-5.6, 2.4),
    (2.8, -4.8), (2.8, 4.8), (-2.8, -4.8), (-2.8, 4.8),
)  # fmt: skip
"""Where a letter may stand from its point, best first: across and down, in heights of capitals."""


def _beside(name: str, at: Point, size: float, bold: bool, way: tuple[float, float]) -> TextLine:
    across, down = way
    middle = at.y + down * size * 0.75 + size * 0.36
    if abs(across) < 0.1:
        return TextLine(name, Point(at.x, middle), size, "middle", bold=bold)
    place = Point(at.x + across * size * 0.4, middle)
    return TextLine(name, place, size, "start" if across > 0 else "end", bold=bold)


def _meet(one: Box, other: Box) -> bool:
    across = one.left < other.right and one.right > other.left
    return across and one.top < other.bottom and one.bottom > other.top


def _spots(paper: DraftingPaper, before: DraftingPaper) -> Iterator[tuple[str, Point, bool]]:
    """Letters with their points; two letters at one place are set as one word."""
    named: dict[tuple[int, int], list[str]] = {}
    for name, at in paper.points.items():
        named.setdefault((round(at.x), round(at.y)), []).append(name)
    for names in named.values():
        new = any(name not in before.points for name in names)
        yield ", ".join(names), paper.points[names[0]], new


def _dot(at: Point, size: float) -> Stroke:
    corners = [at + Vector(size / 2, 0).turned(angle) for angle in range(0, 361, 45)]
    path = Path(tuple(Line(a, b) for a, b in itertools.pairwise(corners)))
    return Stroke(path, Layer.MARKS, width=0.2, closed=True, filled=True)


def _placed(point: Point, frame: Box, scale: float) -> Point:
    return Point((point.x - frame.left) * scale + EDGE, (point.y - frame.top) * scale + EDGE)


def _reduced(path: Path, frame: Box, scale: float) -> Path:
    def placed(segment: Segment) -> Segment:
        if isinstance(segment, Line):
            return Line(_placed(segment.start, frame, scale), _placed(segment.end, frame, scale))
        return Cubic(
            _placed(segment.start, frame, scale),
            _placed(segment.leave, frame, scale),
            _placed(segment.arrive, frame, scale),
            _placed(segment.end, frame, scale),
        )

    return Path(tuple(placed(segment) for segment in path.segments))
