"""Ink in PDF operators: strokes of lines and curves, and words in the one embedded font."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING, Any

from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.geometry.segments import Line
from tapewise_core.paper.drawing import Dash, Ink, Layer, Stroke, TextLine
from tapewise_core.paper.look import Look, dashes
from tapewise_core.writers.lettering import FONT, Lettering
from tapewise_core.writers.numbers import number

if TYPE_CHECKING:
    from reportlab.pdfgen.canvas import Canvas

POINTS = 72 / 25.4
"""PDF units in a millimetre: 1/72 inch each [iso32000-1, 8.3.2.3]."""


class PdfPen:
    """Draws ink on the current page or form; y is turned up from a height [mm].

    Strokes are written as operators [iso32000-1, 8.4 and 8.5] rather than
    through the library's path objects, which take half the time of a whole set.
    """

    def __init__(self, page: Canvas, look: Look, lettering: Lettering) -> None:
        self.page, self.lettering = page, lettering
        self.raw: Any = page
        self.colours = {layer: _rgb(colour) for layer, colour in look.inks.items()}
        self.styles: dict[tuple[Layer, float, Dash], str] = {}

    def draw(self, ink: Ink, height: float) -> None:
        """Draw one stroke or one line of words."""
        if isinstance(ink, TextLine):
            self._words(ink, height)
        else:
            self._stroke(ink, height)

    def _stroke(self, stroke: Stroke, height: float) -> None:
        style = (stroke.layer, stroke.width, stroke.dash)
        if style not in self.styles:
            self.styles[style] = self._style(stroke)
        painted = _PAINTED[stroke.closed, stroke.filled]
        self.raw._code.append(f"{self.styles[style]} {_outline(stroke.path, height)} {painted}")

    def _style(self, stroke: Stroke) -> str:
        """Colour of line and filling, width, round joins, dashes."""
        colour = self.colours[stroke.layer]
        broken = dashes(stroke.dash, stroke.width)
        dashed = " ".join(number(length * POINTS) for length in broken)
        width = number(stroke.width * POINTS)
        return f"{colour} RG {colour} rg {width} w 1 j [{dashed}] 0 d"

    def _words(self, words: TextLine, height: float) -> None:
        page, colour = self.page, self.colours[words.layer]
        text, size = self.lettering.shaped(words.text), words.size * POINTS
        shift = {"start": 0.0, "middle": 0.5, "end": 1.0}[words.anchor]
        start = -self.lettering.width(text, size) * shift
        page.saveState()
        self.raw._code.append(f"{colour} RG {colour} rg {number(size / 34)} w [] 0 d")
        page.translate(*_units(words.at, height))
        if words.angle:
            page.rotate(-words.angle)
        page.setFont(FONT, round(size, 3))
        page.drawString(round(start, 3), 0, text, mode=2 if words.bold else None)
        page.restoreState()


_PAINTED = {(False, False): "S", (True, False): "s", (False, True): "B", (True, True): "b"}
"""The operator that strokes a path, and closes or fills it if asked: closed, filled."""


def _outline(path: Path, height: float) -> str:
    """A path in PDF units, y upwards; all in one loop, as for SVG."""
    start = path.segments[0].start
    words = [f"{_pair(start, height)} m"]
    for segment in path.segments:
        end = _pair(segment.end, height)
        if isinstance(segment, Line):
            words.append(f"{end} l")
        else:
            handles = f"{_pair(segment.leave, height)} {_pair(segment.arrive, height)}"
            words.append(f"{handles} {end} c")
    return " ".join(words)


def _pair(point: Point, height: float) -> str:
    return f"{number(point.x * POINTS)} {number((height - point.y) * POINTS)}"


def _units(point: Point, height: float) -> tuple[float, float]:
    return round(point.x * POINTS, 3), round((height - point.y) * POINTS, 3)


@cache
def _rgb(colour: str) -> str:
    """Three shares from 0 to 1 for ``#rrggbb``."""
    return " ".join(number(int(colour[i : i + 2], 16) / 255) for i in (1, 3, 5))
