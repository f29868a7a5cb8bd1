"""What a piece takes of the paper."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from tapewise_core.paper.drawing import Ink, Layer, Stroke
from tapewise_core.paper.grid import line_of

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry


def solid(inks: Sequence[Ink]) -> BaseGeometry:
    """Return all that is inside a cut line or drawn beside it."""
    from shapely import union_all
    from shapely.geometry import LineString, Polygon

    lines = [[(p.x, p.y) for p in line_of(ink, 1.0)] for ink in inks]
    cuts = [isinstance(ink, Stroke) and ink.layer is Layer.CUT and ink.closed for ink in inks]
    shapes: list[BaseGeometry] = [
        Polygon(line).buffer(0) if cut and len(line) > 3 else LineString(line)
        for line, cut in zip(lines, cuts, strict=True)
        if len(line) > 1
    ]
    return union_all(shapes)
