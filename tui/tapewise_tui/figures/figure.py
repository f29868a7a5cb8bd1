"""Put the figure and one measure's tape on a canvas."""

from __future__ import annotations

from collections.abc import Iterable

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.measures.build import Build, shaped_tape
from tapewise_core.measures.croquis import croquis
from tapewise_core.measures.tape import Tape
from tapewise_core.measures.tapes import TAPES
from tapewise_tui.canvas import Canvas, Dot
from tapewise_tui.figures.labels import label

DETAILED, FINE = 0.04, 0.06
"""Dots a millimetre from which the figure's details, and its finest lines, help to read it."""

BROAD = 0.16
"""Dots a millimetre from which the tape is three dots wide, not two."""

TAPE, HIDDEN, BODY = "tape", "hidden", "body"
"""Tones, for widgets that colour."""


class Scale(Frozen):
    """From the figure's millimetres to dots."""

    times: float
    left: float
    top: float

    def dots(self, path: Path) -> list[Dot]:
        """Return a path as points on the canvas, true within a third of a dot."""
        return [self.dot(point) for point in path.flattened(0.3 / self.times)]

    def dot(self, point: Point) -> Dot:
        """Return one place on the canvas."""
        return point.x * self.times + self.left, point.y * self.times + self.top


def fitted(box: Box, canvas: Canvas) -> Scale:
    """Return the largest scale at which a box fits, in the middle of the canvas."""
    times = min(canvas.width / box.width, canvas.height / box.height)
    left = (canvas.width - box.width * times) / 2 - box.left * times
    return Scale(times, left, (canvas.height - box.height * times) / 2 - box.top * times)


def figure(
    key: str,
    width_cells: int,
    height_cells: int,
    ascii: bool = False,
    build: Build | None = None,
) -> list[str]:
    """Return the figure with a measure's tape as lines of text; raises KeyError if unknown."""
    return drawn(key, width_cells, height_cells, ascii, build).lines()


def drawn(
    key: str,
    width_cells: int,
    height_cells: int,
    ascii: bool = False,
    build: Build | None = None,
) -> Canvas:
    """Return the same as a canvas, which knows what is tape and what is body.

    With somebody's build it is her figure, and the tape lies on her.
    """
    tape = TAPES[key] if build is None else shaped_tape(TAPES[key], build)
    canvas = Canvas(width_cells, height_cells, ascii=ascii)
    if canvas.width and canvas.height:
        scale = fitted(tape.frame, canvas)
        _body(canvas, scale, tape, build)
        _tape(canvas, scale, tape)
        for landmark in tape.landmarks:
            label(canvas, scale.dot(landmark.at), landmark.name, landmark.side)
    return canvas


def _body(canvas: Canvas, scale: Scale, tape: Tape, build: Build | None) -> None:
    seen = croquis(tape.view, tape.pose, build)
    _lines(canvas, scale, seen.outline, tone=BODY)
    if scale.times >= DETAILED:
        _lines(canvas, scale, seen.details, tone=BODY)
    if scale.times >= FINE:
        _lines(canvas, scale, seen.fine, tone=BODY)


def _lines(
    canvas: Canvas,
    scale: Scale,
    paths: Iterable[Path],
    pattern: str = "solid",
    width: int = 1,
    tone: str = "",
) -> None:
    for path in paths:
        canvas.polyline(scale.dots(path), pattern, width=width, tone=tone)


def _tape(canvas: Canvas, scale: Scale, tape: Tape) -> None:
    """The tape stands free of the body's lines, and the near half over the far one."""
    broad = 3 if scale.times >= BROAD else 2
    _lines(canvas, scale, tape.guides, "dotted", tone=HIDDEN)
    if tape.hidden is not None:
        _lines(canvas, scale, [tape.hidden], "dotted", tone=HIDDEN)
    canvas.wipe(scale.dots(tape.seen), broad)
    _lines(canvas, scale, [tape.seen], width=broad, tone=TAPE)
    _lines(canvas, scale, tape.ends(), width=broad, tone=TAPE)
