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

A neckline wider than the neck begins at s on the overarm line, a lower one at
b below N. Numbers without another source are common practice in the trade.
"""

from __future__ import annotations

import math

from tapewise_core.blocks.top.sleeve import draft_sleeve
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.errors import DraftError
from tapewise_core.geometry.point import Point
from tapewise_core.measures.body import Body
from tapewise_core.parts.hem import HEM, hem_line, side_and_underarm
from tapewise_core.parts.neck_options import fall_of, own_half_width
from tapewise_core.parts.neckline import NECK_MANNER, back_neckline, nearest, neck_of
from tapewise_core.parts.shoulder import draw_shoulder
from tapewise_core.parts.side_draft import NAPE_AT, draw_side
from tapewise_core.parts.underarm import Underarm
from tapewise_core.text.told import LineName, OptionKey, said
from tapewise_core.units import Length, cm, mm

SLOPE_RUN = cm(20)
"""How far out the slope is set off; any length serves."""


def draft_back(body: Body, style: TopStyle, title: str = "Back", lower: str = HEM) -> Draft:
    """Return the back, drafted with the centre back on a fold; ``lower`` is its lower edge."""
    draft, underarm = upper_back(body, style, title, lower)
    draft, seam = draw_side(draft, body, style.trunk, underarm.side)
    underarm = underarm.leaning(seam.path.leaving())
    draft, lean = side_and_underarm(draft, seam, underarm, style.hem, lower)
    draft, centre = hem_centre(draft, style)
    return hem_line(draft, centre, lean, style.hem, lower)


def upper_back(body: Body, style: TopStyle, title: str, lower: str = HEM) -> tuple[Draft, Underarm]:
    """Return the back down to its underarm: levels, overarm, neckline and sleeve."""
    draft = _lines_across(body, style, title, lower)
    draft = _overarm(draft, body, style)
    draft = _neckline(draft, body, style)
    draft, underarm = draft_sleeve(draft, body, style)
    _leaves_a_side(draft, underarm.side)
    return draft, underarm


def _lines_across(body: Body, style: TopStyle, title: str, lower: str) -> Draft:
    """The levels; a round back lifts the nape off a waist that was not measured from it."""
    lifted = style.figure.round_back.called("round back")
    if body.has("back_waist_length"):
        lifted = mm(0)
    return (
        Draft(title)
        .start("N", NAPE_AT)
        .down("N", "A", body["armscye_depth"] + lifted, "the armscye line")
        .down("N", "W", body["back_waist_length"] + lifted, "the waist line")
        .down("W", "J", body["hip_depth"], "the hip line")
        .down("N", "B", style.trunk.length + lifted, said("the {}", LineName(lower)))
    )


def _overarm(draft: Draft, body: Body, style: TopStyle) -> Draft:
    """Straight from the side neck through the shoulder point and on along the sleeve."""
    draft = _side_neck(draft, body, style)
    degrees = fall_of(body, style.figure)
    drop = SLOPE_RUN.mm * math.tan(math.radians(degrees))
    working = Length(drop, (SLOPE_RUN.mm, f" × tan {degrees:.1f}°"))
    sleeve = style.sleeve.length.called("sleeve length")
    slope = "the slope: the shoulder's own less 5°, so that the arm can lift"
    draft = (
        draft.across("S", "K", SLOPE_RUN, "a help for the slope")
        .down("K", "L", working, slope)
        .along("S", "L", "P", _shoulder(body, style, degrees), "the shoulder point")
        .along("P", "L", "E", sleeve, "the end of the overarm line")
    )
    wider = _wider(body, style, degrees)
    if wider.mm > 0.05:
        draft = draft.along("S", "L", "s", wider, "where the wider neckline begins")
    moved = style.figure.forward_shoulder
    return draw_shoulder(draft, neck_of(draft), "E", moved)


def _side_neck(draft: Draft, body: Body, style: TopStyle) -> Draft:
    """Half the neck out and the rise up; a round back has less of a rise, a flat one more."""
    own, width = own_half_width(body, style.figure), style.neck.half_width
    base = own if width.mm > own.mm else width
    rise, lifted = style.neck.rise, style.figure.round_back
    called = "the side neck"
    if abs(lifted.mm) > 0.05:
        kind = "round" if lifted.mm > 0 else "flat"
        rise = rise - lifted
        called = f"the side neck, its rise changed for a {kind} back"
    return draft.across("N", "X", base, "a corner below the side neck").up("X", "S", rise, called)


def _shoulder(body: Body, style: TopStyle, degrees: float) -> Length:
    """The shoulder's length, and what a narrower neckline leaves of the neck."""
    narrower = own_half_width(body, style.figure) - style.neck.half_width
    if narrower.mm <= 0.05:
        return body["shoulder_length"]
    more = mm(narrower.mm / math.cos(math.radians(degrees))).called("what the neck is narrower")
    return body["shoulder_length"] + more


def _wider(body: Body, style: TopStyle, degrees: float) -> Length:
    """How far along the overarm a neckline that is wider than the neck begins."""
    wider = style.neck.half_width.mm - own_half_width(body, style.figure).mm
    return mm(max(wider, 0.0) / math.cos(math.radians(degrees)))


def _neckline(draft: Draft, body: Body, style: TopStyle) -> Draft:
    """Square to the centre back and flat there, square to the overarm."""
    depth, start = style.neck.back_depth, "N"
    if depth.mm > 0.05:
        draft, start = draft.down("N", "b", depth, "the neckline on the centre back"), "b"
    neck = neck_of(draft)
    path = back_neckline(draft[start], draft[neck], draft.paper.line("shoulder").leaving())
    return draft.curve(
        "neckline", path, (start, neck), NECK_MANNER, (nearest("n", path, "X", draft),)
    )


SHORTEST_TO_WAIST = 30.0
"""The least side seam between underarm and waist [mm]."""


def _leaves_a_side(draft: Draft, underarm: Point) -> None:
    """Refuse a sleeve so wide, or an overarm so steep, that its underarm reaches the waist."""
    lowest = draft["W"].y - SHORTEST_TO_WAIST
    if underarm.y > lowest:
        raise DraftError(
            said(
                "The underarm would end {} below the nape, and the waist lies at {}: {} too low. "
                "Check shoulder drop and upper arm, or take less {} or a longer sleeve.",
                mm(underarm.y),
                mm(draft["W"].y),
                mm(underarm.y - lowest),
                OptionKey("sleeve-ease"),
            )
        )


def hem_centre(draft: Draft, style: TopStyle) -> tuple[Draft, str]:
    """Return the draft with the hem marked on the centre back, lower for a full seat."""
    seat = style.fullness.full_seat
    if seat.mm <= 0.05:
        return draft, "B"
    return draft.down("B", "o", seat, "the hem on the centre back, longer over a full seat"), "o"
