"""Which places of two pieces make them meet: one table for each pair, by their true outlines."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from tapewise_core.paper.footing import Footing
from tapewise_core.paper.lattice import Flags

_ROUND = 32
"""Tables are this much larger than need be, so that many pairs share their transforms."""


class Apart:
    """Pairs of pieces that have been looked at."""

    def __init__(self) -> None:
        self._met: dict[tuple[Footing, Footing], Flags] = {}
        self._turned: dict[tuple[Footing, bool, tuple[int, int]], NDArray[np.complex128]] = {}

    def mark(self, blocked: Flags, placed: Footing, at: tuple[int, int], other: Footing) -> None:
        """Mark every place where another piece's corner can't lie for one that lies at a place."""
        met = self._meet(placed, other)
        high, wide = other.taken.shape
        top, left = at[0] - high + 1, at[1] - wide + 1
        part = met[max(-top, 0) :, max(-left, 0) :]
        here = blocked[max(top, 0) :, max(left, 0) :][: part.shape[0], : part.shape[1]]
        here |= part[: here.shape[0], : here.shape[1]]

    def _meet(self, placed: Footing, other: Footing) -> Flags:
        """From the last place before to the last beyond: whether the two take one square."""
        if (placed, other) not in self._met:
            size = np.add(placed.taken.shape, other.taken.shape) - 1
            high, wide = (int(n) for n in -(-size // _ROUND) * _ROUND)
            waves = self._waves(placed, False, (high, wide)) * self._waves(
                other, True, (high, wide)
            )
            shared = np.fft.irfft2(waves, (high, wide))
            self._met[placed, other] = shared[: size[0], : size[1]] > 0.5
        return self._met[placed, other]

    def _waves(self, footing: Footing, back: bool, size: tuple[int, int]) -> NDArray[np.complex128]:
        key = (footing, back, size)
        if key not in self._turned:
            taken = footing.taken[::-1, ::-1] if back else footing.taken
            self._turned[key] = np.fft.rfft2(taken.astype(np.float32), size)
        return self._turned[key]
