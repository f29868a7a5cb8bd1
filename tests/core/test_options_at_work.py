"""What an option has to do in a style: one that is hidden changes nothing that is cut."""

from __future__ import annotations

import pytest

from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.people import person
from tapewise_core.tasks.wizard import OptionRow, garments, option_rows
from tapewise_core.units import Unit

MARTA = person("Marta Lindqvist")


def other(row: OptionRow) -> str:
    """Return a value an option does not have: the last word, or a limit."""
    return row.choices[-1] if row.choices else row.low


@pytest.mark.parametrize("garment", [page.name for page in garments()])
def test_an_option_without_a_part_changes_no_piece(garment: str) -> None:
    """Every option not at work in the usual style, at another value: the same pieces."""
    rows = option_rows(MARTA, garment, {}, Unit.CM)
    usual = draft(MARTA, garment, {}).pattern.pieces
    idle = {row.key: other(row) for row in rows if not row.at_work}
    assert draft(MARTA, garment, idle).pattern.pieces == usual


def test_the_condition_names_words_that_there_are() -> None:
    """An option waits for words of an option of the same garment, and each can be chosen."""
    for page in garments():
        for option in page.options:
            if option.where:
                key, *words = option.where
                assert key in page.options
                assert set(words) & set(page.options[key].words), (page.name, option.key)


def test_the_usual_value_is_the_one_beside_the_other_choices() -> None:
    """What is told as usual of a choice that was made is what stands once it is taken back."""
    asked = {"neckline": "cowl", "cowl-depth": "9", "neck-finish": "facing", "stretch": "70"}
    told = {row.key: row for row in option_rows(MARTA, "flared-dress", asked, Unit.CM)}
    for key in ("cowl-depth", "neck-finish"):
        rest = {other: text for other, text in asked.items() if other != key}
        bare = {row.key: row for row in option_rows(MARTA, "flared-dress", rest, Unit.CM)}
        assert told[key].value != bare[key].value
        assert told[key].usual.split(",")[0] == bare[key].value
