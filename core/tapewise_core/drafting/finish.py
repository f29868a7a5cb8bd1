"""The last act at the table: the allowances."""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finished import finished, notch_mark
from tapewise_core.drafting.notch_step import Notches
from tapewise_core.drafting.piece import Notch, Piece
from tapewise_core.drafting.steps import Outline
from tapewise_core.geometry.path import ruled
from tapewise_core.text.told import LineName, Told, joined, said
from tapewise_core.units import mm


def with_allowances(draft: Draft, piece: Piece) -> Draft:
    """Return the draft with its cut line drawn outside the finished piece."""
    edges = tuple(
        (edge.name.removesuffix("_2"), mm(edge.allowance), TURNED if edge.turned else "")
        for edge in piece.edges
        if not edge.fold and edge.mouth is None and not edge.name.endswith("_2")
    )
    marked = _with_notches(draft, piece)
    return marked.then(Outline(edges, ruled(*piece.cut, piece.cut[0]), finished(piece)))


def _with_notches(draft: Draft, piece: Piece) -> Draft:
    """Say where the notches go, measured along the stitch lines."""
    darted = piece.has_edge("dart_lower")
    plain = [notch for notch in piece.notches if darted or not notch.edge.endswith("_2")]
    words = joined((_told(notch, darted=darted) for notch in plain), "; ")
    if not words:
        return draft
    marks = tuple(notch_mark(piece, notch) for notch in plain)
    return draft.then(Notches((NOTCHES, *words, "."), marks))


def _told(notch: Notch, *, darted: bool) -> Told:
    """One notch; a side that a dart interrupts goes on below it."""
    strokes = "two strokes" if notch.strokes == 2 else "one stroke"
    at = said("{} from its start", mm(notch.distance)) if notch.distance else ("at its start",)
    below = " below the dart" if darted and notch.edge == "side_2" else ""
    return said("{}, {}, on the {}{} {}", notch.pair, strokes, LineName(notch.edge), below, at)


NOTCHES = (
    "Mark the notches across the stitching lines, measured along each line in the direction in "
    "which the hands of a clock go round the piece: "
)


TURNED = " (corners mirrored about the fold line, so that it turns up flat)"
