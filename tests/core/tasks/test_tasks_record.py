"""The record a machine reads: centimetres, plain values, nothing left out."""

from __future__ import annotations

import json

import pytest
from making import top

from tapewise_core.tasks.record import record, record_text
from tapewise_core.units import Unit

MADE = top({"body-length": "64", "stretch": "55", "hem": "straight"})
KEPT = json.loads(record_text(MADE, ["pattern.svg"]))


def test_the_text_is_the_record() -> None:
    """JSON of the same values, ending in a line break, signs as they are."""
    assert json.loads(json.dumps(record(MADE, ["pattern.svg"]))) == KEPT
    assert record_text(MADE, []).endswith("}\n")


def test_it_says_what_it_is() -> None:
    """Format, version, person, garment, day, unit and files."""
    assert (KEPT["format"], KEPT["version"], KEPT["unit"]) == ("tapewise draft", 1, "cm")
    assert (KEPT["garment"], KEPT["person"]) == ("jersey-top", "Ada Test")
    assert KEPT["made"] == "2026-01-31"
    assert KEPT["files"] == ["pattern.svg"]
    assert KEPT["machines"] == ["coverstitch", "overlocker"]


def test_options_and_cloth_are_plain_numbers() -> None:
    """Lengths in cm, percentages as people say them."""
    assert KEPT["options"]["body-length"] == 64
    assert KEPT["fabric"] == {
        "stretch": 55.0,
        "band_stretch": 55.0,
        "seam_stretch": 60.0,
        "width": 150.0,
        "shrinkage": 5.0,
        "shrinkage_across": 0.0,
        "stretch_along": 0.0,
    }


def test_every_piece_stands_with_its_edges_notches_and_grain_in_cm() -> None:
    """A millimetre of the draft is a tenth here."""
    for kept, piece in zip(KEPT["pieces"], MADE.pattern.pieces, strict=True):
        assert kept["name"] == piece.name
        assert kept["cut"]["on_fold"] is piece.on_fold
        assert [edge["name"] for edge in kept["edges"]] == [edge.name for edge in piece.edges]
        for edge, drawn in zip(kept["edges"], piece.edges, strict=True):
            assert edge["length"] == pytest.approx(drawn.path.length() / 10, abs=1e-4)
            assert edge["allowance"] == pytest.approx(drawn.allowance / 10)
            assert (edge["fold"], edge["turned"]) == (drawn.fold, drawn.turned)
        first, end = piece.cut[0], piece.grain[1]
        assert kept["cut_line"][0] == pytest.approx([first.x / 10, first.y / 10], abs=1e-4)
        assert kept["grain"][1] == pytest.approx([end.x / 10, end.y / 10], abs=1e-4)


def test_a_notch_stands_where_its_distance_says() -> None:
    """Its place is the point at that distance along its edge."""
    for kept, piece in zip(KEPT["pieces"], MADE.pattern.pieces, strict=True):
        assert len(kept["notches"]) == len(piece.notches)
        for mark, notch in zip(kept["notches"], piece.notches, strict=True):
            at, _ = piece.edge(notch.edge).path.at(notch.distance)
            assert mark["at"] == pytest.approx([at.x / 10, at.y / 10], abs=1e-4)
            assert (mark["pair"], mark["strokes"]) == (notch.pair, notch.strokes)


def test_the_finished_garment_stands_beside_the_body() -> None:
    """Girths with both, lengths alone, names without spaces."""
    bust = next(girth for girth in MADE.pattern.girths if girth.name == "bust")
    assert KEPT["finished"]["bust"] == {
        "garment": pytest.approx(bust.garment / 10, abs=1e-4),
        "body": 92.0,
    }
    assert "body" not in KEPT["finished"]["centre_back_length"]
    assert not any(" " in name for name in KEPT["finished"])


def test_used_measures_are_kept_and_no_others() -> None:
    """Each with where it came from."""
    assert set(KEPT["measures"]) == set(MADE.used)


def test_geometry_is_the_same_whoever_reads() -> None:
    """A reader of inches gets the same pieces, in centimetres."""
    options = {"body-length": "64 cm", "stretch": "55", "hem": "straight"}
    assert record(top(options, unit=Unit.IN), [])["pieces"] == record(MADE, [])["pieces"]
