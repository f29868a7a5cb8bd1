"""What a raglan top's usual values rest on, in words: there is no cowl on it, and a sleeve always.

Amounts are those of the parts that draw them.
"""

from __future__ import annotations

from tapewise_core.parts.neck_options import BACK_CURVE, BEYOND_NECK
from tapewise_core.parts.neck_style import Neckline
from tapewise_core.parts.neck_usual import USUAL
from tapewise_core.parts.shape.underarm import DROPS, SLEEVE_EASES
from tapewise_core.text.told import said
from tapewise_core.units import cm, mm

WIDER = (Neckline.SCOOP, Neckline.V, Neckline.BOAT)
"""Necklines that are wider than a round one, as they are told."""

DEEPER = (Neckline.SCOOP, Neckline.BOAT)
"""Necklines that lie below the nape on the back, as they are told."""

USUALLY = {
    "neck-finish": said("as the neckline asks: turned on a boat, else a band"),
    "neck-half-width": said(
        "neck ÷ 5 + {}; high {} narrower; scoop {}, v {}, boat up to {} wider",
        BEYOND_NECK,
        cm(-USUAL[Neckline.HIGH].wider),
        *(cm(USUAL[kind].wider) for kind in WIDER),
    ),
    "back-neck-depth": said(
        "round, v and high 0, scoop {}, boat {}, or as deep as {} below its ends",
        *(cm(USUAL[kind].back_depth) for kind in DEEPER),
        cm(BACK_CURVE / 10),
    ),
    "sleeve-ease": said("fitted {}, straight {}, eased {}", *map(mm, SLEEVE_EASES)),
    "armhole-drop": said("fitted {}, straight {}, eased {}; moved for the arm", *map(mm, DROPS)),
}
"""By the option's key."""
