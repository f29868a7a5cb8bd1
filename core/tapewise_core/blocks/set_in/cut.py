"""The pieces of a set-in top, cut from their finished drafts."""

from __future__ import annotations

from dataclasses import dataclass

from tapewise_core.blocks.set_in.back import waist_dart as back_dart
from tapewise_core.blocks.set_in.ends import Sides, smooth
from tapewise_core.blocks.set_in.front import waist_dart as front_dart
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.set_in.wish import Planned
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Dart, Edge, Fullness, Notch, Piece, make_piece
from tapewise_core.geometry.crossings import distance_at_height, point_at_height
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.darts import (
    beside,
    full_notches,
    fullness,
    open_side,
    side_edges,
    waist_dart,
)
from tapewise_core.parts.shape.bust_room import easable
from tapewise_core.parts.shape.cap import Cap
from tapewise_core.parts.shape.set_in import SetIn
from tapewise_core.parts.side_marks import side_notches

BACK_MARK, FRONT_MARK = "back of the armhole", "front of the armhole"
"""Two strokes at the back and one at the front, so that no sleeve is set in back to front."""

CROWN = "shoulder seam and crown"


@dataclass(frozen=True, slots=True)
class Trunk:
    """Back and front as drafted, with all that their pieces are cut by."""

    plan: Planned
    drawn: SetIn
    sides: Sides
    style: SetInStyle
    full: Fullness | None

    def levels(self, *, front: bool) -> dict[str, float]:
        """Return the levels' heights on a piece: below its room a front is let down [mm]."""
        at, lower = self.plan.wish.levels, self.plan.room.lower if front else 0.0
        seam = self.drawn.seam.at
        part = 0.0 if self.sides.front.dart else smooth(seam.bust, seam.underarm, seam.waist)
        return {
            "armscye": at.armscye.depth,
            "bust": seam.bust + part * lower,
            "under_bust": at.under_bust.depth + lower,
            "waist": at.waist.depth + lower,
            "high_hip": at.high_hip.depth + lower,
            "hip": at.hip.depth + lower,
        }


def trunk_of(plan: Planned, drawn: SetIn, sides: Sides, style: SetInStyle) -> Trunk:
    """Return the trunk, with what the front's side is longer by and where it is taken in."""
    back, front = sides.back, sides.front
    waist = distance_at_height(back, drawn.seam.at.waist) or back.length()
    more = front.length - back.length()
    gathered = bool(plan.room.gathered) or more > easable(plan.wish.stretch) + 1
    full = fullness(front, back.length(), waist, gathered=gathered)
    return Trunk(plan, drawn, sides, style, full)


def cut_half(draft: Draft, trunk: Trunk, *, front: bool) -> Piece:
    """Return one half on the fold."""
    lines, name = draft.paper.lines, "front" if front else "back"
    centre = ruled(lines["hem"].start, lines["neckline"].start)
    edges = _edges(lines["neckline"], lines["shoulder"], lines["armhole"], trunk.style)
    side = trunk.sides.front if front else None
    seam = trunk.style.allowances.along("side")
    sides = side_edges(side, seam) if side else (Edge("side", trunk.sides.back, seam),)
    levels = trunk.levels(front=front)
    points = _points(draft, name, levels, open_side(side) if side else trunk.sides.back)
    x, foot, height = points["underarm"].x * 0.55, centre.start.y, centre.length()
    return make_piece(
        name,
        (*edges, *sides, _edge("hem", lines["hem"].reversed(), trunk.style),
         Edge("centre", centre, 0.0, fold=True)),
        points,
        (Point(x, foot - height * 0.55), Point(x, foot - height * 0.12)),
        notches=(*_armhole_notches(draft, name), *_side_notches(trunk, front=front)),
        on_fold=True,
        levels={key: levels[key] for key in ("armscye", "bust", "waist", "hip")},
        darts=_darts(trunk, front=front),
    )  # fmt: skip


def _edges(neckline: Path, shoulder: Path, armhole: Path, style: SetInStyle) -> tuple[Edge, ...]:
    named = (("neckline", neckline), ("shoulder", shoulder), ("armhole", armhole))
    return tuple(_edge(name, path, style) for name, path in named)


def _edge(line: str, path: Path, style: SetInStyle) -> Edge:
    """An edge with its allowance; hems are turned, and so is a neckline without a band."""
    turned = line == "hem" or (line == "neckline" and style.neck.turned)
    return Edge(line, path, style.allowances.along(line), turned)


def _points(draft: Draft, name: str, levels: dict[str, float], side: Path) -> dict[str, Point]:
    lines = draft.paper.lines
    top = lines["neckline"].start
    points = {
        "centre_front" if name == "front" else "nape": top if name == "front" else draft["N"],
        "side_neck": lines["shoulder"].start,
        "shoulder_point": lines["shoulder"].end,
        "underarm": lines["armhole"].end,
        "hem_side": side.end,
        "centre_hem": lines["hem"].start,
    }
    for level in ("bust", "waist", "hip"):
        at = point_at_height(side, levels[level])
        if at is not None:
            points[f"{level}_side"] = at
    return points


def _side_notches(trunk: Trunk, *, front: bool) -> tuple[Notch, ...]:
    """Waist and hip, and where fullness begins and ends; the front's at the same walked places."""
    back = trunk.sides.back
    heights = trunk.levels(front=False)
    points = {
        f"{key}_side": at
        for key in ("waist", "hip")
        if (at := point_at_height(back, heights[key])) is not None
    }
    notches = (*full_notches(trunk.full), *side_notches(back, points))
    return beside(notches, trunk.sides.front, trunk.full) if front else notches


def _darts(trunk: Trunk, *, front: bool) -> tuple[Dart, ...]:
    found = (front_dart if front else back_dart)(trunk.plan, trunk.drawn)
    return (waist_dart(found),) if found else ()


def scoop_of(draft: Draft) -> float:
    """Return the armhole's length from its middle to the underarm [mm]."""
    return draft.paper.line("armhole").segments[-1].length()


def _armhole_notches(draft: Draft, name: str) -> tuple[Notch, ...]:
    middle = draft.paper.line("armhole").length() - scoop_of(draft)
    if name == "front":
        return (Notch("armhole", middle, FRONT_MARK),)
    return (Notch("armhole", 0.0, CROWN), Notch("armhole", middle, BACK_MARK, 2))


def cut_sleeve(draft: Draft, solved: Cap, drawn: SetIn, style: SetInStyle) -> Piece:
    """Return the sleeve, marked where it meets back, shoulder and front."""
    lines = draft.paper.lines
    seam, hem = style.allowances.seam.mm, style.allowances.hem.mm
    edges = (
        Edge("cap", lines["cap"], seam),
        Edge("underarm", lines["underarm"], seam),
        Edge("sleeve_hem", lines["sleeve_hem"].reversed(), hem, turned=True),
        Edge("underarm_2", lines["underarm_2"].reversed(), seam),
    )
    names = {"crown": "O", "back_underarm": "L", "front_underarm": "R", "hem_middle": "Q"}
    width = draft["Q"].y - draft["C"].y
    x = draft["R"].x * 0.35
    return make_piece(
        "sleeve",
        edges,
        {name: draft[letter] for name, letter in names.items()},
        (Point(x, draft["C"].y + width * 0.85), Point(x, draft["O"].y + draft["C"].y * 0.3)),
        notches=_cap_notches(lines["cap"].length(), solved, drawn),
        count=2,
        mirrored=True,
        label=Box(draft["L"].x * 0.55, draft["C"].y * 0.62, x - 8, draft["C"].y + width * 0.7),
    )


def _cap_notches(cap: float, solved: Cap, drawn: SetIn) -> tuple[Notch, ...]:
    """The armhole's marks, at the same walked shares of the cap."""
    back, front = drawn.back_armhole, drawn.front_armhole
    return (
        Notch("cap", solved.notch(back.lower_length, front=False), BACK_MARK, 2),
        Notch("cap", solved.back.length(), CROWN),
        Notch("cap", cap - solved.notch(front.lower_length, front=True), FRONT_MARK),
    )
