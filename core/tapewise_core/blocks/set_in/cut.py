"""The pieces of a set-in top, cut from their finished drafts."""

from __future__ import annotations

from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge, Notch, Piece, make_piece
from tapewise_core.geometry.crossings import point_at_height
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.side_marks import levels_of, side_notches

LINES = ("neckline", "shoulder", "armhole", "side", "hem")
"""The edges of a half, clockwise from the centre's top."""

BACK_MARK, FRONT_MARK = "back of the armhole", "front of the armhole"
"""Two strokes at the back and one at the front, so that no sleeve is set in back to front."""

CROWN = "shoulder seam and crown"


def cut_half(draft: Draft, name: str, style: SetInStyle) -> Piece:
    """Return one half on the fold."""
    lines = draft.paper.lines
    centre = ruled(lines["hem"].start, lines["neckline"].start)
    edges = tuple(_edge(line, lines[line], style) for line in LINES)
    levels = levels_of(draft)
    points = _points(draft, name, levels)
    x, foot, height = points["underarm"].x * 0.55, centre.start.y, centre.length()
    return make_piece(
        name,
        (*edges, Edge("centre", centre, 0.0, fold=True)),
        points,
        (Point(x, foot - height * 0.55), Point(x, foot - height * 0.12)),
        notches=(*_armhole_notches(draft, name), *side_notches(draft.paper.line("side"), points)),
        on_fold=True,
        levels=levels,
    )


def _edge(line: str, path: Path, style: SetInStyle) -> Edge:
    """An edge with its allowance; hems are turned, and so is a neckline without a band."""
    turned = line == "hem" or (line == "neckline" and style.neck.turned)
    drawn = path.reversed() if line == "hem" else path
    return Edge(line, drawn, style.allowances.along(line), turned)


def _points(draft: Draft, name: str, levels: dict[str, float]) -> dict[str, Point]:
    lines = draft.paper.lines
    top, side = lines["neckline"].start, lines["side"]
    points = {
        "centre_front" if name == "front" else "nape": top if name == "front" else draft["N"],
        "side_neck": lines["shoulder"].start,
        "shoulder_point": lines["shoulder"].end,
        "underarm": draft["U"],
        "hem_side": draft["M"],
        "centre_hem": lines["hem"].start,
    }
    for level in ("bust", "waist", "hip"):
        at = point_at_height(side, levels[level])
        if at is not None:
            points[f"{level}_side"] = at
    return points


def scoop_of(draft: Draft) -> float:
    """Return the armhole's length from its middle to the underarm [mm]."""
    return draft.paper.line("armhole").segments[-1].length()


def _armhole_notches(draft: Draft, name: str) -> tuple[Notch, ...]:
    middle = draft.paper.line("armhole").length() - scoop_of(draft)
    if name == "front":
        return (Notch("armhole", middle, FRONT_MARK),)
    return (Notch("armhole", 0.0, CROWN), Notch("armhole", middle, BACK_MARK, 2))


def cut_sleeve(draft: Draft, back: Draft, front: Draft, style: SetInStyle) -> Piece:
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
        notches=_cap_notches(lines["cap"].length(), back, front),
        count=2,
        mirrored=True,
        label=Box(draft["L"].x * 0.55, draft["C"].y * 0.62, x - 8, draft["C"].y + width * 0.7),
    )


def _cap_notches(cap: float, back: Draft, front: Draft) -> tuple[Notch, ...]:
    """The armhole's marks, at the same walked shares of the cap."""
    behind, before = (piece.paper.line("armhole").length() for piece in (back, front))
    share = cap / (behind + before)
    return (
        Notch("cap", scoop_of(back) * share, BACK_MARK, 2),
        Notch("cap", behind * share, CROWN),
        Notch("cap", cap - scoop_of(front) * share, FRONT_MARK),
    )
