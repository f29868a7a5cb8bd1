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
from tapewise_core.parts.neck_marks import quarter_marked
from tapewise_core.parts.neck_style import NeckFinish, NeckStyle
from tapewise_core.parts.neckband import (
    RAGLAN,
    SHOULDER,
    band_seams,
    both_sides,
    cut_neckband,
    draft_neckband,
    free_edge,
    whole_neckline,
)
from tapewise_core.parts.neckband_ratio import band_of
from tapewise_core.parts.neckline import point_angle
from tapewise_core.sewing.neck_edge import TURNED_NECK, TURNED_V


class Halves(Frozen):
    """Back and front of one side: their drafts, and the pieces cut from them.

    ``between`` are pieces that have a part of the neckline between the two, from the back on:
    the halves of a raglan sleeve.
    """

    drafts: tuple[Draft, Draft]
    back: Piece
    front: Piece
    between: tuple[Piece, ...] = ()

    @property
    def round(self) -> tuple[Piece, ...]:
        """The pieces round half the neck, from the centre back to the centre front."""
        return (self.back, *self.between, self.front)


class Finish(Frozen):
    """What a finish adds: halves marked for it, drafts, pieces, seams, and the neck it leaves.

    ``other`` are the right side's back and front, marked, where the sides differ; ``between`` the
    pieces between back and front, marked.
    """

    back: Piece
    front: Piece
    neck: Neck
    drafts: tuple[Draft, ...] = ()
    pieces: tuple[Piece, ...] = ()
    seams: tuple[Seam, ...] = ()
    other: tuple[Piece, Piece] | None = None
    between: tuple[Piece, ...] = ()


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
    return sum(piece.length("neckline") for piece in halves.round)


def head_of(body: Body) -> float | None:
    """Return the girth of the head [mm], None where it is not known."""
    return body["head"].mm if "head" in body else None


def _band(halves: Halves, style: NeckStyle, other: Halves, head: float | None) -> Finish:
    pointed = style.pointed
    angle = point_angle(halves.front.edge("neckline").path) if pointed else None
    whole = whole_neckline(*(piece.length("neckline") for piece in halves.round))
    if other is not halves:
        whole = both_sides(_neck(halves), _neck(other))
    band = band_of(whole.mm, style, head)
    crossed = RAGLAN if halves.between else SHOULDER
    draft = draft_neckband(whole, style, band.ratio, angle, crossed)
    first = halves if pointed else other
    piece = cut_neckband(draft, style, _neck(first) / whole.mm)
    opening = free_edge(draft) if pointed else piece.length("neckline")
    neck = Neck(opening, style.half_width.mm, ratio=band.ratio, held_back=band.held_back)
    back, *between, front = quarter_marked(halves.round, pointed=pointed)
    seams = band_seams(band.ratio, _walk(halves, pointed), style)
    right = quarter_marked((other.back, other.front), pointed=pointed)
    return Finish(
        back, front, neck, (draft,), (piece,), seams, (right[0], right[-1]), tuple(between)
    )


def _walk(halves: Halves, pointed: bool) -> tuple[EdgeRun, ...]:
    """Half the neckline from the band's join: the centre back, or a V's point. The front's own
    neckline begins at its centre, every other at the back."""
    runs = [
        EdgeRun(piece.name, ("neckline",), 2, (piece is halves.front) is not pointed)
        for piece in halves.round
    ]
    return tuple(reversed(runs) if pointed else runs)


def _turned(halves: Halves, style: NeckStyle, other: Halves) -> Finish:
    back, *more = (EdgeRun(piece.name, ("neckline",)) for piece in halves.round)
    how = COWL if style.cowl else TURNED_V if style.pointed else TURNED_NECK
    seam = Seam(SeamKind.NECK_EDGE, tuple(reversed(more)), (back,), making=how)
    neck = _open(halves, style, other)
    return Finish(halves.back, halves.front, neck, seams=(seam,), between=halves.between)


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
