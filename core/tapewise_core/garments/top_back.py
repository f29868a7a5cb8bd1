"""The back of the grown-on-sleeve jersey top.

::

          S____P________E        N  nape, centre back      A  armscye line
      N__/     |        |        S  side neck              W  waist line
      |                 |        P  shoulder point         J  hip line
      A      C__________H        E  end of the overarm     B  hem
      |     U                    H  end of the sleeve's hem
      W     D                    C  corner under the arm, rounded through U
      |      |                   D  side at the waist
      J      G                   G  side at the hip
      B______M                   M  side at the hem

Numbers without another source are common practice in the trade.
"""

from __future__ import annotations

import math

from tapewise_core.drafting.draft import Draft
from tapewise_core.garments.hem import straight_hem
from tapewise_core.garments.option import Style
from tapewise_core.garments.side_seam import SideSeam, side_seam
from tapewise_core.garments.sleeve import (
    UPPER_ARM_AT,
    Underarm,
    arm_at,
    cap,
    longer,
    overarm_fall,
    reach_of,
    short_or_long,
)
from tapewise_core.geometry.crossings import nearest_point
from tapewise_core.geometry.path import Path, curved
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.measures.body import Body
from tapewise_core.units import Length, cm, mm

SLOPE_RUN = cm(20)
"""How far out the slope is set off; any length serves."""


def draft_back(body: Body, style: Style) -> Draft:
    """Return the back, drafted with the centre back on a fold."""
    draft = _lines_across(body, style)
    draft = _neckline(draft, style)
    draft = _overarm(draft, body, style)
    draft, underarm = _underarm(draft, body, style)
    draft, seam = _side(draft, body, style, underarm.side)
    underarm = underarm.leaning(seam.path.leaving())
    return straight_hem(draft, seam, underarm, style.length("body-length"))


def quarter(body: Body, style: Style, key: str) -> Length:
    """Return a quarter of a girth with a quarter of the ease."""
    ease = style.length("ease")
    return (body[key] + ease) / 4


def _lines_across(body: Body, style: Style) -> Draft:
    return (
        Draft("Back")
        .start("N", "the nape, on the fold near the top left of the paper, 10 cm from its top")
        .down("N", "A", body["armscye_depth"], "the armscye line")
        .down("N", "W", body["back_waist_length"], "the waist line")
        .down("W", "J", body["hip_depth"], "the hip line")
        .down("N", "B", style.length("body-length"), "the hem")
    )


def _neckline(draft: Draft, style: Style) -> Draft:
    """Square to the centre back and flat there, square to the overarm."""
    return draft.across(
        "N", "X", style.length("neck-half-width"), "a corner below the side neck"
    ).up("X", "S", style.length("neck-rise"), "the side neck")


def _overarm(draft: Draft, body: Body, style: Style) -> Draft:
    """Straight from the side neck through the shoulder point and on along the sleeve."""
    degrees = overarm_fall(body)
    drop = SLOPE_RUN.mm * math.tan(math.radians(degrees))
    working = Length(drop, (SLOPE_RUN.mm, f" × tan {degrees:.1f}°"))
    sleeve = style.length("sleeve-length").called("sleeve length")
    draft = (
        draft.across("S", "K", SLOPE_RUN, "a help for the slope")
        .down("K", "L", working, "the slope: the shoulder's own less 5°, so that the arm can lift")
        .along("S", "L", "P", body["shoulder_length"], "the shoulder point")
        .along("P", "L", "E", sleeve, "the end of the overarm line")
        .rule("shoulder", "S", "E", remark="straight through P, the overarm line")
    )
    path = back_neckline(draft["N"], draft["S"], draft["E"])
    return draft.curve("neckline", path, ("N", "S"), NECK_MANNER, (nearest("n", path, "X", draft),))


NECK_MANNER = (
    "Leave the centre square and stay flat for about 2 cm; come to the side neck square to "
    "the overarm line."
)


def back_neckline(nape: Point, side_neck: Point, end: Point) -> Path:
    """Return the back neckline; its handles keep it flat at the fold and square at the overarm."""
    down = (end - side_neck).unit().square()
    flat = Vector((side_neck.x - nape.x) * 0.55, 0)
    return curved(nape, nape + flat, side_neck + down * ((nape.y - side_neck.y) * 0.75), side_neck)


def nearest(
    name: str, path: Path, corner: str, draft: Draft
) -> tuple[str, Point, str, Length, str]:
    """Return the check that a curve passes a corner at its nearest."""
    origin = draft[corner]
    point = nearest_point(path, origin)
    return name, point, corner, mm((point - origin).length()), "at its nearest"


def _underarm(draft: Draft, body: Body, style: Style) -> tuple[Draft, Underarm]:
    """The sleeve's hem, and how it meets the body."""
    ease, sleeve = style.length("sleeve-ease"), style.length("sleeve-length").mm
    half = (arm_at(body, sleeve) + ease) / 2
    width = quarter(body, style, "bust")
    draft = draft.square(("S", "E"), "H", half, "the end of the sleeve's hem").across(
        "A", "Q", width, "the body's quarter on the armscye line, never narrower"
    )
    upper = draft["H"]
    past = body["arm_length"].mm * UPPER_ARM_AT if "arm_length" in body else sleeve
    if sleeve > past:
        draft = _upper_arm(draft, body, ease, past)
        upper = draft["T"]
    corner = short_or_long(draft["E"], draft["H"], upper, width.mm, draft["A"].y)
    if corner is None:
        return _cap(draft, width)
    return _longer(draft, corner)


def _upper_arm(draft: Draft, body: Body, ease: Length, past: float) -> Draft:
    along = (draft["E"] - draft["S"]).unit()
    half = (body["upper_arm"] + ease) / 2
    called = "midway between shoulder and elbow, where the upper arm is measured"
    return draft.along("P", "E", "R", mm(past), called).toward(
        "R", "T", half, along.square(), "downward, square to S–E,", "the sleeve at the upper arm"
    )


def _cap(draft: Draft, width: Length) -> tuple[Draft, Underarm]:
    shape = cap(draft["E"], draft["H"], width.mm, draft["A"].y)
    if shape.moved_out:
        down = shape.point.y - draft["A"].y
        draft = _down_or_there(draft, "Q", "U", down, "the underarm, gone out to the quarter")
        how = "Leave the overarm square, at least as long as its square hem would be."
        return draft.curve("sleeve_hem", shape.hem, ("E", "U"), how), shape
    longer_by = (shape.point - draft["H"]).length()
    if longer_by > 0.5:
        called = "the underarm, on the armscye line and no higher"
        draft = draft.along("E", "H", "U", mm((shape.point - draft["E"]).length()), called)
        return draft.rule("sleeve_hem", "E", "U"), shape
    return draft.rule("sleeve_hem", "E", "H", remark="H is the underarm too"), shape


def _down_or_there(draft: Draft, start: str, name: str, by: float, called: str) -> Draft:
    """Mark a point below another, or beside it where there is no way to go."""
    if by > 0.05:
        return draft.down(start, name, mm(by), called)
    return draft.across("A", name, mm(draft[start].x), called)


def _longer(draft: Draft, corner: Point) -> tuple[Draft, Underarm]:
    reach = reach_of(draft["H"], corner)
    draft = draft.rule("sleeve_hem", "E", "H")
    draft = _down_or_there(draft, "Q", "C", corner.y - draft["Q"].y, "the corner under the arm")
    draft = draft.down("C", "V", mm(reach), "where the rounding of the underarm ends").along(
        "C", "H", "Y", mm(reach), "where it begins"
    )
    return draft, longer(draft["E"], draft["H"], corner)


def _side(draft: Draft, body: Body, style: Style, top: Point) -> tuple[Draft, SideSeam]:
    """One gentle curve that never passes inside the waist."""
    waist, hip = quarter(body, style, "waist"), quarter(body, style, "hip")
    seam = side_seam(
        top,
        Point(waist.mm, draft["W"].y),
        Point(hip.mm, draft["J"].y),
        style.number("waist-shaping") / 100,
    )
    draft = draft.across("W", "I", waist, "the waist's quarter, a limit for the side seam")
    if seam.hip.x - hip.mm > 0.05:
        hip = Length(seam.hip.x, ("hip ÷ 4, let out to follow the wider waist",))
    return draft.across("J", "G", hip, "the side at the hip"), seam
