"""What is needed besides cloth and machines: needles, thread, stays and elastic."""

from __future__ import annotations

from tapewise_core.drafting.piece import Pattern, SeamKind
from tapewise_core.sewing.machines import Machine, Stitching
from tapewise_core.units import Unit


def needles(stitching: Stitching) -> str:
    """Say which needles and thread."""
    twin = "" if Machine.COVERSTITCH in stitching.machines else ", a stretch twin needle for hems"
    return f"ballpoint or stretch needles 70 to 90{twin}; polyester thread"


def stays(pattern: Pattern, unit: Unit) -> tuple[str, ...]:
    """Say which tapes and elastics the pattern's seams ask for."""
    kinds = {seam.kind for seam in pattern.seams}
    needed = []
    if SeamKind.SHOULDER in kinds:
        needed.append("clear elastic or woven tape for the shoulders")
    if SeamKind.WAIST in kinds:
        seam = next(seam for seam in pattern.seams if seam.kind is SeamKind.WAIST)
        length = unit.spell(pattern.run_length(seam.first))
        needed.append(
            f"clear elastic 6 to 10 mm wide for the waist seam, {length} and an end to hold"
        )
    if "elastic" in pattern.lengths:
        wide, long = (unit.spell(pattern.lengths[key]) for key in ("elastic width", "elastic"))
        needed.append(f"elastic {wide} wide, {long} long; a safety pin")
    return tuple(needed)
