"""The overarm seam: straight, or bent where the shoulders stand forward."""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.geometry.path import Path, curved
from tapewise_core.geometry.point import Point
from tapewise_core.units import Length, mm

STRAIGHT = "straight through P, the overarm line"


def draw_shoulder(draft: Draft, neck: str, end: str, moved: Length, past: float = 0.0) -> Draft:
    """Return the draft with its overarm line drawn from neck to end.

    For shoulders that stand forward by ``moved`` the seam passes q, above the
    shoulder point P on the back and below it on the front, and runs out to
    nothing at neck and sleeve hem, so that both stay equally long. The front
    finds its shoulder point at ``past`` [mm] from the neck, as on the back.
    """
    if moved.mm <= 0.05:
        return draft.rule("shoulder", neck, end, remark="the overarm line" if past else STRAIGHT)
    along = (draft[end] - draft[neck]).unit()
    start, way, side = "P", -along.square(), "upward"
    if past:
        draft = draft.along(neck, end, "p", mm(past), "the shoulder point, as on the back")
        start, way, side = "p", along.square(), "downward"
    told = f"{side}, square to {neck}–{end},"
    called = "where the seam of a forward shoulder passes"
    draft = draft.toward(start, "q", moved, way, told, called)
    path = bent(draft[neck], draft["q"], draft[end])
    return draft.curve("shoulder", path, (neck, "q", end), "A gentle curve, straight at the end.")


def bent(neck: Point, through: Point, end: Point) -> Path:
    """Return a curve from neck to end through a point, level with the chord there."""
    along = (end - neck).unit()
    before, after = (through - neck).length() / 3, (end - through).length() / 3
    toward = (through - neck).unit()
    first = curved(neck, neck + toward * before, through + along * -before, through)
    return first.then(curved(through, through + along * after, end + along * -after, end))
