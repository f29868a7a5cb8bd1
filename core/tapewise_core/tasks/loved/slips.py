"""Slips of a hand at a garment laid flat: what each multiplies a measure by, and how it is told."""

from __future__ import annotations

import math
from collections.abc import Mapping
from statistics import median

from tapewise_core.frozen import Frozen
from tapewise_core.tasks.loved.flat import BY_KEY, Flat
from tapewise_core.text.told import Told, said
from tapewise_core.units import MM_PER_INCH, mm

INCH = MM_PER_INCH / 10
"""What a number is multiplied by whose inches were taken for centimetres."""


class Slip(Frozen):
    """One slip: what mends it is the measure times ``mended``; it is told of what goes round and
    of what does not."""

    mended: float
    of_round: str
    of_others: str

    def told(self, row: Flat, flat: float) -> Told:
        """Say what may have happened, and what the measure would be [cm]."""
        return said(self.of_round if row.round else self.of_others, mm(flat * self.mended * 10))


OTHER_UNIT = "was it typed in the other unit? Then it is {}."
WHOLE = Slip(
    0.5,
    "is that measured all the way round? Laid flat it would be {}.",
    "is that measured twice? Once it is {}.",
)
FOLDED = Slip(
    2.0,
    "was the garment folded once more? Opened out it would be {}.",
    "was the garment only half of it? Opened out it would be {}.",
)
UNITS = Slip(INCH, OTHER_UNIT, OTHER_UNIT), Slip(1 / INCH, OTHER_UNIT, OTHER_UNIT)

SLIPS = (WHOLE, FOLDED, *UNITS)
"""Slips that one measure alone may have suffered."""


def usual_share(row: Flat, flat: Mapping[str, float], bodies: Mapping[str, float]) -> float:
    """Return what a garment has of a body's measure there, judged by what goes round elsewhere;
    where nothing is known of that, the middle of what is likely."""
    others = [
        BY_KEY[key].whole(size) / bodies[key]
        for key, size in flat.items()
        if BY_KEY[key].round and key != row.key and BY_KEY[key].likely(size, bodies[key])
    ]
    return median(others) if row.round and others else math.sqrt(row.low * row.high)


def likeliest(row: Flat, flat: float, own: float, share: float) -> Slip | None:
    """Return the slip that explains a measure best, if one does: mended, it is the nearest to a
    usual share of the body's. A length's unit is doubted last: how long it is tells little."""
    found = [slip for slip in SLIPS if row.likely(flat * slip.mended, own)]
    if not row.round:
        return next(iter(found), None)
    off = {slip: abs(math.log(row.whole(flat * slip.mended) / own / share)) for slip in found}
    return min(found, key=off.__getitem__, default=None)
