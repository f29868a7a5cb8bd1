"""The front of the grown-on-sleeve jersey top: the back traced, with three changes.

The side neck is raised, the centre front's hem may be lower, and the neckline
is its own. Z is the front's side neck, F the neckline on the centre front, O
the hem there. Numbers without another source are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.sheet import Sheet
from tapewise_core.garments.hem import HEM_MANNER
from tapewise_core.garments.option import Style
from tapewise_core.garments.top_back import NECK_MANNER, nearest
from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.segments import Cubic
from tapewise_core.units import mm

EASED_IN = 5.0
"""How much longer the front's overarm may be and still be eased in [mm] (common practice)."""

ROUND = 0.5523
"""The handles of a cubic that follows a quarter ellipse, 4(√2 − 1)/3 (exact)."""


def draft_front(back: Draft, style: Style) -> Draft:
    """Return the front, drafted over the finished back with the centre front on a fold."""
    raised = style.length("front-raise")
    draft = Draft("Front").trace(
        "the back, all but its neckline, overarm line and hem", _traced(back)
    )
    if raised.mm > 0.05:
        draft = draft.up("S", "Z", raised, "the front's side neck")
    neck = "Z" if raised.mm > 0.05 else "S"
    draft = _overarm(draft, back, neck)
    draft = draft.down("N", "F", style.length("neck-depth"), "the neckline on the centre front")
    draft = draft.across("F", "X", style.length("neck-half-width"), "a corner below the side neck")
    path = front_neckline(draft["F"], draft[neck], draft[overarm_end(draft)])
    check = nearest("f", path, "X", draft)
    draft = draft.curve("neckline", path, ("F", neck), NECK_MANNER, (check,))
    return _hem(draft, back, style)


def _traced(back: Draft) -> Sheet:
    """What the front takes over from the back."""
    points = [name for name in back.sheet.points if name in "NSAWJBPEHUVCDGM"]
    lines = [name for name in back.sheet.lines if name in ("sleeve_hem", "underarm", "side")]
    return back.sheet.only(points, lines)


def overarm_end(draft: Draft) -> str:
    """Return the name of the point at the front's overarm end."""
    return "e" if "e" in draft.sheet.points else "E"


def _overarm(draft: Draft, back: Draft, neck: str) -> Draft:
    """Rule the overarm; true it to the back's where more than a little would have to be eased in."""
    length = back.sheet.line("shoulder").length()
    surplus = (draft["E"] - draft[neck]).length() - length
    if surplus <= EASED_IN:
        return draft.rule("shoulder", neck, "E", remark="the overarm line")
    called = "the end of the front's overarm line, trued to the back's length"
    draft = draft.along(neck, "E", "e", mm(length), called).rule("shoulder", neck, "e")
    return _redrawn_hem(draft, back)


def _redrawn_hem(draft: Draft, back: Draft) -> Draft:
    """The sleeve's hem from the trued end, to the same underarm as the back's."""
    old = back.sheet.line("sleeve_hem")
    end = "U" if draft["E"] != old.end and old.end == draft.sheet.points.get("U") else "H"
    sheet = draft.sheet
    lines = {name: path for name, path in sheet.lines.items() if name != "sleeve_hem"}
    bare = Sheet(sheet.points, lines, sheet.guides)
    draft = Draft(draft.title, draft.steps, (*draft.sheets[:-1], bare))
    first = old.segments[0]
    if isinstance(first, Cubic):
        down = (draft["e"] - draft["E"]) + (first.leave - first.start)
        path = curved(draft["e"], draft["E"] + down, first.arrive, first.end)
        return draft.curve("sleeve_hem", path, ("e", end), "Leave the overarm square.")
    return draft.rule("sleeve_hem", "e", end)


def front_neckline(centre: Point, side_neck: Point, end: Point) -> Path:
    """Return a round neckline, square to the fold and to the overarm line."""
    down = (end - side_neck).unit().square()
    flat = Vector((side_neck.x - centre.x) * ROUND, 0)
    depth = (centre.y - side_neck.y) * ROUND
    return curved(centre, centre + flat, side_neck + down * depth, side_neck)


def _hem(draft: Draft, back: Draft, style: Style) -> Draft:
    """The back's hem, lower at the centre by what is wanted and running out at the side."""
    drop = style.length("front-hem-drop")
    centre = "B"
    if drop.mm > 0.05:
        draft, centre = draft.down("B", "O", drop, "the hem on the centre front"), "O"
    last = back.sheet.line("hem").segments[-1]
    if not isinstance(last, Cubic):
        return draft.rule("hem", centre, "M")
    start = draft[centre]
    path = curved(start, Point(last.leave.x, start.y), last.arrive, last.end)
    return draft.curve("hem", path, (centre, "M"), HEM_MANNER)
