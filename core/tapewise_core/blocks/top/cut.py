"""A half of the top, cut from its finished draft: edges, points, notches and grain."""

from __future__ import annotations

from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge, Notch, Piece, make_piece
from tapewise_core.geometry.crossings import point_at_height
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.hem import EDGE_OF, HEM, lower_of
from tapewise_core.parts.side_marks import CLEAR, levels_of, side_notches

LINES = ("neckline", "shoulder", "sleeve_hem", "underarm", "side")
"""The edges of a half, clockwise from the centre's top; its lower edge follows."""

SLIT = 15.0
"""The allowance turned back along a slit [mm] (common practice)."""


def cut_half(draft: Draft, name: str, past: float, style: TopStyle) -> Piece:
    """Return one half on the fold; ``past`` is the shoulder point's distance from the neck [mm]."""
    paper = draft.paper
    centre = ruled(paper.line(lower_of(draft)).start, paper.line("neckline").start)
    edges = (*_edges(draft, style), Edge("centre", centre, 0.0, fold=True))
    levels = levels_of(draft)
    points = _points(draft, name, past, levels)
    grain = _grain(points, centre)
    notches = _notches(edges, points, past)
    return make_piece(name, edges, points, grain, notches=notches, on_fold=True, levels=levels)


def shoulder_past(back: Draft) -> float:
    """Return how far along the overarm seam from the neckline the shoulder point lies [mm]."""
    shoulder = back.paper.line("shoulder")
    if len(shoulder.segments) > 1:
        return shoulder.segments[0].length()
    return (back["P"] - shoulder.start).length()


def _edges(draft: Draft, style: TopStyle) -> tuple[Edge, ...]:
    lines = draft.paper.lines
    edges = [_edge(line, lines[line], style) for line in LINES if line in lines]
    edges.append(_lower(draft, style))
    if style.hem.split:
        index = next(i for i, edge in enumerate(edges) if edge.name == "side")
        edges[index : index + 1] = _split(edges[index], style.hem.slit.mm)
    return tuple(edges)


def _edge(line: str, path: Path, style: TopStyle) -> Edge:
    turned = line == "sleeve_hem"
    if line == "neckline":
        turned = style.neck.turned
    return Edge(line, path, style.allowances.along(line), turned)


def _lower(draft: Draft, style: TopStyle) -> Edge:
    """A hem, turned up; or a waist seam with a seam's allowance."""
    lower = lower_of(draft)
    path = draft.paper.line(lower).reversed()
    return Edge(EDGE_OF[lower], path, style.allowances.along(lower), turned=lower == HEM)


def _split(side: Edge, length: float) -> tuple[Edge, Edge]:
    """The side seam, and the slit below it, its edge turned back."""
    above, below = side.path.split(side.path.length() - length)
    return Edge("side", above, side.allowance), Edge("split", below, SLIT)


def _points(draft: Draft, name: str, past: float, levels: dict[str, float]) -> dict[str, Point]:
    paper = draft.paper
    top = paper.line("neckline").start
    points = {"centre_front": top} if name.startswith("front") else {"nape": draft["N"]}
    if top.y > 0.05 and "nape" in points:
        points["centre_back"] = top
    points |= {
        "side_neck": paper.line("shoulder").start,
        "shoulder_point": paper.line("shoulder").at(past)[0],
        "overarm_end": paper.line("shoulder").end,
        "sleeve_hem_end": paper.line("sleeve_hem").end,
        "underarm": paper.line("side").start,
        f"{lower_of(draft)}_side": draft["M"],
        "centre_hem": paper.line(lower_of(draft)).start,
    }
    side: Path = paper.line("side")
    for level in ("bust", "waist", "hip"):
        at = point_at_height(side, levels[level])
        if at is not None:
            points[f"{level}_side"] = at
    return points


def _grain(points: dict[str, Point], centre: Path) -> tuple[Point, Point]:
    """A line down the middle of the body, clear of the neckline."""
    x, foot, height = points["underarm"].x * 0.55, centre.start.y, centre.length()
    return Point(x, foot - height * 0.55), Point(x, foot - height * 0.12)


def _notches(edges: tuple[Edge, ...], points: dict[str, Point], past: float) -> tuple[Notch, ...]:
    """The shoulder point, the underarm of a sleeve that has one, waist and hip."""
    paths = {edge.name: edge.path for edge in edges}
    found = []
    if past < paths["shoulder"].length() - CLEAR:
        found.append(Notch("shoulder", past, "shoulder point"))
    if "underarm" in paths:
        found.append(Notch("side", 0.0, "underarm", 2))
    return (*found, *side_notches(paths["side"], points))
