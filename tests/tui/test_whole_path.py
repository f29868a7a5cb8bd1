"""From an empty data folder to files on disk, by keyboard alone."""

from __future__ import annotations

import json
from pathlib import Path

from walking import Walk, walk

from tapewise_core.measures.body import Origin
from tapewise_core.tasks.people import store

MEASURED = {
    "height": ("169", ""), "head": ("56", ""), "neck": ("36,5", "36"), "high_bust": ("90", ""),
    "bust": ("94", "93.5"), "waist": ("77", "76"), "hip": ("101", "101"),
}  # fmt: skip


def test_a_new_person_gets_files_by_keyboard_alone(tmp_path: Path) -> None:
    """Name, seven measures, estimates for the rest, the usual style: files are written."""

    async def steps(at: Walk) -> None:
        await at.press("ctrl+n")
        await at.type("Ada Quist", "enter", "enter", "enter", "enter")
        await at.type("grown-on", "enter")
        assert "Before the first measure" in at.text()
        await at.press("enter")
        for key, (first, second) in MEASURED.items():
            if key == "waist":
                await at.press("down", "enter")
            await at.type(first, "enter")
            await at.type(second, "enter")
        kept = store.load("Ada Quist")
        assert set(kept.measures) == set(MEASURED)
        assert kept.measures["neck"].readings == (36.5, 36.0)
        await at.press("f9", "3")
        assert "7 of 15 measures" in at.text()
        await at.press("f4")
        assert "Jersey top" in at.text()
        await at.press("f4")
        assert "proofs" in at.text()
        await at.press("f4")
        await at.press("enter")
        assert "written to" in at.said

    walk(steps)
    folder = tmp_path / "ada-quist-jersey-top"
    record = json.loads((folder / "draft.json").read_text("utf-8"))
    assert record["measures"]["bust"] == {"value": 93.75, "origin": "measured", "how": "measured"}
    assert record["measures"]["shoulder_length"]["origin"] == Origin.ESTIMATED
    assert (folder / "pattern.svg").stat().st_size > 1000
