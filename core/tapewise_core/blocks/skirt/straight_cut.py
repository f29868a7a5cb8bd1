"""Cutting a straight skirt's back and front from their finished drafts."""

from __future__ import annotations

from tapewise_core.blocks.skirt.straight_plan import StraightPlan
from tapewise_core.blocks.skirt.straight_style import Vent
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge, Notch, Piece, make_piece
from tapewise_core.geometry.crossings import distance_at_height
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.hem import SPLIT
from tapewise_core.parts.side_marks import CLEAR

BACK, FRONT = "skirt_back", "skirt_front"
"""The pieces."""


def cut_back(plan: StraightPlan, draft: Draft, waist: Edge, notches: tuple[Notch, ...]) -> Piece:
    """Return the back: on the fold, or two with a seam and a vent at the centre."""
    edges = (waist, *_side(plan, draft), _hem(plan, draft))
    marks = (*notches, *_hip_mark(plan, edges[1]))
    if not plan.vented:
        edges = (*edges, Edge("centre", _centre(draft), 0.0, fold=True))
        return _made(BACK, plan, draft, edges, marks)
    seam, lines = plan.style.seam.mm, draft.paper.line
    vent = (
        Edge("vent_hem", lines("vent_hem"), plan.style.hem_allowance.mm, turned=True),
        Edge("vent", lines("vent"), seam),
        Edge("vent_top", lines("vent_top"), seam),
        Edge("centre_back", lines("centre_back"), seam),
    )
    return _made(BACK, plan, draft, (*edges, *vent), marks)


def cut_front(plan: StraightPlan, draft: Draft, waist: Edge, notches: tuple[Notch, ...]) -> Piece:
    """Return the front on the fold."""
    edges = (waist, *_side(plan, draft), _hem(plan, draft))
    marks = (*notches, *_hip_mark(plan, edges[1]))
    fold = Edge("centre", _centre(draft), 0.0, fold=True)
    return _made(FRONT, plan, draft, (*edges, fold), marks)


def _made(
    name: str, plan: StraightPlan, draft: Draft, edges: tuple[Edge, ...], marks: tuple[Notch, ...]
) -> Piece:
    shape, vented = plan.shape, name == BACK and plan.vented
    x, high = shape.hip.x * 0.5, plan.style.length.mm
    return make_piece(
        name,
        edges,
        _points(draft),
        (Point(x, high * 0.92), Point(x, high * 0.55)),
        notches=marks,
        count=2 if vented else 1,
        on_fold=not vented,
        mirrored=vented,
        levels={"waist": 0.0, "high_hip": shape.wish.halfway, "hip": shape.wish.hip_depth},
    )


def _side(plan: StraightPlan, draft: Draft) -> tuple[Edge, ...]:
    path, seam = draft.paper.line("side"), plan.style.seam.mm
    if plan.style.vent is not Vent.SLITS:
        return (Edge("side", path, seam),)
    above, below = path.split(path.length() - plan.style.vent_length.mm)
    return (Edge("side", above, seam), Edge("split", below, SPLIT))


def _hem(plan: StraightPlan, draft: Draft) -> Edge:
    path = draft.paper.line("hem").reversed()
    if plan.style.band.mm:
        return Edge("hem", path, plan.style.seam.mm)
    return Edge("hem", path, plan.style.hem_allowance.mm, turned=True)


def _centre(draft: Draft) -> Path:
    return ruled(draft.paper.line("hem").start, draft.paper.line("waist").start)


def _hip_mark(plan: StraightPlan, side: Edge) -> tuple[Notch, ...]:
    """The hip line on the side seam, where it lies clear of a slit."""
    at = distance_at_height(side.path, plan.shape.wish.hip_depth)
    return (Notch("side", at, "hip", 2),) if at and at < side.path.length() - CLEAR else ()


def _points(draft: Draft) -> dict[str, Point]:
    lines = draft.paper.line
    return {
        "centre_waist": lines("waist").start,
        "side_at_waist": lines("waist").end,
        "side_at_hip": draft["Q"],
        "side_at_hem": lines("hem").end,
        "centre_hem": lines("hem").start,
    }
