"""Words on pieces: each lies on the piece, over no line and over no other words."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable

import pytest
import shapely
from pictures_seen import covered, overlaps
from seams_made_up import rectangle
from sewing_styles import CASES, drafted

from tapewise_core.drafting.labels import SMALLEST, LabelHead, label_lines
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.render import piece_drawing
from tapewise_core.paper.drawing import Drawing, Stroke, TextLine
from tapewise_core.text.told import LineName
from tapewise_core.units import Unit

LONG = LabelHead(
    "Jersey top with set-in sleeves", "Wilhelmina Featherstonehaugh", "2026-01-31", "0.1.0",
    Unit.IN, ("across back 14 1/8 ± 1 1/4 in", "armscye depth 7 1/2 ± 7/8 in", "head 22 ± 3/4 in"),
    "3KX4PA", "round neck, short sleeves, fitted",
    ("2026-01-20, front neck lowered 3/8 in", "2026-01-24, back neck raised 1/4 in"),
)  # fmt: skip
"""A label with as much to say as one has, in inches."""

SAMPLE = [case for number, case in enumerate(CASES) if number % 6 == 1]
"""Every sixth style of every garment."""


def drawn(pieces: Iterable[Piece]) -> list[tuple[Piece, Drawing]]:
    """Draw pieces, each with its long label."""
    return [(piece, piece_drawing(piece, 1, 9, LONG)) for piece in pieces]


def words_of(drawing: Drawing) -> list[TextLine]:
    """Return every word on a drawing."""
    return [ink for ink in drawing.inks if isinstance(ink, TextLine)]


def off_the_piece(piece: Piece, drawing: Drawing) -> list[str]:
    """Return what is not wholly on the piece."""
    cut = shapely.Polygon([(point.x, point.y) for point in piece.cut])
    return [one.text for one in words_of(drawing) if not cut.contains(covered(one))]


@pytest.mark.parametrize(("garment", "style"), SAMPLE)
def test_no_word_lies_over_a_line_or_over_others_on_any_piece(garment: str, style: int) -> None:
    """Nor beside the piece; and none is left out or too small to read."""
    for piece, drawing in drawn(drafted(garment, style).pieces):
        assert list(overlaps(drawing)) == []
        assert off_the_piece(piece, drawing) == []
        words = words_of(drawing)
        assert min(one.size for one in words) >= SMALLEST
        there = Counter(one.text for one in words)
        named = Counter(
            str(LineName(edge.name))
            for edge in piece.edges
            if not edge.fold and not edge.mouth and edge.path.length() >= 25
        )
        assert named <= there
        said = Counter(" ".join(label_lines(piece, 1, 9, LONG)).split())
        assert said <= Counter(word for one in words for word in one.text.split())


@pytest.mark.parametrize(("wide", "high"), [(90.0, 50.0), (260.0, 22.0), (24.0, 240.0)])
def test_a_label_fits_a_small_piece(wide: float, high: float) -> None:
    """Set smaller, turned or in parts, its own name foremost."""
    ((piece, drawing),) = drawn([rectangle("placket", wide, high)])
    assert list(overlaps(drawing)) == []
    assert off_the_piece(piece, drawing) == []
    (name,) = [one for one in words_of(drawing) if one.bold]
    assert name.text == "Placket"


def test_what_has_no_room_stands_beside_the_piece_with_a_line_to_it() -> None:
    """A piece on which hardly a word fits."""
    ((piece, drawing),) = drawn([rectangle("tab", 14, 18)])
    assert list(overlaps(drawing)) == []
    away = off_the_piece(piece, drawing)
    said = Counter(" ".join(label_lines(piece, 1, 9, LONG)).split())
    assert "Tab" in {one.text for one in words_of(drawing)}
    assert said <= Counter(word for one in words_of(drawing) for word in one.text.split())
    lowest = max(point.y for point in piece.cut)
    below = [one for one in words_of(drawing) if one.text in away]
    assert away
    assert min(one.at.y - one.size for one in below) > lowest
    (leader,) = [
        ink for ink in drawing.inks if isinstance(ink, Stroke) and ink.path.end.y > lowest + 1
    ]
    assert leader.path.start.y == pytest.approx(lowest)


def test_words_with_room_stay_where_they_stand_best() -> None:
    """A name near the middle of its edge, a label large in the middle of its piece."""
    ((_, drawing),) = drawn([rectangle("front", 300, 500)])
    words = {one.text: one for one in words_of(drawing)}
    assert words["right"].at.y == pytest.approx(500 * 0.62)
    assert words["Front"].size == pytest.approx(10)
