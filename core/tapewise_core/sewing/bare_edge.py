"""What a neckline and an armhole without a band share: an edge stayed and turned in, or faced.

All common practice.
"""

from __future__ import annotations

from tapewise_core.drafting.seam import EdgeRun
from tapewise_core.sewing.joining import NARROW
from tapewise_core.sewing.operation import Laid, Meeting, Use
from tapewise_core.sewing.stitches import Stitch
from tapewise_core.sewing.way import Work
from tapewise_core.units import mm

CLIP = "Clip the allowance where it curves, no further than to the stitches."
NO_CLIP = "Do not clip the curve: that would cut the overlocker's threads."


def clipping(stitch: Stitch) -> str:
    """Say whether a curve sewn with a stitch is clipped: never one that was overlocked."""
    return NO_CLIP if stitch.cuts else CLIP


def edge_tape(work: Work, along: str) -> Use:
    """Return the tape that stays a turned edge, as long as the edge is all round the body."""
    runs = (run for meeting in work.turned() for run in meeting.first)
    long = mm(sum(_around(work, run) for run in runs))
    return Use(("clear elastic or fusible knit tape",), along, long, NARROW)


def _around(work: Work, run: EdgeRun) -> float:
    piece = work.pattern.piece(run.piece)
    return piece.sewn(*run.edges) * (2 if piece.on_fold else 1)


def facing_meets(work: Work) -> tuple[Meeting, ...]:
    """Return the seams that join a facing, and its outer edge, which has no allowance."""
    pieces = dict.fromkeys(run.piece for seam in work.seams for run in (*seam.first, *seam.second))
    outer = Meeting(tuple(EdgeRun(piece, ("outer",)) for piece in pieces), (), Laid.NEATENED)
    return (*work.joins(), outer)
