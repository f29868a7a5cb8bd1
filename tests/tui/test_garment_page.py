"""Style, cloth and machines, with the pattern beside; proofs; files; the list to tick."""

from __future__ import annotations

from pathlib import Path

import pytest
from textual.events import Key, Paste
from textual.widgets import Input, TextArea
from walking import SMALL, Walk, walk

from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import wizard, work
from tapewise_core.tasks.people import person, store
from tapewise_core.tasks.settings import settings
from tapewise_core.units import Unit
from tapewise_tui.pages.garment import GarmentPage
from tapewise_tui.widgets.choices import Choices
from tapewise_tui.widgets.live import LivePattern
from tapewise_tui.widgets.rows import Rows
from tapewise_tui.widgets.ticks import TickList
from tapewise_tui.widgets_drawn import PatternView

NAME = "Marta Lindqvist"


def begin(page: str, unit: Unit = Unit.CM, **more: str) -> None:
    """Put an example person on file who stopped at a page, with options chosen."""
    store.save(person(NAME).with_unit(unit))
    made = work.Work(NAME, page=page, folder="top", when="2026-11-01T10:00:00")
    for key, text in more.items():
        made = made.with_option(key.replace("_", "-"), text)
    work.save(made)


def asked() -> dict[str, str]:
    """Return the options on file."""
    return dict(work.load(NAME).asked)


def value(at: Walk, key: str) -> str:
    """Return what an option's line shows, the cursor on it."""
    at.page.found(key)
    line = at.page.query_one(Choices).at
    assert line is not None
    assert line.key == key
    return line.value


async def entry(at: Walk, key: str, text: str) -> None:
    """Put the cursor on an option's line and paste a text over what stands in it."""
    value(at, key)
    lines = at.page.query_one(Choices)
    lines.typed = ""
    lines.post_message(Paste(text))
    await at.settle()


def lowest(at: Walk) -> float:
    """Return how far down the back reaches on the pattern shown [mm]."""
    back = next(p for p in at.page.query_one(PatternView).pieces if p.name == "back")
    return max(point.y for point in back.cut)


def test_the_pattern_is_drawn_afresh_while_an_option_is_typed() -> None:
    """The piece grows before Enter is pressed; only Enter keeps the option."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        before = lowest(at)
        await entry(at, "body-length", "70")
        await at.pilot.pause(0.1)
        await at.settle()
        assert lowest(at) == pytest.approx(before + 70, abs=1)
        assert asked() == {}
        await at.press("enter")
        assert asked() == {"body-length": "70 cm"}
        await at.press("ctrl+z")
        assert asked() == {}
        assert lowest(at) == pytest.approx(before, abs=1)

    walk(steps)


@pytest.mark.parametrize("away", ["backspace", "delete"])
def test_what_was_chosen_is_taken_away_by_either_key(away: str) -> None:
    """Backspace and Delete take a sign that is typed away, and a choice back to the usual."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        await entry(at, "body-length", "705")
        await at.press(away, "enter")
        assert asked() == {"body-length": "70 cm"}
        await at.press(away)
        assert asked() == {}

    walk(steps)


@pytest.mark.parametrize("way", ["home", "end", "pageup", "pagedown", "f5", "click"])
def test_every_way_to_another_line_keeps_what_is_typed_first(way: str) -> None:
    """It is kept for its own line, not for the one that the cursor goes to."""
    begin("garment")

    async def go(at: Walk) -> None:
        if way == "click":
            await at.pilot.click(Choices, offset=(5, 1))
            await at.settle()
            await at.press("escape")  # from the words of the line clicked
        else:
            await at.press(way)
        if way == "f5":
            await at.type("stretch", "enter")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        await entry(at, "body-length", "70")
        await go(at)
        choices = at.page.query_one(Choices)
        assert choices.at is not None
        assert choices.at.key != "body-length"
        assert asked() == {"body-length": "70 cm"}
        await entry(at, "body-length", "x7")
        await go(at)
        await at.press("escape", "enter")
        assert asked() == {"body-length": "70 cm"}

    walk(steps)


def test_an_option_means_the_same_in_both_units() -> None:
    """Typed in inches, kept with its unit, told in centimetres after the switch."""
    begin("garment", Unit.IN)

    async def steps(at: Walk) -> None:
        await at.press("enter")
        await entry(at, "body-length", "25")
        await at.press("enter")
        assert asked() == {"body-length": "63.5 cm"}
        await at.press("f2")
        assert value(at, "body-length") == "63.5 cm"

    walk(steps)


REFUSED = (
    ("body-length", "abc", "is not a length"),
    ("body-length", "900", "must be from"),
    ("body-length", "26", "too little"),
    ("neck-depth", "30", "too much"),
    ("ease", "x", "is not a length"),
    ("waist-shaping", "lots", "is not a number"),
    ("band-ratio", "2", "must be from"),
    ("stretch", "-1", "must be from"),
)


def test_a_wrong_option_is_refused_with_a_sentence() -> None:
    """It says what is wrong and the limits, keeps nothing, and shows what stands."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        before = {key: value(at, key) for key, _, _ in REFUSED}
        for key, typed, says in REFUSED:
            await entry(at, key, typed)
            await at.press("enter")
            assert says in at.said, (key, typed, at.said)
            assert key.replace("-", " ") in at.said
            assert asked() == {}
            await at.press("escape")
            assert value(at, key) == before[key]

    walk(steps)


def test_a_number_typed_after_a_refused_one_takes_its_place() -> None:
    """A digit begins anew, Backspace mends what was refused, and a unit is added to it."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        value(at, "sleeve-length")
        choices = at.page.query_one(Choices)
        for typed, left in (("2", "2"), ("backspace", "90"), ("m", "900m")):
            await at.type("900", "enter")
            assert "sleeve length" in at.said
            await at.press(typed)
            assert choices.typed == left
            await at.press("escape")

    walk(steps)


def test_a_line_is_found_and_typed_into_faster_than_anything_is_drawn() -> None:
    """F5, letters, Enter and a number, all at once: each key belongs to what the one before
    led to."""
    begin("garment", sleeve="long")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for key in ("f5", *"sleeve le", "enter", *"55"):
            at.app.post_message(Key(key, key if len(key) == 1 else None))
        await at.settle()
        choices = at.page.query_one(Choices)
        assert choices.at is not None
        assert (choices.at.key, choices.typed) == ("sleeve-length", "55")
        for key in ("enter", "f5", "escape", "f3"):
            at.app.post_message(Key(key, None))
        await at.settle()
        assert asked() == {"sleeve": "long", "sleeve-length": "55 cm"}
        assert at.page.NAME == "review"

    walk(steps)


def test_a_word_is_taken_with_the_arrows() -> None:
    """Right takes the next word and the pattern follows; left takes it back."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        value(at, "hem")
        await at.press("right")
        assert asked() == {"hem": "curved"}
        await at.press("left")
        assert asked() == {"hem": "straight"}
        await at.press("ctrl+z", "ctrl+z")
        assert asked() == {}
        assert "<straight>" in at.text()

    walk(steps)


def test_every_garment_has_its_page() -> None:
    """Each garment's options are under headings, and its pattern is drawn."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for page in wizard.garments():
            assert isinstance(at.page, GarmentPage)
            at.page.take("garment", page.title)
            await at.settle()
            await at.settle()
            assert work.load(NAME).garment == page.name
            assert at.page.query_one(PatternView).pieces
            assert "proof" in at.text()
        await at.press("ctrl+z")
        assert at.said == f"Taken back: {page.title}."

    walk(steps)


def test_an_emptied_field_goes_back_to_the_usual_value() -> None:
    """The option is no longer chosen, and its usual value is shown."""
    begin("garment", body_length="70 cm")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        await entry(at, "body-length", "")
        await at.press("enter")
        assert asked() == {}
        assert "as usual" in at.said
        assert value(at, "body-length") == "63 cm"

    walk(steps)


def test_the_fold_test_refuses_what_cannot_be() -> None:
    """A fold that got shorter, or nine times as long, was read wrongly."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        value(at, "fold")
        await at.press("enter")
        for typed, says in (("abc", "not a length"), ("5", "cannot be"), ("90", "cannot be")):
            at.app.screen.query_one(Input).value = typed
            await at.press("enter")
            assert says in at.text().replace("\n", " "), typed
        await at.press("escape")
        assert asked() == {}

    walk(steps)


def test_the_fold_test_works_out_the_stretch() -> None:
    """10 cm that reach 16 are a stretch of 60 %."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        value(at, "fold")
        await at.press("enter")
        await at.type("16")
        assert "60 %" in at.text()
        await at.press("enter")
        assert asked() == {"stretch": "60"}

    walk(steps)


def test_the_wash_test_works_out_both_shrinkages() -> None:
    """20 cm that are 18.4 along and 20.2 across after a wash: 8 % along, and none across. What
    cannot be left of the square is refused."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        value(at, "fold")
        await at.press("enter")
        await at.press("tab", "tab")
        await at.type("8")
        await at.press("enter")
        assert "8 cm cannot be" in at.text().replace("\n", " ")
        await at.press("backspace")
        await at.type("18.4")
        await at.press("tab")
        await at.type("20.2")
        await at.press("enter")
        assert asked() == {"shrinkage": "8", "shrinkage-across": "0"}

    walk(steps)


def test_machines_that_cannot_sew_are_refused() -> None:
    """A coverstitch alone joins nothing; with a zigzag machine it is kept."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        value(at, "machines")
        await at.press("enter", "space", "enter")
        assert "alone" in at.text()
        await at.press("tab", "space", "enter")
        assert "at least one is wanted" in at.text()
        await at.press("space", "tab", "space", "enter")
        assert set(work.load(NAME).machines) == {"coverstitch", "zigzag"}

    walk(steps)


def test_a_measure_that_lets_nothing_be_drafted_is_one_key_away() -> None:
    """Where the garment cannot be drafted, the key leads to the measures that look unlikely."""
    begin("garment")
    store.save(person(NAME).with_value("shoulder_length", 4.5))

    async def steps(at: Walk) -> None:
        await at.press("enter", "f8")
        assert "[3 Review]" in at.text()
        assert "shoulder length       4.5" in at.text()

    walk(steps)


def test_pieces_are_selected_by_key_with_their_seam_lengths() -> None:
    """Ctrl+G goes round the pieces; the one chosen stands in brackets with its lengths."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter", "ctrl+g", "ctrl+g")
        assert "[Front]" in at.text()
        assert "sleeve hem" in at.text()
        assert at.page.query_one(PatternView).selected == "front"

    walk(steps)


@pytest.mark.parametrize(("key", "at_line"), [("up", "fit"), ("s", "sleeve"), ("end", "all")])
def test_from_the_pattern_every_key_goes_back_to_the_choices(key: str, at_line: str) -> None:
    """Tab or a click gives the pattern the keyboard, for left and right alone; that is said."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        lines = at.page.query_one(Choices)
        await at.press("down", "down", "tab", "right")
        assert not lines.has_focus
        assert at.page.query_one(PatternView).selected == "back"
        assert "any other key goes back" in at.said
        await at.press(key)
        assert lines.has_focus
        assert lines.at is not None
        assert lines.at.key == at_line

    walk(steps)


def test_a_failing_proof_stands_on_top_and_its_change_is_one_key() -> None:
    """A neckline too small for the head on stiff cloth is mended and the mend undone."""
    begin("prove", stretch="10", neck_depth="6 cm")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        first = at.text().split("What it says")[1].splitlines()[1]
        assert "fails" in first
        offered = [p for p in at.page.proofs if p.mend and not p.holds]  # type: ignore[attr-defined]
        assert offered
        at.page.query_one(Rows).to(offered[0].name)
        await at.press("f6")
        assert "set" in at.said
        assert set(offered[0].settings) <= set(asked())
        await at.press("ctrl+z")
        assert asked() == {"stretch": "10", "neck-depth": "6 cm"}

    walk(steps)


def test_files_are_written_with_the_formats_ticked(tmp_path: Path) -> None:
    """A ticked format is among the files; sizes are told; the choice is kept."""
    begin("save")

    async def steps(at: Walk) -> None:
        await at.press("enter", "f5")
        await at.type("a4", "enter", "space", "ctrl+s")
        assert "pattern.svg" in at.text()
        assert "kB" in at.text()
        await at.press("f4")
        assert "What you need" in at.text()

    walk(steps)
    assert (tmp_path / "top" / "pattern-a4.pdf").read_bytes().startswith(b"%PDF")
    assert work.load(NAME).formats == ("pdf-a4",)


def test_a_folder_that_cannot_be_is_refused(tmp_path: Path) -> None:
    """An empty name, a file's name: one sentence, nothing written."""
    begin("save")
    (tmp_path / "taken").write_text("x")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for name, says in (("", "Name a folder"), ("taken", "is a file")):
            at.page.query_one("#folder", Input).value = name
            await at.press("enter")
            assert says in at.said
        await at.press("ctrl+o")
        assert "not there yet" in at.said

    walk(steps)
    assert not (tmp_path / "top").exists()


def test_ticks_and_notes_are_kept_between_runs() -> None:
    """A second run shows what the first ticked and wrote; undo opens a tick again."""
    begin("sew")

    async def first(at: Walk) -> None:
        await at.press("enter", "enter", "space")
        assert "2 of " in at.text()
        await at.press("ctrl+z")
        assert "1 of " in at.text()
        await at.press("tab")
        await at.type("longer next time")

    async def second(at: Walk) -> None:
        await at.press("enter")
        assert "1 of " in at.text()
        assert at.page.query_one(TextArea).text == "longer next time"

    walk(first, SMALL)
    walk(second, SMALL)


def test_what_changes_in_the_pattern_is_open_again() -> None:
    """A tick belongs to the sentence: a longer body needs other cloth."""
    begin("sew")

    async def steps(at: Walk) -> None:
        await at.press("enter", "enter")
        assert "1 of " in at.text()
        at.app.desk.change("longer", made=at.app.desk.work.with_option("body-length", "80 cm"))
        at.page.show()
        await at.settle()
        assert not any(item.ticked for item in at.page.query_one(TickList).items if item.key)

    walk(steps)


def test_a_garment_that_lacks_a_measure_says_which() -> None:
    """Somebody with no measure yet sees a sentence, not an empty page."""
    store.save(Profile.of("Abel Finch").with_value("height", 110))
    work.save(work.Work("Abel Finch", page="garment", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert "still to take" in at.text()
        for number in "567":
            await at.press("f9", number)
            assert "measure" in at.text().lower()

    walk(steps)


def test_what_is_missing_is_all_named_and_one_key_goes_there() -> None:
    """A girl of 128 cm: the page lists every measure the garment needs; F8 opens the first."""
    store.save(Profile.of("Mia Holt").with_value("height", 128).with_value("bust", 64))
    work.save(work.Work("Mia Holt", page="garment", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        shown = at.text()
        for name in ("head", "waist", "hip", "shoulder length", "upper arm", "armscye depth"):
            assert name in shown
        assert value(at, "fit") == "fitted"
        await at.press("right")
        assert work.load("Mia Holt").asked == {"fit": "straight"}
        assert "9 measures still to take" in at.text()
        await at.press("f8")
        assert (at.page.NAME, at.app.desk.work.measure) == ("measure", "head")

    walk(steps)


def test_what_does_nothing_in_a_style_is_not_shown() -> None:
    """The slit's length stands there only with a slit, first choices before all others."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        lines = at.page.query_one(Choices)
        few = [line.key for line in lines.lines]
        assert len(few) <= 15
        assert "split-length" not in few
        value(at, "hem")
        await at.press("left")
        assert value(at, "hem") == "split"
        await at.press("ctrl+l")
        every = [line.key for line in lines.lines]
        assert "split-length" in every
        assert "hem-rise" not in every
        assert len(every) > 40
        await at.press("ctrl+l")
        assert [line.key for line in lines.lines] == few

    walk(steps)


def test_the_list_ends_where_it_ends() -> None:
    """Down on the last line and Up on the first stay; a digit types into the line marked, a
    letter goes to a line, Up and Down keep what is typed, Escape does not."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        lines = at.page.query_one(Choices)
        await at.press("end", "down", "down")
        assert lines.has_focus
        assert lines.at == lines.lines[-1]
        await at.press("home", "up")
        assert lines.at == lines.lines[0]
        await at.press("b", "o")
        assert lines.at is not None
        assert lines.at.key == "body-length"
        await at.press("7", "1", "down")
        assert asked() == {"body-length": "71 cm"}
        assert lines.at is not None
        assert lines.at.key == "stretch"
        await at.press("4", "escape")
        assert asked() == {"body-length": "71 cm"}
        value(at, "body-length")
        await at.press("backspace")
        assert asked() == {}

    walk(steps)


def test_a_choice_that_is_refused_is_not_dropped_without_a_word() -> None:
    """The page is not left with it: the sentence stays, and Escape puts the choice back."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for key in ("f2", "f3", "f4"):
            value(at, "body-length")
            await at.type("9q", key)
            assert at.page.NAME == "garment"
            assert "is not a length" in at.said
            await at.press("escape")
        await at.press("f4")
        assert at.page.NAME == "prove"

    walk(steps)


def test_machines_are_asked_once(data_folder: Path) -> None:
    """The first garment page asks, arrows choose; the answer is usual from then on, asked once."""
    (data_folder / "settings.json").unlink()
    begin("garment")

    async def first(at: Walk) -> None:
        await at.press("enter")
        assert "Which machines do you have?" in at.text()
        assert "[x]" not in at.text()  # nobody said yet which there are
        for key in ("down", "down", "space", "enter"):  # in one burst
            at.app.post_message(Key(key, " " if key == "space" else None))
        await at.settle()
        assert "machines" in at.text()

    async def second(at: Walk) -> None:
        await at.press("enter")
        assert "Which machines do you have?" not in at.text()
        assert "zigzag" in at.text()

    walk(first)
    assert settings().machines == "zigzag"
    walk(second)


def test_words_are_listed_by_enter() -> None:
    """Enter on a line with words opens them, with what the option is; garments with a sentence."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        value(at, "neckline")
        await at.press("enter")
        assert "scoop" in at.text()
        await at.type("v", "enter")
        assert asked() == {"neckline": "v"}
        value(at, "garment")
        await at.press("enter")
        await at.type("circle skirt", "enter")
        assert "skirt" in work.load(NAME).garment

    walk(steps)


def test_a_mend_is_taken_beside_the_pattern(monkeypatch: pytest.MonkeyPatch) -> None:
    """F6 is offered only while a failing proof offers a change, and makes it."""
    monkeypatch.setattr(LivePattern, "REST", 0.0)
    begin("garment", stretch="10", neck_depth="6 cm")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert "F6 Take" in at.text()
        await at.press("f8")
        assert at.page.query_one(Choices).at is not None
        await at.press("f6", "f6", "f6")
        assert asked() != {"stretch": "10", "neck-depth": "6 cm"}
        assert "F6 Take" not in at.text()

    walk(steps)


def test_what_was_changed_stays_said_though_the_list_grows_by_it(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """A mend adds a line to the choices; that it was made, or taken back, is not talked over."""
    monkeypatch.setattr(LivePattern, "REST", 0.0)
    begin("garment", stretch="15")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        lines = at.page.query_one(Choices)
        before = len(lines.lines)
        at.page.found("stretch")
        await at.press("f6")
        assert len(lines.lines) == before + 1
        assert at.said.endswith("is kept.")
        await at.press("ctrl+z")
        assert len(lines.lines) == before
        assert at.said.startswith("Taken back")

    walk(steps)


def test_a_choice_is_found_by_each_of_its_words_and_first_by_its_own_name() -> None:
    """F5 and a word that an option may take leads to the option; a name begun goes before."""
    begin("garment", neckline="cowl")

    async def steps(at: Walk) -> None:
        for typed, key in (("boat", "neckline"), ("cowl d", "cowl-depth"), ("three-q", "sleeve")):
            await at.press("enter" if at.page.NAME == "start" else "home", "f5")
            await at.type(typed, "enter")
            line = at.page.query_one(Choices).at
            assert line is not None
            assert line.key == key

    walk(steps)


def test_what_was_said_of_a_wrong_value_goes_with_it() -> None:
    """Escape leaves the value as it was, and tells again what the line is about."""
    begin("garment")

    async def steps(at: Walk) -> None:
        await at.press("enter", "f5")
        await at.type("body length", "enter", "9", "x", "enter")
        assert at.said.startswith("!")
        await at.press("escape")
        assert at.said.startswith("Length from")

    walk(steps)


def test_what_was_typed_for_a_line_that_is_gone_is_not_kept() -> None:
    """Where the lines changed under what is typed, it belongs to none of them."""
    store.save(person("Marta Lindqvist"))
    work.save(work.Work("Marta Lindqvist", page="garment", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert isinstance(at.page, GarmentPage)
        assert at.page.take("all", "30987")
        assert not at.app.desk.work.asked

    walk(steps)
