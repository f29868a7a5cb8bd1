"""What a piece takes of the paper."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

import numpy as np

from tapewise_core.paper.drawing import Ink, Layer, Stroke
from tapewise_core.paper.grid import line_of
from tapewise_core.paper.lattice import Flags, Floats

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


def inside(shape: BaseGeometry, across: Floats, down: Floats) -> Flags:
    """Return which crossings of lines across and down, in rising order [mm], lie inside a shape.

    Along a row each edge that is crossed leads in or out: edges are counted once for a whole row,
    in a quarter of the time it takes to ask for place after place.
    """
    import shapely

    places, ring = shapely.get_coordinates(
        shapely.get_rings(shapely.get_parts(shape)), return_index=True
    )
    along = ring[1:] == ring[:-1]
    (x, y), (to_x, to_y) = places[:-1][along].T, places[1:][along].T
    low, high = np.minimum(y, to_y), np.maximum(y, to_y)
    row, edge = np.nonzero((low <= down[:, None]) & (down[:, None] < high))
    share = (down[row] - y[edge]) / (to_y - y)[edge]
    column = np.searchsorted(across, x[edge] + share * (to_x - x)[edge])
    wide = len(across) + 1
    crossed = np.bincount(row * wide + column, minlength=len(down) * wide)
    return np.asarray(crossed.reshape(-1, wide)[:, :-1].cumsum(axis=1) % 2 == 1)
