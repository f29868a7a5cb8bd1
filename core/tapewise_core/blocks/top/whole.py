"""Back and front in one piece each, for a body whose sides differ.

The half on the right of the paper keeps its plain names; the other's get the
suffix ``_2``. Seen from outside, the right of the back is the wearer's right
and the right of the front the wearer's left.
"""

from __future__ import annotations

from dataclasses import replace
from types import MappingProxyType

from tapewise_core.blocks.top.remarks import remarks
from tapewise_core.blocks.top.seams import body_seams, facts, girths, lengths, side_joins
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.piece import (
    Edge,
    EdgeRun,
    Join,
    Notch,
    Pattern,
    Piece,
    Seam,
    SeamKind,
    make_piece,
)
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.measures.body import Body
from tapewise_core.parts.figure_style import LowerShoulder
from tapewise_core.parts.hem import lower_of
from tapewise_core.parts.neck_finish import Finish, Halves, finish_neck, head_of

AXIS = Point(0, 0), Point(0, 1)
OTHER = "_2"


def whole_pattern(
    garment: str, title: str, body: Body, style: TopStyle, left: Halves, right: Halves
) -> Pattern:
    """Return the pattern of a top whose left and right halves were drafted apart."""
    finish = finish_neck(left, style.neck, right, head=head_of(body))
    back, front = whole_piece(right.back, left.back), whole_piece(left.front, right.front)
    back, front = _marked(back, finish.back), _marked(front, finish.front)
    pieces = (back, front, *finish.pieces)
    finished = tuple(map(with_allowances, finish.drafts, finish.pieces))
    halves = (left.back, left.front, right.back, right.front)
    lower = left if style.figure.lower_shoulder is LowerShoulder.LEFT else right
    edge = lower_of(left.drafts[0])
    return Pattern(
        garment=garment,
        title=title,
        drafts=(*(_closed(draft) for draft in _drafts(left, right)), *finished),
        pieces=pieces,
        seams=_seams(style, finish, edge),
        joins=_joins(style, edge),
        girths=girths(halves, body, style),
        facts=facts(lower.drafts[0], body, style, finish.neck),
        lengths=MappingProxyType(lengths(lower.back, lower.front)),
        remarks=(
            (
                "One shoulder is lower, so both sides are drafted apart: join the halves of the "
                "back, and of the front, along the centre on paper, and cut each as one piece, its "
                "printed side on the cloth's right side. Seen so, the right of the back is the "
                "wearer's right, and the right of the front the wearer's left.",
            ),
            *remarks(lower.drafts[0], body, style),
        ),
    )


def _drafts(left: Halves, right: Halves) -> tuple[Draft, ...]:
    return (right.drafts[0], left.drafts[0], left.drafts[1], right.drafts[1])


def _closed(draft: Draft) -> Draft:
    return draft.note(
        "Join this half to the other along the centre, then add the allowances all round: "
        "as wide as the other side's."
    )


def whole_piece(right: Piece, left: Piece) -> Piece:
    """Return one piece from two halves, ``right`` and ``left`` as they lie on the paper."""
    mirrored = [
        replace(edge, name=edge.name + OTHER, path=_other(edge.path))
        for edge in reversed(left.edges)
        if not edge.fold
    ]
    edges: tuple[Edge, ...] = (*(edge for edge in right.edges if not edge.fold), *mirrored)
    points = dict(right.points) | {
        name + OTHER: at.mirrored(*AXIS) for name, at in left.points.items() if at.x > 1
    }
    notches = (*right.notches, *(_turned(left, notch) for notch in left.notches))
    inner = {"centre": right.edge("centre").path}
    return make_piece(
        right.name, edges, points, right.grain, notches=notches, levels=right.levels, inner=inner
    )


def _other(path: Path) -> Path:
    return path.mirrored(*AXIS).reversed()


def _turned(half: Piece, notch: Notch) -> Notch:
    distance = half.length(notch.edge) - notch.distance
    return replace(notch, edge=notch.edge + OTHER, distance=distance)


def _marked(piece: Piece, half: Piece) -> Piece:
    """Take over the neckline's marks from the half its finish was made for, on both sides."""
    marks = [notch for notch in half.notches if notch.edge == "neckline"]
    scaled = []
    for notch in marks:
        share = notch.distance / half.length("neckline")
        here, there = piece.length("neckline"), piece.length("neckline" + OTHER)
        scaled.append(replace(notch, distance=share * here))
        if share > 0:
            other = replace(notch, edge="neckline" + OTHER, distance=(1 - share) * there)
            scaled.append(other)
    return replace(piece, notches=(*scaled, *piece.notches))


def _seams(style: TopStyle, finish: Finish, lower: str) -> tuple[Seam, ...]:
    left = body_seams(style, "", OTHER, "left", lower)
    right = body_seams(style, OTHER, "", "right", lower)
    shoulders = (left[0], right[0])
    others = tuple(seam for pair in zip(left[1:], right[1:], strict=True) for seam in pair)
    return (*shoulders, *(_all_round(seam, style) for seam in finish.seams), *others)


def _all_round(seam: Seam, style: TopStyle) -> Seam:
    """A band's seam walked clockwise over both sides from its join, instead of one side twice."""
    if seam.kind is not SeamKind.NECKBAND:
        return seam
    runs = [("back", ""), ("front", OTHER), ("front", ""), ("back", OTHER)]
    if style.neck.pointed:
        runs = runs[2:] + runs[:2]
    second = tuple(EdgeRun(piece, ("neckline" + suffix,)) for piece, suffix in runs)
    return replace(seam, second=second)


def _joins(style: TopStyle, lower: str) -> tuple[Join, ...]:
    return (
        *side_joins(style, "", OTHER, ", left", lower),
        *side_joins(style, OTHER, "", ", right", lower),
    )
