"""A body whose sides differ: its halves joined into whole pieces, and how each side is sewn.

The half on the right of the paper keeps its plain names; the other's are numbered on, from
``_2``. Seen from outside, the right of the back is the wearer's right
and the right of the front the wearer's left.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from msgspec import field
from msgspec.structs import replace

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.join_step import JoinHalves
from tapewise_core.drafting.labels import title
from tapewise_core.drafting.making import Making
from tapewise_core.drafting.piece import Dart, Edge, Notch, Piece, make_piece
from tapewise_core.drafting.seam import SMOOTH, EdgeRun, Fullness, Join, Seam, SeamKind
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Margin
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.parts.neck_finish import Finish, Halves
from tapewise_core.parts.neck_style import NeckStyle

AXIS = Point(0, 0), Point(0, 1)
OTHER = "_2"

Names = Mapping[str, str]
"""A half's own edges by their names on its piece; those that are not in it keep their own."""


class Sewn(Frozen):
    """How the edges of one side of the body are called on the pieces of back and front.

    ``mirrored`` is the piece on which this side is the mirrored half, where a clockwise walk runs
    the other way. Edges that a half has not are sewn nowhere; without names they keep their own.
    """

    front: Names = field(default_factory=dict)
    back: Names = field(default_factory=dict)
    where: str = ""
    mirrored: str = ""

    def run(self, piece: str, names: tuple[str, ...], *, up: bool = False) -> tuple[EdgeRun, ...]:
        """Return a walk along edges of one piece; ``up``: against the half's own clock."""
        known = self.front if piece == "front" else self.back
        edges = tuple(known[name] for name in names if name in known) if known else names
        return (EdgeRun(piece, edges, backwards=up is not (piece == self.mirrored)),)

    def seam(self, kind: SeamKind, how: Making, *edges: str, full: Fullness | None = None) -> Seam:
        """Return the seam of front and back along edges that both call alike."""
        front, back = self.run("front", edges), self.run("back", edges)
        return Seam(kind, front, back, making=how, fullness=full, where=self.where)

    def join(
        self,
        name: str,
        line: str,
        beside: str,
        front_beside: str | None = None,
        within: float = SMOOTH,
    ) -> Join:
        """Return a line that runs on from back to front across the seam ``beside`` it."""
        back, front = (
            (piece, self.name(piece, line), self.name(piece, edge))
            for piece, edge in (("back", beside), ("front", front_beside or beside))
        )
        return Join(f"{name}, {self.where}" if self.where else name, back, front, within)

    def name(self, piece: str, edge: str) -> str:
        """Return an edge's name on a piece."""
        return (self.front if piece == "front" else self.back).get(edge, edge)


ALIKE = Sewn()
"""Both sides of the body alike: the halves' own names."""


WORDS = (
    "One shoulder is lower, so both sides are drafted apart: join the halves of the back, and of "
    "the front, along the centre on paper, and cut each as one piece, its printed side on the "
    "cloth's right side. Seen so, the right of the back is the wearer's right, and the right of "
    "the front the wearer's left."
)


class Joined(Frozen):
    """Back and front in one piece each, and how each side of the body is sewn."""

    back: Piece
    front: Piece
    left: Sewn
    right: Sewn


def joined_halves(left: Halves, right: Halves, finish: Finish) -> Joined:
    """Return both sides' halves as whole pieces, with the marks of their neck's finish."""
    names = _other_names(right.back, left.back), _other_names(left.front, right.front)
    other = finish.other or (right.back, right.front)
    return Joined(
        _whole_piece(other[0], finish.back, names[0]),
        _whole_piece(finish.front, other[1], names[1]),
        Sewn(_own_names(left.front), names[0], "left", "back"),
        Sewn(names[1], _own_names(right.back), "right", "front"),
    )


def closed_drafts(left: Halves, right: Halves, whole: Joined) -> tuple[Draft, ...]:
    """Return the four halves' drafts, as they lie side by side, each pair with how it becomes one
    piece."""
    backs, fronts = (right.drafts[0], left.drafts[0]), (left.drafts[1], right.drafts[1])
    return (*backs, _closed(*backs, whole.back), *fronts, _closed(*fronts, whole.front))


def _closed(plain: Draft, mirrored: Draft, piece: Piece) -> Draft:
    """Return both halves of one piece joined, with its notches and allowances."""
    join = JoinHalves(plain.title, mirrored.title, plain.paper, mirrored.paper)
    return with_allowances(Draft(title(piece.name)).then(join), piece)


def _own_names(half: Piece) -> Names:
    """The names of a half's edges where they keep their own."""
    return {edge.name: edge.name for edge in half.edges}


def _other_names(plain: Piece, mirrored: Piece) -> Names:
    """The names of a mirrored half's edges: numbered on from those that are taken."""
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


def _whole_piece(right: Piece, left: Piece, names: Names) -> Piece:
    """One piece from two halves, ``right`` and ``left`` as they lie on the paper."""
    mirrored = [
        replace(edge, name=names[edge.name], path=_other(edge.path), mouth=_other_mouth(edge.mouth))
        for edge in reversed(left.edges)
        if not edge.fold
    ]
    edges: tuple[Edge, ...] = (*(edge for edge in right.edges if not edge.fold), *mirrored)
    points = dict(right.points) | {
        name + OTHER: at.mirrored(*AXIS) for name, at in left.points.items() if at.x > 1
    }
    others = (notch for notch in left.notches if not _in_middle(notch))
    notches = (*right.notches, *(_turned(left, notch, names) for notch in others))
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


def _in_middle(notch: Notch) -> bool:
    """The mark in the neckline's middle, which both halves have."""
    return notch.edge == "neckline" and notch.distance == 0.0


def _turned(half: Piece, notch: Notch, names: Names) -> Notch:
    distance = half.length(notch.edge) - notch.distance
    return replace(notch, edge=names[notch.edge], distance=distance)


def all_round(seam: Seam, style: NeckStyle) -> Seam:
    """A band's seam walked clockwise over both sides from its join, instead of one side twice."""
    if seam.kind is not SeamKind.NECKBAND:
        return seam
    runs = [("back", ""), ("front", OTHER), ("front", ""), ("back", OTHER)]
    if style.pointed:
        runs = runs[2:] + runs[:2]
    second = tuple(EdgeRun(piece, ("neckline" + suffix,)) for piece, suffix in runs)
    return replace(seam, second=second)
