"""Tables on pages: how wide their columns are, and long lists of pairs in two halves."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from tapewise_core.paper.document import Table
from tapewise_core.writers.lettering import FONT

if TYPE_CHECKING:
    from reportlab.platypus import Flowable

GREY = "#777777"
"""The colour of a table's rules."""

LEADING = 1.35
"""From baseline to baseline, as a share of the type's size."""

LISTED = 12
"""A list of pairs with more rows is set in two halves."""


def grid(
    rows: Sequence[Sequence[Any]],
    columns: Sequence[float],
    *,
    ruled: bool = False,
    lined: bool = False,
    style: Sequence[tuple[Any, ...]] = (),
    low: float = 0.0,
    size: float = 9.5,
) -> Flowable:
    """Return rows of cells: ``ruled`` all round, ``lined`` between rows, or plain; ``low`` is kept
    free below the words of each cell [points], ``size`` is that of words in one line."""
    from reportlab.lib.colors import HexColor
    from reportlab.platypus import Table as Grid

    wanted: list[tuple[Any, ...]] = [("VALIGN", (0, 0), (-1, -1), "TOP")]
    wanted += [("FONT", (0, 0), (-1, -1), FONT, size, size * LEADING)]
    if ruled:
        wanted += [("GRID", (0, 0), (-1, -1), 0.5, HexColor(GREY))]
        wanted += [(f"{side}PADDING", (0, 0), (-1, -1), 1.5) for side in ("TOP", "BOTTOM")]
    else:
        wanted += [(f"{side}PADDING", (0, 0), (-1, -1), 0) for side in ("LEFT", "TOP")]
        wanted += [("BOTTOMPADDING", (0, 0), (-1, -1), low)]
    if lined:
        wanted += [("LINEBELOW", (0, 0), (-1, -1), 0.4, HexColor(GREY))]
        wanted += [(f"{side}PADDING", (0, 0), (-1, -1), 4) for side in ("TOP", "BOTTOM")]
    repeated = 1 if ruled else 0
    return Grid(
        list(map(list, rows)),
        colWidths=columns,
        style=[*wanted, *style],
        spaceAfter=6,
        repeatRows=repeated,
    )


def widths(natural: Sequence[float], room: float) -> list[float]:
    """Return how wide columns are in a room, those that need less than their share as they are.

    >>> widths([20.0, 60.0], 100.0), widths([20.0, 500.0, 90.0], 300.0)
    ([25.0, 75.0], [20.0, 190.0, 90.0])
    """
    total = sum(natural)
    if total <= room:
        return [one * room / total for one in natural]
    given: dict[int, float] = {}
    for place in sorted(range(len(natural)), key=lambda at: natural[at]):
        left = room - sum(given.values())
        given[place] = min(natural[place], left / (len(natural) - len(given)))
    return [given[place] for place in range(len(natural))]


def halves(table: Table) -> list[tuple[str, ...]]:
    """Return a table's rows, its head first; a long list of pairs with its second half beside."""
    rows = [table.head, *table.rows]
    if len(table.head) != 2 or len(table.rows) <= LISTED:
        return rows
    half = (len(table.rows) + 1) // 2
    right = [*table.rows[half:], *[("", "")] * (2 * half - len(table.rows))]
    return [
        (*one, *other) for one, other in zip(rows[: half + 1], [table.head, *right], strict=True)
    ]
