"""How a neckline is finished: with a band, an edge turned to the inside, or a facing."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.facts import Neck
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.parts.cowl_way import COWL
from tapewise_core.parts.facing import cut_facing, draft_facing, facing_seams
from tapewise_core.parts.neck_style import NeckFinish, NeckStyle
from tapewise_core.parts.neckband import (
    band_of,
    band_seams,
    both_sides,
    cut_neckband,
    draft_neckband,
    free_edge,
    quarter_marked,
    whole_neckline,
)
from tapewise_core.parts.neckline import point_angle
from tapewise_core.sewing.neck_edge import TURNED_NECK, TURNED_V


class Halves(Frozen):
    """Back and front of one side: their drafts, and the pieces cut from them."""

    drafts: tuple[Draft, Draft]
    back: Piece
    front: Piece


class Finish(Frozen):
    """What a finish adds: halves marked for it, drafts, pieces, seams, and the neck it leaves.

    ``other`` are the right side's back and front, marked, where the sides differ.
    """

    back: Piece
    front: Piece
    neck: Neck
    drafts: tuple[Draft, ...] = ()
    pieces: tuple[Piece, ...] = ()
    seams: tuple[Seam, ...] = ()
    other: tuple[Piece, Piece] | None = None


def finish_neck(
    halves: Halves, style: NeckStyle, other: Halves | None = None, *, head: float | None
) -> Finish:
    """Return the finish a style asks for; ``other`` is the right side where the sides differ.

    ``head`` is the girth that has to pass [mm], None where it is not known.
    """
    if style.finish is NeckFinish.BAND:
        finish = _band(halves, style, other or halves, head)
    else:
        finish = FINISHES[style.finish](halves, style, other or halves)
    if not style.pointed:
        return finish
    angle = point_angle(halves.front.edge("neckline").path)
    return replace(finish, neck=replace(finish.neck, point=angle))


def _neck(halves: Halves) -> float:
    """Half the neckline: one side's back and front."""
    return halves.back.length("neckline") + halves.front.length("neckline")


def head_of(body: Body) -> float | None:
    """Return the girth of the head [mm], None where it is not known."""
    return body["head"].mm if "head" in body else None


def _band(halves: Halves, style: NeckStyle, other: Halves, head: float | None) -> Finish:
    back, front = halves.back, halves.front
    pointed = style.pointed
    angle = point_angle(front.edge("neckline").path) if pointed else None
    whole = whole_neckline(back.length("neckline"), front.length("neckline"))
    if other is not halves:
        whole = both_sides(_neck(halves), _neck(other))
    band = band_of(whole.mm, style, head)
    draft = draft_neckband(whole, style, band.ratio, angle)
    first = halves if pointed else other
    piece = cut_neckband(draft, style, _neck(first) / whole.mm)
    opening = free_edge(draft) if pointed else piece.length("neckline")
    neck = Neck(opening, style.half_width.mm, ratio=band.ratio, held_back=band.held_back)
    marked = quarter_marked(back, front, pointed=pointed)
    seams = band_seams(band.ratio, _walk(pointed), style)
    right = quarter_marked(other.back, other.front, pointed=pointed)
    return Finish(*marked, neck, (draft,), (piece,), seams, right)


def _walk(pointed: bool) -> tuple[EdgeRun, ...]:
    """Half the neckline from the band's join: the centre back, or a V's point."""
    if pointed:
        return (EdgeRun("front", ("neckline",), 2), EdgeRun("back", ("neckline",), 2, True))
    return (EdgeRun("back", ("neckline",), 2), EdgeRun("front", ("neckline",), 2, True))


def _turned(halves: Halves, style: NeckStyle, other: Halves) -> Finish:
    front, back = (EdgeRun(name, ("neckline",)) for name in ("front", "back"))
    how = COWL if style.cowl else TURNED_V if style.pointed else TURNED_NECK
    seam = Seam(SeamKind.NECK_EDGE, (front,), (back,), making=how)
    return Finish(halves.back, halves.front, _open(halves, style, other), seams=(seam,))


def _facing(halves: Halves, style: NeckStyle, other: Halves) -> Finish:
    drafts = tuple(
        draft_facing(draft, name, style)
        for draft, name in zip(halves.drafts, ("back", "front"), strict=True)
    )
    pieces = tuple(
        cut_facing(draft, name, style)
        for draft, name in zip(drafts, ("back", "front"), strict=True)
    )
    neck, seams = _open(halves, style, other), facing_seams(pointed=style.pointed)
    return Finish(halves.back, halves.front, neck, drafts, pieces, seams)


def _open(halves: Halves, style: NeckStyle, other: Halves) -> Neck:
    """Without a band the neckline itself is the opening."""
    return Neck(_neck(halves) + _neck(other), style.half_width.mm)


FINISHES = {NeckFinish.TURNED: _turned, NeckFinish.FACING: _facing}
