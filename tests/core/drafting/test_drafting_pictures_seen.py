"""Pictures one can work from: every letter and length is there, and none lies over anything."""

from __future__ import annotations

import pytest
from making import DAY, person
from pictures_seen import POINT, overlaps, texts

from tapewise_core.drafting.by_hand import by_hand
from tapewise_core.drafting.pictures import step_pictures
from tapewise_core.drafting.picturing.scene import scenes
from tapewise_core.drafting.picturing.words import in_lines
from tapewise_core.garments.shelf import garments
from tapewise_core.geometry.point import Vector
from tapewise_core.paper.drawing import Drawing, Stroke, TextLine
from tapewise_core.tasks import people
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.units import Unit

WHO = (
    ("Marta Lindqvist", Unit.CM, {}),
    ("Gwen Abernathy", Unit.IN, {}),
    ("Tomasz Wieczorek", Unit.CM, {"ease": "8"}),
    ("Ada Test", Unit.IN, {}),
)
"""A middle build, a full bust in inches, a man in a wide garment, and many measures estimated."""


def _drafted(garment: str, name: str, unit: Unit, asked: dict[str, str]) -> Drafted:
    who = person() if name == "Ada Test" else people.person(name)
    known = next(page for page in garments() if page.name == garment).options
    asked = {key: value for key, value in asked.items() if key in known}
    return draft(who, garment, asked, unit=unit, made=DAY)


@pytest.mark.parametrize("who", WHO, ids=lambda who: who[0].split()[0])
@pytest.mark.parametrize("garment", [page.name for page in garments()])
def test_nothing_is_missing_and_nothing_lies_over_anything(
    garment: str, who: tuple[str, Unit, dict[str, str]]
) -> None:
    """Each letter a step marks or names, each length it states and each notch is written once, at
    seven points or more, and no word lies over another, over a line or over the edge."""
    made = _drafted(garment, *who)
    missing: list[str] = []
    over: list[str] = []
    for drawn in map(by_hand, made.pattern.drafts):
        for scene, shown in zip(scenes(drawn), step_pictures(drawn, made.unit), strict=True):
            picture = shown[0]
            over += [fault for each in shown for fault in overlaps(each)]
            assert min((size for each in shown for size in _sizes(each)), default=9.0) >= 7 * POINT
            if scene.shown is not None:
                told = [unit_told(made, size.by.mm) for size in scene.shown.sizes]
                told += [unit_told(made, edge.by.mm) for edge in scene.shown.edges]
            else:
                told = [", ".join(s.names) for s in scene.spots if s.new or s.named]
                told += [unit_told(made, one.by) for one in scene.measures]
                told += [line for mark in scene.new_marks for line in in_lines(mark.name)]
            there = texts(picture)
            there.subtract(told)
            missing += [f"{picture.title}: {word}" for word, many in there.items() if many < 0]
    assert (over, missing) == ([], [])


def unit_told(made: Drafted, mm: float) -> str:
    """Return a length as it stands in the picture."""
    return made.unit.spell(mm)


def _sizes(picture: Drawing) -> list[float]:
    return [ink.size for ink in picture.inks if isinstance(ink, TextLine)]


def test_the_test_sees_words_over_a_line_and_over_words() -> None:
    """Moved a little, a word is found to lie on something."""
    made = _drafted("jersey-top", *WHO[0])
    *_, (picture, _) = step_pictures(by_hand(made.pattern.drafts[0]), made.unit)
    word = next(ink for ink in picture.inks if isinstance(ink, TextLine))
    line = next(ink for ink in picture.inks if isinstance(ink, Stroke))
    on_line = word.moved(line.path.start - word.at)
    again = word.moved(Vector(0.5, 0.5))
    for fault in (on_line, again):
        inks = (*picture.inks, fault)
        assert list(overlaps(Drawing("x", "", picture.box, inks)))
