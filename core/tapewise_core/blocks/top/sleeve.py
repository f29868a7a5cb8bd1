"""The sleeve of a grown-on top on its draft: its hem, and how it meets the body."""

from __future__ import annotations

from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.geometry.point import Point
from tapewise_core.measures.body import Body
from tapewise_core.parts.arm import UPPER_ARM_AT, arm_at
from tapewise_core.parts.side_draft import quarter
from tapewise_core.parts.underarm import (
    Underarm,
    bends_at,
    cap,
    longer,
    reach_of,
    short_or_long,
)
from tapewise_core.units import Length, mm

CLEAR = 3.0
"""The underarm is kept this much above halfway from the armscye line to the waist [mm]."""


def upper_arm_past(body: Body, style: TopStyle) -> float:
    """Return how far past the shoulder point the upper arm lies [mm]; a cap ends before it."""
    sleeve = style.sleeve.length.mm
    return body["arm_length"].mm * UPPER_ARM_AT if "arm_length" in body else sleeve


def draft_sleeve(draft: Draft, body: Body, style: TopStyle) -> tuple[Draft, Underarm]:
    """Return the draft with the sleeve's hem and its underarm's points."""
    sleeve, past = style.sleeve.length.mm, upper_arm_past(body, style)
    half = (arm_at(body, sleeve) + style.sleeve.hem_ease) / 2
    if sleeve <= past:
        half = _upper_half(body, style)
    width = quarter(body, style.trunk, "bust")
    draft = draft.square(("S", "E"), "H", half, "the end of the sleeve's hem").across(
        "A", "Q", width, "the body's quarter on the armscye line, never narrower"
    )
    upper = draft["H"]
    if sleeve > past:
        draft = _upper_arm(draft, body, style, past)
        upper = draft["T"]
    corner = short_or_long(draft["E"], draft["H"], upper, width.mm, draft["A"].y)
    if corner is None:
        return _cap(draft, width)
    return _longer(draft, corner)


def _upper_half(body: Body, style: TopStyle) -> Length:
    """Half the sleeve where the arm is fullest."""
    room = style.figure.full_arm.called("full arm")
    return (body["upper_arm"] + style.sleeve.ease + room) / 2


def _upper_arm(draft: Draft, body: Body, style: TopStyle, past: float) -> Draft:
    along = (draft["E"] - draft["S"]).unit()
    called = "midway between shoulder and elbow, where the upper arm is measured"
    half = _upper_half(body, style)
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
    if shape.point != draft["H"]:
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
    bends = "T" in draft.paper.points and bends_at(draft["H"], draft["T"], corner)
    before = "T" if bends else "H"
    halfway = (draft["A"].y + draft["W"].y) / 2
    reach = reach_of(draft[before], corner, halfway - CLEAR)
    draft = draft.rule("sleeve_hem", "E", "H")
    draft = _down_or_there(draft, "Q", "C", corner.y - draft["Q"].y, "the corner under the arm")
    draft = draft.down("C", "V", mm(reach), "where the rounding of the underarm ends").along(
        "C", before, "Y", mm(reach), "where it begins"
    )
    return draft, longer(draft["E"], draft["H"], corner, draft["T"] if bends else None, reach)
