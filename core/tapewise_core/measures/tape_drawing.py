"""The figure with a measure's tape as a small picture for paper."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.measures.catalogue import measure
from tapewise_core.measures.croquis import croquis
from tapewise_core.measures.tape import Landmark, Tape
from tapewise_core.measures.tapes import TAPES
from tapewise_core.paper.drawing import Dash, Drawing, Ink, Layer, Stroke, TextLine

WIDE, HIGH = 34.0, 37.0
"""The figure's largest size [mm]."""

MOST = 66.0
"""How wide it may be with the names beside it [mm]."""

TYPE = 2.6
"""The size of the names [mm]: 7 points and more."""


def tape_drawing(key: str) -> Drawing:
    """Return where a measure's tape goes; raises ReadingError if there is no such measure."""
    row = measure(key)
    tape = TAPES[row.key]
    left, right = (_room(tape, side) for side in ("left", "right"))
    frame, wide = tape.frame, min(WIDE, MOST - left - right)
    times = min(wide / frame.width, HIGH / frame.height)
    box = Box(-left, 0.0, frame.width * times + right, frame.height * times)
    seen = (ink for ink in _inks(tape, times) if _touches(ink, box))
    words = f"Where the tape goes for the {row.name}, seen from the {row.view.value}"
    return Drawing(f"{row.name}, from the {row.view.value}", words, box, tuple(seen))


def _room(tape: Tape, side: str) -> float:
    """Room for the longest name on a side of the figure [mm]."""
    names = [TextLine(one.name, one.at, TYPE) for one in tape.landmarks if one.side == side]
    return 2.0 + max(name.width() for name in names) if names else 0.0


def _touches(ink: Ink, box: Box) -> bool:
    """Say whether any of an ink may be inside the picture."""
    own = box_of(ink.corners())
    across = own.right >= box.left and own.left <= box.right
    return across and own.bottom >= box.top and own.top <= box.bottom


def _inks(tape: Tape, times: float) -> Iterator[Ink]:
    figure = croquis(tape.view, tape.pose)
    body = (*figure.outline, *figure.details, *figure.fine)
    yield from _strokes(tape, times, body, Layer.GUIDE, width=0.3)
    yield from _strokes(tape, times, tape.guides, Layer.MARKS, Dash.DOTTED, 0.35)
    hidden = () if tape.hidden is None else (tape.hidden,)
    yield from _strokes(tape, times, hidden, Layer.MARKS, Dash.DOTTED, 0.5)
    yield from _strokes(tape, times, (tape.seen, *tape.ends()), Layer.CUT, width=1.1)
    for side in ("left", "right"):
        marks = [landmark for landmark in tape.landmarks if landmark.side == side]
        yield from _names(tape, times, marks)


def _strokes(
    tape: Tape,
    times: float,
    paths: Iterable[Path],
    layer: Layer,
    dash: Dash = Dash.SOLID,
    width: float = 0.3,
) -> Iterator[Stroke]:
    for path in paths:
        yield Stroke(_reduced(path, tape.frame, times), layer, dash, width)


def _names(tape: Tape, times: float, landmarks: list[Landmark]) -> Iterator[Ink]:
    """Names one under another beside the figure, a thin line from each to its place."""
    low = TYPE
    for landmark in sorted(landmarks, key=lambda mark: mark.at.y):
        spot = _placed(landmark.at, tape.frame, times)
        right = landmark.side == "right"
        x = tape.frame.width * times + 1 if right else -1.0
        at = Point(x, max(spot.y + TYPE * 0.35, low))
        low = at.y + TYPE * 1.3
        mid = Point(at.x, at.y - TYPE * 0.35)
        yield Stroke(ruled(spot, mid), Layer.GUIDE, width=0.15)
        yield TextLine(landmark.name, at, TYPE, "start" if right else "end")


def _placed(point: Point, frame: Box, times: float) -> Point:
    return Point((point.x - frame.left) * times, (point.y - frame.top) * times)


def _reduced(path: Path, frame: Box, times: float) -> Path:
    return path.placed(lambda point: _placed(point, frame, times))
