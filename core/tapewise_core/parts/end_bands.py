"""What hem bands and cuffs are called, how many are cut, and what is told of their marks."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.drafting.seam import SeamKind
from tapewise_core.parts.band_ways import (
    CUFF_ON,
    CUFF_RING,
    HEM_BAND,
    HEM_HALVES,
    HEM_HALVES_RING,
    HEM_RING,
)
from tapewise_core.parts.edge_band import BandKind

HEM = BandKind(
    "hem_band", "hem", "Hem band",
    "Mark both long edges: the join goes to the centre back, the middle to the centre front, and "
    "the other two marks to the side seams.",
    1, SeamKind.HEM_BAND, HEM_RING, HEM_BAND,
)  # fmt: skip

HALVES = replace(
    HEM,
    marks="Mark both long edges where the side seam goes; one join goes to the centre back, the "
    "other to the centre front. The strip is half the band, which is longer than the cloth is "
    "wide: cut two.",
    count=2,
    ring=HEM_HALVES_RING,
    sewn=HEM_HALVES,
)

CUFF = BandKind(
    "cuff", "sleeve_hem", "Cuff", "The join goes to the underarm seam.",
    2, SeamKind.CUFF, CUFF_RING, CUFF_ON,
)  # fmt: skip

PART = {
    "hem_band": "The hem band, {} wide, is part of the length asked for.",
    "cuff": "The cuffs, {} wide, are part of the sleeves' length asked for.",
}

SIDE, MIDDLE = "hem at the side seam", "hem at the centre front"
"""The marks of the hem and of its band."""
