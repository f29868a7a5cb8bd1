"""Pieces laid beside each other, and the squares that prove the scale."""

from __future__ import annotations

import pytest

from tapewise_core.drafting.sheets import GAP, SQUARES, WIDEST, beside, with_squares
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing, Layer, Stroke, TextLine


def sheet(wide: float, high: float, name: str = "a") -> Drawing:
    """Return a drawing of its own frame, not at the origin."""
    corners = Point(7, 9), Point(7 + wide, 9), Point(7 + wide, 9 + high), Point(7, 9 + high)
    frame = Stroke(ruled(*corners, corners[0]), Layer.CUT, name=name)
    return Drawing(name, name, Box(7, 9, 7 + wide, 9 + high), (frame,))


def places(drawing: Drawing) -> dict[str, Box]:
    """Return where each frame lies."""
    return {
        ink.name: box_of(ink.path.flattened())
        for ink in drawing.inks
        if isinstance(ink, Stroke) and ink.layer is Layer.CUT
    }


def test_drawings_lie_side_by_side_with_a_gap() -> None:
    """The second starts a gap right of the first, both at the top."""
    found = places(beside("t", "d", (sheet(300, 400, "a"), sheet(200, 400, "b"))))
    assert (found["a"].left, found["a"].top) == pytest.approx((0, 0))
    assert (found["b"].left, found["b"].top) == pytest.approx((300 + GAP, 0))


def test_a_full_row_is_followed_by_another() -> None:
    """What would go beyond the widest starts below the tallest of the row."""
    first = WIDEST - 300
    found = places(beside("t", "d", (sheet(first, 400, "a"), sheet(300, 500, "b"))))
    assert (found["b"].left, found["b"].top) == pytest.approx((0, 400 + GAP))
    fits = places(beside("t", "d", (sheet(first, 400, "a"), sheet(300 - GAP, 400, "b"))))
    assert fits["b"].top == pytest.approx(0)


def test_a_low_drawing_starts_a_row_rather_than_leave_a_hole() -> None:
    """A band of a tenth of the row's height goes below it."""
    found = places(beside("t", "d", (sheet(300, 400, "a"), sheet(200, 40, "b"))))
    assert (found["b"].left, found["b"].top) == pytest.approx((0, 400 + GAP))


def test_nothing_overlaps() -> None:
    """Whatever the sizes, every two frames lie apart."""
    sizes = ((600, 700), (500, 650), (480, 60), (200, 300), (900, 800), (700, 790))
    drawings = tuple(sheet(*size, name=str(i)) for i, size in enumerate(sizes))
    boxes = list(places(beside("t", "d", drawings)).values())
    for i, one in enumerate(boxes):
        for other in boxes[i + 1 :]:
            beside_it = one.right < other.left or other.right < one.left
            assert beside_it or one.bottom < other.top or other.bottom < one.top


def test_both_squares_are_as_large_as_they_say() -> None:
    """100 mm and 4 in, each closed, below the drawing and inside the box."""
    drawing = with_squares(sheet(300, 400))
    squares = [ink for ink in drawing.inks if isinstance(ink, Stroke) and ink.closed]
    assert [side for side, _ in SQUARES] == pytest.approx([100, 101.6])
    for (side, name), square in zip(SQUARES, squares, strict=True):
        box = box_of(square.path.flattened())
        assert (box.width, box.height) == pytest.approx((side, side))
        assert box.top > 409
        assert box.bottom < drawing.box.bottom
        assert box.right < drawing.box.right
        assert square.name == f"{name} square"
    told = [ink.text for ink in drawing.inks if isinstance(ink, TextLine)]
    assert {"100 mm each way", "4 in each way"} <= set(told)
