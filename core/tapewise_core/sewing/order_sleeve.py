"""Sewing set-in sleeves in jersey: flat, before the side seams are closed.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.piece import Pattern, SeamKind
from tapewise_core.sewing.machines import Stitching
from tapewise_core.sewing.widths import sewn_at
from tapewise_core.units import Unit


def set_in(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    """The sleeves go in while the body still lies flat."""
    return (
        "Lay out the sleeves: the side with two notches belongs to the back, the side with one to "
        "the front. Pin each into its armhole at crown and shoulder seam, at the notches and at "
        "both ends, right sides together.",
        f"Sew the sleeves in {sewn_at(pattern, SeamKind.SLEEVE, unit)} from the edge, the sleeve "
        f"uppermost and stretched by the little it is shorter: {stitching.seam}. Press towards the "
        "sleeve.",
    )
