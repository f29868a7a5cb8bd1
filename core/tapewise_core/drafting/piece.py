"""A pattern piece, cut from a finished draft: its edges, notches, darts and cut line."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property
from types import MappingProxyType
from typing import TYPE_CHECKING

from msgspec import field

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.crossings import distance_at_width
from tapewise_core.geometry.cutting import cut_line
from tapewise_core.geometry.outline import Box, Margin
from tapewise_core.geometry.path import Path, joined
from tapewise_core.geometry.point import Point
from tapewise_core.geometry.rows import points, rows

if TYPE_CHECKING:
    import numpy as np


class Edge(Frozen):
    """One named stretch of a piece's stitch line, walked clockwise; allowance in mm.

    A dart's leg runs into the piece and is not cut along: ``mouth`` is what is cut there instead,
    the half of its mouth as the dart lies when it is folded. An edge that ``slants`` is not meant
    to leave the fold square: a V's.
    """

    name: str
    path: Path
    allowance: float
    turned: bool = False
    fold: bool = False
    mouth: Margin | None = None
    slants: bool = False

    def margin(self) -> Margin:
        """Return the edge as the cut line needs it."""
        return self.mouth or Margin(self.path, self.allowance, self.turned, self.fold)


class Notch(Frozen):
    """A mark across a stitch line at a walked distance [mm] along an edge.

    ``pair`` is what it shares with its partner; ``strokes`` is one or two.
    ``share`` replaces the distance as a share of the edge where the edges are
    sewn together stretched, as a band is.
    """

    edge: str
    distance: float
    pair: str
    strokes: int = 1


OPEN = 0.5
"""A dart whose outline's ends lie so far apart is open at a seam [mm]."""

NEAR = 40.0
"""A dart that is open at an edge ends so near to it [mm]: a curved edge bends away a little."""


class Dart(Frozen):
    """A dart inside a piece: its outline from point to point, and what it takes up [mm]."""

    name: str
    path: Path
    intake: float

    def mouth(self, edge: Path) -> float | None:
        """Return the walked distance of its mouth's middle along an edge it opens into, or None."""
        a, b = self.path.start, self.path.end
        if (b - a).length() < OPEN:
            return None
        at = distance_at_width(edge, (a.x + b.x) / 2)
        near = at is not None and abs(edge.at(at)[0].y - a.y) < NEAR
        return at if near else None


class Piece(Frozen, dict=True):
    """One piece: its edges in order, clockwise as seen, closed.

    ``cut_as`` is the line to cut along where it is not drawn round the edges; ``levels`` maps
    the name of a body level to its height [mm] on this piece; ``inner`` are lines drawn inside
    it. ``label`` is the room for its label where that is not the usual place, and ``turnable``
    pieces may lie across the cloth as well as along it.
    """

    name: str
    edges: tuple[Edge, ...]
    points: Mapping[str, Point]
    notches: tuple[Notch, ...]
    grain: tuple[Point, Point]
    count: int
    on_fold: bool
    mirrored: bool
    levels: Mapping[str, float] = field(default_factory=dict)
    inner: Mapping[str, Path] = field(default_factory=dict)
    label: Box | None = None
    turnable: bool = False
    darts: tuple[Dart, ...] = ()
    cut_as: tuple[Point, ...] | None = None

    @cached_property
    def cut(self) -> tuple[Point, ...]:
        """The line to cut along."""
        return self.cut_as or tuple(points(self.cut_rows))

    @cached_property
    def cut_rows(self) -> np.ndarray:
        """The line to cut along as a table, a row of x and y for each point [mm]; drawn when it is
        asked for, for a draft that is only compared with another needs none."""
        return rows(self.cut_as) if self.cut_as else cut_line([e.margin() for e in self.edges])

    def edge(self, name: str) -> Edge:
        """Return an edge by its name; raises KeyError if the piece has none of that name."""
        for edge in self.edges:
            if edge.name == name:
                return edge
        raise KeyError(name)

    def has_edge(self, name: str) -> bool:
        """Say whether the piece has an edge of that name."""
        return any(edge.name == name for edge in self.edges)

    def length(self, *names: str) -> float:
        """Return the length of one edge, or of several together [mm]; absent ones count nothing."""
        return sum(edge.path.length() for edge in self.edges if edge.name in names)

    def sewn(self, *names: str) -> float:
        """Return the length of edges [mm], darts that open into them closed."""
        return sum(self.sewn_to(e.name, e.path.length()) for e in self.edges if e.name in names)

    def sewn_to(self, name: str, distance: float) -> float:
        """Return a walked distance along an edge [mm] less the darts closed on the way."""
        path = self.edge(name).path
        mouths = [(dart.mouth(path), dart.intake) for dart in self.darts]
        return distance - sum(by for at, by in mouths if at is not None and at < distance)

    def stitch_line(self) -> list[Point]:
        """Return the closed stitch line as points, the first not repeated."""
        return list(self._stitched)

    @cached_property
    def _stitched(self) -> tuple[Point, ...]:
        """The stitch line's points, walked once for all proofs."""
        return tuple(joined(edge.path for edge in self.edges).flattened()[:-1])


def make_piece(
    name: str,
    edges: tuple[Edge, ...],
    points: Mapping[str, Point],
    grain: tuple[Point, Point],
    *,
    notches: tuple[Notch, ...] = (),
    count: int = 1,
    on_fold: bool = False,
    mirrored: bool = False,
    levels: Mapping[str, float] | None = None,
    inner: Mapping[str, Path] | None = None,
    label: Box | None = None,
    turnable: bool = False,
    darts: tuple[Dart, ...] = (),
) -> Piece:
    """Return a piece, to be cut out along the allowances of its edges."""
    return Piece(
        name, edges, MappingProxyType(dict(points)), notches, grain, count, on_fold, mirrored,
        MappingProxyType(dict(levels or {})), MappingProxyType(dict(inner or {})),
        label, turnable, darts,
    )  # fmt: skip


COLLAR_PIECE = "collar"
"""A high neck's strip, which is told and sewn as a collar."""
