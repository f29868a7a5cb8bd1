"""The core's drafts against an independent second draft of the same bodies, within 0.1 mm."""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
import pytest
from making import DAY, person
from redrafted import Line, grown_top, length, set_in
from shapely.geometry import LineString

from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.record import record

NEAR = 0.1
"""How far both drafts may lie apart [mm]; the record's own points lie within 0.05 of its curves."""

BODY = {
    "height": 168.0, "bust": 94.0, "high_bust": 90.0, "waist": 76.0, "hip": 100.0, "head": 56.0,
    "neck": 36.5, "upper_arm": 26.0, "wrist": 16.0, "back_waist_length": 41.0,
    "front_waist_length": 43.2, "armscye_depth": 18.8, "hip_depth": 20.0, "shoulder_length": 12.6,
    "shoulder_drop": 5.2, "across_back": 35.5, "arm_length": 57.0, "neck_to_bust_point": 27.0,
}  # fmt: skip
OTHER = {
    **BODY, "bust": 90.0, "high_bust": 86.5, "waist": 70.0, "hip": 97.0, "upper_arm": 25.0,
    "armscye_depth": 18.2, "shoulder_drop": 4.9, "neck_to_bust_point": 26.4, "across_back": 34.6,
}  # fmt: skip


def pieces(body: Mapping[str, float], garment: str, asked: Mapping[str, str]) -> dict[str, dict]:
    """Return the pieces of a draft's record by name, every proof holding."""
    made = draft(person(body), garment, asked, made=DAY)
    assert made.failing == ()
    found = record(made, [])["pieces"]
    assert isinstance(found, list)
    return {piece["name"]: piece for piece in found}


def edge(piece: dict, name: str) -> LineString:
    """Return an edge of a piece [mm], from the points of the record [cm]."""
    points = next(one["points"] for one in piece["edges"] if one["name"] == name)
    return LineString(10 * np.array(points))


def apart(ours: Line, theirs: LineString) -> float:
    """Return how far two lines lie apart at the most [mm]."""
    return float(LineString(ours).hausdorff_distance(theirs.segmentize(1.0)))


@pytest.mark.parametrize("body", [BODY, OTHER])
@pytest.mark.parametrize(("sleeve", "shaping"), [(18, 60), (17, 100)])
def test_a_grown_on_top_is_the_one_that_was_drafted_again(
    body: dict[str, float], sleeve: int, shaping: int
) -> None:
    """Shoulder, sleeve, underarm, side seam and hem of the back, and the front's side."""
    asked = {
        "sleeve": "short", "sleeve-length": str(sleeve), "sleeve-ease": "4",
        "waist-shaping": str(shaping), "full-seat": "0", "full-belly": "0",
    }  # fmt: skip
    made = pieces(body, "jersey-top", asked)
    for name, line in grown_top(body, sleeve, 4, shaping / 100).items():
        assert apart(line, edge(made["back"], name)) < NEAR, name
        if name != "hem":
            assert apart(line, edge(made["front"], name)) < NEAR, name


@pytest.mark.parametrize("body", [BODY, OTHER])
@pytest.mark.parametrize("longer", [0.0, 0.8])
@pytest.mark.parametrize("ease", [3, 5])
def test_a_set_in_sleeve_is_the_one_that_was_drafted_again(
    body: dict[str, float], longer: float, ease: int
) -> None:
    """Both armholes, with the front raised too; the cap with its notches, and the hem."""
    body = {**body, "front_waist_length": body["front_waist_length"] + longer}
    asked = {
        "sleeve-length": "20", "sleeve-ease": str(ease), "sleeve-hem-ease": str(ease),
        "armhole-drop": "1",
    }  # fmt: skip
    made, again = pieces(body, "set-in-top", asked), set_in(body, 20, ease)
    for name, half in (("back", again.back), ("front", again.front)):
        assert apart(half.shoulder, edge(made[name], "shoulder")) < NEAR, name
        assert apart(half.path, edge(made[name], "armhole")) < NEAR, name
        recorded = next(e["length"] for e in made[name]["edges"] if e["name"] == "armhole")
        assert length(half.path) == pytest.approx(10 * recorded, abs=NEAR)
    assert apart(again.cap, edge(made["sleeve"], "cap")) < NEAR
    assert apart(again.hem, edge(made["sleeve"], "sleeve_hem")) < NEAR
    marks = sorted(10 * n["distance"] for n in made["sleeve"]["notches"] if n["edge"] == "cap")
    assert marks == pytest.approx(again.notches, abs=NEAR)
