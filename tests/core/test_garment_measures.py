"""A garment sees the measures it declares, and no others."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from making import DAY, MIDDLE, person
from msgspec.structs import replace

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.errors import DraftError
from tapewise_core.garments import shelf
from tapewise_core.garments.garment import Garment
from tapewise_core.measures.body import Body
from tapewise_core.style.style import Style
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.people import body_of


def planted(page: Garment, look: Callable[[Body], object]) -> Garment:
    """Return a garment whose page looks at a body before it drafts."""

    def spying(body: Body, style: Style) -> Pattern:
        look(body)
        return page.draft(body, style)

    return replace(page, draft=spying)


def test_a_measure_that_is_not_declared_cannot_be_read(monkeypatch: pytest.MonkeyPatch) -> None:
    """Although the person has it: the page that asks for it is refused, with its name."""
    page = planted(shelf.garment("circle-skirt"), lambda body: body["bust"])
    monkeypatch.setattr("tapewise_core.tasks.drafting.on_shelf", lambda name: page)
    with pytest.raises(DraftError, match="needs the bust"):
        draft(person(), "circle-skirt", {}, made=DAY)
    honest = replace(page, helps=(*page.helps, "bust"))
    monkeypatch.setattr("tapewise_core.tasks.drafting.on_shelf", lambda name: honest)
    assert draft(person(), "circle-skirt", {}, made=DAY).proofs


def test_every_garment_sees_exactly_what_it_declares() -> None:
    """Needs and helps; of those that are of no use estimated, only the measured."""
    body, _ = body_of(person())
    more = {"high_bust": 88.0, "front_waist_length": 43.0, "neck_to_bust_point": 27.0}
    more |= {"across_front": 33.0, "over_shoulder_girth": 101.0, "high_hip": 90.0}
    measured, _ = body_of(person({**MIDDLE, **more}))
    for page in shelf.garments():
        declared = {*page.needs, *page.helps}
        assert set(page.sees(body).values) == declared - {*page.measured_only}
        assert set(page.sees(measured).values) == declared


def test_what_can_go_without_sleeves_says_so() -> None:
    """Whoever looks for something sleeveless finds each garment that can be, and no other."""
    for page in shelf.garments():
        bare = "sleeve" in page.options and "none" in page.options["sleeve"].choices
        assert ("sleeveless" in page.says) == bare, page.name


def test_a_garment_sees_the_same_where_no_more_is_estimated_than_it_asks_for() -> None:
    """A draft estimates all that it makes use of estimated, and nothing besides."""
    few = {"height": 168.0, "bust": 92.0, "waist": 74.0, "hip": 98.0}
    whole = body_of(person(few))[0]
    for page in shelf.garments():
        alone = body_of(person(few), page.estimates)[0]
        assert page.sees(whole) == page.sees(alone), page.name
        assert set(alone.values) - set(few) == set(page.estimates) - set(few), page.name
