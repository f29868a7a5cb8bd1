"""The pieces of a set-in top, cut from their finished drafts."""

from __future__ import annotations

from tapewise_core.blocks.set_in.back import waist_dart as back_dart
from tapewise_core.blocks.set_in.front import waist_dart as front_dart
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.set_in.trunk import Trunk
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Dart, Edge, Notch, Piece, make_piece
from tapewise_core.geometry.crossings import point_at_height
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.cowl import neck_edge
from tapewise_core.parts.darts import (
    beside,
    full_notches,
    open_side,
    side_edges,
    waist_dart,
)
from tapewise_core.parts.hem import EDGE_OF, lower_of, slit_edges
from tapewise_core.parts.shape.cap import Cap
from tapewise_core.parts.side_marks import side_notches

BACK_MARK, FRONT_MARK = "back of the armhole", "front of the armhole"
"""Two strokes at the back and one at the front, so that no sleeve is set in back to front."""

CROWN, SHOULDER, SLEEVE_SEAM = "shoulder seam and crown", "shoulder seam", "sleeve seam"


def cut_half(draft: Draft, trunk: Trunk, marks: tuple[Notch, ...], *, front: bool) -> Piece:
    """Return one half on the fold; ``marks`` are the back's on its side."""
    lines, name = draft.paper.lines, "front" if front else "back"
    lower = lower_of(draft)
    centre = ruled(lines[lower].start, lines["neckline"].start)
    edges = _edges(lines["neckline"], lines["shoulder"], lines["armhole"], trunk, front=front)
    side = trunk.sides.front if front else None
    seam = trunk.style.allowances.along("side")
    sides = side_edges(side, seam) if side else (Edge("side", trunk.sides.back, seam),)
    if trunk.style.hem.split:
        sides = (*sides[:-1], *slit_edges(sides[-1], trunk.style.hem.slit.mm))
    levels = trunk.levels(front=front)
    points = _points(draft, name, levels, open_side(side) if side else trunk.sides.back)
    x, foot, height = points["underarm"].x * 0.55, centre.start.y, centre.length()
    return make_piece(
        name,
        (*edges, *sides, _lower(lower, lines[lower].reversed(), trunk.style),
         Edge("centre", centre, 0.0, fold=True)),
        points,
        (Point(x, foot - height * 0.55), Point(x, foot - height * 0.12)),
        notches=_notches(draft, trunk, marks, front=front),
        on_fold=True,
        levels={key: levels[key] for key in SHOWN if key in levels},
        darts=_darts(trunk, front=front),
    )  # fmt: skip


def _edges(
    neckline: Path, shoulder: Path, armhole: Path, trunk: Trunk, *, front: bool
) -> tuple[Edge, ...]:
    bare = trunk.style.bare
    return (
        neck_edge(neckline, trunk.style.neck, front=front),
        _edge("shoulder", shoulder, trunk.style),
        Edge("armhole", armhole, trunk.armhole_allowance, turned=bool(bare and bare.turned)),
    )


def _edge(line: str, path: Path, style: SetInStyle) -> Edge:
    """An edge with its allowance."""
    return Edge(line, path, style.allowances.along(line))


def _lower(line: str, path: Path, style: SetInStyle) -> Edge:
    """The lower edge: a hem that is turned, or a waist seam."""
    turned = style.allowances.turned(line)
    return Edge(EDGE_OF[line], path, style.allowances.along(line), turned=turned)


SHOWN = ("armscye", "bust", "waist", "hip")
"""The levels that a piece names."""


def _points(draft: Draft, name: str, levels: dict[str, float], side: Path) -> dict[str, Point]:
    lines = draft.paper.lines
    top = lines["neckline"].start
    points = {
        "centre_front" if name == "front" else "nape": top if name == "front" else draft["N"],
        "side_neck": lines["shoulder"].start,
        "shoulder_point": lines["shoulder"].end,
        "underarm": lines["armhole"].end,
        f"{lower_of(draft)}_side": side.end,
        "centre_hem": lines[lower_of(draft)].start,
    }
    for level in ("bust", "waist", "hip"):
        at = point_at_height(side, levels[level]) if level in levels else None
        if at is not None:
            points[f"{level}_side"] = at
    return points


def _notches(
    draft: Draft, trunk: Trunk, marks: tuple[Notch, ...], *, front: bool
) -> tuple[Notch, ...]:
    """The armhole's, and the back's on the side, or the front's at the same walked places."""
    plain = trunk.style.bare is not None and trunk.style.bare.turned
    armhole = () if plain else _armhole_notches(draft, trunk, front=front)
    on_side = beside(marks, trunk.sides.front, trunk.full) if front else marks
    return (*armhole, *on_side)


def side_marks(trunk: Trunk) -> tuple[Notch, ...]:
    """Return the back's marks on its side: waist and hip, and where fullness begins and ends."""
    back, hem = trunk.sides.back, trunk.style.hem
    if hem.split:
        back, _ = back.split(back.length() - hem.slit.mm)
    heights = trunk.levels(front=False)
    points = {
        f"{key}_side": at
        for key in ("waist", "hip")
        if key in heights and (at := point_at_height(back, heights[key])) is not None
    }
    return (*full_notches(trunk.full), *side_notches(back, points))


def _darts(trunk: Trunk, *, front: bool) -> tuple[Dart, ...]:
    found = (front_dart if front else back_dart)(trunk.plan, trunk.drawn)
    return (waist_dart(found),) if found else ()


def _armhole_notches(draft: Draft, trunk: Trunk, *, front: bool) -> tuple[Notch, ...]:
    """The shoulder's mark on the back, the sleeve's at the armhole's middle, and where the seam of
    a sleeve that a fitting turned meets the back."""
    whole = draft.paper.line("armhole").length()
    middle = whole - trunk.drawn.marks[front]
    if front:
        return (Notch("armhole", middle, FRONT_MARK),)
    at_shoulder = SHOULDER if trunk.style.bare else CROWN
    marks = (Notch("armhole", 0.0, at_shoulder), Notch("armhole", middle, BACK_MARK, 2))
    turned = trunk.style.fitted.cap_forward
    return (*marks, Notch("armhole", whole - turned, SLEEVE_SEAM)) if turned else marks


def cut_sleeve(draft: Draft, solved: Cap, trunk: Trunk) -> Piece:
    """Return the sleeve, marked where it meets back, shoulder and front."""
    lines = draft.paper.lines
    allowances = trunk.style.allowances
    seam, hem = allowances.seam.mm, allowances.along("sleeve_hem")
    edges = (
        Edge("cap", lines["cap"], trunk.armhole_allowance),
        Edge("underarm", lines["underarm"], seam),
        Edge("sleeve_hem", lines["sleeve_hem"].reversed(), hem, allowances.turned("sleeve_hem")),
        Edge("underarm_2", lines["underarm_2"].reversed(), seam),
    )
    names = {"crown": "O", "back_underarm": "L", "front_underarm": "R", "hem_middle": "Q"}
    width = draft["Q"].y - draft["G"].y
    x = draft["R"].x * 0.35
    return make_piece(
        "sleeve",
        edges,
        {name: draft[letter] for name, letter in names.items()},
        (Point(x, draft["G"].y + width * 0.85), Point(x, draft["O"].y + draft["G"].y * 0.3)),
        notches=_cap_notches(lines["cap"].length(), solved, trunk),
        count=2,
        mirrored=True,
        label=Box(draft["L"].x * 0.55, draft["G"].y * 0.62, x - 8, draft["G"].y + width * 0.7),
    )


def _cap_notches(cap: float, solved: Cap, trunk: Trunk) -> tuple[Notch, ...]:
    """The armhole's marks, at the same walked shares of the cap; nearer to its back corner by what
    a fitting turned the sleeve forward."""
    back, front = trunk.drawn.marks
    turned = trunk.style.fitted.cap_forward
    by = turned * (1 - solved.shorter)
    marks = (
        Notch("cap", solved.notch(back, front=False) - by, BACK_MARK, 2),
        Notch("cap", solved.back.length() - by, CROWN),
        Notch("cap", cap - solved.notch(front, front=True) - by, FRONT_MARK),
    )
    return (Notch("cap", 0.0, SLEEVE_SEAM), *marks) if turned else marks
