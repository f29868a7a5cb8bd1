"""A shape's profile holds all of it: in no column does its outline reach beyond what is kept."""

from __future__ import annotations

import numpy as np
import pytest
import shapely

from tapewise_core.lay.profile import GAP, STEP, profile

SHAPES = {
    "a slope down": [(0, 0), (98, 49), (0, 49)],
    "a slope up": [(0, 40), (83, 0), (83, 40)],
    "a curve of many points": [
        (50 + 50 * np.cos(a), 30 + 30 * np.sin(a)) for a in np.linspace(0, 6.2, 90)
    ],
    "a needle inside one column": [(0, 0), (1, 30), (2, 0)],
}


@pytest.mark.parametrize("name", SHAPES)
@pytest.mark.parametrize("phase", [0.0, 3.0])
def test_every_column_holds_what_lies_in_it(name: str, phase: float) -> None:
    """Exactly: the shape cut to a column is as high and as low there as the profile says, where the
    column before it is no higher or lower, which is the room kept beside."""
    points = np.array(SHAPES[name], dtype=float)
    points -= points.min(0)
    found = profile(points, phase)
    outline = shapely.Polygon(points + np.array([phase, 0.0]))
    exact: list[tuple[float, float]] = []
    for column in range(len(found.low) - 1):
        left = column * STEP
        part = outline.intersection(shapely.box(left, -1, left + STEP, 1000))
        exact.append((part.bounds[1], part.bounds[3]))
    exact.append(exact[-1])
    for column, (low, high) in enumerate(exact):
        before = exact[max(column - 1, 0)]
        assert found.low[column] == pytest.approx(min(low, before[0]), abs=1e-6)
        assert found.high[column] - GAP == pytest.approx(max(high, before[1]), abs=1e-6)
