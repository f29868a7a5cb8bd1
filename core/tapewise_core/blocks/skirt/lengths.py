"""A straight-hanging skirt's own length and the allowance at its hem, whatever its fullness."""

from __future__ import annotations

from tapewise_core.blocks.skirt.ring_options import SKIRT
from tapewise_core.text.told import said

LENGTHS = (
    SKIRT.only("skirt-length", "skirt-hem-allowance")
    .changed("skirt-length", says=said("length from the waist to the hem"))
    .changed("skirt-hem-allowance", says=said("at the skirt's hem"), default=2.0, high=5)
)
