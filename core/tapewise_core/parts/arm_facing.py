"""An armhole's facing: the armhole's own edge again, a few fingers wide, turned to the inside."""

from __future__ import annotations

import math

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge, Piece, make_piece
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.parts.bare_style import BareStyle
from tapewise_core.parts.bare_ways import ARM_FACING, ARM_FACING_RING
from tapewise_core.parts.seam_steps import set_off
from tapewise_core.parts.shape.armhole import armhole_through

NEAR_END = 5.0
"""A facing ends at least so far above the end of the side it is traced from [mm] (our choice)."""


def draft_arm_facing(half: Draft, name: str, style: BareStyle) -> Draft:
    """Return a facing traced from the half it is sewn to; ``name`` is back or front."""
    armhole, shoulder, side = (half.paper.line(one) for one in ("armhole", "shoulder", "side"))
    end, under = (half.paper.letter(at) for at in (armhole.start, armhole.end))
    middle = half.paper.letter(armhole.segments[0].end)
    wide = style.facing.mm
    inner = shoulder.at(max(shoulder.length() - wide, NEAR_END))[0]
    lower = side.at(min(wide, side.length() - NEAR_END))[0]
    points = filter(None, (end, middle, under))
    draft = Draft(f"Armhole facing, {name}").trace(
        half.title, half.paper.only(points, ("armhole",))
    )
    draft = set_off(draft, end, "H", inner, "the facing's edge on the shoulder")
    draft = set_off(draft, under, "V", lower, "its edge on the side")
    draft = draft.rule("shoulder", "H", end).rule("side", under, "V")
    inside = Point(draft[middle].x - wide, draft[middle].y)
    draft = set_off(draft, middle, "Z", inside, "as wide at the armhole's middle")
    return draft.curve("outer", _outer(draft, shoulder), ("H", "Z", "V"), "As wide all along.")


def _outer(draft: Draft, shoulder: Path) -> Path:
    """As an armhole is drawn: square to the shoulder, upright at its middle, level to the side."""
    way = shoulder.end - shoulder.start
    slope = math.degrees(math.atan2(way.y, way.x))
    return armhole_through(draft["H"], slope, draft["Z"], draft["V"]).path


def cut_arm_facing(draft: Draft, half: Piece, style: BareStyle) -> Piece:
    """Return a facing as a piece to cut for both sides, marked as the half it is sewn to; its outer
    edge is overlocked."""
    lines = draft.paper.lines
    edges = (
        Edge("shoulder", lines["shoulder"], style.seam.mm),
        Edge("armhole", lines["armhole"], style.allowance.mm),
        Edge("side", lines["side"], style.seam.mm),
        Edge("outer", lines["outer"].reversed(), 0.0),
    )
    points = {"shoulder_point": lines["armhole"].start, "underarm": lines["armhole"].end}
    at, middle = draft["Z"], lines["armhole"].segments[0].end
    x = (at.x + middle.x) / 2
    return make_piece(
        f"armhole_facing_{half.name}",
        edges,
        points,
        (Point(x, at.y + 20), Point(x, at.y - 35)),
        notches=tuple(notch for notch in half.notches if notch.edge == "armhole"),
        count=2,
        mirrored=True,
        label=Box(at.x + 2, at.y + 22, middle.x - 3, at.y + 80),
    )


def arm_facing_seams(armhole: tuple[EdgeRun, ...], where: str = "") -> tuple[Seam, ...]:
    """Return a facing's own shoulder and side, and its seam round an armhole."""

    def run(name: str, edge: str, *, up: bool = False) -> EdgeRun:
        return EdgeRun(f"armhole_facing_{name}", (edge,), backwards=up)

    ring, kind = ARM_FACING_RING, SeamKind.FACING_SHOULDER
    ends = (
        Seam(kind, (run("front", edge),), (run("back", edge),), making=ring)
        for edge in ("shoulder", "side")
    )
    round_it = (run("back", "armhole", up=True), run("front", "armhole"))
    return (*ends, Seam(SeamKind.ARM_FACING, round_it, armhole, making=ARM_FACING, where=where))
