"""What every kind of neckline has unless asked otherwise.

Amounts are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.parts.neck_style import NeckFinish, Neckline


class Usual(Frozen, kw_only=True):
    """What a neckline has unless asked otherwise [cm]: ``wider`` on each side than the neck asks
    for, ``depth`` below the nape's level in front and ``back_depth`` at the back; ``band_ratio``
    is the band's length as a share of the neckline, None where it follows from the neckline's
    length, the band's width and the cloth."""

    wider: float
    depth: float
    back_depth: float
    band_ratio: float | None = None
    finish: NeckFinish = NeckFinish.BAND


USUAL = {
    Neckline.ROUND: Usual(wider=0.0, depth=9.0, back_depth=0.0),
    Neckline.SCOOP: Usual(wider=2.0, depth=14.0, back_depth=1.0),
    Neckline.V: Usual(wider=0.5, depth=16.0, back_depth=0.0, band_ratio=0.92),
    Neckline.HIGH: Usual(wider=-0.9, depth=7.5, back_depth=0.0),
    Neckline.COWL: Usual(wider=1.0, depth=8.0, back_depth=0.5, finish=NeckFinish.TURNED),
    Neckline.BOAT: Usual(wider=4.5, depth=4.5, back_depth=1.5, finish=NeckFinish.TURNED),
}
"""Every neckline there is. A V is straight and its band is hardly stretched, a cowl's front is
level; every other one is round. A boat's and a cowl's edge is turned, any other gets a band."""
