"""How a measure is scaled so that bodies scatter about it evenly."""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen


class Scale(Frozen):
    """Plain [cm] if ``shift`` is None, else the logarithm of what lies above ``shift`` [cm].

    Below ``knee`` [cm], where no grown body is, the line goes on as a plain logarithm, so that
    every length above zero has a place.

    >>> hip = Scale(55.0, 75.0)
    >>> [round(hip.back(hip.of(cm)), 6) for cm in (5.0, 75.0, 140.0)]
    [5.0, 75.0, 140.0]
    """

    shift: float | None = None
    knee: float = 0.0

    def of(self, cm: float) -> float:
        """Return a value [cm] on the scale."""
        if self.shift is None:
            return cm
        if cm >= self.knee:
            return math.log(cm - self.shift)
        return self._at_knee + self._steep * math.log(cm / self.knee)

    def back(self, value: float) -> float:
        """Return the value [cm] of a place on the scale."""
        if self.shift is None:
            return value
        if self.knee <= 0 or value >= self._at_knee:
            return max(math.exp(value) + self.shift, 0.0)
        return self.knee * math.exp((value - self._at_knee) / self._steep)

    def slope(self, cm: float) -> float:
        """Return how much the scale moves for each cm at a value [cm]."""
        if self.shift is None:
            return 1.0
        return 1 / (cm - self.shift) if cm >= self.knee else self._steep / cm

    @property
    def _at_knee(self) -> float:
        return math.log(self.knee - (self.shift or 0.0))

    @property
    def _steep(self) -> float:
        return self.knee / (self.knee - (self.shift or 0.0))
