"""A piece as it is wanted on paper: opened out, or without allowances."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec.structs import replace

from tapewise_core.drafting.piece import Piece
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Dash, Drawing, Ink, Layer, Stroke, extent

Axis = tuple[Point, Point]
"""Two points of the fold."""

FOLD_WORDS = "place on the fold"
"""What a half says beside its fold."""

NEAR = 1e-3
"""How far from the fold a point of the cut line may be and still lie on it [mm]."""


def bare(piece: Piece) -> Piece:
    """Return the piece without allowances: it is cut along its stitch line."""
    edges = tuple(replace(edge, allowance=0.0, turned=False) for edge in piece.edges)
    return replace(piece, edges=edges, cut_as=tuple(piece.stitch_line()))


def opens(piece: Piece) -> bool:
    """Say whether a piece is cut on a straight fold and can be opened out about it."""
    folds = [edge.path for edge in piece.edges if edge.fold]
    if not piece.on_fold or not folds:
        return False
    axis = folds[0].start, folds[0].end
    return all(_off(end, axis) < NEAR for path in folds for end in (path.start, path.end))


def opened(piece: Piece, drawn: Drawing, border: float) -> Drawing:
    """Return a drawing of the piece opened out about its fold; ``drawn`` is its half.

    What is read (label, names of edges) stands once, the fold becomes a thin line; a round piece
    folded in two is cut along two lines. A piece that is not cut on the fold comes back as it is.
    """
    if not opens(piece):
        return drawn
    fold = next(edge for edge in piece.edges if edge.fold)
    axis = fold.path.start, fold.path.end
    folds = {f"stitch {edge.name}" for edge in piece.edges if edge.fold}
    whole = tuple(ink for old in drawn.inks for ink in _opened(old, piece, axis, folds))
    return Drawing(drawn.title, drawn.description, extent(whole, border), whole)


def _opened(ink: Ink, piece: Piece, axis: Axis, folds: set[str]) -> list[Ink]:
    if not isinstance(ink, Stroke):
        return [] if ink.text == FOLD_WORDS else [ink]
    if ink.layer is Layer.CUT:
        return [replace(ink, path=ruled(*line, line[0])) for line in loops(piece.cut, axis)]
    if ink.name in folds:
        return [replace(ink, layer=Layer.GUIDE, dash=Dash.DOTTED, width=0.2, name="middle")]
    if ink.name == "fold":
        return []
    image = replace(ink, path=ink.path.mirrored(*axis).reversed())
    return [ink] if ink.name == "grain" else [ink, image]


def loops(cut: Sequence[Point], axis: Axis) -> list[list[Point]]:
    """Return the closed lines that a half's cut line and its image make, the fold left out."""
    on = [_off(point, axis) < NEAR for point in cut]
    count = len(cut)
    found: list[list[Point]] = []
    for start in range(count):
        if on[start] and not on[(start + 1) % count]:
            chain = [cut[start]]
            for step in range(1, count + 1):
                chain.append(cut[(start + step) % count])
                if on[(start + step) % count]:
                    break
            image = [point.mirrored(*axis) for point in reversed(chain[1:-1])]
            found.append([*chain, *image])
    return found


def _off(point: Point, axis: Axis) -> float:
    """How far a point is from the line of the fold [mm]."""
    along = (axis[1] - axis[0]).unit()
    return abs(along.cross(point - axis[0]))
