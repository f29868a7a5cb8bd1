"""The worked example of the developers' guide: a page and a row are enough."""

import json
import sys

import pytest
from making import DAY, person

from tapewise_core.garments import shelf
from tapewise_core.tasks.contents import contents
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.shop import garment_lines, garment_list
from tapewise_core.units import Unit


@pytest.fixture(autouse=True)
def page(monkeypatch: pytest.MonkeyPatch) -> None:
    """Put the example's page where pages lie, and its row on the shelf."""
    import neck_warmer

    for module in ("neck_warmer", "neck_warmer.page"):
        monkeypatch.setitem(sys.modules, f"tapewise_core.garments.{module}", neck_warmer)
    row = ("neck_warmer", "NECK_WARMER")
    monkeypatch.setattr(shelf, "PAGES", {**shelf.PAGES, "neck-warmer": row})


def test_a_new_page_is_drafted_proved_and_written() -> None:
    """Record, proofs, checklist, instructions and paper know it without another change."""
    drafted = draft(person(), "neck-warmer", {}, made=DAY)
    assert not drafted.failing
    assert {proof.name for proof in drafted.proofs} >= {"head through the neck", "strip outline"}
    files = contents(drafted, ("pdf-a4", "dxf"))
    assert {"pattern.svg", "pieces/strip.svg", "checklist.md", "pattern-a4.pdf"} <= set(files)
    record = json.loads(files["draft.json"])
    assert record["finished"]["height"]["garment"] == 18
    assert "join" in files["checklist.md"].decode()


def test_a_new_page_is_listed_with_its_options() -> None:
    """The command line and the app read it from the same table."""
    assert any("height: 18 cm" in line for line in garment_lines("neck-warmer", Unit.CM))
    assert garment_list()[-1]["title"] == "Neck warmer"
