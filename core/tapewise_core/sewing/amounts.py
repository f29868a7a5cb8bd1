"""How long seams are in the finished garment, both halves of the body and every copy of a piece."""

from __future__ import annotations

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.seam import EdgeRun, Seam
from tapewise_core.sewing.operation import Half, Meeting, Operation


def times_cut(pattern: Pattern, run: EdgeRun) -> int:
    """Return how often a run occurs: on both sides of a fold, or on each piece cut."""
    piece = pattern.piece(run.piece)
    return 2 * piece.count if piece.on_fold else piece.count


def times_sewn(pattern: Pattern, seam: Seam) -> int:
    """Return how many such seams there are; one piece sewn to its own copy shares a seam."""
    times = times_cut(pattern, seam.first[0])
    return max(times // 2, 1) if seam.first == seam.second else times


def length_of(pattern: Pattern, meeting: Meeting) -> float:
    """Return the length sewn where edges meet [mm], darts closed: that of the second side,
    to which a band is stretched, or of the only one."""
    runs = meeting.first if meeting.partly or not meeting.second else meeting.second
    whole = sum(pattern.piece(r.piece).sewn(*r.edges) * times_cut(pattern, r) for r in runs)
    halved = meeting.first == meeting.second or meeting.half is not Half.BOTH
    return whole / 2 if halved else whole


def sewn_length(pattern: Pattern, operation: Operation) -> float:
    """Return the length that an operation sews [mm]."""
    return sum(length_of(pattern, meeting) for meeting in operation.meets)
