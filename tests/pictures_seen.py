"""What a person sees of a drawing: whether words lie over one another, or over a line."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from functools import cache
from typing import Any

import shapely
from PIL import ImageFont

from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Drawing, Stroke, TextLine
from tapewise_core.writers.lettering import FILE

POINT = 25.4 / 72
"""A point of type [mm]."""

EM = 200
"""The size letters are measured at [pixels]."""

PEN = 0.1
"""No stroke is taken to be thinner than this [mm]."""


@cache
def _letters() -> Any:
    return ImageFont.truetype(str(FILE), EM)


@cache
def _ink(text: str) -> tuple[float, float, float, float]:
    """What words cover about the start of their baseline, and their advance, as shares of the
    type's size: from the font that printed files carry."""
    left, top, right, bottom = _letters().getbbox(text, anchor="ls")
    return left / EM, top / EM, right / EM, bottom / EM


def covered(words: TextLine) -> Any:
    """Return the rectangle that words cover, as they are printed."""
    left, top, right, bottom = (side * words.size for side in _ink(words.text))
    if words.bold:  # drawn with a pen of a 34th of their size besides
        pen = words.size / 68
        left, top, right, bottom = left - pen, top - pen, right + pen, bottom + pen
    advance = _letters().getlength(words.text) / EM * words.size
    shift = {"start": 0.0, "middle": advance / 2, "end": advance}[words.anchor]
    corners = ((left, top), (right, top), (right, bottom), (left, bottom))
    placed = [words.at + Vector(x - shift, y).turned(words.angle) for x, y in corners]
    return shapely.Polygon([(point.x, point.y) for point in placed])


def inked(stroke: Stroke) -> Any:
    """Return what a stroke covers."""
    line = shapely.LineString([_pair(point) for point in stroke.path.flattened(0.02)])
    return line.buffer(max(stroke.width, PEN) / 2, cap_style="flat")


def _pair(point: Point) -> tuple[float, float]:
    return point.x, point.y


def overlaps(drawing: Drawing) -> Iterator[str]:
    """Say of which words lie over others, over a line or over the picture's edge."""
    words = [ink for ink in drawing.inks if isinstance(ink, TextLine)]
    boxes = [covered(one) for one in words]
    strokes = [inked(ink) for ink in drawing.inks if isinstance(ink, Stroke)]
    sheet = _sheet(drawing)
    for one, box in zip(words, boxes, strict=True):
        if not sheet.contains(box):
            yield f"{drawing.title}: “{one.text}” runs off the picture"
    if not words:
        return
    for first, second in shapely.STRtree(boxes).query(boxes, predicate="intersects").T:
        if first < second:
            yield f"{drawing.title}: “{words[first].text}” on “{words[second].text}”"
    if strokes:
        for first, _ in shapely.STRtree(strokes).query(boxes, predicate="intersects").T:
            yield f"{drawing.title}: “{words[first].text}” on a line"


def _sheet(drawing: Drawing) -> Any:
    box = drawing.box
    return shapely.box(box.left, box.top, box.right, box.bottom)


def texts(drawing: Drawing) -> Counter[str]:
    """Return the words on a drawing."""
    return Counter(ink.text for ink in drawing.inks if isinstance(ink, TextLine))
