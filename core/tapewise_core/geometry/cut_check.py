"""A cut line measured again, all along: how far it is from each edge's allowance."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from tapewise_core.geometry.chords import CLOSE, Chords, chords
from tapewise_core.geometry.cut_excuses import CORNER, ROOM, Excuse, Turn, excuse, turn
from tapewise_core.geometry.cut_spots import Spots, measured
from tapewise_core.geometry.outline import Margin

if TYPE_CHECKING:
    import numpy as np


def allowances_off(
    cuts: Sequence[np.ndarray], outlines: Sequence[Sequence[Margin]], stitched: Chords | None = None
) -> list[list[float]]:
    """Return by how much each edge's allowance is wrong at its worst place [mm], for many outlines.

    ``cuts`` are their closed cut lines, a row of x and y for each point; ``stitched`` are the
    chords of all their edges, where they are at hand.

    Measured from the stitch line to the nearest place of the cut line. Near a corner the cut
    line may be nearer only as far as the neighbour's allowance is narrower, and is cut off by a
    fold; it may be farther only by what a corner needs, one that points inwards too. Beside an
    edge without an allowance, such as a fold, the cut line is the edge itself. In a sharp corner
    the nearest place may be the neighbour's cut line, straight across the piece.
    """
    stitched = stitched or chords([edge.path for edges in outlines for edge in edges], CLOSE)
    spots = measured(cuts, [len(edges) for edges in outlines], stitched)
    return [_off(*one) for one in zip(outlines, spots, strict=True)]


def _off(margins: Sequence[Margin], spots: Spots) -> list[float]:
    """The worst difference along each edge of one outline [mm]."""
    turns = [turn(*pair) for pair in zip(margins, [*margins[1:], margins[0]], strict=True)]
    return [_worst(margins, turns, spots, index) for index in range(len(margins))]


def _worst(margins: Sequence[Margin], turns: Sequence[Turn], spots: Spots, index: int) -> float:
    """The worst difference along one edge [mm]: its spots from the worst on, until what is left
    can't be worse whatever a corner excuses."""
    worst, width = 0.0, margins[index].width
    corners = list(_corners(margins, turns, spots, index))
    for off, spot in spots.worst_first(index, width):
        if off <= worst:
            break
        left = off
        for corner in corners:
            left = corner.excused(spot, left)
        if left > worst:
            nearer = (spots.across(spot, one.at) + one.beyond for one in corners if one.across)
            worst = max(worst, min((left, *(abs(spot.far - min(width, far)) for far in nearer))))
    return worst


def _corners(
    margins: Sequence[Margin], turns: Sequence[Turn], spots: Spots, index: int
) -> Iterator[Excuse]:
    """What the corners near an edge excuse: its own, and beyond short neighbours theirs."""
    count, reach = len(margins), CORNER * max(edge.width for edge in margins) + ROOM
    for at_start in (True, False):
        away = 0.0
        for step in range(1, count):
            at = (index - step if at_start else index + step) % count
            corner = turns[at if at_start else at - 1]
            yield excuse(margins[index], margins[at], corner, at, at_start, away)
            away += spots.length(at)
            if away > reach:
                break
