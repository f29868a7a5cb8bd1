"""What is needed besides cloth and machines: needles, thread, stays and elastic."""

from __future__ import annotations

from tapewise_core.drafting.making import How
from tapewise_core.drafting.piece import Pattern, Seam
from tapewise_core.sewing.machines import Machine, Stitching
from tapewise_core.sewing.waist import STAY
from tapewise_core.sewing.work import made_so
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm


def needles(stitching: Stitching) -> str:
    """Say which needles and thread, by the numbers they are sold under everywhere."""
    twin = ", a stretch twin needle for hems" if _sews_twin(stitching) else ""
    return f"ballpoint or stretch needles 70/10 to 90/14{twin}; polyester thread"


def _sews_twin(stitching: Stitching) -> bool:
    machines = stitching.machines
    return Machine.ZIGZAG in machines and Machine.COVERSTITCH not in machines


TAPES = {
    How.STAYED: "clear elastic or woven tape for the shoulders",
    How.TURNED_NECK: "clear elastic or fusible knit tape for the neckline",
    How.TURNED_V: "clear elastic or fusible knit tape for the neckline",
    How.POCKET: "woven tape for the pockets' openings",
}
"""The tapes that a making asks for."""


def stays(pattern: Pattern) -> tuple[Told, ...]:
    """Say which tapes and elastics the pattern's seams ask for."""
    tapes = tuple((tape,) for how, tape in TAPES.items() if made_so(pattern, how))
    waists = made_so(pattern, How.STAYED_WAIST)
    return (
        *tapes,
        *(_stay(pattern, seam) for seam in waists),
        *(
            said("elastic {} wide, {} long; a safety pin", mm(elastic.width), mm(elastic.length))
            for seam in pattern.seams
            if (elastic := seam.making.elastic)
        ),
    )


def _stay(pattern: Pattern, seam: Seam) -> Told:
    length = mm(pattern.run_length(seam.first))
    return said("clear elastic {} wide for the waist seam, {} and an end to hold", STAY, length)
