"""The arithmetic of circle skirts: rings, and what of them a cloth's width holds.

Exact: the waist is cut on a circle of radius waist edge / (2 pi p), p the part of
a whole circle; the hem on one larger by the skirt's length.
"""

from __future__ import annotations

import math

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.parts.circle import radius_of

COUNTS = (1, 2, 4, 6, 8, 10, 12)
"""In how many pieces a skirt may be cut; even, so that a seam falls on either side."""

LONGEST = 1300.0
"""No skirt is longer [mm], so a cloth that allows this allows any."""

HAIR = 1e-6
"""What rounding alone may be off by [mm]."""


class Ring(Frozen):
    """Part of a circle with a hole: lengths on the stitch line, allowances outside [mm].

    ``sides_higher`` is what fittings took off the hem at the sides, where bias cloth drops.
    """

    part: float
    waist: float
    length: float
    waist_allowance: float
    side_allowance: float
    hem_allowance: float
    sides_higher: float = 0.0

    @property
    def radius(self) -> float:
        """The waist's radius [mm]."""
        return radius_of(self.waist, self.part)

    @property
    def outer(self) -> float:
        """The hem's radius [mm]."""
        return self.radius + self.length

    @property
    def hem(self) -> float:
        """Round the hem [mm]; what is taken off at the sides counts by half, its mean."""
        return self.around(self.length - self.sides_higher / 2)

    @property
    def area(self) -> float:
        """The finished skirt's area [mm²]."""
        return math.pi * self.part * (self.outer**2 - self.radius**2)

    def around(self, below: float) -> float:
        """Return the girth at a distance below the waist [mm]."""
        return 2 * math.pi * self.part * (self.radius + below)

    def angle(self, count: int) -> float:
        """Return the angle of one of some equal pieces [degrees]."""
        return 360 * self.part / count

    def seamless(self, count: int) -> bool:
        """Say whether a piece closes on itself and has no seam at all."""
        return self.angle(count) >= 360

    def extent(self, count: int) -> tuple[float, float]:
        """Return how wide and how high one opened piece is, its fold or middle upright [mm].

        Measured over the cut line, allowances and all.
        """
        half = math.radians(self.angle(count)) / 2
        rim = self.outer + self.hem_allowance
        if self.seamless(count):
            return 2 * rim, 2 * rim
        side = self.side_allowance
        corner = rim * math.sin(half) + side * math.cos(half)
        across = 2 * rim if half >= math.pi / 2 else 2 * corner
        inner = max(self.radius - self.waist_allowance, 0.0)
        nearest = rim if half > math.pi / 2 else inner
        return across, rim - nearest * math.cos(half) + side * math.sin(half)

    def fits(self, count: int, width: float) -> bool:
        """Say whether one of some equal pieces can be cut from a usable width [mm], either way."""
        return min(self.extent(count)) <= width + HAIR

    def fewest(self, width: float) -> int | None:
        """Return the fewest pieces that a usable width [mm] allows, or None if none does."""
        return next((count for count in COUNTS if self.fits(count, width)), None)

    def longest(self, count: int, width: float) -> float:
        """Return the longest skirt that some pieces allow on a usable width [mm]; 0 for none.

        A piece's width and its height both grow evenly with its length, so that two lengths say
        where each reaches the width (exact).
        """
        least, most = (replace(self, length=length).extent(count) for length in (0.0, LONGEST))
        room = ((width + HAIR - a) / (b - a) for a, b in zip(least, most, strict=True))
        return LONGEST * min(max(*room, 0.0), 1.0)
