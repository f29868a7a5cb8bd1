"""The body behind the pattern, at the heights of its levels."""

from __future__ import annotations

import pytest
from hand_made import oblong

from tapewise_core.drafting.facts import Level
from tapewise_core.drafting.piece import Piece
from tapewise_core.geometry.point import Point
from tapewise_tui.canvas import Canvas
from tapewise_tui.pattern_body import BODY, draw_body
from tapewise_tui.pattern_places import Placed, placed

LEVELS = (
    Level("bust", 100.0, 800.0, 80.0, 880.0, 880.0),
    Level("hip", 300.0, 600.0, 200.0, 800.0, 800.0),
    Level("upper_arm", None, 300.0, 40.0, 340.0, 340.0),
)


def drawn(piece: Piece) -> tuple[Canvas, Placed]:
    """Draw the body behind one piece alone."""
    canvas = Canvas(80, 40)
    (place,) = placed((piece,), canvas.width, canvas.height)
    draw_body(canvas, (place,), LEVELS)
    return canvas, place


def cell(place: Placed, x: float, y: float) -> tuple[int, int]:
    """The character's place of a point of the piece [mm]."""
    across, down = place.dot(Point(x, y))
    return int(across) >> 1, int(down) >> 2


@pytest.mark.parametrize("name", ["back", "front"])
def test_the_body_stands_a_quarter_from_the_centre(name: str) -> None:
    """At every level of the trunk, and from there a line out to the garment's own quarter."""
    canvas, place = drawn(oblong(name, 220, 400))
    toned = {at for at, tone in canvas.tones.items() if tone == BODY}
    for x, y in ((200, 100), (210, 100), (219, 100), (150, 300), (175, 300), (199, 300)):
        assert cell(place, x, y) in toned, (x, y)
    for x, y in ((190, 100), (140, 300), (100, 200)):
        assert cell(place, x, y) not in toned, (x, y)


def test_no_body_lies_behind_a_sleeve() -> None:
    """Its heights are not those of the trunk."""
    canvas, _ = drawn(oblong("sleeve", 220, 400))
    assert BODY not in canvas.tones.values()
    canvas, _ = drawn(oblong("neckband", 220, 400))
    assert BODY not in canvas.tones.values()
