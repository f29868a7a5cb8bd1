"""The line to cut along, outside a closed outline by each edge's own allowance."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from tapewise_core.geometry.cut_round import drawn_round
from tapewise_core.geometry.cut_shapes import joined_round
from tapewise_core.geometry.outline import Margin, filled
from tapewise_core.geometry.rows import rows

if TYPE_CHECKING:
    import numpy as np

STRAIGHT = 1e-4
"""Points this near to a straight line between their neighbours are left out [mm]."""

ONE = 1e-3
"""Points so near to the one before are one with it [mm]."""


def cut_line(margins: Sequence[Margin]) -> np.ndarray:
    """Return the closed line to cut along, clockwise, for a closed outline of edges: a row of x and
    y for each of its points [mm].

    Every edge is offset along its exact normals; neighbours meet in a mitre, and
    at a turned edge in the mirror image of what lies beside it, so that the hem
    turns up as wide as what it is sewn to. The first point is not repeated.

    It is drawn from corner to corner; only where that is no one line are allowances joined as
    shapes, which comes to the same and takes five times as long: for one piece in three hundred.
    """
    line = drawn(margins)
    return _thinned(rows(joined_round(margins))) if line is None else line


def drawn(margins: Sequence[Margin]) -> np.ndarray | None:
    """Return the cut line as it is drawn from corner to corner, None where that is not one line
    round the piece."""
    whole = drawn_round(margins)
    line = _thinned(rows(whole)) if whole else None
    return line if line is not None and _encloses(line) else None


def _encloses(line: np.ndarray) -> bool:
    """Say whether a line runs clockwise, as seen, round one area."""
    if len(line) < 3:
        return False
    shape = filled(line)
    return bool(shape.is_valid and shape.exterior.is_ccw)


def _thinned(line: np.ndarray) -> np.ndarray:
    """Drop points of a closed line that lie on it without them, and those next to another."""
    import numpy as np
    from shapely import get_coordinates, linestrings, simplify

    whole = linestrings(np.concatenate([line, line[:1]]))
    kept = get_coordinates(simplify(whole, STRAIGHT, preserve_topology=False))[:-1]
    if (np.hypot(*(kept[1:] - kept[:-1]).T) > ONE).all():
        return kept
    return kept[list(_apart(kept.tolist()))]


def _apart(places: Sequence[Sequence[float]]) -> Iterator[int]:
    """Which places are not all but on the one kept before."""
    last: Sequence[float] = (math.inf, math.inf)
    for at, place in enumerate(places):
        if math.dist(place, last) > ONE:
            yield at
            last = place
