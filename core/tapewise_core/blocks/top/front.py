"""The front of the grown-on-sleeve jersey top: the back traced, with three changes.

The side neck is raised, the centre front's hem may be lower, and the neckline
is its own. Z is the front's side neck, F the neckline on the centre front, O
the hem there. Numbers without another source are common practice in the trade.
"""

from __future__ import annotations

from collections.abc import Callable

from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.geometry.path import Path, curved
from tapewise_core.parts.hem import hem_line, lower_of
from tapewise_core.parts.hem_style import HemStyle
from tapewise_core.parts.neckline import front_curve, nearest, neck_of
from tapewise_core.parts.shoulder import draw_shoulder
from tapewise_core.text.told import LineName, said
from tapewise_core.units import mm

EASED_IN = 5.0
"""How much longer the front's overarm may be and still be eased in [mm] (common practice)."""

SQUARE_ENOUGH = 3.0
"""A sleeve hem further from square to the front's overarm is redrawn [degrees]."""


HemOf = Callable[[Draft, str, float, HemStyle, str], Draft]
"""Draws the lower edge of a name from a point on the centre to the side, whose lean is given."""


def draft_front(
    back: Draft, style: TopStyle, title: str = "Front", hem_of: HemOf = hem_line
) -> Draft:
    """Return the front, drafted over the finished back with the centre front on a fold."""
    raised = style.fullness.front_raise
    draft = Draft(title).trace("the back's side, underarm and lines across", _traced(back))
    neck = "S"
    if raised.mm > 0.05:
        draft, neck = draft.up("S", "Z", raised, "the front's side neck"), "Z"
    draft, end = _overarm_end(draft, back, neck)
    draft, neck = _neck(draft, back, neck, end)
    past = (back["P"] - back[neck_of(back)]).length()
    draft = draw_shoulder(draft, neck, end, style.figure.forward_shoulder, past)
    draft = _sleeve_hem(draft, back, neck, end)
    draft = _neckline(draft, neck, style)
    return _hem(draft, style, hem_of, lower_of(back))


def _traced(back: Draft) -> DraftingPaper:
    """What the front takes over from the back."""
    points = [name for name in back.paper.points if name in "NSAWJBPEHUVCDGM"]
    lines = [name for name in back.paper.lines if name in ("underarm", "side")]
    return back.paper.only(points, lines)


def _overarm_end(draft: Draft, back: Draft, neck: str) -> tuple[Draft, str]:
    """The overarm's end, trued to the back's where more than a little would have to be eased in."""
    length = (back["E"] - back["S"]).length()
    if (draft["E"] - draft[neck]).length() - length <= EASED_IN:
        return draft, "E"
    called = "the end of the front's overarm line, trued to the back's length"
    return draft.along(neck, "E", "e", mm(length), called), "e"


def _neck(draft: Draft, back: Draft, neck: str, end: str) -> tuple[Draft, str]:
    """Where a neckline wider than the neck begins, as far along the overarm as on the back."""
    if "s" not in back.paper.points:
        return draft, neck
    by = mm((back["s"] - back["S"]).length())
    return draft.along(neck, end, "z", by, "where the wider neckline begins, as on the back"), "z"


def _sleeve_hem(draft: Draft, back: Draft, neck: str, end: str) -> Draft:
    """The back's sleeve hem where it still leaves the overarm square, else one that does."""
    old = back.paper.line("sleeve_hem")
    cap = "underarm" not in back.paper.lines
    last = "U" if cap and "U" in draft.paper.points else "H"
    square = (draft[end] - draft[neck]).unit().square()
    if end == "E" and square.angle_to(old.leaving()) <= SQUARE_ENOUGH:
        if len(old.flattened()) == 2:
            return draft.rule("sleeve_hem", "E", last)
        return draft.curve("sleeve_hem", old, ("E", last), "As on the back.")
    third = (old.end - draft[end]).length() / 3
    toward = old.arriving() * -third
    path = curved(draft[end], draft[end] + square * third, old.end + toward, old.end)
    how = "Leave the front's own overarm square and run into the back's hem."
    return draft.curve("sleeve_hem", path, (end, last), how)


def _neckline(draft: Draft, neck: str, style: TopStyle) -> Draft:
    depth = style.neck.depth
    draft = draft.down("N", "F", depth, "the neckline on the centre front")
    corner = mm(draft[neck].x)
    draft = draft.across("F", "X", corner, "a corner below the neckline's end")
    overarm = draft.paper.line("shoulder").leaving()
    path, manner = front_curve(style.neck.kind, draft["F"], draft[neck], overarm)
    check = nearest("f", path, "X", draft)
    return draft.curve("neckline", path, ("F", neck), manner, (check,))


def _hem(draft: Draft, style: TopStyle, hem_of: HemOf, lower: str) -> Draft:
    """The back's lower edge, lower at the centre by what is wanted, running out at the side."""
    drop, centre = style.fullness.front_hem_drop, "B"
    if drop.mm > 0.05:
        called = said("the {} on the centre front", LineName(lower))
        draft, centre = draft.down("B", "O", drop, called), "O"
    return hem_of(draft, centre, lean_of(draft.paper.line("side")), style.hem, lower)


def lean_of(side: Path) -> float:
    """Return how far a side seam leans outwards at the hem for each step down."""
    along = side.arriving()
    return along.x / along.y
