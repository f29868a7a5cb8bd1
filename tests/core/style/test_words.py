"""What is said about options, in the reader's unit and under the page's headings."""

import re

import pytest
from making import MIDDLE, person

from tapewise_core.garments.shelf import garments
from tapewise_core.style.option import Group
from tapewise_core.tasks import shop, wizard
from tapewise_core.units import Unit

NAMES = [page.name for page in garments()]

METRIC = re.compile(r"\b(cm|mm)\b")
IMPERIAL = re.compile(r"\d in\b")


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize(("unit", "foreign"), [(Unit.IN, METRIC), (Unit.CM, IMPERIAL)])
def test_options_are_described_in_one_unit(name: str, unit: Unit, foreign: re.Pattern[str]) -> None:
    """On the command line and on the page: defaults, limits and explanations."""
    lines = shop.garment_lines(name, unit)
    rows = wizard.option_rows(person({**MIDDLE, "waist_to_knee": 58.0}), name, {}, unit)
    told = [text for row in rows for text in (row.says, row.usual, row.value, row.limits)]
    assert [text for text in (*lines, *told) if foreign.search(text)] == []
    assert any((METRIC if unit is Unit.CM else IMPERIAL).search(text) for text in told)


def test_the_fits_ease_reads_in_inches() -> None:
    """Every amount is a length, not a number before somebody else's unit."""
    lines = "\n".join(shop.garment_lines("jersey-top", Unit.IN))
    assert "ease: fitted 0 in, straight 1 5/8 in, eased 3 1/8 in; close: less" in lines


@pytest.mark.parametrize("name", NAMES)
def test_the_page_shows_names_without_hyphens(name: str) -> None:
    """In labels and in sentences; the command line shows what is typed."""
    keys = {key for key in wizard.garment(name).options.keys if "-" in key}
    rows = wizard.option_rows(person(), name, {}, Unit.CM)
    said = " ".join(f"{row.label} {row.says} {row.usual}" for row in rows)
    assert [key for key in keys if key in said] == []


@pytest.mark.parametrize("name", NAMES)
def test_rows_stand_by_heading_in_the_order_of_the_page(name: str) -> None:
    """Each heading once, style first and the figure last."""
    rows = wizard.option_rows(person(), name, {}, Unit.CM)
    headings = list(dict.fromkeys(row.group for row in rows))
    assert headings == [group.value for group in Group if group in headings]
    runs = [row.group for at, row in enumerate(rows) if not at or rows[at - 1].group != row.group]
    assert runs == headings


def test_a_machine_reads_groups_and_centimetres() -> None:
    """The sheet of a garment as JSON, its sentences in cm."""
    options = shop.garment_sheet("flared-dress")["options"]
    assert isinstance(options, list)
    found = {option["key"]: option for option in options}
    assert found["flare"]["group"] == "Lengths"
    assert found["shoulder-drop"]["group"] == "Figure, where it is not average"
    assert found["flare"]["default_says"] == (
        "10 cm from the hip, 14 cm from the waist; above a hem band 5 cm, or what a stride "
        "needs, and more from the waist"
    )
    assert found["flare"]["default"] is None
    assert (found["belt-width"]["default"], found["belt-width"]["low"]) == (4.0, 1.5)
    assert found["hem"]["choices"] == ["straight", "split"]
    assert found["hem"]["low"] is None
