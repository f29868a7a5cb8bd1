"""The raster every drawing in the terminal is made on."""

import math

import pytest

from tapewise_tui.canvas import Canvas


def test_a_character_has_eight_dots_numbered_as_in_unicode():
    """Each dot of a cell sets its own bit of the block U+2800."""
    for column, row, bit in ((0, 0, 0x01), (1, 0, 0x08), (0, 3, 0x40), (1, 3, 0x80), (1, 1, 0x10)):
        canvas = Canvas(1, 1)
        canvas.polyline([(column, row), (column, row)])
        assert canvas.lines() == [chr(0x2800 + bit)]


def test_an_empty_canvas_is_blanks_of_its_size():
    """Blank characters are spaces, so that text can be copied."""
    assert Canvas(3, 2).lines() == ["   ", "   "]
    assert Canvas(0, 0).lines() == []
    assert Canvas(-1, 2).lines() == ["", ""]


@pytest.mark.parametrize("pattern", ["solid", "dashed", "dotted", "chain"])
def test_a_broken_line_is_told_from_a_solid_one(pattern):
    """Each pattern sets its own dots, whole lines the most."""
    canvas, solid = Canvas(20, 1), Canvas(20, 1)
    canvas.polyline([(0, 1), (39, 1)], pattern)
    solid.polyline([(0, 1), (39, 1)])
    assert (canvas.lines() == solid.lines()) == (pattern == "solid")
    assert sum(map(_dots, canvas.lines())) <= sum(map(_dots, solid.lines()))


def _dots(line):
    return sum((ord(letter) - 0x2800).bit_count() for letter in line if letter != " ")


def test_a_pattern_runs_on_round_a_corner():
    """Many short pieces of a straight line are broken like the one long line."""
    short, long = Canvas(20, 1), Canvas(20, 1)
    short.polyline([(x, 1) for x in range(40)], "dashed")
    long.polyline([(0, 1), (39, 1)], "dashed")
    assert abs(_dots(short.lines()[0]) - _dots(long.lines()[0])) <= 4
    assert " " in short.lines()[0]


@pytest.mark.parametrize("ascii", [False, True])
def test_what_lies_outside_is_left_out(ascii):
    """A line across the canvas from far outside is drawn inside and costs no more."""
    canvas = Canvas(10, 5, ascii=ascii)
    canvas.polyline([(-1e7, 10), (1e7, 10)], width=2)
    canvas.polyline([(-50, -50), (-50, 200)])
    canvas.polyline([(math.nan, 0), (5, 5)])
    lines = canvas.lines()
    assert [len(line) for line in lines] == [10] * 5
    assert " " not in lines[2]
    assert not (lines[0] + lines[4]).strip()


@pytest.mark.parametrize(
    ("end", "letter"), [((60, 0), "-"), ((0, 60), "|"), ((30, 60), "\\"), ((-30, 60), "/")]
)
def test_ascii_chooses_letters_by_slope(end, letter):
    """A level line is of dashes, an upright one of bars, steep ones of strokes."""
    canvas = Canvas(30, 15, ascii=True)
    canvas.polyline([(30, 1), (30 + end[0] * 0.9, 1 + end[1] * 0.9)])
    drawn = "".join(canvas.lines())
    assert set(drawn) <= {letter, " ", ".", "'"}
    assert drawn.count(letter) >= 10


def test_a_level_line_low_in_its_character_is_an_underscore():
    """The lowest dots of a character look most like an underscore."""
    canvas = Canvas(5, 1, ascii=True)
    canvas.polyline([(0, 3), (9, 3)])
    assert canvas.lines() == ["_____"]


def test_ascii_is_ascii():
    """Lines of every pattern and width use nothing beyond ASCII, a broad one heavy letters."""
    canvas = Canvas(20, 10, ascii=True)
    for row, pattern in enumerate(("solid", "dashed", "dotted", "chain")):
        canvas.polyline([(0, row * 8), (39, row * 8 + 6)], pattern)
    canvas.polyline([(0, 38), (39, 38)], width=2)
    text = "".join(canvas.lines())
    assert text.isascii()
    assert "#" in canvas.lines()[9]
    assert "." in text


def test_words_stand_over_lines_and_are_cut_at_the_edge():
    """Text replaces what was drawn; what does not fit is left out."""
    canvas = Canvas(6, 2)
    canvas.polyline([(0, 1), (11, 1)])
    canvas.text(4, 0, "waist", "label")
    canvas.text(0, 7, "lost")
    assert canvas.lines()[0].endswith("wa")
    assert canvas.tones[(4, 0)] == "label"
    assert (6, 0) not in canvas.tones


def test_room_is_free_where_nothing_is_drawn_or_written():
    """Blank room ends at lines, at words and at the border."""
    canvas = Canvas(10, 2)
    canvas.polyline([(8, 0), (8, 3)])
    canvas.text(0, 1, "ab")
    assert canvas.is_free(0, 0, 4)
    assert not canvas.is_free(0, 0, 5)
    assert canvas.is_free(5, 0, 5)
    assert not canvas.is_free(5, 0, 6)
    assert not canvas.is_free(1, 1, 3)
    assert not canvas.is_free(0, 2, 1)


def test_wiping_clears_a_band():
    """A line crossed by a wiped band is gone there and stays elsewhere."""
    canvas = Canvas(10, 1)
    canvas.polyline([(0, 1), (19, 1)])
    canvas.wipe([(10, 0), (10, 3)], 3)
    line = canvas.lines()[0]
    assert " " in line[4:7]
    assert line[0] != " "
    assert line[9] != " "
