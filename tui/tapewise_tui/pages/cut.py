"""Cut: one piece a page, with its picture, to be read from the cutting table."""

from __future__ import annotations

from functools import partial

from tapewise_core.tasks.chores import CUT
from tapewise_core.tasks.cutting import Cutting, cuttings
from tapewise_core.tasks.drafted import Drafted
from tapewise_tui import keys
from tapewise_tui.leaf_page import LeafPage
from tapewise_tui.pattern_canvas import draw_piece
from tapewise_tui.widgets.leaf import Thing


class CutPage(LeafPage):
    """The pieces, one after another."""

    NAME = "cut"
    PURPOSE = (
        "One piece a page: how many, which way up, where its grain lies. Enter ticks what is "
        "done, first that it is cut, then that it is marked, and goes on to the next. Right and "
        "left turn to another piece, Home and End to the first and the last. Ctrl+Z opens again "
        "what was ticked too soon."
    )
    BINDINGS = keys.of(back="to all there is to do", on="on to sewing, step by step")

    def things(self, draft: Drafted) -> tuple[Thing, ...]:
        found = cuttings(draft, self.chores)
        mind, total = self.minds(CUT), len(found)
        return tuple(_thing(one, f"{at} of {total}", mind) for at, one in enumerate(found, start=1))

    def ended(self) -> str:
        left = sum(key not in self.done for one in self.all for key, _ in one.boxes)
        if left:
            return "This is the last piece; Home goes to the first."
        return "All pieces are cut and marked. F4 goes on to sewing."

    def action_back(self) -> None:
        self.action_table()

    def action_on(self) -> None:
        self.tapewise.go("stitch")


def _thing(one: Cutting, place: str, mind: tuple[str, ...]) -> Thing:
    return Thing(
        f"Piece {place}: {one.name}",
        one.says,
        one.done,
        mind,
        partial(draw_piece, piece=one.piece),
        one.name,
    )
