"""Circle skirts against exact arithmetic: r = waist edge / (2 pi p), anyone can redo it.

The tables are typed in as rounded to 0.1 mm, so a tenth of a millimetre is the tolerance.
"""

from __future__ import annotations

import json
import math

import pytest

from tapewise_core.drafting.piece import Piece
from tapewise_core.geometry.outline import box_of
from tapewise_core.lay.lay import lay_of
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft

PARTS = ("1", "3/4", "1/2", "1/4")
RADII = {
    60: (9.55, 12.73, 19.10, 38.20),
    70: (11.14, 14.85, 22.28, 44.56),
    80: (12.73, 16.98, 25.46, 50.93),
    100: (15.92, 21.22, 31.83, 63.66),
}
"""Waist edge to the waist's radius [cm], for each part of a circle."""

HEMS = (447.0, 352.7, 258.5, 164.2)
"""Round the hem [cm], waist edge 70, length 60."""

ROUNDED = 0.1
"""Half of what the tables are rounded to, and a hair [mm]."""


def skirt(waist: float, part: str, **asked: str) -> Drafted:
    """Draft a skirt whose waist edge is the body's waist [cm]."""
    measures = {"waist": {"value": waist}, "hip": {"value": waist + 20}}
    content = {"format": "tapewise profile", "version": 1, "name": "Table", "measures": measures}
    profile = Profile.from_text(json.dumps(content))
    options = {key.replace("_", "-"): value for key, value in asked.items()}
    plain = {"circle": part, "waist-ease": "0", "skirt-length": "60", "elastic-width": "1"}
    return draft(profile, "circle-skirt", {**plain, **options})


def whole(drafted: Drafted, edge: str) -> float:
    """The length of an edge round the whole skirt [mm]."""
    pieces = [piece for piece in drafted.pattern.pieces if piece.name.startswith("skirt")]
    return sum(_times(piece) * piece.length(edge) for piece in pieces)


def _times(piece: Piece) -> int:
    return piece.count * (2 if piece.on_fold else 1)


@pytest.mark.parametrize("waist", RADII)
@pytest.mark.parametrize("part", PARTS)
def test_the_waist_is_cut_on_the_radius_of_the_table(waist: int, part: str) -> None:
    """Every point of the drawn waist lies on the table's radius, from the centre of the circle."""
    piece = skirt(waist, part).pattern.pieces[0]
    radius = RADII[waist][PARTS.index(part)] * 10
    exact = waist * 10 / (2 * math.pi * [1, 0.75, 0.5, 0.25][PARTS.index(part)])
    off = [math.hypot(p.x, p.y) for p in piece.edge("waist").path.flattened(0.01)]
    assert max(abs(r - exact) for r in off) < 0.01
    assert abs(exact - radius) <= ROUNDED


@pytest.mark.parametrize("waist", RADII)
@pytest.mark.parametrize("part", PARTS)
def test_the_waist_edge_is_as_long_as_the_waist(waist: int, part: str) -> None:
    """Walked round all pieces, the waist edge is the waist, to a hundredth of a millimetre."""
    assert whole(skirt(waist, part), "waist") == pytest.approx(waist * 10, abs=0.01)


@pytest.mark.parametrize(("part", "hem"), list(zip(PARTS, HEMS, strict=True)))
@pytest.mark.parametrize("panels", ["fewest", "2", "6"])
def test_the_hem_is_as_long_as_the_table_says(part: str, hem: float, panels: str) -> None:
    """Waist edge 70 and length 60, in however many pieces."""
    drawn = whole(skirt(70, part, panels=panels), "hem")
    assert drawn == pytest.approx(hem * 10, abs=0.5 + ROUNDED)
    share = [1, 0.75, 0.5, 0.25][PARTS.index(part)]
    assert drawn == pytest.approx(700 + 2 * math.pi * share * 600, abs=0.01)


def test_arcs_stay_on_their_circles() -> None:
    """Between their ends the cubics of waist and hem leave their circles by less than 0.01 mm."""
    for edge in skirt(100, "1", skirt_length="120", panels="6").pattern.pieces[0].edges:
        if edge.name not in ("waist", "hem"):
            continue
        sizes = [math.hypot(p.x, p.y) for p in edge.path.flattened(1e-4)]
        assert max(sizes) - min(sizes) < 0.01


def test_a_full_circle_needs_the_square_of_the_table() -> None:
    """Waist 70, length 60, hem 2: a square of 146.3, which 147 usable cm of 150 just hold."""
    made = skirt(70, "1", skirt_hem_allowance="2")
    (piece,) = made.pattern.pieces
    box = box_of(piece.cut)
    assert box.width * 2 == pytest.approx(1463, abs=0.5)
    assert box.height == pytest.approx(1463, abs=0.5)
    assert lay_of(made.pattern, made.cloth).too_wide == ()


def test_two_halves_of_75_need_three_and_a_half_metres_at_most() -> None:
    """Waist 70, length 75, hem 2 from 150 cm of cloth: about 3.5 m one behind the other, turned
    across; laid into each other they take less, and cover what practice does, 55 to 70 %."""
    made = skirt(70, "1", skirt_length="75", skirt_hem_allowance="2")
    assert [piece.name for piece in made.pattern.pieces] == ["skirt_back", "skirt_front"]
    needed = lay_of(made.pattern, made.cloth)
    assert needed.length < 3500
    assert 0.55 < needed.used < 0.7
    assert needed.turned == ("skirt_back", "skirt_front")


@pytest.mark.parametrize(
    ("part", "change"), list(zip(PARTS, (6.28, 4.71, 3.14, 1.57), strict=True))
)
def test_a_centimetre_of_radius_changes_the_waist(part: str, change: float) -> None:
    """The waist is cut r minus its allowance: an allowance of 1 cm takes so much off its edge."""
    (piece, *_) = skirt(70, part, seam_allowance="1", waist_finish="band").pattern.pieces
    radius = min(math.hypot(p.x, p.y) for p in piece.cut)
    stitched = RADII[70][PARTS.index(part)] * 10
    share = [1, 0.75, 0.5, 0.25][PARTS.index(part)]
    shorter = 2 * math.pi * share * (stitched - radius)
    assert shorter == pytest.approx(change * 10, abs=0.7)
