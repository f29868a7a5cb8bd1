"""Sewing pockets into the side seams, and a belt to tie.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.seam import EdgeRun, SeamKind
from tapewise_core.sewing.joining import NARROW
from tapewise_core.sewing.operation import Laid, Lies, Meeting, Operation, Sort, Stage, Use
from tapewise_core.sewing.way import Way, Work, of_kind
from tapewise_core.text.amounts import About
from tapewise_core.text.told import said
from tapewise_core.units import mm


def pocket(work: Work) -> tuple[Operation, ...]:
    """Pockets set to the sides before those are closed round their bags."""
    stitch, opening = work.stitching.seam, work.pattern.piece("pocket").length("opening")
    stay = said(
        "Stay the front's pocket openings: woven tape, {} for each, along the stitch line on the "
        "wrong side from notch to notch. It is sewn in with the pocket.",
        mm(opening),
    )
    tape = Use(("woven tape",), "the pockets' openings", mm(2 * opening), NARROW)
    do = said(
        "Sew a pocket piece to each side of front and back, its opening between the two "
        "notches, right sides together, {} from the edge: {}.",
        work.at, stitch.words,
    )  # fmt: skip
    return (
        work.do(
            "pocket-stay", "Stay the pocket openings", stay, Stage.FLAT, sort=Sort.PREPARE,
            uses=(tape,),
        ),
        work.do(
            "pockets", "Sew the pockets to the sides", do, Stage.FLAT, meets=_openings(work),
            lies=Lies.FLAT, stitches=(stitch,), press=("Press the pocket pieces outwards.",),
        ),
    )  # fmt: skip


def _openings(work: Work) -> tuple[Meeting, ...]:
    """Each opening on a part of the side, which is sewn whole later."""
    sides = tuple(
        run
        for seam in of_kind(work.pattern, SeamKind.SIDE)
        for run in (*seam.first, *seam.second)
        if run.piece in ("front", "back")
    )
    return (Meeting((EdgeRun("pocket", ("opening",)),), sides, partly=True),)


def belt(work: Work) -> tuple[Operation, ...]:
    """Belt and loops."""
    stitch = work.stitching.seam
    do = said(
        "Fold the belt lengthwise, right sides together, and sew both ends and the long edge, "
        "{} from the edge, leaving about {} open in the middle: {}. Turn it through the gap, and "
        "close the gap by hand.",
        work.at, About(80), stitch.words,
    )  # fmt: skip
    piece = work.pattern.piece(work.seams[0].first[0].piece)
    ends = tuple(edge.name for edge in piece.edges if edge.name.startswith("end"))
    folded = Meeting((EdgeRun(piece.name, ends),), (), Laid.TOGETHER)
    loops = said(
        "Work a thread loop for the belt at each side seam, between the two marks, long enough "
        "for the belt to pass."
    )
    return (
        work.do(
            "belt", "Sew the belt", do, Stage.APART, meets=(*work.joins(), folded),
            lies=Lies.FLAT, stitches=(stitch,), press=("Press the belt flat.",),
        ),
        work.do(
            "belt-loops", "Work the belt's loops", loops, Stage.APART, sort=Sort.FINISH,
            after=("sides",),
        ),
    )  # fmt: skip


POCKET = Way("pocket in a side seam", pocket)
BELT = Way("belt", belt)
