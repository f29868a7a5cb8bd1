"""Ways in which some pieces lie on a grid of pages, others still waiting; all of them at once."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tapewise_core.frozen import Frozen
from tapewise_core.paper.footing import THIN, Footing, further
from tapewise_core.paper.lattice import Flags, Floats, Whole
from tapewise_core.paper.settling import Cost, Laid


class Placed(Frozen):
    """One piece at a place, steps down and across from the canvas's corner."""

    index: int
    footing: Footing
    at: tuple[int, int]


class Beginning(Frozen):
    """Some pieces placed, and what that costs, least first: avoidable splits, pages, thin pages,
    torn labels, pieces turned, and how far down and across all goes."""

    placed: tuple[Placed, ...]
    cost: Cost

    def laid(self) -> tuple[Laid, ...]:
        """Return the pieces at their places, in the order given."""
        ordered = sorted(self.placed, key=lambda one: one.index)
        return tuple(Laid(one.footing, one.footing.lattice.at(*one.at)) for one in ordered)


class Tries(Frozen, eq=False):
    """Places for a piece turned one way: after which beginning each, and steps down and across."""

    footing: Footing
    after: Whole
    at: Whole


class Begun(Frozen, eq=False):
    """Beginnings, and one after another along the first axis of each table what they have, page by
    page, down and across: which are needed, and what share of each is pattern.

    ``leaning`` are pages needed as soon as another follows: to the right in the same row, or below
    in the same column. ``told`` counts avoidable splits, torn labels and pieces turned.
    """

    placed: tuple[tuple[Placed, ...], ...]
    pages: Flags
    leaning: tuple[Flags, Flags]
    shares: Floats
    told: Whole

    @staticmethod
    def nothing(rows: int, columns: int) -> Begun:
        """Return the one beginning without a piece, on a grid of so many pages."""
        none = np.zeros((1, rows, columns), np.bool_)
        return Begun(((),), none, (none, none), none.astype(np.float64), np.zeros((1, 3), np.int64))

    def __iter__(self) -> Iterator[Beginning]:
        """Yield each with what it costs."""
        for placed, cost in zip(self.placed, self._costs(), strict=True):
            yield Beginning(placed, cost)

    def lowest(self) -> list[int]:
        """Return how many steps down the pieces reach in each."""
        return [
            max((one.at[0] + len(one.footing.taken) for one in placed), default=0)
            for placed in self.placed
        ]

    def with_rows(self, rows: int) -> Begun:
        """Return them on a grid that has at least so many rows of pages."""
        more = max(rows - self.pages.shape[1], 0)

        def grown(table: NDArray[Any]) -> NDArray[Any]:
            return np.pad(table, ((0, 0), (0, more), (0, 0)))

        right, below = self.leaning
        leaning = grown(right), grown(below)
        return Begun(self.placed, grown(self.pages), leaning, grown(self.shares), self.told)

    def then(self, index: int, tries: Tries) -> Begun:
        """Return a beginning for each of some tries to place a piece more."""
        footing, after = tries.footing, tries.after
        cell, inside = np.divmod(tries.at, (footing.lattice.down, footing.lattice.across))
        step = tuple(inside.T)

        def added(table: NDArray[Any], own: NDArray[Any]) -> NDArray[Any]:
            return _added(table[after], own[step], cell)

        right, below = (
            added(*tables) for tables in zip(self.leaning, footing.leaning, strict=True)
        )
        pages = _with_leaning(added(self.pages, footing.needed), right, below)
        told = [footing.splits[step], footing.torn[step], np.full(len(after), footing.turned)]
        placed = tuple(
            (*self.placed[number], Placed(index, footing, (down, across)))
            for number, (down, across) in zip(after.tolist(), tries.at.tolist(), strict=True)
        )
        shares = added(self.shares, footing.covered)
        return Begun(
            placed, pages, (right, below), shares, self.told[after] + np.stack(told, axis=1)
        )

    def best(self, count: int) -> Begun:
        """Return the cheapest, no two on the same pages, at most so many, the best first."""
        costs = self._costs()
        best: dict[bytes, int] = {}
        for number, pages in enumerate(self.pages):
            known = best.setdefault(pages.tobytes(), number)
            if costs[number] < costs[known]:
                best[pages.tobytes()] = number
        return self[sorted(best.values(), key=lambda number: costs[number])[:count]]

    def __getitem__(self, chosen: Sequence[int]) -> Begun:
        """Return some of them, in the order asked for."""
        right, below = self.leaning
        return Begun(
            tuple(self.placed[number] for number in chosen),
            self.pages[chosen],
            (right[chosen], below[chosen]),
            self.shares[chosen],
            self.told[chosen],
        )

    def _costs(self) -> list[Cost]:
        """What each costs, as :class:`Beginning` has it."""
        pages, (splits, torn, turned) = self.pages, self.told.T
        count = pages.sum(axis=(1, 2))
        thin = (pages & (self.shares < THIN)).sum(axis=(1, 2))
        down, across = np.arange(pages.shape[1]), np.arange(pages.shape[2])
        lowest = (pages.any(axis=2) * down).max(axis=1, initial=0)
        spread = lowest, pages.sum(axis=2) @ down, pages.sum(axis=1) @ across
        table = np.stack([splits, count, thin, torn, turned, *spread], axis=1)
        return [tuple(row) for row in table.tolist()]


def joined(begun: Sequence[Begun]) -> Begun:
    """Return the beginnings of several, on equal grids, one after another."""
    right, below = (np.concatenate([one.leaning[way] for one in begun]) for way in (0, 1))
    return Begun(
        tuple(placed for one in begun for placed in one.placed),
        np.concatenate([one.pages for one in begun]),
        (right, below),
        np.concatenate([one.shares for one in begun]),
        np.concatenate([one.told for one in begun]),
    )


def _added(table: NDArray[Any], own: NDArray[Any], cell: Whole) -> NDArray[Any]:
    """A table with what a piece has of its pages, the first of which is another in each row."""
    count = np.arange(len(table))[:, None, None]
    rows = cell[:, 0, None] + np.arange(own.shape[1])
    columns = cell[:, 1, None] + np.arange(own.shape[2])
    table[count, rows[:, :, None], columns[:, None]] += own
    return table


def _with_leaning(pages: Flags, right: Flags, below: Flags) -> Flags:
    """The pages, and those of the leaning ones that another now follows."""
    return np.asarray(pages | (right & further(pages, 2)) | (below & further(pages, 1)))
