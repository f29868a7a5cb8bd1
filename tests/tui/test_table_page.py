"""The table: a sheet of numbers typed from top to bottom."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from textual.events import Key
from walking import LARGE, SMALL, Walk, walk

from tapewise_core.measures.body import WaistSite
from tapewise_core.measures.order import KEYS
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import work
from tapewise_core.tasks.people import person, store
from tapewise_core.units import Unit
from tapewise_tui.widgets.field import Field
from tapewise_tui.widgets.rows import Rows

PUPIL = {
    "height": "168", "head": "55.5", "neck": "36", "high_bust": "88", "bust": "92",
    "under_bust": "78", "waist": "74", "high_hip": "92", "hip": "99", "upper_arm": "28.5",
    "wrist": "16", "shoulder_length": "13", "across_front": "33", "front_waist_length": "43.5",
    "neck_to_bust_point": "26.5", "bust_span": "18.5", "hip_depth": "20", "waist_to_floor": "105",
    "waist_to_knee": "59", "over_shoulder_girth": "106", "shoulder_drop": "4.5",
    "arm_length": "59", "back_waist_length": "41",
}  # fmt: skip
"""A pupil's 23 measures as they stand on her sheet [cm]."""

_SIGNS = {"\n": "enter", ".": "full_stop", "\t": "tab"}


def begin(*values: tuple[str, float], unit: Unit = Unit.CM, garment: str = "jersey-top") -> None:
    """Put a person on file who stopped at the table."""
    profile = Profile.of("Ada Quist", unit=unit)
    for key, cm in values:
        profile = profile.with_value(key, cm, readings=(cm,))
    store.save(profile)
    work.save(work.Work("Ada Quist", garment=garment, page="table", when="2026-11-01T10:00:00"))


def kept(key: str) -> tuple[float, ...] | None:
    """Return the readings on file."""
    found = store.load("Ada Quist").measures.get(key)
    return None if found is None else found.readings


async def typed_ahead(at: Walk, text: str) -> int:
    """Send every key at once, as from somebody who does not wait; return how many there were."""
    for sign in text:
        letter = None if sign in "\n\t" else sign
        at.app.post_message(Key(_SIGNS.get(sign, sign), letter))
    await at.settle()
    return len(text)


def test_a_pupil_s_sheet_takes_under_120_keys_however_fast() -> None:
    """All 23 measures, typed ahead without a pause, each on its own row."""
    begin()

    async def steps(at: Walk) -> None:
        await at.press("enter", "ctrl+l")
        keys = 2 + await typed_ahead(at, "".join(f"{text}\n" for text in PUPIL.values()))
        found = {key: row.value for key, row in store.load("Ada Quist").measures.items()}
        assert found == {key: float(text) for key, text in PUPIL.items()}
        assert keys < 120

    assert tuple(PUPIL) == KEYS[: len(PUPIL)]
    walk(steps)


def test_a_row_stays_where_the_typing_makes_its_measure_idle() -> None:
    """A child's sheet asks for more until the style is known; no number lands a row off."""
    store.save(replace(Profile.of("Ada Quist"), age=11.0))
    work.save(work.Work("Ada Quist", page="table", when="2026-11-01T10:00:00"))
    sheet = {**PUPIL, "armscye_depth": "17", "across_back": "33"}

    async def steps(at: Walk) -> None:
        await at.press("enter")
        asked = at.app.desk.order
        await typed_ahead(at, "".join(f"{sheet[key]}\n" for key in asked))
        assert len(at.app.desk.order) < len(asked)
        found = {key: row.value for key, row in store.load("Ada Quist").measures.items()}
        assert found == {key: float(sheet[key]) for key in asked}

    walk(steps)


def test_the_second_reading_is_beside_the_first() -> None:
    """Tab goes there, Enter down to the next measure's first; an emptied one is taken off."""
    begin()

    async def steps(at: Walk) -> None:
        await at.press("enter")
        await typed_ahead(at, "168\t168.5\n56\n")
        assert kept("height") == (168.0, 168.5)
        assert kept("head") == (56.0,)
        await at.press("up", "up", "tab", "delete", "enter")
        assert kept("height") == (168.0,)

    walk(steps)


def test_a_third_reading_is_told_and_what_counts() -> None:
    """Two columns do not hide it: nobody takes the first for what is drafted."""
    profile = Profile.of("Ada Quist").with_value("height", 168)
    store.save(profile.with_value("head", 56, readings=(61.0, 56.0, 55.5)))
    work.save(work.Work("Ada Quist", page="table", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        line = next(line for line in at.text().splitlines() if line.strip()[:4] == "head")
        assert "also 55.5: 56 counts" in line

    walk(steps)


def test_what_looks_unlikely_is_marked_as_one_goes() -> None:
    """The row says so, the line below why, and the cursor goes on all the same."""
    begin(("height", 168), ("bust", 92), ("high_bust", 88), ("hip", 99))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        at.page.query_one(Rows).to("waist")
        await at.settle()
        await at.type("29", "enter")
        assert kept("waist") == (29.0,)
        lines = at.text().splitlines()
        assert "! unlikely" in next(line for line in lines if line.strip().startswith("waist"))
        assert at.said.startswith("! Waist 29 cm")
        assert at.page.query_one(Rows).at == "hip"

    walk(steps)


def test_an_estimate_stands_in_brackets_and_follows_what_is_typed() -> None:
    """It never looks like a reading, and is drawn anew with every measure."""
    begin(("height", 168))

    async def steps(at: Walk) -> None:
        def shown() -> str:
            line = next(line for line in at.text().splitlines() if line.strip()[:3] == "hip")
            return line.split()[1]

        await at.press("enter")
        before = shown()
        assert before.startswith("(")
        at.page.query_one(Rows).to("bust")
        await at.settle()
        await at.type("120", "enter")
        assert shown().startswith("(")
        assert shown() != before

    walk(steps)


@pytest.mark.parametrize("size", [(60, 15), SMALL, LARGE])
def test_wrong_input_stays_where_it_was_typed(size: tuple[int, int]) -> None:
    """Nothing is kept, a sentence says why, and Escape brings back what was there."""
    begin(("height", 168))

    async def steps(at: Walk) -> None:
        await at.press("enter", "home")
        field = at.page.query_one(Field)
        for typed in ("abc", "0", "-3", "900", "9,9,9"):
            field.value = typed
            await at.press("enter")
            assert at.said.startswith("!"), typed
            assert at.page.query_one(Rows).at == "height"
            assert field.value == typed
        await at.press("escape")
        assert field.value == "168"
        assert kept("height") == (168.0,)

    walk(steps, size)


@pytest.mark.parametrize("garment", ["circle-skirt", "set-in-top"])
def test_only_what_the_garment_uses_is_listed_until_all_is_asked_for(garment: str) -> None:
    """A skirt asks for a handful, a top for more; one key lists everything."""
    begin(garment=garment)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        used = at.app.desk.used
        assert at.page.query_one(Rows).row_count == len(used)
        assert used[0] == "height"
        assert ("neck" in used) == (garment == "set-in-top")
        await at.press("ctrl+l")
        assert at.page.query_one(Rows).row_count == len(KEYS)
        await at.press("ctrl+l")
        assert at.page.query_one(Rows).row_count == len(used)

    walk(steps)


def test_what_changed_since_the_last_time_stands_beside(monkeypatch: pytest.MonkeyPatch) -> None:
    """The first reading of a new day takes the place of the old ones, with the difference."""
    from tapewise_tui import progress

    begin(("height", 168), ("bust", 92), ("waist", 74))
    before = {"bust": 92.0, "waist": 74.0}
    monkeypatch.setattr(progress, "before_today", lambda desk: before)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for key, typed in (("bust", "94.5"), ("waist", "74")):
            at.page.query_one(Rows).to(key)
            await at.settle()
            at.page.query_one(Field).value = typed + " "
            await at.press("enter")
        lines = at.text().splitlines()
        assert "+2.5" in next(line for line in lines if line.strip().startswith("bust"))

    walk(steps)


def test_a_new_day_s_first_reading_begins_anew() -> None:
    """What was read a year ago is no second reading of today's."""
    ada = Profile.of("Ada Quist").with_value(
        "bust", 90, readings=(90.0, 90.5), taken=date(2025, 11, 2)
    )
    store.save(ada)
    work.save(work.Work("Ada Quist", page="table", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        at.page.query_one(Rows).to("bust")
        await at.settle()
        await at.type("94", "enter")
        assert kept("bust") == (94.0,)

    walk(steps)


def test_the_table_and_the_figure_are_two_ways_to_one_measure() -> None:
    """From one to the other and back, at the same measure."""
    begin(("height", 168))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert at.page.query_one(Rows).at == "head"
        at.page.query_one(Rows).to("hip")
        await at.settle()
        await at.press("f8")
        assert at.page.NAME == "measure"
        assert "Hip ·" in at.text()
        await at.press("f10")
        assert at.page.NAME == "table"
        assert at.page.query_one(Rows).at == "hip"

    walk(steps)


def test_a_whole_person_in_inches_is_shown_whole() -> None:
    """No value is cut off, whatever the fraction."""
    store.save(person("Marta Lindqvist").with_unit(Unit.IN).with_value("bust", 36.75 * 2.54))
    work.save(work.Work("Marta Lindqvist", page="table", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        at.page.query_one(Rows).to("bust")
        await at.settle()
        line = next(line for line in at.text().splitlines() if line.strip().startswith("bust"))
        assert line.rstrip("▁▂▃▄▅▆▇ ").endswith(" 36 3/4")  # the scroll bar stands behind
        assert at.page.query_one(Field).value == "36 3/4"

    walk(steps, (60, 15))


def test_where_the_elastic_sits_is_asked_on_the_way_on() -> None:
    """Once, where a waist was typed and it was not said; the answer is kept."""
    begin(("waist", 74.0))

    async def steps(at: Walk) -> None:
        await at.press("enter", "f4")
        assert "where does the elastic sit?" in at.text()
        await at.type("navel", "enter")
        assert at.page.NAME == "review"
        assert store.load("Ada Quist").waist_site is WaistSite.NAVEL
        await at.press("f10", "f4")
        assert at.page.NAME == "review"

    walk(steps)


def test_the_measuring_sheet_is_written_from_the_page(tmp_path: Path) -> None:
    """One key writes it beside where the app was started; what else has that name stays."""
    begin(("waist", 74.0), garment="circle-skirt")
    place = tmp_path / "measuring-sheet-circle-skirt-cm.pdf"

    async def steps(at: Walk) -> None:
        await at.press("enter", "ctrl+b")
        assert str(place) in at.said
        assert place.read_bytes().startswith(b"%PDF")
        place.write_text("mine")
        await at.press("ctrl+b")
        assert at.said.startswith("!")
        assert place.read_text() == "mine"

    walk(steps)


def test_a_line_that_is_cut_short_is_read_whole_on_f1() -> None:
    """In a small terminal the help begins with what ends in three dots on the page."""
    begin(("waist", 44.0), ("hip", 99.0))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        at.page.found("waist")
        await at.settle()
        cut = next(line for line in at.text().splitlines() if line.endswith("…")).strip(" …")
        await at.press("f1")
        frame = str.maketrans(dict.fromkeys("│▁▂▃▄▅▆▇█", " "))  # the bar at the side too
        shown = " ".join(at.text().translate(frame).split())
        assert f"In full: {cut}" in shown

    walk(steps, (60, 15))
