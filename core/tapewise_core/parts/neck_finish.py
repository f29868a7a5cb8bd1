"""How a neckline is finished: with a band, an edge turned to the inside, or a facing."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.making import How, Making
from tapewise_core.drafting.piece import EdgeRun, Piece, Seam, SeamKind
from tapewise_core.parts.facing import cut_facing, draft_facing, facing_seams
from tapewise_core.parts.neck_style import NeckFinish, NeckStyle
from tapewise_core.parts.neckband import (
    band_seams,
    both_sides,
    cut_neckband,
    draft_neckband,
    free_edge,
    quarter_marked,
    whole_neckline,
)
from tapewise_core.parts.neckline import point_angle


@dataclass(frozen=True, slots=True)
class Halves:
    """Back and front of one side: their drafts, and the pieces cut from them."""

    drafts: tuple[Draft, Draft]
    back: Piece
    front: Piece


@dataclass(frozen=True, slots=True)
class Finish:
    """What a finish adds: the halves marked for it, its drafts, pieces, seams and facts."""

    back: Piece
    front: Piece
    drafts: tuple[Draft, ...] = ()
    pieces: tuple[Piece, ...] = ()
    seams: tuple[Seam, ...] = ()
    facts: Mapping[str, float] = field(default_factory=dict)


def finish_neck(halves: Halves, style: NeckStyle, other: Halves | None = None) -> Finish:
    """Return the finish a style asks for; ``other`` is the right side where the sides differ."""
    finish = FINISHES[style.finish](halves, style, other or halves)
    if not style.pointed:
        return finish
    angle = point_angle(halves.front.edge("neckline").path)
    return replace(finish, facts={**finish.facts, "neck point": angle})


def _neck(halves: Halves) -> float:
    """Half the neckline: one side's back and front."""
    return halves.back.length("neckline") + halves.front.length("neckline")


def _band(halves: Halves, style: NeckStyle, other: Halves) -> Finish:
    back, front = halves.back, halves.front
    pointed = style.pointed
    angle = point_angle(front.edge("neckline").path) if pointed else None
    whole = whole_neckline(back.length("neckline"), front.length("neckline"))
    if other is not halves:
        whole = both_sides(_neck(halves), _neck(other))
    draft = draft_neckband(whole, style, angle)
    first = halves if pointed else other
    piece = cut_neckband(draft, style, _neck(first) / whole.mm)
    facts = {"band free edge": free_edge(draft)} if pointed else {}
    marked = quarter_marked(back, front, pointed=pointed)
    seams = band_seams(style, _walk(pointed), pointed=pointed)
    return Finish(*marked, (draft,), (piece,), seams, facts)


def _walk(pointed: bool) -> tuple[EdgeRun, ...]:
    """Half the neckline from the band's join: the centre back, or a V's point."""
    if pointed:
        return (EdgeRun("front", ("neckline",), 2), EdgeRun("back", ("neckline",), 2, True))
    return (EdgeRun("back", ("neckline",), 2), EdgeRun("front", ("neckline",), 2, True))


def _turned(halves: Halves, style: NeckStyle, other: Halves) -> Finish:
    front, back = (EdgeRun(name, ("neckline",)) for name in ("front", "back"))
    how = How.TURNED_V if style.pointed else How.TURNED_NECK
    seam = Seam(SeamKind.NECK_EDGE, (front,), (back,), making=Making(how))
    return Finish(halves.back, halves.front, seams=(seam,), facts=_opening(halves, other))


def _facing(halves: Halves, style: NeckStyle, other: Halves) -> Finish:
    drafts = tuple(
        draft_facing(draft, name, style)
        for draft, name in zip(halves.drafts, ("back", "front"), strict=True)
    )
    pieces = tuple(
        cut_facing(draft, name, style)
        for draft, name in zip(drafts, ("back", "front"), strict=True)
    )
    seams = facing_seams(pointed=style.pointed)
    return Finish(halves.back, halves.front, drafts, pieces, seams, _opening(halves, other))


def _opening(halves: Halves, other: Halves) -> dict[str, float]:
    """Without a band the neckline itself is the opening."""
    return {"neck opening": _neck(halves) + _neck(other)}


FINISHES = {NeckFinish.BAND: _band, NeckFinish.TURNED: _turned, NeckFinish.FACING: _facing}
