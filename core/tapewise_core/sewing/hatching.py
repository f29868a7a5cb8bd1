"""Hatching: how the wrong side of cloth is told without colour."""

from __future__ import annotations

import math
from collections.abc import Sequence

from tapewise_core.drafting.picturing.sheet import Sheet
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Layer, Stroke

SHORT = 0.4
"""Lines that are no longer are left out [mm]."""


def hatch(sheet: Sheet, outlines: Sequence[Sequence[Point]], apart: float, pen: float) -> None:
    """Draw slanted lines inside outlines, ``apart`` from each other [mm]; a ring within another is
    left out."""
    from shapely import LineString, Polygon, get_parts, intersection, linestrings
    from shapely.geometry.base import BaseGeometry

    area: BaseGeometry = Polygon()
    for line in outlines:
        ring = Polygon([(p.x, p.y) for p in line]).buffer(0)
        area = area.symmetric_difference(ring)
    left, top, right, low = area.bounds
    high = low - top
    begins = [
        left + number * apart for number in range(1, math.ceil((right - left + high) / apart))
    ]
    lines = linestrings([((x, top), (x - high, low)) for x in begins])
    for part in get_parts(intersection(area, lines)):
        if isinstance(part, LineString) and part.length > SHORT:
            ends = [Point(*place) for place in part.coords]
            sheet.placing.inks.append(Stroke(ruled(*ends), Layer.GUIDE, width=pen))
