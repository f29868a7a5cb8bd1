"""What is measured on a garment that lies flat, and what of it a body's measure makes likely."""

from __future__ import annotations

from types import MappingProxyType

from tapewise_core.frozen import Frozen


class Flat(Frozen, kw_only=True):
    """One measure of a garment laid flat.

    ``round`` says that it goes round the body, so that its width is a half of the whole;
    ``body`` is the measure of the body beside it, ``low`` and ``high`` what the garment has of
    that, whole, where it is likely (our choice: wide, to catch a half or a double and no more).
    """

    key: str
    name: str
    says: str
    round: bool = False
    body: str
    low: float
    high: float

    def whole(self, flat: float) -> float:
        """Return the whole girth of a width, or the length as it is, in the unit given."""
        return flat * 2 if self.round else flat

    def likely(self, flat: float, body: float) -> bool:
        """Say whether a garment for a body may measure so, both in one unit."""
        return self.low <= self.whole(flat) / body <= self.high


FLAT = (
    Flat(
        key="bust",
        name="width at the bust",
        says="straight across from side to side, just under the armholes",
        round=True, body="bust", low=0.6, high=1.6,
    ),
    Flat(
        key="waist",
        name="width at the waist",
        says="straight across where it is narrowest, or where the waist sits",
        round=True, body="waist", low=0.6, high=1.8,
    ),
    Flat(
        key="hip",
        name="width at the hip",
        says="straight across where the hip is widest",
        round=True, body="hip", low=0.6, high=1.7,
    ),
    Flat(
        key="hem",
        name="width at the hem",
        says="along the lower edge from side to side",
        round=True, body="hip", low=0.5, high=7.5,
    ),
    Flat(
        key="length",
        name="length behind",
        says="down the middle of the back, from the neck's seam to the lower edge",
        body="back_waist_length", low=0.8, high=3.7,
    ),
    Flat(
        key="skirt_length",
        name="length of the skirt",
        says="from the waist to the lower edge",
        body="waist_to_floor", low=0.15, high=1.1,
    ),
    Flat(
        key="shoulder",
        name="shoulder",
        says="along the seam, from the neck's seam to the sleeve's",
        body="shoulder_length", low=0.35, high=2.0,
    ),
    Flat(
        key="sleeve",
        name="length of the sleeve",
        says="along the top, from the end of the shoulder to the lower edge",
        body="arm_length", low=0.04, high=1.3,
    ),
    Flat(
        key="upper_arm",
        name="width of the sleeve",
        says="straight across, square to the sleeve, just below the armhole",
        round=True, body="upper_arm", low=0.6, high=2.6,
    ),
    Flat(
        key="sleeve_hem",
        name="width at the sleeve's hem",
        says="along the sleeve's lower edge",
        round=True, body="upper_arm", low=0.35, high=2.6,
    ),
    Flat(
        key="neck",
        name="width of the neck",
        says="straight across from the neck's seam at one shoulder to the other, without a band",
        body="neck", low=0.37, high=1.25,
    ),
    Flat(
        key="neck_depth",
        name="depth of the neck",
        says="straight down from a line between the shoulders' inner ends to the front neck's seam",
        body="back_waist_length", low=0.08, high=0.9,
    ),
)  # fmt: skip
"""From the body's widths to the neck: common practice for what is taken."""

BY_KEY = MappingProxyType({row.key: row for row in FLAT})
"""The same by key."""
