"""The words of the top's options that the garments built on it are drafted for.

Written out, so that a word added to the top does not come along unless its garment is drafted
for it too.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from tapewise_core.parts.figure_style import LowerShoulder
from tapewise_core.parts.neck_style import Collar, NeckFinish, Neckline, Sewn
from tapewise_core.parts.shape.bust_room import Wish as BustRoom
from tapewise_core.parts.sleeve_style import SleeveKind
from tapewise_core.parts.trunk_style import Fit

BODY: Mapping[str, tuple[str, ...]] = MappingProxyType({
    "fit": (Fit.CLOSE, Fit.FITTED, Fit.STRAIGHT, Fit.EASED),
    "neckline": (Neckline.ROUND, Neckline.SCOOP, Neckline.V, Neckline.BOAT, Neckline.HIGH,
                 Neckline.COWL),
    "collar": (Collar.FUNNEL, Collar.FOLDED),
    "band-sewn": (Sewn.ROUND, Sewn.FLAT),
    "waist-darts": ("auto", "none"),
    "bust-room": (
        BustRoom.AUTO,
        BustRoom.NONE,
        BustRoom.RAISE,
        BustRoom.SIDE_EASE,
        BustRoom.SIDE_DART,
        BustRoom.GATHERS,
    ),
})  # fmt: skip
"""Of the body, whatever its sleeves."""

GROWN_ON: Mapping[str, tuple[str, ...]] = MappingProxyType({
    **BODY,
    "lower-shoulder": (LowerShoulder.NONE, LowerShoulder.LEFT, LowerShoulder.RIGHT),
    "neck-finish": (NeckFinish.BAND, NeckFinish.TURNED, NeckFinish.FACING),
    "sleeve": (
        SleeveKind.CAP,
        SleeveKind.SHORT,
        SleeveKind.ELBOW,
        SleeveKind.THREE_QUARTER,
        SleeveKind.LONG,
    ),
})  # fmt: skip
"""Of a body with grown-on sleeves; the hem is the garment's own."""
