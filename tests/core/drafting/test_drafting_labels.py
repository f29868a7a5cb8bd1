"""What a piece's label says, and how it is set into its room."""

from __future__ import annotations

import pytest
from msgspec.structs import replace
from seams_made_up import rectangle

from tapewise_core.drafting.labels import (
    LARGEST,
    SMALLEST,
    TITLE,
    LabelHead,
    allowance_words,
    cut_words,
    label_lines,
    set_label,
    title,
)
from tapewise_core.geometry.outline import Box
from tapewise_core.units import Unit

HEADING = LabelHead("Top", "Ada Test", "2026-01-31", "0.1.0", Unit.CM)


@pytest.mark.parametrize(
    ("name", "shown"), [("back", "Back"), ("skirt_panel", "Skirt panel"), ("belt", "Belt")]
)
def test_a_piece_is_called_as_a_person_reads_it(name: str, shown: str) -> None:
    """No underscore reaches paper."""
    assert title(name) == shown


def test_how_many_to_cut_and_how() -> None:
    """On the fold, mirrored, or singly."""
    assert cut_words(rectangle("a", 9, 9, {"left": 0}, on_fold=True)) == "cut 1 on the fold"
    assert cut_words(replace(rectangle("a", 9, 9, count=2), mirrored=True)) == "cut 2, mirrored"
    assert cut_words(rectangle("a", 9, 9, count=3)) == "cut 3, single"


def test_edges_with_one_allowance_are_told_together() -> None:
    """The fold is left out, and a second edge of a pair does not repeat its name."""
    piece = rectangle("a", 90, 90, {"bottom": 25.0, "left": 0.0}, on_fold=True)
    assert allowance_words(piece, Unit.CM) == "top, right 0.8 cm; bottom 2.5 cm"
    edges = tuple(
        replace(edge, name="top_2") if edge.name == "right" else edge for edge in piece.edges
    )
    assert allowance_words(replace(piece, edges=edges), Unit.IN) == "top 5/16 in; bottom 1 in"


def test_a_label_says_whose_it_is_and_which() -> None:
    """Name first; estimates only where there are some."""
    lines = label_lines(rectangle("front", 90, 90), 2, 5, HEADING)
    assert lines[0] == "Front"
    assert lines[1] == "Top, for Ada Test"
    assert "piece 2 of 5: cut 1, single" in lines
    assert not any("estimated" in line for line in lines)
    guessed = label_lines(
        rectangle("front", 90, 90), 2, 5, replace(HEADING, estimated=("hip 99 ± 2 cm",))
    )
    assert guessed[-1] == "estimated, not measured: hip 99 ± 2 cm"


@pytest.mark.parametrize("letters", range(20, 34))
def test_no_amount_is_torn_over_two_lines(letters: int) -> None:
    """A number stays with its fraction and its unit wherever the line happens to end."""
    edges = rectangle("a", 90, 90).edges
    named = tuple(replace(edge, name="x" * (letters // 4) + str(n)) for n, edge in enumerate(edges))
    piece = replace(rectangle("a", 90, 90, {"bottom": 25.0}), edges=named)
    for unit in Unit:
        lines = label_lines(piece, 1, 1, replace(HEADING, unit=unit))
        assert not any(line[-1].isdigit() and "allow" in line for line in lines)
        assert not any(line.startswith((unit.value, "5/16")) for line in lines)


def test_type_is_as_large_as_the_room_allows() -> None:
    """Never beyond the largest, never too small to read, and only the first line bold."""
    lines = ["Front", "a line of some length", "another"]
    roomy = set_label(lines, Box(0, 0, 400, 200), "front")
    assert [words.size for words in roomy] == [TITLE, LARGEST, LARGEST]
    assert TITLE >= 24 * 25.4 / 72
    assert [words.bold for words in roomy] == [True, False, False]
    assert {words.size for words in set_label(lines, Box(0, 0, 9, 9), "front")} == {SMALLEST}


def test_lines_stand_inside_their_room() -> None:
    """A flat room takes several columns rather than small type."""
    box = Box(10, 20, 410, 34)
    words = set_label([f"line {i}" for i in range(8)], box, "belt")
    assert len({word.at.x for word in words}) > 1
    assert all(box.left <= word.at.x < box.right for word in words)
    assert all(box.top < word.at.y <= box.bottom for word in words)
