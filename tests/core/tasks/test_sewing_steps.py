"""Sewing step by step: the steps of the checklist, one for one, with facts and pictures."""

from __future__ import annotations

from functools import cache

import pytest
from making import DAY, MIDDLE, person
from msgspec.structs import replace

from tapewise_core.paper.drawing import Drawing, Layer, TextLine
from tapewise_core.sewing.operation import Laid
from tapewise_core.sewing.pictures import HEAVY
from tapewise_core.sewing.showing import Up, shown
from tapewise_core.tasks.chores import SEW, chores
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.sewing import SewingStep, sewing_steps, step_picture, step_shown
from tapewise_core.units import Unit

POCKETS = {"pockets": "yes", "belt": "yes", "lower-shoulder": "left"}


@cache
def drafted(garment: str) -> Drafted:
    """Return a garment with much to sew."""
    someone = person({**MIDDLE, "waist_to_floor": 104.0, "waist_to_knee": 58.0})
    return draft(someone, garment, POCKETS if garment == "flared-dress" else {}, made=DAY)


def step(garment: str, key: str) -> SewingStep:
    """Return one step by its key."""
    return next(one for one in sewing_steps(drafted(garment)) if one.key == key)


def drawn(garment: str, key: str) -> Drawing:
    """Return a step's picture, which it must have."""
    found = step_picture(drafted(garment), step(garment, key))
    assert found is not None
    return found


def words(drawing: Drawing) -> list[str]:
    """Return what is written on a picture."""
    return [ink.text for ink in drawing.inks if isinstance(ink, TextLine)]


def test_steps_are_those_of_the_checklist_one_for_one() -> None:
    """So that a tick and a page of the app speak of the same thing."""
    listed = next(part for part in chores(drafted("flared-dress")) if part.heading == SEW)
    steps = sewing_steps(drafted("flared-dress"))
    assert len(steps) == len(listed.items)
    for one, chore in zip(steps, listed.items, strict=True):
        assert chore.says.startswith(one.says)


def test_a_tape_is_as_long_as_the_edge_that_is_cut() -> None:
    """Cloth that shrinks by a tenth once it is sewn has openings of 16 cm ÷ 0.9 until then; so say
    the steps, the checklist and what is eased in."""
    asked = {"pockets": "yes", "shrinkage": "10", "bust-room": "side-ease"}
    full = person({**MIDDLE, "front_waist_length": 46.0})
    told = []
    for wash in ("before", "after"):
        made = draft(full, "flared-dress", {**asked, "wash": wash}, made=DAY)
        tape, sides = (
            next(one for one in sewing_steps(made) if one.key == key)
            for key in ("pocket-stay", "sides")
        )
        told.append((tape.says, dict(sides.facts)["ease"], *(c.items for c in chores(made))))
    assert "16 cm for each" in told[0][0]
    assert "17.8 cm for each" in told[1][0]
    assert any("17.8 cm for each" in item.says for part in told[1][2:] for item in part)
    assert told[0][1] != told[1][1]


def test_facts_are_told_where_there_are_any_in_the_readers_unit() -> None:
    """A seam has its stitch and allowance, a test neither."""
    inches = replace(drafted("skirted-dress"), unit=Unit.IN)
    waist = next(one for one in sewing_steps(inches) if one.key == "waist")
    facts = dict(waist.facts)
    assert facts["stitch"] == "ISO 4915 type 514"
    assert facts["from the edge"] == "5/16 in"
    assert "it melts" in facts["press"]
    assert "takes" in dict(step("skirted-dress", "waist-stay").facts)
    assert step("skirted-dress", "head").test
    assert "stitch" not in dict(step("skirted-dress", "head").facts)


def test_a_picture_tells_right_and_wrong_side_apart_without_colour() -> None:
    """The piece on top of right sides together shows its wrong side: hatched, and said so."""
    picture = drawn("flared-dress", "shoulders")
    assert {"wrong side up", "right side up"} <= set(words(picture))
    assert [ink for ink in picture.inks if ink.layer is Layer.GUIDE]
    plain = drawn("jersey-top", "neckband")
    assert set(words(plain)) & {"wrong side up", "right side up"} == {"right side up"}
    assert not [ink for ink in plain.inks if ink.layer is Layer.GUIDE]


@pytest.mark.parametrize("garment", ["flared-dress", "skirted-dress", "set-in-top"])
def test_every_step_that_sews_an_edge_has_a_picture_of_it(garment: str) -> None:
    """Its pieces by name and its edges drawn heavily with their letters; a test has none."""
    for one in sewing_steps(drafted(garment)):
        picture = step_picture(drafted(garment), one)
        assert (picture is None) is (not one.operation.meets), one.key
        if picture is not None:
            assert any(getattr(ink, "width", 0) == HEAVY for ink in picture.inks), one.key
            assert "A" in words(picture), one.key
            assert picture.box.width <= 80, one.key
            assert picture.box.height <= 90, one.key


def test_what_prepares_a_seam_shows_the_edges_of_the_seam() -> None:
    """Tape is pinned to the shoulder that the next step sews; a test shows nothing."""
    made = drafted("set-in-top")
    steps = sewing_steps(made)
    titles = [one.title for one in steps]
    stay, sewn = titles.index("Stay the back's shoulders"), titles.index("Sew the shoulders")
    assert step_shown(made, steps, stay) == step_shown(made, steps, sewn) != ()
    assert step_shown(made, steps, titles.index("Try it on")) == ()


def test_edges_that_meet_share_a_letter() -> None:
    """The sides are A; the pockets' bags, sewn with them, B."""
    letters = {
        mark.letter: one.piece.name
        for one in shown(drafted("flared-dress").pattern, step("flared-dress", "sides").operation)
        for mark in one.marked
    }
    assert letters["C"] == "pocket"
    assert letters["A"] in ("front", "back")


def test_a_pocket_is_shown_on_its_part_of_the_side() -> None:
    """From notch to notch, as long as its opening, and not along the whole side."""
    pattern = drafted("flared-dress").pattern
    pieces = shown(pattern, step("flared-dress", "pockets").operation)
    pocket, *bodies = pieces
    opening = pattern.piece("pocket").length("opening")
    assert pocket.up is Up.WRONG
    for body in bodies:
        for mark in body.marked:
            ends = mark.line[0], mark.line[-1]
            assert (ends[1] - ends[0]).length() == pytest.approx(opening, rel=0.02)


def test_what_lies_wrong_side_up_is_turned_over() -> None:
    """A piece that is not its own mirror image is drawn mirrored, its edges with it."""
    pattern = drafted("flared-dress").pattern
    pocket = shown(pattern, step("flared-dress", "pockets").operation)[0]
    plain = pattern.piece("pocket")
    assert max(p.x for p in pocket.outlines[0]) == pytest.approx(-min(p.x for p in plain.cut))
    hem = step("flared-dress", "hem").operation
    assert {meeting.laid for meeting in hem.meets} == {Laid.TURNED}
    assert {one.up for one in shown(pattern, hem)} == {Up.WRONG}
