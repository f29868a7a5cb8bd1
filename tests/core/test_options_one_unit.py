"""What is told of options, of their limits and of what is typed wrong: in one unit alone."""

from __future__ import annotations

import pytest
from units_seen import foreign

from tapewise_core.errors import OptionError
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.people import person
from tapewise_core.tasks.wizard import OptionRow, garments, option_rows, plainly
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

BODIES = (person("Marta Lindqvist"), Profile.of("Mia Holt").with_value("height", 128))
"""Somebody with every measure, and a child with most of them open."""

WRONG = ("9999", "-9999", "abc")


def refusals(garment: str, row: OptionRow, unit: Unit) -> list[str]:
    """Return what is said of each wrong text; no option takes any of them."""
    said = []
    for text in WRONG:
        try:
            told = plainly(garment, row.key, text, unit)
        except OptionError as error:
            said.append(Reader(unit).spell(error.told))
        else:
            said.append(told if unit is Unit.CM else "")
    return said


@pytest.mark.parametrize("unit", Unit)
def test_options_are_explained_in_the_reader_s_unit(unit: Unit) -> None:
    """Every option of every garment: what it is, its value, limits, usual value, and refusals."""
    texts: list[str] = []
    for page in garments():
        for body in BODIES:
            for row in option_rows(body, page.name, {}, unit):
                texts += [
                    row.says,
                    row.value,
                    row.limits,
                    row.usual,
                    *refusals(page.name, row, unit),
                ]
    assert len(texts) > 1500
    assert foreign(texts, unit) == []


def test_a_usual_value_is_told_once() -> None:
    """No “6 cm, 6 cm, less where …”."""
    for page in garments():
        for row in option_rows(BODIES[0], page.name, {}, Unit.CM):
            first, _, rest = row.usual.partition(", ")
            assert not rest.startswith(first + ","), row.key
