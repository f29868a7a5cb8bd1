"""A top cut off at the waist, to have a skirt joined to it.

The top's own drafting, with its hem at the waist line: the hem becomes the waist
seam, with a seam's allowance. Numbers without another source are common practice.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, fields, replace

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.making import How, Making
from tapewise_core.drafting.piece import Edge, EdgeRun, Join, Notch, Pattern, Piece, Seam, SeamKind
from tapewise_core.drafting.piece import make_piece as cut
from tapewise_core.drafting.steps import Curve, Outline, Rule, Step

HEM = re.compile(r"(?<!sleeve's )(?<!sleeve’s )\bhem\b")
"""The body's hem in a sentence, not the sleeve's."""


@dataclass(frozen=True, slots=True)
class Mark:
    """A mark on the waist seam at a walked distance from the centre back [mm]."""

    distance: float
    pair: str
    strokes: int = 1


def cut_at_waist(top: Pattern, allowance: float) -> Pattern:
    """Return a top's pattern with its hem made a waist seam; ``allowance`` in mm."""
    pieces = tuple(_waisted(piece, allowance) for piece in top.pieces)
    drafts = tuple(
        _renamed(draft, pieces[min(index, len(pieces) - 1)])
        for index, draft in enumerate(top.drafts)
    )
    return replace(
        top,
        drafts=drafts,
        pieces=pieces,
        seams=tuple(seam for seam in top.seams if seam.kind is not SeamKind.HEM),
        joins=tuple(_join(join) for join in top.joins),
    )


def waist_seam(bodice: Pattern) -> float:
    """Return the whole waist seam [mm]."""
    return bodice.run_length(bodice_runs(bodice))


def bodice_runs(bodice: Pattern) -> tuple[EdgeRun, ...]:
    """Return the bodice's waist walked from the centre back, by the right side."""
    back, front = bodice.piece("back"), bodice.piece("front")
    if back.on_fold:
        return (EdgeRun("back", ("waist",), 2, backwards=True), EdgeRun("front", ("waist",), 2))
    order = ((back, "waist"), (front, "waist_2"), (front, "waist"), (back, "waist_2"))
    return tuple(EdgeRun(piece.name, (edge,), backwards=True) for piece, edge in order)


def marked(bodice: Pattern, marks: tuple[Mark, ...]) -> Pattern:
    """Return the bodice with marks on its waist seam, on both halves."""
    pieces = tuple(
        replace(piece, notches=(*piece.notches, *_notches(bodice, piece, marks)))
        if piece.name in ("back", "front")
        else piece
        for piece in bodice.pieces
    )
    return replace(bodice, pieces=pieces)


def back_half(bodice: Pattern) -> float:
    """Return the waist seam from the centre back to the side [mm]."""
    return bodice.piece("back").length("waist")


def _notches(bodice: Pattern, piece: Piece, marks: tuple[Mark, ...]) -> list[Notch]:
    """The marks that fall on one piece, on its plain edge and on the mirrored one."""
    back, own = back_half(bodice), piece.length("waist")
    found = []
    for mark in marks:
        on_back = mark.distance <= back + 0.5
        if on_back is not (piece.name == "back"):
            continue
        at = back - mark.distance if on_back else mark.distance - back
        at = min(max(at, 0.0), own)
        found.append(Notch("waist", at, mark.pair, mark.strokes))
        if piece.has_edge("waist_2"):
            there = piece.length("waist_2")
            found.append(Notch("waist_2", max(there - at, 0.0), mark.pair, mark.strokes))
    return found


def _waisted(piece: Piece, allowance: float) -> Piece:
    """A piece with its hem made a waist edge; others stay as they are."""
    if not any(edge.name in ("hem", "hem_2") for edge in piece.edges) or not piece.has_edge("side"):
        return piece
    edges = tuple(_edge(edge, allowance) for edge in piece.edges)
    points = {name.replace("hem_side", "waist_seam_side"): at for name, at in piece.points.items()}
    return cut(
        piece.name,
        edges,
        points,
        piece.grain,
        notches=piece.notches,
        on_fold=piece.on_fold,
        levels=piece.levels,
        inner=piece.inner,
    )


def _edge(edge: Edge, allowance: float) -> Edge:
    if edge.name not in ("hem", "hem_2"):
        return edge
    return Edge(edge.name.replace("hem", "waist"), edge.path, allowance)


def _join(join: Join) -> Join:
    """A line across a seam, by its new name."""
    (a, line, beside), (b, other, further) = join.first, join.second
    if not line.startswith("hem"):
        return join
    first = (a, line.replace("hem", "waist"), beside)
    second = (b, other.replace("hem", "waist"), further)
    return Join(join.name.replace("hem", "waist"), first, second)


def _renamed(draft: Draft, piece: Piece) -> Draft:
    """The draft told anew: what was the hem is the waist seam, and its allowance is a seam's."""
    fresh = Draft(draft.title)
    for step in draft.steps:
        if isinstance(step, Outline):
            fresh = with_allowances(fresh, piece)
        else:
            fresh = fresh.then(_told_anew(step))
    return fresh


def _told_anew(step: Step) -> Step:
    if isinstance(step, Curve | Rule) and step.line == "sleeve_hem":
        return step
    texts = {
        field.name: HEM.sub("waist seam", value)
        for field in fields(step)  # type: ignore[arg-type]
        if isinstance(value := getattr(step, field.name), str) and field.name in WORDED
    }
    if isinstance(step, Curve | Rule) and step.line == "hem":
        texts["line"] = "waist_seam"
    return _with(step, texts)


WORDED = ("called", "manner", "remark", "what")
"""The fields of a step that hold words for a person."""


def _with(step: Step, texts: Mapping[str, str]) -> Step:
    return replace(step, **texts) if texts else step  # type: ignore[type-var]


def waist_join(bodice: Pattern, skirt: tuple[EdgeRun, ...]) -> Seam:
    """Return the seam that joins a skirt to the bodice."""
    return Seam(SeamKind.WAIST, skirt, bodice_runs(bodice), making=Making(How.STAYED_WAIST))
