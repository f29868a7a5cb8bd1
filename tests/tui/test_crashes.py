"""What once stopped the app, walked again: each ends on a page to go on with."""

from __future__ import annotations

import json
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest
from msgspec.structs import replace
from textual.widgets import Input
from walking import Walk, walk

from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.slug import digest
from tapewise_core.tasks import guesses, wizard, work
from tapewise_core.tasks.people import person, store
from tapewise_tui.pages.garment import GarmentPage
from tapewise_tui.pages.measure import MeasurePage
from tapewise_tui.pages.prove import ProvePage
from tapewise_tui.pages.start import StartPage
from tapewise_tui.widgets.rows import Rows

NAME = "Marta Lindqvist"
MADE = work.Work(NAME, folder="top", when="2026-11-01T10:00:00")


def begin(**more: object) -> Path:
    """Put an example person on file with some work; return the work's file."""
    store.save(person(NAME))
    work.save(replace(MADE, **more))  # type: ignore[arg-type]
    return next(work.folder().rglob("*.json"))


async def chosen(at: Walk, garment: str) -> None:
    """Choose a garment on its page and go on to the proofs: all are listed."""
    assert isinstance(at.page, GarmentPage)
    at.page.take("garment", wizard.garment(garment).title)
    await at.settle()
    await at.press("f4")
    assert isinstance(at.page, ProvePage)
    assert 0 < len(at.page.proofs) <= len(at.page.rows) == at.page.query_one(Rows).row_count


def test_every_garment_goes_on_to_its_proofs() -> None:
    """Chosen on the garment page, then F4: all proofs are listed, whatever their names."""
    begin(page="garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for garment in wizard.garments():
            await chosen(at, garment.name)
            await at.press("f3")

    walk(steps)


def test_shoulders_of_two_heights_go_on_to_their_proofs() -> None:
    """With one shoulder lower, a proof comes once for each side."""
    begin(page="prove", asked={"lower-shoulder": "left"})

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert isinstance(at.page, ProvePage)
        assert 0 < len(at.page.proofs) <= len(at.page.rows) == at.page.query_one(Rows).row_count

    walk(steps)


def test_the_cursor_stays_on_one_of_several_proofs_of_one_kind() -> None:
    """Drawn afresh, the table keeps the row that was marked, not the first of its kind."""
    begin(page="prove", garment="set-in-top")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert isinstance(at.page, ProvePage)
        kinds = [proof.id for proof in at.page.proofs]
        second = next(row for row, kind in enumerate(kinds) if kind in kinds[:row])
        table = at.page.query_one(Rows)
        table.move_cursor(second)
        at.page.show()
        assert table.cursor_row == second

    walk(steps)


def failing_show(monkeypatch: pytest.MonkeyPatch, page: type, error: Exception) -> None:
    """Make a page fail whenever it is drawn."""

    def show(self: object) -> None:
        raise error

    monkeypatch.setattr(page, "show", show)


@pytest.mark.trouble
def test_a_person_whose_page_fails_can_be_opened(monkeypatch: pytest.MonkeyPatch) -> None:
    """The first page comes in its place and says so; that one is opened the next time."""
    begin(page="prove")
    failing_show(monkeypatch, ProvePage, RuntimeError("planted"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert at.page.NAME == "measure"
        assert "Something went wrong" in at.said
        assert "trouble.txt" in at.said

    walk(steps)
    assert work.load(NAME).page == "measure"


@pytest.mark.trouble
def test_a_page_that_fails_on_the_way_leaves_the_one_before(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """F4 from the garment to proofs that cannot be drawn stays at the garment, and keeps it."""
    begin(page="garment")
    failing_show(monkeypatch, ProvePage, RuntimeError("planted"))

    async def steps(at: Walk) -> None:
        await at.press("enter", "f4")
        assert at.page.NAME == "garment"
        assert "Something went wrong" in at.said

    walk(steps)
    assert work.load(NAME).page == "garment"


@pytest.mark.trouble
def test_with_every_page_of_hers_failing_the_people_are_shown(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """From one failing page to the plainer one, and from that to the start; never round."""
    begin(page="prove")
    for page in (ProvePage, MeasurePage):
        failing_show(monkeypatch, page, RuntimeError("planted"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert isinstance(at.page, StartPage)
        assert "Something went wrong" in at.said

    walk(steps)


def test_a_page_that_ends_the_program_is_not_the_one_kept(monkeypatch: pytest.MonkeyPatch) -> None:
    """Whatever happens before a page stands: the file on disk names the first page until then."""
    begin(page="prove")
    kept: list[str] = []
    monkeypatch.setattr(ProvePage, "begin", lambda self: kept.append(work.load(NAME).page))

    async def steps(at: Walk) -> None:
        await at.press("enter")

    walk(steps)
    assert kept == ["measure"]
    assert work.load(NAME).page == "prove"


@pytest.mark.trouble
def test_a_garment_at_fault_leaves_the_page_to_choose_another(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """A draft that fails in a way nobody foresaw is a sentence beside the options."""
    begin(page="garment")

    def draft(*given: object, **more: object) -> None:
        raise ZeroDivisionError

    monkeypatch.setattr("tapewise_tui.drafting.drafting.draft", draft)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert at.page.NAME == "garment"
        assert "ZeroDivisionError" in at.text()

    walk(steps)


def test_a_second_file_of_a_person_is_shown_with_its_fault(data_folder: Path) -> None:
    """The person stays usable and saved in one place; the copy says whose it is and may go."""
    own = store.save(person(NAME))
    copy = own.with_name("a copy.json")
    shutil.copy(own, copy)

    async def steps(at: Walk) -> None:
        at.page.query_one(Rows).to(str(copy))
        await at.press("enter")
        assert f"a copy of {NAME}, who is in {own.name}; which of the two counts?" in at.said
        await at.press("delete", "y")
        assert "a copy is deleted." in at.said
        at.page.query_one(Rows).to(str(own))
        await at.press("enter", "f2")
        assert at.page.NAME == "measure"

    walk(steps)
    assert not copy.exists()
    assert store.load(NAME).unit.value == "in"
    assert [path.name for path in own.parent.iterdir()] == [own.name]


def spoilt(**fields: object) -> Callable[[str], str]:
    """Return a way to spoil a work file by other fields."""
    return lambda text: json.dumps({**json.loads(text), **fields})


SPOILT = {
    "there is no garment “tent”": spoilt(garment="tent"),
    "“notes” must be text": spoilt(notes=3),
    "“asked” must be an object": spoilt(asked=[]),
    "“ticked” must be a list": spoilt(ticked="Cut"),
    "“notes” holds a sign that is none": spoilt(notes="\ud800"),
    "version 1": spoilt(version=2),
    "whose it is": lambda text: text.replace('"person"', '"persona"'),
    "nested far too deeply": lambda text: "[" * 100_000,
    "cannot be read as JSON": lambda text: text[:-9],
    "one JSON object": lambda text: "[]",
}


@pytest.mark.parametrize("why", SPOILT)
def test_a_work_file_that_cannot_be_used_is_set_aside(why: str) -> None:
    """A fresh start is made, one sentence names the file, and nothing of it is lost."""
    place = begin(page="sew")
    text = SPOILT[why](place.read_text("utf-8"))
    place.write_text(text, "utf-8")
    aside = place.with_name(f"{place.name}.unusable")
    made, said = work.take_up(NAME)
    assert made == work.Work(NAME)
    assert why in said
    assert str(aside) in said
    assert len(said.splitlines()) == 1
    assert aside.read_text("utf-8") == text
    assert work.take_up(NAME) == (made, "")


GONE = {
    "the option “wings”": ({"asked": {"wings": "2", "stretch": "25"}}, {"stretch": "25"}),
    "the option “round-shoulders” (the over-shoulder girth is a measure now)": (
        {"asked": {"round-shoulders": "100", "stretch": "25"}}, {"stretch": "25"},
    ),
    "the machine “loom”": ({"machines": ["loom", "zigzag"], "asked": {"stretch": "25"}},
                           {"stretch": "25"}),
    "the format “clay”": ({"formats": ["clay"], "asked": {"stretch": "25"}}, {"stretch": "25"}),
    "the page “dance”": ({"page": "dance", "asked": {"stretch": "25"}}, {"stretch": "25"}),
}  # fmt: skip


@pytest.mark.parametrize("gone", GONE)
def test_a_choice_that_there_is_no_longer_is_named_and_the_rest_kept(gone: str) -> None:
    """One sentence, once; notes, ticks and the other choices stay."""
    place = begin(page="sew", notes="longer", ticked=("Cut",))
    fields, asked = GONE[gone]
    place.write_text(spoilt(**fields)(place.read_text("utf-8")), "utf-8")
    made, said = work.take_up(NAME)
    assert said == f"There is no longer {gone} that “jersey-top” asked for; all else is kept."
    assert dict(made.asked) == asked
    assert (made.notes, made.ticked) == ("longer", ("Cut",))
    assert work.take_up(NAME) == (made, "")


def test_the_last_good_state_of_a_spoilt_project_comes_back() -> None:
    """What stood before the last change, and the spoilt file beside it."""
    place = begin(notes="one")
    work.save(replace(MADE, notes="two", when="2026-11-01T11:00:00"))
    place.write_text("{", "utf-8")
    made, said = work.take_up(NAME)
    assert made.notes == "one"
    assert "its last good state is back" in said
    assert place.with_name(f"{place.name}.unusable").read_text("utf-8") == "{"


def test_what_an_older_version_kept_becomes_a_project(data_folder: Path) -> None:
    """Everything that was chosen, noted and ticked; the old file goes."""
    place = begin(page="sew", notes="longer", asked={"stretch": "25"})
    content = json.loads(place.read_text("utf-8"))
    place.unlink()
    old = data_folder / "work" / f"marta-lindqvist-{digest(NAME)}.json"
    old.parent.mkdir()
    for key in ("name", "owner", "cloth", "drafts"):
        del content[key]
    old.write_text(json.dumps({**content, "format": "tapewise work"}), "utf-8")
    made, said = work.take_up(NAME)
    assert said == ""
    assert (made.notes, dict(made.asked), made.page) == ("longer", {"stretch": "25"}, "sew")
    assert not old.exists()
    assert [one.title for one in work.projects(NAME)] == ["jersey-top"]


@pytest.mark.parametrize("why", ["there is no garment “tent”", "nested far too deeply"])
def test_the_person_of_an_unusable_work_file_is_opened(why: str) -> None:
    """The app opens the first page and says what was set aside."""
    place = begin(page="sew")
    place.write_text(SPOILT[why](place.read_text("utf-8")), "utf-8")

    async def steps(at: Walk) -> None:
        at.page.query_one(Rows).to(str(store.find(NAME).path))
        await at.press("enter")
        assert at.page.NAME == "measure"
        assert why in at.said

    walk(steps)


def test_a_second_unusable_file_does_not_replace_the_first() -> None:
    """Each is set aside under a name of its own."""
    place = begin()
    for text in ("one", "two"):
        place.write_text(text)
        work.take_up(NAME)
    asides = sorted(path.read_text() for path in place.parent.glob("*.unusable*"))
    assert asides == ["one", "two"]


def file_in_the_way(folder: Path) -> str:
    """Return the name of a folder that would have to lie in a file."""
    (folder / "taken").write_text("a file")
    return str(folder / "taken" / "top")


FOLDERS: dict[str, Callable[[Path], str]] = {
    "no home folder “~nobody-of-this-name”": lambda _: "~nobody-of-this-name/x",
    "not a name this system allows": lambda _: "x" * 300,
    "holds a sign": lambda _: "a\0b",
    "taken is a file; give": file_in_the_way,
    "is a file": lambda folder: str(Path(file_in_the_way(folder)).parent),
}


def test_a_folder_that_cannot_be_is_one_sentence(tmp_path: Path) -> None:
    """Write and open on the save page: what is wrong is said, and the page stays."""
    begin(page="save")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for says, typed in FOLDERS.items():
            at.page.query_one("#folder", Input).value = typed(tmp_path)
            await at.press("ctrl+o")
            assert at.said.startswith("! "), says
            await at.press("ctrl+s")
            await at.settle()
            assert says in at.said
            await at.press("f4", "f3")
            assert at.page.NAME == "save", says

    walk(steps)


def test_a_folder_one_may_not_look_into_is_one_sentence(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The system's refusal to tell whether the folder is there is no crash either."""
    begin(page="save")
    real = Path.exists

    def exists(self: Path, **more: bool) -> bool:
        if "locked" in self.parts:
            raise PermissionError(13, "Permission denied")
        return real(self, **more)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        at.page.query_one("#folder", Input).value = str(tmp_path / "locked" / "top")
        monkeypatch.setattr(Path, "exists", exists)
        await at.press("ctrl+s")
        await at.settle()
        assert "may not be written to" in at.said

    walk(steps)


def test_a_garment_without_options_to_show_has_no_groups_either() -> None:
    """Nothing measured: Find and Piece on the garment page do nothing."""
    store.save(Profile.of("Abel Finch"))
    work.save(work.Work("Abel Finch", page="garment", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter", "f5", "escape", "ctrl+g", "f5")
        assert at.page.NAME == "garment"

    walk(steps)


@pytest.mark.parametrize("name", ["~nobody-of-this-name", "/dev/null/x"])
def test_a_data_folder_that_cannot_be_is_said(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """The app opens, says what is wrong with the folder, and goes on saying it."""
    monkeypatch.setenv("TAPEWISE_DATA", name)

    async def steps(at: Walk) -> None:
        assert name in at.said
        await at.press("ctrl+n")
        await at.type("Ida", "f4")
        assert name in at.text()

    walk(steps)


@pytest.mark.trouble
@pytest.mark.parametrize("page", ["measure", "review"])
def test_a_garment_at_fault_leaves_the_measures_to_be_taken(
    monkeypatch: pytest.MonkeyPatch, page: str
) -> None:
    """What a garment makes use of cannot be told: all measures are gone through, and kept."""
    begin(page=page, measure="hip")

    def used(*_: object) -> tuple[str, ...]:
        raise RuntimeError("planted")

    monkeypatch.setattr(guesses, "used", used)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert page == at.page.NAME
        assert "Something went wrong" in at.text()
        at.app.open_person(store.load(NAME), "measure")
        await at.settle()
        assert "Hip" in at.text()
        await at.type("101", "enter")
        assert store.load(NAME).measures["hip"].readings[0] == 101

    walk(steps)
