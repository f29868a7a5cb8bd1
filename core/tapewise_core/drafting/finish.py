"""The last acts at the table: the notches and the allowances of a finished piece."""

from __future__ import annotations

from collections.abc import Iterator

from msgspec.structs import replace

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.drafting_paper import SAME
from tapewise_core.drafting.finished import finished, notch_mark
from tapewise_core.drafting.labels import title
from tapewise_core.drafting.notch_step import Notches
from tapewise_core.drafting.outline_step import Outline
from tapewise_core.drafting.piece import Edge, Notch, Piece
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import ruled
from tapewise_core.text.told import LineName, Told, joined, said
from tapewise_core.units import Length, mm


def with_allowances(draft: Draft, piece: Piece) -> Draft:
    """Return the draft with its notches, and its cut line drawn outside the finished piece.

    Both are drawn when they are asked for. A draft that was finished before is finished anew: its
    piece may have got more marks.
    """
    return replace(draft, ending=_Ending(piece))


class _Ending(Frozen):
    """The last steps of a draft, for its piece."""

    piece: Piece

    def __call__(self, draft: Draft) -> Draft:
        piece = self.piece
        turned = tuple(dict.fromkeys(_stem(edge) for edge in piece.edges if edge.turned))
        line = ruled(*piece.cut, piece.cut[0])
        outline = Outline(tuple(_allowances(piece)), line, turned, finished(piece))
        return _with_notches(draft, piece).then(outline)


def _allowances(piece: Piece) -> Iterator[tuple[str, Length]]:
    """What each edge gets, edges of a kind once; by their side where the two differ."""
    found: dict[str, dict[float, Edge]] = {}
    for edge in piece.edges:
        if not edge.fold and edge.mouth is None:
            found.setdefault(_stem(edge), {}).setdefault(edge.allowance, edge)
    for stem, amounts in found.items():
        for amount, edge in amounts.items():
            yield stem + (_side(piece, edge) if len(amounts) > 1 else ""), mm(amount)


def for_pieces(drafts: tuple[Draft, ...], pieces: tuple[Piece, ...]) -> tuple[Draft, ...]:
    """Return drafts, those of some pieces finished anew."""
    named = {title(piece.name): piece for piece in pieces}
    return tuple(
        with_allowances(draft, named[draft.title]) if draft.title in named else draft
        for draft in drafts
    )


def _with_notches(draft: Draft, piece: Piece) -> Draft:
    """Say where the notches go, measured along the stitch lines; edges that are alike but for
    their place on a strip are told once."""
    alike = not piece.has_edge("side") and not piece.has_edge("cap")
    plain = [notch for notch in piece.notches if not (alike and notch.edge.endswith("_2"))]
    words = joined((_told(draft, piece, notch) for notch in plain), "; ")
    if not words:
        return draft
    marks = tuple(notch_mark(piece, notch) for notch in plain)
    return draft.then(Notches((NOTCHES, *words, "."), marks))


NOTCHES = (
    "Mark the notches with short strokes across the stitching lines, measured along the lines: "
)


def _told(draft: Draft, piece: Piece, notch: Notch) -> Told:
    """One notch, from an end of its edge that has a letter, or else is told by where it lies."""
    strokes = "two strokes" if notch.strokes == 2 else "one stroke"
    edge = piece.edge(notch.edge)
    end, distance = _measured(draft, edge, notch.distance)
    at = said("{} from {}", mm(distance), end) if distance > SAME else ("at ", end)
    side = _side(piece, edge)
    return said("{}, {} across the {}{}, {}", notch.pair, strokes, LineName(_stem(edge)), side, at)


def _stem(edge: Edge) -> str:
    return edge.name.rstrip("0123456789").rstrip("_")


def _measured(draft: Draft, edge: Edge, distance: float) -> tuple[str, float]:
    """From which end a place on an edge is measured, and how far [mm]."""
    start, end = draft.paper.letter(edge.path.start), draft.paper.letter(edge.path.end)
    if start:
        return start, distance
    words, at_start = _end_words(edge)
    if end or not at_start:
        return end or words, edge.path.length() - distance
    return words, distance


def _end_words(edge: Edge) -> tuple[str, bool]:
    """The end of an edge to measure from, by where it lies, and whether it is the edge's start."""
    start, end = edge.path.start, edge.path.end
    if abs(end.y - start.y) > abs(end.x - start.x):
        return "its upper end", end.y > start.y
    return "its end nearer to the centre", abs(end.x) > abs(start.x)


def _side(piece: Piece, edge: Edge) -> str:
    """On which half of a whole piece an edge lies; nothing where each is there once."""
    half = piece.on_fold or piece.mirrored
    if half or not piece.has_edge(f"{_stem(edge)}_2") or not piece.has_edge("side"):
        return ""
    middle = edge.path.at(edge.path.length() / 2)[0]
    return " on the right of the paper" if middle.x > 0 else " on the left of the paper"
