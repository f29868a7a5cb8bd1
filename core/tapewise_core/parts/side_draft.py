"""The side seam set off on a draft: waist and hip at their quarters, the seam between."""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.geometry.point import Point
from tapewise_core.measures.body import Body
from tapewise_core.parts.side_seam import SideSeam, side_seam
from tapewise_core.parts.trunk_style import TrunkStyle
from tapewise_core.text.told import About, said
from tapewise_core.units import Length

NAPE_AT = said(
    "the nape, on the fold near the top left of the paper, {} from its top", About(100.0)
)
"""Where a back's first point goes, with room above it for the side neck."""


def quarter(body: Body, style: TrunkStyle, key: str) -> Length:
    """Return a quarter of a girth with a quarter of the ease."""
    ease = style.ease
    return (body[key] + ease) / 4


def draw_side(draft: Draft, body: Body, style: TrunkStyle, top: Point) -> tuple[Draft, SideSeam]:
    """Set off waist and hip and return the side seam between: one gentle curve that never
    passes inside the waist."""
    waist, hip = quarter(body, style, "waist"), quarter(body, style, "hip")
    seam = side_seam(
        top,
        Point(waist.mm, draft["W"].y),
        Point(hip.mm, draft["J"].y),
        style.shaping,
    )
    draft = draft.across("W", "I", waist, "the waist's quarter, a limit for the side seam")
    if seam.hip.x - hip.mm > 0.05:
        hip = Length(seam.hip.x, ("hip ÷ 4, let out to follow the wider waist",))
    return draft.across("J", "G", hip, "the side at the hip"), seam
