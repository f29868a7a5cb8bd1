"""A neck facing: the neckline's own edge again, a hand's breadth deep, turned to the inside."""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge, Piece, make_piece
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.parts.neck_style import NeckStyle
from tapewise_core.parts.neckline import back_neckline, front_curve
from tapewise_core.parts.seam_steps import set_off
from tapewise_core.sewing.neck_edge import FACING, FACING_RING, V_FACING
from tapewise_core.units import cm

DEEPER = cm(3)
"""How much deeper a facing is on the centre, where it would show (common practice)."""


def draft_facing(half: Draft, name: str, style: NeckStyle) -> Draft:
    """Return a facing traced from the half it is sewn to; ``name`` is back or front."""
    neckline = half.paper.line("neckline")
    start, neck = half.paper.letter(neckline.start), half.paper.letter(neckline.end)
    width = style.facing_width
    way = half.paper.line("shoulder").leaving()
    further = _further(half, neck, way)
    points = filter(None, (start, neck, further))
    traced = half.paper.only(points, ("neckline",))
    draft = Draft(f"{name.capitalize()} facing").trace(half.title, traced)
    edge = "the facing's edge on the shoulder"
    if further:
        draft = draft.along(neck, further, "H", width, edge)
    else:
        draft = set_off(draft, neck, "H", draft[neck] + way * width.mm, edge)
    draft = draft.down(start, "Y", width + DEEPER, "its edge on the centre")
    draft = draft.rule("shoulder", neck, "H")
    manner = "As wide as on the shoulder at first, and wider towards the centre."
    return draft.curve("outer", _outer(draft, neck, name, style), ("Y", "H"), manner)


def _further(half: Draft, neck: str, way: Vector) -> str:
    """A point further along the shoulder, straight in the way in which it leaves the neck."""
    for name in ("P", "L3", "S4"):
        if name in half.paper.points and way.angle_to(half[name] - half[neck]) < STRAIGHT:
            return name
    return ""


STRAIGHT = 0.05
"""A point that is seen from the neck within this angle of the shoulder lies on it [degrees]."""


def _outer(draft: Draft, neck: str, name: str, style: NeckStyle) -> Path:
    overarm = (draft["H"] - draft[neck]).unit()
    if name == "back":
        return back_neckline(draft["Y"], draft["H"], overarm)
    return front_curve(style.kind, draft["Y"], draft["H"], overarm)[0]


def cut_facing(draft: Draft, name: str, style: NeckStyle) -> Piece:
    """Return a facing as a piece on the fold; its outer edge is overlocked, without allowance."""
    lines = draft.paper.lines
    top, foot = lines["neckline"].start, draft["Y"]
    slants = style.pointed and name == "front"
    edges = (
        Edge("neckline", lines["neckline"], style.allowances.neck.mm, slants=slants),
        Edge("shoulder", lines["shoulder"], style.allowances.seam.mm),
        Edge("outer", lines["outer"].reversed(), 0.0, slants=slants),
        Edge("centre", ruled(foot, top), 0.0, fold=True),
    )
    points = {f"centre_{name}": top, "side_neck": lines["shoulder"].start}
    x, height = 20.0, foot.y - top.y
    grain = (Point(x, foot.y - 0.15 * height), Point(x, top.y + 0.2 * height))
    label = Box(26, top.y + 9, 88, foot.y - 12)
    return make_piece(f"{name}_facing", edges, points, grain, on_fold=True, label=label)


def facing_seams(*, pointed: bool) -> tuple[Seam, ...]:
    """Return the seams of a facing: its own shoulders, and round the neckline, a V or not."""

    def run(piece: str, edge: str) -> EdgeRun:
        return EdgeRun(piece, (edge,))

    return (
        Seam(
            SeamKind.FACING_SHOULDER,
            (run("front_facing", "shoulder"),),
            (run("back_facing", "shoulder"),),
            making=FACING_RING,
        ),
        Seam(
            SeamKind.FACING,
            (run("back_facing", "neckline"), run("front_facing", "neckline")),
            (run("back", "neckline"), run("front", "neckline")),
            making=V_FACING if pointed else FACING,
        ),
    )
