"""Back and front in one piece each, for a body whose sides differ.

The half on the right of the paper keeps its plain names; the other's are numbered on, from
``_2``. Seen from outside, the right of the back is the wearer's right
and the right of the front the wearer's left.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from types import MappingProxyType

from tapewise_core.blocks.top.levels import girths_of, levels_of
from tapewise_core.blocks.top.plan import TopPlan
from tapewise_core.blocks.top.remarks import remarks
from tapewise_core.blocks.top.seams import (
    Names,
    Sewn,
    body_seams,
    dart_seams,
    facts,
    lengths,
    side_joins,
)
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.piece import (
    Dart,
    Edge,
    EdgeRun,
    Notch,
    Pattern,
    Piece,
    Seam,
    SeamKind,
    make_piece,
)
from tapewise_core.geometry.outline import Margin
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.parts.figure_style import LowerShoulder
from tapewise_core.parts.neck_finish import Finish, Halves, finish_neck, head_of

AXIS = Point(0, 0), Point(0, 1)
OTHER = "_2"


@dataclass(frozen=True, slots=True)
class Side:
    """One side of the body: its plan, and its back and front."""

    plan: TopPlan
    halves: Halves


def whole_pattern(
    garment: str, title: str, style: TopStyle, left_side: Side, right_side: Side
) -> Pattern:
    """Return the pattern of a top whose left and right halves were drafted apart."""
    left, right = left_side.halves, right_side.halves
    finish = finish_neck(left, style.neck, right, head=head_of(left_side.plan.body))
    names = other_names(right.back, left.back), other_names(left.front, right.front)
    back = whole_piece(right.back, left.back, names[0])
    front = whole_piece(left.front, right.front, names[1])
    back, front = _marked(back, finish.back), _marked(front, finish.front)
    finished = tuple(map(with_allowances, finish.drafts, finish.pieces))
    lower_left = style.figure.lower_shoulder is LowerShoulder.LEFT
    low, high = (left_side, right_side) if lower_left else (right_side, left_side)
    quarters = tuple(half for side in (low, high) for half in (side.halves.back, side.halves.front))
    sides = (
        (left_side, Sewn(_own(left.front), names[0], "left", "back")),
        (right_side, Sewn(names[1], _own(right.back), "right", "front")),
    )
    return Pattern(
        garment=garment,
        title=title,
        drafts=(*(_closed(draft) for draft in _drafts(left, right)), *finished),
        pieces=(back, front, *finish.pieces),
        seams=_seams(style, finish, front, sides),
        joins=tuple(join for side, sewn in sides for join in side_joins(side.plan, sewn)),
        girths=girths_of(quarters, low.plan),
        facts=replace(facts(low.plan, finish.neck), levels=levels_of(quarters, low.plan)),
        lengths=MappingProxyType(lengths(low.halves.back, low.halves.front)),
        remarks=((WORDS,), *remarks(low.plan)),
    )


WORDS = (
    "One shoulder is lower, so both sides are drafted apart: join the halves of the back, and of "
    "the front, along the centre on paper, and cut each as one piece, its printed side on the "
    "cloth's right side. Seen so, the right of the back is the wearer's right, and the right of "
    "the front the wearer's left."
)


def _drafts(left: Halves, right: Halves) -> tuple[Draft, ...]:
    return (right.drafts[0], left.drafts[0], left.drafts[1], right.drafts[1])


def _closed(draft: Draft) -> Draft:
    return draft.note(
        "Join this half to the other along the centre, then add the allowances all round: "
        "as wide as the other side's."
    )


def _own(half: Piece) -> Names:
    """The names of a half's edges where they keep their own."""
    return {edge.name: edge.name for edge in half.edges}


def other_names(plain: Piece, mirrored: Piece) -> Names:
    """Return the names of a mirrored half's edges: numbered on from those that are taken."""
    taken = {edge.name for edge in plain.edges}
    found: dict[str, str] = {}
    for edge in mirrored.edges:
        if edge.fold:
            continue
        stem, number = edge.name.removesuffix(OTHER), 2
        while f"{stem}_{number}" in taken:
            number += 1
        found[edge.name] = f"{stem}_{number}"
        taken.add(found[edge.name])
    return MappingProxyType(found)


def whole_piece(right: Piece, left: Piece, names: Names) -> Piece:
    """Return one piece from two halves, ``right`` and ``left`` as they lie on the paper."""
    mirrored = [
        replace(edge, name=names[edge.name], path=_other(edge.path), mouth=_other_mouth(edge.mouth))
        for edge in reversed(left.edges)
        if not edge.fold
    ]
    edges: tuple[Edge, ...] = (*(edge for edge in right.edges if not edge.fold), *mirrored)
    points = dict(right.points) | {
        name + OTHER: at.mirrored(*AXIS) for name, at in left.points.items() if at.x > 1
    }
    notches = (*right.notches, *(_turned(left, notch, names) for notch in left.notches))
    darts = (*right.darts, *(_other_dart(dart) for dart in left.darts))
    inner = {"centre": right.edge("centre").path}
    return make_piece(
        right.name, edges, points, right.grain, notches=notches, levels=right.levels,
        inner=inner, darts=darts,
    )  # fmt: skip


def _other(path: Path) -> Path:
    return path.mirrored(*AXIS).reversed()


def _other_mouth(mouth: Margin | None) -> Margin | None:
    return None if mouth is None else replace(mouth, path=_other(mouth.path))


def _other_dart(dart: Dart) -> Dart:
    return replace(dart, name=dart.name + OTHER, path=_other(dart.path))


def _turned(half: Piece, notch: Notch, names: Names) -> Notch:
    distance = half.length(notch.edge) - notch.distance
    return replace(notch, edge=names[notch.edge], distance=distance)


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


def _seams(
    style: TopStyle, finish: Finish, front: Piece, sides: tuple[tuple[Side, Sewn], ...]
) -> tuple[Seam, ...]:
    left, right = (
        body_seams(side.plan, sewn, side.halves.back.length("underarm")) for side, sewn in sides
    )
    darts = tuple(seam for _, sewn in sides for seam in dart_seams(front, sewn))
    pairs = zip(left[1:], right[1:], strict=True)
    others = tuple(seam for pair in pairs for seam in pair)
    around = (_all_round(seam, style) for seam in finish.seams)
    return (left[0], right[0], *around, *darts, *others)


def _all_round(seam: Seam, style: TopStyle) -> Seam:
    """A band's seam walked clockwise over both sides from its join, instead of one side twice."""
    if seam.kind is not SeamKind.NECKBAND:
        return seam
    runs = [("back", ""), ("front", OTHER), ("front", ""), ("back", OTHER)]
    if style.neck.pointed:
        runs = runs[2:] + runs[:2]
    second = tuple(EdgeRun(piece, ("neckline" + suffix,)) for piece, suffix in runs)
    return replace(seam, second=second)
