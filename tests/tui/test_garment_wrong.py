"""Wrong input at every choice of every garment, for every kind of person: a sentence, no change."""

from __future__ import annotations

import pytest
from walking import LARGE, Walk, walk

from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import wizard, work
from tapewise_core.tasks.people import person, store
from tapewise_core.units import Unit
from tapewise_tui.pages.garment import GarmentPage
from tapewise_tui.widgets.choices import Choices

PEOPLE = {
    "a man, in inches": person("Tomasz Wieczorek").with_unit(Unit.IN),
    "a child of 128 cm": Profile.of("Mia Holt").with_value("height", 128).with_value("bust", 64),
}
WRONG = ("abc", "99999")


@pytest.mark.parametrize("who", PEOPLE)
def test_wrong_input_at_every_choice_is_refused_with_a_sentence(who: str) -> None:
    """Each text that no choice takes is answered, the choice stays, and the lines stay whole."""
    store.save(PEOPLE[who])
    name = PEOPLE[who].name
    work.save(work.Work(name, page="garment", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter", "ctrl+l")
        for garment in wizard.garments():
            page = at.page
            assert isinstance(page, GarmentPage)
            page.take("garment", garment.title)
            lines = page.query_one(Choices).lines
            typed = [line.key for line in lines if line.is_typed and line.key]
            assert typed
            for key in typed:
                for text in WRONG:
                    page.tell("")
                    kept = page.take(key, text)
                    assert not kept, (garment.name, key, text)
                    assert key.replace("-", " ") in at.said or key in at.said, (key, text, at.said)
            assert not work.load(name).asked
            assert page.query_one(Choices).lines == lines
            await at.settle()

    walk(steps, LARGE)
