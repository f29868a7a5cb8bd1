"""The last act at the table: the allowances."""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.steps import Outline
from tapewise_core.geometry.path import ruled
from tapewise_core.units import mm


def with_allowances(draft: Draft, piece: Piece) -> Draft:
    """Return the draft with its cut line drawn outside the finished piece."""
    edges = tuple(
        (edge.name.removesuffix("_2"), mm(edge.allowance), TURNED if edge.turned else "")
        for edge in piece.edges
        if not edge.fold and not edge.name.endswith("_2")
    )
    return draft.then(Outline(edges, ruled(*piece.cut, piece.cut[0])))


TURNED = " (corners mirrored about the fold line, so that it turns up flat)"
