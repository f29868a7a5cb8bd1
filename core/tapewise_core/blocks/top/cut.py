"""A half of the top, cut from its finished draft: edges, points, notches and grain."""

from __future__ import annotations

from tapewise_core.blocks.top.overarm import wider_of
from tapewise_core.blocks.top.plan import TopPlan
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge, Notch, Piece, make_piece
from tapewise_core.drafting.seam import Fullness
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.crossings import distance_at_height, point_at_height
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.cowl import neck_edge
from tapewise_core.parts.darts import (
    beside,
    full_notches,
    fullness,
    open_side,
    side_edges,
    waist_dart,
)
from tapewise_core.parts.hem import EDGE_OF, lower_of, slit_edges
from tapewise_core.parts.shape.least import HAIR
from tapewise_core.parts.side_marks import CLEAR, side_notches

NARROW = 8.0
"""A cap's bent hem is turned no wider than this, or bound [mm] (common practice)."""


class _Half(Frozen):
    """What a half is cut from."""

    plan: TopPlan
    draft: Draft
    front: bool

    @property
    def side(self) -> Path:
        """The side, a dart's mouth ruled across."""
        return open_side(self.plan.front.side) if self.front else self.plan.foot.side

    @property
    def levels(self) -> dict[str, float]:
        """The heights of the body's levels on this half [mm]."""
        at = self.plan.side.levels
        found = dict(self.plan.front.levels) if self.front else {
            level.name: level.depth for level in (at.armscye, at.bust, at.waist, at.hip)
        }  # fmt: skip
        if self.plan.side.bodice:
            found.pop("hip")
        return found


def cut_half(plan: TopPlan, draft: Draft, marks: tuple[Notch, ...], *, front: bool) -> Piece:
    """Return one half on the fold; ``marks`` are the back's on its side."""
    half, paper = _Half(plan, draft, front), draft.paper
    centre = ruled(paper.line(lower_of(draft)).start, paper.line("neckline").start)
    edges = (*_edges(half), Edge("centre", centre, 0.0, fold=True))
    points = _points(half)
    dart = plan.front_dart if half.front else plan.back_dart
    return make_piece(
        "front" if front else "back",
        edges,
        points,
        _grain(points, centre),
        notches=_notches(half, edges, marks),
        on_fold=True,
        levels=half.levels,
        darts=(waist_dart(dart),) if dart else (),
    )


def _edges(half: _Half) -> tuple[Edge, ...]:
    lines, style = half.draft.paper.lines, half.plan.style
    edges = [
        _cap_hem(half, lines[line])
        if line == "sleeve_hem" and half.plan.grown.cap
        else _edge(half, line, lines[line])
        for line in ("neckline", "shoulder", "sleeve_hem", "underarm")
        if line in lines
    ]
    allowance = style.allowances.along("side")
    side = (Edge("side", half.plan.foot.side, allowance),)
    edges += side_edges(half.plan.front.side, allowance) if half.front else side
    if style.hem.split:
        edges[-1:] = slit_edges(edges[-1], style.hem.slit.mm)
    lower = lower_of(half.draft)
    path = lines[lower].reversed()
    turned = style.allowances.turned(lower)
    last = Edge(EDGE_OF[lower], path, style.allowances.along(lower), turned=turned)
    return (*edges, last)


def _edge(half: _Half, line: str, path: Path) -> Edge:
    style = half.plan.style
    width = style.allowances.along(line)
    if line == "neckline":
        return neck_edge(path, style.neck, front=half.front)
    return Edge(line, path, width, style.allowances.turned(line))


def _cap_hem(half: _Half, path: Path) -> Edge:
    """A cap's hem, bent as an armhole is: it takes no more than a narrow allowance."""
    allowance = min(half.plan.style.allowances.along("sleeve_hem"), NARROW)
    return Edge("sleeve_hem", path, allowance)


def _points(half: _Half) -> dict[str, Point]:
    paper, plan = half.draft.paper, half.plan
    top = paper.line("neckline").start
    points = {"centre_front": top} if half.front else {"nape": half.draft["N"]}
    if abs(top.y) > 0.05 and "nape" in points:
        points["centre_back"] = top
    shoulder = paper.line("shoulder")
    points |= {
        "side_neck": shoulder.start,
        "shoulder_point": shoulder.at(_past(plan, front=half.front))[0],
        "overarm_end": shoulder.end,
        "sleeve_hem_end": paper.line("sleeve_hem").end,
        "underarm": half.side.start,
        f"{lower_of(half.draft)}_side": half.side.end,
        "centre_hem": paper.line(lower_of(half.draft)).start,
    }
    return points | _at_levels(half)


def _at_levels(half: _Half) -> dict[str, Point]:
    """Where the side passes bust, waist and hip, or a bust line above it the underarm's curve."""
    found, side = {}, half.side
    for level in ("bust", "waist", "hip"):
        y = half.levels.get(level)
        if y is None or y > side.end.y + HAIR:
            continue
        if y >= side.end.y - HAIR:
            found[f"{level}_side"] = side.end
        elif y <= side.start.y:
            found[f"{level}_side"] = _above(half, y)
        elif at := point_at_height(side, y):
            found[f"{level}_side"] = at
    return found


def _above(half: _Half, y: float) -> Point:
    """Where a level above the underarm passes its curve; above that, where the curve begins."""
    lines, sleeve = half.draft.paper.lines, half.plan.grown.sleeve
    if sleeve is None:
        return point_at_height(lines["sleeve_hem"].reversed(), y) or half.side.start
    at = point_at_height(lines["underarm"].reversed(), y)
    return at if at is not None and at.x < sleeve.begins.x else sleeve.begins


def _past(plan: TopPlan, *, front: bool) -> float:
    """How far along the overarm seam from the neckline the shoulder point lies [mm]."""
    return plan.shoulders[front].length - wider_of(plan)


def _grain(points: dict[str, Point], centre: Path) -> tuple[Point, Point]:
    """A line down the middle of the body, clear of the neckline."""
    x, foot, height = points["underarm"].x * 0.55, centre.start.y, centre.length()
    return Point(x, foot - height * 0.55), Point(x, foot - height * 0.12)


def side_fullness(plan: TopPlan) -> Fullness | None:
    """Return what the front's side has more than the back's, walked from the underarm."""
    room = plan.front.room
    if not room.eased and not room.gathered:
        return None
    back = plan.foot.side
    waist = distance_at_height(back, plan.side.levels.waist.depth) or back.length()
    return fullness(plan.front.side, back.length(), waist, gathered=room.gathered > 0)


def _notches(half: _Half, edges: tuple[Edge, ...], marks: tuple[Notch, ...]) -> tuple[Notch, ...]:
    """The shoulder point, the underarm of a sleeve that has one, waist, hip, and the fullness."""
    paths = {edge.name: edge.path for edge in edges}
    plan, found = half.plan, []
    past = _past(plan, front=half.front)
    if past < paths["shoulder"].length() - CLEAR:
        found.append(Notch("shoulder", past, "shoulder point"))
    if "underarm" in paths:
        found.append(Notch("side", 0.0, "underarm", 2))
    if half.front:
        marks = beside(marks, plan.front.side, side_fullness(plan))
    return (*found, *marks)


def side_marks(plan: TopPlan) -> tuple[Notch, ...]:
    """Return the back's marks on its side, which the front has at the same walked places."""
    side = plan.foot.side
    if plan.style.hem.split:
        side, _ = side.split(side.length() - plan.style.hem.slit.mm)
    at = plan.side.levels
    points = {}
    for name, y in (("waist", at.waist.depth), ("hip", at.hip.depth)):
        found = point_at_height(side, y)
        if found is not None:
            points[f"{name}_side"] = found
    return (*side_notches(side, points), *full_notches(side_fullness(plan)))
