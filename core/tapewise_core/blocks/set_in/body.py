"""Back and front of a top with set-in sleeves.

::

          S___P            N  nape, centre back      A  armscye line
      N__/    |            S  side neck              W  waist line
      |       |            P  shoulder point         J  hip line
      T______c             T  about halfway to A     B  hem
      |       \\            c  the armhole at T       U  underarm
      A        |           D  side at the waist      G  side at the hip
      K_________U          M  side at the hem
      W        D
      J         G
      B_________M

The armhole passes half the across-back width halfway down to the armscye line, the
place at which that width is taken [baldt]; other numbers are common practice.
"""

from __future__ import annotations

import math

from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import DOWN, Point, Vector
from tapewise_core.measures.body import Body
from tapewise_core.parts.arm import GENTLER, overarm_fall
from tapewise_core.parts.hem import hem_line, side_and_underarm
from tapewise_core.parts.neck_options import BEYOND_NECK, own_half_width
from tapewise_core.parts.neckline import NECK_MANNER, back_neckline, front_curve, nearest, neck_of
from tapewise_core.parts.side_draft import NAPE_AT, draw_side, quarter
from tapewise_core.parts.underarm import Underarm
from tapewise_core.units import Length, cm, mm

SLOPE_RUN = cm(20)
"""How far out the slope is set off; any length serves."""

INSIDE_SHOULDER, MOST_INSIDE, INSIDE_UNDERARM = 8.0, 25.0, 25.0
"""At T the armhole lies from 8 to 25 mm inside the shoulder point, half an inch as a rule
[baldt], and at least 25 mm inside the underarm (practice)."""

BELOW_SHOULDER = 50.0
"""T is at least so far below a sloping shoulder's point [mm] (common practice)."""

BACK_SCOOP, FRONT_SCOOP = 0.62, 0.72
"""How far the armhole runs level before the underarm, as a share of its way out (practice)."""


def armhole_manner(middle: str) -> str:
    """Say how to draw an armhole through its middle, a point of that letter."""
    return (
        f"Leave the shoulder square, pass {middle} upright, and come to the underarm square to "
        "the side seam."
    )


def draft_back(body: Body, style: SetInStyle, drop: Length) -> Draft:
    """Return the back, drafted with the centre back on a fold; ``drop`` lowers the armhole."""
    draft = (
        Draft("Back")
        .start("N", NAPE_AT)
        .down("N", "A", body["armscye_depth"], "the armscye line")
        .down("N", "W", body["back_waist_length"], "the waist line")
        .down("W", "J", body["hip_depth"], "the hip line")
        .down("N", "B", style.trunk.length, "the hem")
    )
    draft = _shoulder(draft, body, style)
    draft = _neckline(draft, style)
    draft = _armhole_points(draft, body, style, drop)
    return _side_and_hem(draft, body, style)


def _shoulder(draft: Draft, body: Body, style: SetInStyle) -> Draft:
    """From the side neck along the shoulder's own slope to the shoulder point."""
    own, width = own_half_width(body, style.figure), style.neck.half_width
    degrees = slope(body, style)
    fall = Length(
        SLOPE_RUN.mm * math.tan(math.radians(degrees)), (SLOPE_RUN.mm, f" × tan {degrees:.1f}°")
    )
    base = own if width.mm > own.mm else width
    draft = (
        draft.across("N", "X", base, "a corner below the side neck")
        .up("X", "S", style.neck.rise - style.figure.round_back, "the side neck")
        .across("S", "H", SLOPE_RUN, "a help for the slope")
        .down("H", "L", fall, "the slope, the shoulder's own")
        .along("S", "L", "P", _length(body, degrees), "the shoulder point")
    )
    wider = (width.mm - own.mm) / math.cos(math.radians(degrees))
    if wider > 0.05:
        draft = draft.along("S", "L", "s", mm(wider), "where the wider neckline begins")
    return draft.rule("shoulder", neck_of(draft), "P")


def _length(body: Body, degrees: float) -> Length:
    """The shoulder's own length, less what the neckline lies outside the neck's base."""
    taken = BEYOND_NECK.mm / math.cos(math.radians(degrees)) if "neck" in body else 0.0
    return body["shoulder_length"] - mm(round(taken, 1))


def slope(body: Body, style: SetInStyle) -> float:
    """Return the shoulder's own slope [degrees]."""
    drop = style.figure.shoulder_drop.mm
    return overarm_fall(body["shoulder_length"].mm, drop) + GENTLER


def _neckline(draft: Draft, style: SetInStyle) -> Draft:
    depth, start = style.neck.back_depth, "N"
    if depth.mm > 0.05:
        draft, start = draft.down("N", "b", depth, "the neckline on the centre back"), "b"
    neck = neck_of(draft)
    path = back_neckline(draft[start], draft[neck], draft.paper.line("shoulder").leaving())
    check = nearest("n", path, "X", draft)
    return draft.curve("neckline", path, (start, neck), NECK_MANNER, (check,))


def _armhole_points(draft: Draft, body: Body, style: SetInStyle, drop: Length) -> Draft:
    """The armhole's middle on the across-back line, and the underarm at the body's quarter."""
    width = quarter(body, style.trunk, "bust")
    level, least = body["armscye_depth"] / 2, draft["P"].y + BELOW_SHOULDER
    level = level if level.mm >= least else mm(least)
    draft = draft.down("N", "T", level, "the level of the armhole's middle")
    half = _across(body, draft["P"].x, width.mm)
    draft = draft.across("T", "c", half, "the armhole halfway down")
    start = "A"
    if drop.mm > 0.05:
        draft, start = draft.down("A", "K", drop, "the underarm's level"), "K"
    return draft.across(start, "U", width, "the underarm, at the body's quarter")


def _across(body: Body, shoulder: float, width: float) -> Length:
    """Half the across-back width, kept within what a smooth armhole allows."""
    half = body["across_back"] / 2 if "across_back" in body else mm(shoulder - RULE_INSIDE)
    least = shoulder - MOST_INSIDE
    most = min(shoulder - INSIDE_SHOULDER, width - INSIDE_UNDERARM)
    if half.mm < least:
        half = mm(least)
    return half if half.mm <= most else mm(most)


RULE_INSIDE = 12.7
"""The armhole's middle lies half an inch inside the shoulder point, as a rule [mm] [baldt]."""


def armhole(
    shoulder: Vector, top: Point, middle: Point, end: Point, side: Vector, scoop: float
) -> Path:
    """Return an armhole square to shoulder and side seam, upright in its middle."""
    first = (middle - top).length() * 0.4
    second, out = (end.y - middle.y) * 0.55, (end.x - middle.x) * scoop
    square = Vector(side.y, -side.x).unit()
    upper = curved(top, top + shoulder.square() * first, middle + DOWN * -first, middle)
    return upper.then(curved(middle, middle + DOWN * second, end + square * -out, end))


def _side_and_hem(draft: Draft, body: Body, style: SetInStyle) -> Draft:
    top = draft["U"]
    draft, seam = draw_side(draft, body, style.trunk, top)
    shoulder = draft.paper.line("shoulder").leaving()
    path = armhole(shoulder, draft["P"], draft["c"], top, seam.path.leaving(), BACK_SCOOP)
    draft = draft.curve("armhole", path, ("P", "c", "U"), armhole_manner("c"))
    bare = Underarm(ruled(draft["P"], top), top, top, top)
    draft, lean = side_and_underarm(draft, seam, bare, style.hem)
    return hem_line(draft, "B", lean, style.hem)


def draft_front(back: Draft, style: SetInStyle) -> Draft:
    """Return the front, drafted over the finished back with the centre front on a fold."""
    draft = Draft("Front").trace("the back's side and lines across", _traced(back))
    raised, neck = mm(10), "S"
    if raised.mm > 0.05:
        draft, neck = draft.up("S", "Z", raised, "the front's side neck"), "Z"
    draft, neck, end = _front_shoulder(draft, back, neck)
    draft = draft.rule("shoulder", neck, end)
    draft = _front_armhole(draft, style, end)
    draft = draft.down("N", "F", style.neck.depth, "the neckline on the centre front")
    draft = draft.across("F", "X", mm(draft[neck].x), "a corner below the neckline's end")
    overarm = draft.paper.line("shoulder").leaving()
    path, manner = front_curve(style.neck.kind, draft["F"], draft[neck], overarm)
    check = nearest("f", path, "X", draft)
    draft = draft.curve("neckline", path, ("F", neck), manner, (check,))
    return _front_hem(draft, back, style)


def _traced(back: Draft) -> DraftingPaper:
    points = [name for name in back.paper.points if name in "NSAWJBPUCDGMTKc"]
    return back.paper.only(points, ["side"])


def _front_shoulder(draft: Draft, back: Draft, neck: str) -> tuple[Draft, str, str]:
    """The shoulder as long as the back's, so that nothing need be eased in."""
    end, whole = "P", (back["P"] - back["S"]).length()
    if abs((draft["P"] - draft[neck]).length() - whole) > 0.3:
        called = "the front's shoulder point, as far from the neck as the back's"
        draft, end = draft.along(neck, "P", "p", mm(whole), called), "p"
    if "s" in back.paper.points:
        by = mm((back["s"] - back["S"]).length())
        called = "where the wider neckline begins, as on the back"
        return draft.along(neck, end, "z", by, called), "z", end
    return draft, neck, end


def _front_armhole(draft: Draft, style: SetInStyle, end: str) -> Draft:
    hollow, middle = style.armhole.hollow, "c"
    if hollow.mm > 0.05:
        called = "the front's armhole, further in than the back's"
        draft, middle = draft.inward("c", "d", hollow, called), "d"
    shoulder = draft.paper.line("shoulder").leaving()
    side = draft.paper.line("side").leaving()
    path = armhole(shoulder, draft[end], draft[middle], draft["U"], side, FRONT_SCOOP)
    return draft.curve("armhole", path, (end, middle, "U"), armhole_manner(middle))


def _front_hem(draft: Draft, back: Draft, style: SetInStyle) -> Draft:
    drop, centre = style.fullness.front_hem_drop, "B"
    if drop.mm > 0.05:
        draft, centre = draft.down("B", "O", drop, "the hem on the centre front"), "O"
    along = back.paper.line("hem").arriving()
    return hem_line(draft, centre, -along.y / along.x, style.hem)
