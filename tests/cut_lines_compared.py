"""The two ways to a cut line, drawn from corner to corner and joined as shapes, side by side."""

from __future__ import annotations

import random
from collections.abc import Iterator, Sequence

import numpy as np
import shapely
from people_made_up import bodies, styles

from tapewise_core.drafting.piece import Piece
from tapewise_core.errors import DraftError, OptionError
from tapewise_core.garments.garment import Garment
from tapewise_core.geometry.cut_shapes import joined_round
from tapewise_core.geometry.outline import Margin, filled, polygon
from tapewise_core.style.settle import settle
from tapewise_core.units import Unit


def pieces(page: Garment, count: int, seed: int) -> Iterator[Piece]:
    """Yield the pieces of a garment for many made-up bodies, in styles by chance."""
    rng = random.Random(seed)
    keys = {option.key for option in page.options}
    for body in bodies(count, seed):
        asked = {key: value for key, value in styles(rng).items() if key in keys}
        try:
            seen = page.sees(body)
            yield from page.draft(seen, settle(page.options, asked, seen, Unit.CM)).pieces
        except (DraftError, OptionError):
            continue


def apart(line: np.ndarray, margins: Sequence[Margin]) -> float:
    """Return how far a line is at its worst from the one joined as shapes [mm]."""
    one, other = filled(line).exterior, polygon(joined_round(margins)).exterior
    return max(
        float(shapely.distance(shapely.points(shapely.get_coordinates(a)), b).max())
        for a, b in ((one, other), (other, one))
    )


def between(line: np.ndarray, margins: Sequence[Margin]) -> float:
    """Return the area between a line and the one joined as shapes [mm²]; slits have none."""
    return float(filled(line).symmetric_difference(polygon(joined_round(margins))).area)
