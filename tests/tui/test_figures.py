"""Every measure's tape on the figure: there, inside, unlike all others, readable without colour."""

from itertools import combinations

import pytest

from tapewise_core.measures.catalogue import CATALOGUE
from tapewise_core.measures.croquis import croquis
from tapewise_core.measures.croquis_parts import FLOOR, Pose
from tapewise_core.measures.measure import View
from tapewise_core.measures.tape_drawing import tape_drawing
from tapewise_core.measures.tapes import TAPES
from tapewise_core.paper.drawing import Layer, Stroke
from tapewise_tui.figures import drawn, figure

SIZES = [(30, 18), (50, 34)]


def test_every_measure_has_a_path_and_nothing_else_has():
    """The table of paths and the table of measures have the same keys."""
    assert set(TAPES) == {row.key for row in CATALOGUE}


@pytest.mark.parametrize("row", CATALOGUE, ids=lambda row: row.key)
def test_the_figure_is_turned_as_the_table_says(row):
    """The view is the measure's; a girth has a hidden half, a length two end marks."""
    tape = TAPES[row.key]
    assert tape.view is row.view
    assert (tape.hidden is not None) == row.is_girth
    assert len(tape.ends()) == (0 if row.is_girth else 2)
    assert tape.landmarks


@pytest.mark.parametrize("row", CATALOGUE, ids=lambda row: row.key)
def test_the_tape_lies_inside_its_frame(row):
    """Every point of the path is in the part of the figure that is shown."""
    tape = TAPES[row.key]
    paths = [tape.seen, *([tape.hidden] if tape.hidden else []), *tape.ends()]
    for path in paths:
        for point in path.flattened(1.0):
            assert tape.frame.left <= point.x <= tape.frame.right
            assert tape.frame.top <= point.y <= tape.frame.bottom


@pytest.mark.parametrize("ascii", [False, True])
@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("row", CATALOGUE, ids=lambda row: row.key)
def test_figure_and_tape_are_on_the_canvas(row, size, ascii):
    """The picture has its size, and enough of both body and tape to be seen."""
    canvas = drawn(row.key, *size, ascii)
    lines = canvas.lines()
    assert [len(line) for line in lines] == [size[0]] * size[1]
    tones = list(canvas.tones.values())
    assert tones.count("tape") >= 4
    assert tones.count("body") >= 40
    assert not ascii or "".join(lines).isascii()


@pytest.mark.parametrize("ascii", [False, True])
@pytest.mark.parametrize("size", SIZES)
def test_no_two_measures_look_alike(size, ascii):
    """Each figure differs from every other, letters of landmarks aside."""
    pictures = {}
    for row in CATALOGUE:
        canvas = drawn(row.key, *size, ascii)
        tape = {cell for cell, tone in canvas.tones.items() if tone in ("tape", "hidden")}
        pictures[row.key] = (frozenset(tape), TAPES[row.key].frame, row.view)
    assert [pair for pair in combinations(pictures, 2) if _same(pictures, *pair)] == []


def _same(pictures, one, other):
    return pictures[one] == pictures[other]


@pytest.mark.parametrize("row", CATALOGUE, ids=lambda row: row.key)
def test_the_tape_is_told_from_the_body_without_colour(row):
    """In ASCII the tape is heavy letters that the body never has."""
    canvas = drawn(row.key, 30, 18, True)
    heavy = sum(line.count("#") for line in canvas.lines())
    assert heavy >= 4


@pytest.mark.parametrize("row", CATALOGUE, ids=lambda row: row.key)
def test_landmarks_are_named_where_there_is_room(row):
    """In the larger picture at least one landmark is named in full."""
    canvas = drawn(row.key, 50, 34)
    text = " ".join("".join(canvas.lines()).split())
    words = {word for landmark in TAPES[row.key].landmarks for word in landmark.name.split()}
    assert any(word in text for word in words)


@pytest.mark.parametrize("size", [(0, 0), (1, 1), (3, 2), (12, 4), (200, 6)])
def test_odd_sizes_do_no_harm(size):
    """A widget may be any size while a window is dragged."""
    assert [len(line) for line in figure("bust", *size)] == [size[0]] * size[1]


def test_an_unknown_measure_is_refused():
    """Only the catalogue's keys have figures."""
    with pytest.raises(KeyError):
        figure("ankle", 30, 18)


@pytest.mark.parametrize("view", list(View))
def test_the_person_stands_on_the_floor_at_full_height(view):
    """From crown to sole the figure measures what it says, from every side."""
    heights = [point.y for path in croquis(view).outline for point in path.flattened(0.5)]
    assert min(heights) == pytest.approx(0, abs=3)
    assert max(heights) == pytest.approx(FLOOR * 10, abs=3)


def test_a_hand_on_the_hip_moves_one_arm_only():
    """The pose for the arm's length changes the arm on the left as seen."""
    hanging, bent = (set(croquis(View.BACK, pose).outline) for pose in Pose)
    changed = bent - hanging
    assert len(changed) == 3
    assert all(path.start.x < 0 for path in changed)


@pytest.mark.parametrize("row", CATALOGUE, ids=lambda row: row.key)
def test_the_printed_picture_shows_the_same_tape(row):
    """On paper the tape is the one heavy line, inside the picture, with every landmark named."""
    picture = tape_drawing(row.key)
    heavy = [i for i in picture.inks if isinstance(i, Stroke) and i.layer is Layer.CUT]
    assert len(heavy) == (1 if row.is_girth else 3)
    for stroke in heavy:
        for point in stroke.path.flattened(0.5):
            assert picture.box.left <= point.x <= picture.box.right
            assert picture.box.top <= point.y <= picture.box.bottom
    named = {ink.text for ink in picture.inks if not isinstance(ink, Stroke)}
    assert named == {landmark.name for landmark in TAPES[row.key].landmarks}
