"""The command line as people and machines use it."""

import contextlib
import io
import json
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from tapewise_tui.cli import main

FILES = {
    "pattern.svg", "instructions.md", "hand.md", "checklist.md", "draft.json", "lay-plan.svg",
}  # fmt: skip


@pytest.fixture(autouse=True)
def own_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Every test has a working folder and a data folder of its own."""
    monkeypatch.setenv("TAPEWISE_DATA", str(tmp_path / "data"))
    monkeypatch.chdir(tmp_path)
    return tmp_path


def write(path: Path, **measures: float) -> Path:
    """Write a profile file with some measures [cm]."""
    content = {
        "format": "tapewise profile",
        "version": 1,
        "name": "Ada Test",
        "measures": {key: {"value": value} for key, value in measures.items()},
    }
    path.write_text(json.dumps(content))
    return path


def run(*arguments: str) -> int:
    """Run one command; argparse leaves by SystemExit."""
    try:
        return main(arguments)
    except SystemExit as left:
        return int(left.code or 0)


@pytest.fixture(scope="module")
def demo(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, str]:
    """The folder that a first demo wrote, and what it said; for reading alone."""
    folder, said = tmp_path_factory.mktemp("demo"), io.StringIO()
    with pytest.MonkeyPatch.context() as patch, contextlib.redirect_stdout(said):
        patch.setenv("TAPEWISE_DATA", str(folder / "data"))
        patch.chdir(folder)
        assert run("demo") == 0
    return folder / "tapewise-demo", said.getvalue()


def test_demo_writes_every_file_and_names_what_was_estimated(demo: tuple[Path, str]) -> None:
    """It asks nothing, ends well and prints what it made."""
    made, said = demo
    assert {path.name for path in made.iterdir() if path.is_file()} >= FILES
    assert {path.stem for path in (made / "pieces").iterdir()} == {"back", "front", "neckband"}
    assert len(list((made / "steps").iterdir())) > 20
    assert "Estimated, not measured: armscye depth" in said
    assert "±" in said


def test_demo_may_be_made_again(own_folder: Path, demo: tuple[Path, str]) -> None:
    """A second run replaces its own files and leaves others alone."""
    shutil.copytree(demo[0], own_folder / "tapewise-demo")
    (own_folder / "tapewise-demo" / "mine.txt").write_text("keep")
    assert run("demo") == 0
    assert (own_folder / "tapewise-demo" / "mine.txt").read_text() == "keep"


def test_the_record_names_what_was_measured_and_what_was_not(demo: tuple[Path, str]) -> None:
    """draft.json carries origin and interval for each measure used."""
    folder, _ = demo
    record = json.loads((folder / "draft.json").read_text())
    assert record["format"] == "tapewise draft"
    assert record["measures"]["bust"]["origin"] == "measured"
    low, high = record["measures"]["armscye_depth"]["interval"]
    assert low < record["measures"]["armscye_depth"]["value"] < high
    written = {p.relative_to(folder).as_posix() for p in folder.rglob("*.*") if p.is_file()}
    assert set(record["files"]) == written


def test_draft_reads_a_profile_file_and_speaks_json(
    own_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """What a script needs: files, proofs and findings on stdout, nothing else."""
    file = write(own_folder / "ada.json", height=167, bust=92, waist=74, hip=99)
    assert run("draft", str(file), "jersey-top", "--out", "top", "--json") == 1
    told = json.loads(capsys.readouterr().out)
    assert told["holds"] is True
    assert told["verdict"]["helps_most"] in told["estimated"]
    assert "head" in told["estimated"]
    assert {row["name"] for row in told["files"]} >= FILES


def test_uncertain_proofs_are_exit_code_1_and_a_trial_garment_is_advised(
    own_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A name and no measures: all holds as estimated, and nothing is to be trusted yet."""
    file = write(own_folder / "ada.json")
    assert run("draft", str(file), "jersey-top", "--out", "t", "--no-pages") == 1
    told = capsys.readouterr().out
    assert "sew a trial garment from cheap cloth first." in told
    assert "bust as asked: " in told
    record = json.loads((own_folder / "t" / "draft.json").read_text())
    sure = {proof["id"]: proof["sure"] for proof in record["proofs"]}
    assert sure["bust as asked"] < 0.3
    assert sure["outline"] == 1
    assert record["verdict"]["sure"] == min(sure.values())
    assert "UNCERTAIN" in (own_folder / "t" / "checklist.md").read_text()


def test_bare_numbers_are_in_the_unit_asked_for(own_folder: Path) -> None:
    """A sleeve of 10 in inches is 25.4 cm in the record."""
    file = write(own_folder / "ada.json", bust=92, waist=74, hip=99)
    run("draft", str(file), "jersey-top", "--out", "t", "--unit", "in", "--set", "sleeve-length=10")
    record = json.loads((own_folder / "t" / "draft.json").read_text())
    assert record["options"]["sleeve-length"] == 25.4
    assert " in" in (own_folder / "t" / "instructions.md").read_text()


def test_a_failing_proof_is_exit_code_1_and_says_what_would_mend_it(
    own_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The files are there, the warning is loud."""
    file = write(own_folder / "ada.json", bust=92, waist=74, hip=99, head=57, neck=30)
    arguments = ("--set", "stretch=15", "--set", "neck-depth=6", "--set", "ease=4")
    assert run("draft", str(file), "jersey-top", "--out", "t", *arguments) == 1
    said = capsys.readouterr().out
    assert "head through the neck" in said
    assert "Widen or deepen the neckline" in said
    assert "With neck-half-width 10.9 cm in place of 7.5 cm it holds: The neck opening" in said
    assert (own_folder / "t" / "draft.json").exists()


def test_an_unlikely_value_is_exit_code_1_and_named(
    own_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Half a hip is drafted as asked, and said."""
    file = write(own_folder / "ada.json", height=167, bust=92, waist=74, hip=49.5)
    assert run("check", str(file), "--json") == 1
    told = json.loads(capsys.readouterr().out)
    assert any("hip" in finding["measures"] for finding in told["findings"])
    assert set(told) >= {"measures", "missing", "findings"}
    assert "neck" in told["missing"]
    assert told["measures"]["neck"]["origin"] == "estimated"


def test_a_child_is_checked_kindly_and_drafted_only_from_measures(
    own_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """No estimate, nothing unlikely, what to heed for children; a draft asks for the measures."""
    file = write(own_folder / "kit.json", height=112, bust=58, waist=54, hip=61)
    assert run("check", str(file), "--json") == 0
    told = json.loads(capsys.readouterr().out)
    assert set(told["measures"]) == {"height", "bust", "waist", "hip"}
    assert "child" in told["refused"]
    assert any("cord" in caution for caution in told["for_child"])
    assert run("draft", str(file), "jersey-top", "--out", "t") == 2
    said = capsys.readouterr().err
    assert "Still to measure: " in said
    assert "child" in said


@pytest.mark.parametrize(
    "arguments",
    [
        ("draft", "Nobody Known", "jersey-top", "--out", "t"),
        ("draft", "Marta Lindqvist", "ball-gown", "--out", "t"),
        ("draft", "Marta Lindqvist", "jersey-top"),
        ("draft", "Marta Lindqvist", "jersey-top", "--out", "t", "--set", "sleeve-length"),
        ("draft", "Marta Lindqvist", "jersey-top", "--out", "t", "--set", "nonsense=3"),
        ("draft", "Marta Lindqvist", "jersey-top", "--out", "t", "--set", "neck-depth=deep"),
        ("draft", "Marta Lindqvist", "jersey-top", "--out", "t", "--set", "neck-depth=99"),
        ("draft", "Marta Lindqvist", "jersey-top", "--out", "t", "--set", "body-length=26"),
        (
            "draft",
            "Marta Lindqvist",
            "jersey-top",
            "--out",
            "t",
            "--set",
            "ease=1",
            "--set",
            "ease=2",
        ),
        ("draft", "Marta Lindqvist", "jersey-top", "--out", "t", "--unit", "ell"),
        ("draft", "Marta Lindqvist", "jersey-top", "--out", "t", "--machines", "loom"),
        ("draft", "Marta Lindqvist", "jersey-top", "--out", "t", "--format", "parchment"),
        ("check", "missing.json"),
        ("garments", "ball-gown"),
        ("profiles", "delete", "Marta Lindqvist"),
        ("profiles", "show", "Nobody"),
        ("unpick",),
    ],
)
def test_wrong_input_is_one_sentence_and_nothing_is_written(
    arguments: tuple[str, ...], own_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Exit code 2, one line on stderr, no file."""
    assert run(*arguments) == 2
    told = capsys.readouterr()
    assert told.out == ""
    assert told.err.startswith("tapewise: ")
    assert told.err.count("\n") == 1
    assert not (own_folder / "t").exists()


def test_people_go_in_and_out_and_away(
    own_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A file copied in can be shown, copied out unchanged, and deleted."""
    file = write(own_folder / "ada.json", bust=92)
    assert run("profiles", "copy-in", str(file)) == 0
    assert run("profiles", "copy-in", str(file)) == 2
    assert run("profiles", "copy-in", str(file), "--replace") == 0
    assert run("profiles", "copy-out", "ada test", "out.json") == 0
    assert json.loads(Path("out.json").read_text())["measures"]["bust"]["value"] == 92
    capsys.readouterr()
    assert run("profiles", "list", "--json") == 0
    assert "Ada Test" in {row["name"] for row in json.loads(capsys.readouterr().out)}
    assert run("profiles", "delete", "Ada Test") == 2
    assert "--yes" in capsys.readouterr().err
    assert run("profiles", "delete", "Ada Test", "--yes") == 0
    assert run("profiles", "show", "Ada Test") == 2


def test_a_garment_names_its_sources(capsys: pytest.CaptureFixture[str]) -> None:
    """Books and surveys for a person to read, by key for a machine."""
    assert run("garments", "set-in-top", "--sources") == 0
    assert "Baldt, L. I. (1916): Clothing for Women" in capsys.readouterr().out
    assert run("garments", "set-in-top", "--sources", "--json") == 0
    rows = {row["key"]: row["says"] for row in json.loads(capsys.readouterr().out)}
    assert {"baldt", "conover", "ansur1"} <= set(rows)
    assert "A Complete Course in Dressmaking" in rows["conover"]
    assert run("garments", "--sources") == 2
    assert "needs a garment" in capsys.readouterr().err


def test_garments_are_listed_with_limits(capsys: pytest.CaptureFixture[str]) -> None:
    """A machine reads every option of the top with its limits."""
    assert run("garments", "jersey-top", "--json") == 0
    sheet = json.loads(capsys.readouterr().out)
    rows = {row["key"]: row for row in sheet["options"]}
    assert {
        "body-length", "sleeve-length", "ease", "neck-half-width", "neck-rise", "neck-depth",
        "front-hem-drop", "band-width", "band-ratio", "stretch",
        "seam-allowance", "hem-allowance",
    } <= set(rows)  # fmt: skip
    hem = rows["hem-allowance"]
    assert hem["low"] < hem["default"] < hem["high"]


@pytest.mark.parametrize(
    "command",
    ["demo", "draft", "check", "garments", "profiles", "measure", "serve", "profiles show"],
)
def test_every_command_has_help_with_an_example(
    command: str, capsys: pytest.CaptureFixture[str]
) -> None:
    """Help ends with a line that can be pasted."""
    assert run(*command.split(), "--help") == 0
    assert "Example: tapewise " in capsys.readouterr().out


def loaded_after(code: str) -> set[str]:
    """The modules a fresh interpreter has loaded after some code."""
    asked = f"{code}\nimport sys; print(' '.join(sys.modules))"
    done = subprocess.run([sys.executable, "-c", asked], capture_output=True, text=True, check=True)
    return set(done.stdout.splitlines()[-1].split())


def test_version_loads_next_to_nothing() -> None:
    """Neither argparse nor any library is imported to say the version."""
    loaded = loaded_after("from tapewise_tui.cli import main; main(['--version'])")
    assert not loaded & {"argparse", "pydantic", "textual", "shapely", "svgwrite", "json"}


def test_a_command_ends_without_looking_through_memory() -> None:
    """The system takes it back whole; inside another program nothing is set aside for ever."""
    asked = "import atexit, gc, sys; atexit.register(lambda: print(gc.get_freeze_count() > 0));"
    begun = f"{asked} from tapewise_tui.cli import main; sys.argv[1:] = ['--version'];"
    for code, frozen in (("main()", "True"), ("main(['--version'])", "False")):
        ran = [sys.executable, "-c", f"{begun} {code}"]
        done = subprocess.run(ran, capture_output=True, text=True, check=True)
        assert done.stdout.split()[-1] == frozen


def test_draft_never_loads_the_app(own_folder: Path) -> None:
    """The command line drafts without Textual and without numpy's slow parts."""
    loaded = loaded_after("from tapewise_tui.cli import main; main(['demo'])")
    assert not loaded & {"textual", "rich", "ezdxf", "scipy", "pydantic"}


def test_without_pages_no_pdf_library_is_loaded(own_folder: Path) -> None:
    """Whoever wants no pages does not wait for them."""
    made = "['draft', 'Marta Lindqvist', 'jersey-top', '--out', 't', '--no-pages']"
    loaded = loaded_after(f"from tapewise_tui.cli import main; main({made})")
    assert not loaded & {"textual", "rich", "reportlab", "scipy"}


@pytest.mark.parametrize(("arguments", "pages"), [
    ((), {"pattern-a4.pdf", "reading.pdf"}),
    (("--unit", "in"), {"pattern-letter.pdf", "reading.pdf"}),
    (("--format", "pdf-a3"), {"pattern-a3.pdf", "reading.pdf"}),
    (("--format", "pdf-a0"), {"pattern-a4.pdf", "pattern-a0.pdf", "reading.pdf"}),
    (("--page", "11x17 in"), {"pattern-page.pdf", "reading.pdf"}),
    (("--page", "600x900", "--no-pages"), {"pattern-page.pdf"}),
    (("--no-pages",), set()),
])  # fmt: skip
def test_pages_to_print_are_made_unasked(
    own_folder: Path, arguments: tuple[str, ...], pages: set[str]
) -> None:
    """On the paper that is at home where the reader's unit is used, or on the one asked for."""
    assert run("draft", "Marta Lindqvist", "jersey-top", "--out", "t", *arguments) == 0
    assert {path.name for path in (own_folder / "t").glob("*.pdf")} == pages


def test_what_is_written_is_told_as_what_to_do(
    demo: tuple[Path, str], capsys: pytest.CaptureFixture[str]
) -> None:
    """Print, read, keep, in this order; the demo too."""
    _, said = demo
    places = [said.index(words) for words in (
        "Print this:", "pattern-a4.pdf", "Read this:", "reading.pdf", "Keep this:", "draft.json",
    )]  # fmt: skip
    assert places == sorted(places)
    assert run("demo", "--json") == 0
    rows = {row["name"]: row["for"] for row in json.loads(capsys.readouterr().out)["files"]}
    assert (rows["pattern-a4.pdf"], rows["reading.pdf"], rows["draft.json"]) == (
        "print", "read", "keep",
    )  # fmt: skip


@pytest.mark.parametrize(("arguments", "says"), [
    (("--no-pages", "--overlap", "12"), "--overlap is for pdf-a4"),
    (("--roll-width", "914"), "--roll-width is for pdf-roll, which is not asked for"),
    (("--page", "A4"), "a width and a height"),
    (("--page", "3x4"), "no paper to print on; each side has 14 to 508 cm."),
    (("--format", "pdf-page"), "pdf-page needs the paper's size"),
    (("--piece", "hood"), "There is no piece “hood”"),
])  # fmt: skip
def test_a_wish_for_paper_that_cannot_be_is_refused(
    own_folder: Path, capsys: pytest.CaptureFixture[str], arguments: tuple[str, ...], says: str
) -> None:
    """Also one that nothing asked for makes use of; nothing is written."""
    assert run("draft", "Marta Lindqvist", "jersey-top", "--out", "t", *arguments) == 2
    assert says in capsys.readouterr().err
    assert not (own_folder / "t").exists()


def test_bare_numbers_of_paper_are_millimetres_or_inches(own_folder: Path) -> None:
    """12 is the usual overlap and 914 the usual roll, as the help says; 36 is one in inches."""

    def made(*arguments: str) -> bytes:
        band = ("draft", "Marta Lindqvist", "jersey-top", "--out", "t", "--piece", "neckband")
        assert (
            run(*band, "--no-pages", "--format", "pdf-a4", "--format", "pdf-roll", *arguments) == 0
        )
        return b"".join(
            (own_folder / "t" / f"pattern-{name}.pdf").read_bytes() for name in ("a4", "roll")
        )

    assert made() == made("--overlap", "12", "--roll-width", "914", "--page-margin", "10")
    assert made("--overlap", "5") != made("--overlap", "5 cm")
    assert made("--unit", "in", "--roll-width", "36") == made(
        "--unit", "in", "--roll-width", "914.4mm"
    )


def test_every_fault_of_a_file_is_named_on_one_line(
    own_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Nobody mends a file one fault at a time."""
    file = write(own_folder / "ada.json", bust=-3, hip=400)
    file.write_text(file.read_text().replace('"Ada Test"', '"", "nose": 1'))
    before = file.read_bytes()
    assert run("check", str(file)) == 2
    said = capsys.readouterr().err
    assert said.count("\n") == 1
    assert all(word in said for word in ("name", "nose", "measures.bust", "measures.hip"))
    assert file.read_bytes() == before


@pytest.mark.trouble
def test_a_fault_of_the_program_is_a_sentence_too(
    own_folder: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """No traceback reaches a person; it lies in a file for whoever mends it."""

    def broken(options: object) -> int:
        raise ZeroDivisionError("a fault put in by the test")

    monkeypatch.setattr("tapewise_tui.commands.run", broken)
    assert run("demo") == 3
    said = capsys.readouterr().err
    assert said.count("\n") == 1
    assert "Traceback" not in said
    assert "ZeroDivisionError" in (own_folder / "data" / "trouble.txt").read_text()


def test_readings_older_than_a_year_are_remarked_on(
    own_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Bodies change; whoever drafts from an old form is told so."""
    file = write(own_folder / "ada.json", bust=92)
    content = json.loads(file.read_text())
    content["measures"]["bust"]["taken"] = "2019-04-01"
    file.write_text(json.dumps(content))
    run("check", str(file))
    assert "oldest reading: 2019-04-01; measure again" in capsys.readouterr().out


def test_a_folder_holds_one_draft(own_folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """The second draft says what it took away; a person's own file is refused, then replaced."""
    whole = ("draft", "Marta Lindqvist", "jersey-top", "--out", "a", "--no-pages")
    assert run(*whole, "--format", "dxf") == 0
    capsys.readouterr()
    assert run(*whole, "--set", "neckline=boat") == 0
    said = capsys.readouterr().out
    assert "Removed, left by the draft before: " in said
    assert not (own_folder / "a" / "pattern.dxf").exists()
    (own_folder / "a" / "pattern.dxf").write_text("mine")
    assert run(*whole, "--format", "dxf") == 2
    assert "“pattern.dxf”" in capsys.readouterr().err
    assert (own_folder / "a" / "pattern.dxf").read_text() == "mine"
    assert run(*whole, "--format", "dxf", "--replace") == 0


@pytest.mark.parametrize("out", ["", "  "])
def test_a_place_to_write_has_a_name(
    own_folder: Path, capsys: pytest.CaptureFixture[str], out: str
) -> None:
    """An empty one would fill whatever folder one happens to be in."""
    for command in (("draft", "Marta Lindqvist", "jersey-top"), ("measure", "--print")):
        assert run(*command, "--out", out) == 2
        assert "nothing is named" in capsys.readouterr().err
    assert not [p for p in own_folder.iterdir() if p.name != "data"]


def test_a_measuring_sheet_replaces_no_file_of_ones_own(
    own_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The same sheet may be written twice; another file of that name stays."""
    (own_folder / "mine.md").write_text("mine")
    assert run("measure", "--print", "--out", "mine.md") == 2
    assert "“mine.md”" in capsys.readouterr().err
    assert (own_folder / "mine.md").read_text() == "mine"
    assert run("measure", "--print", "--out", "mine.md", "--replace") == 0
    assert run("measure", "--print", "--out", "mine.md") == 0


def test_a_format_that_fails_is_exit_code_1_and_named(
    own_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """What could be written is there; the sentence says which format is not, and why."""
    whole = ("draft", "Marta Lindqvist", "jersey-top", "--out", "a")
    roll = ("--format", "pdf-roll", "--roll-width", "300 mm", "--format", "dxf")
    assert run(*whole, *roll) == 1
    assert "Not written: pdf-roll. “" in capsys.readouterr().out
    assert (own_folder / "a" / "pattern.dxf").exists()
    assert not (own_folder / "a" / "pattern-roll.pdf").exists()


def test_the_paper_that_is_set_is_the_one_pages_are_made_for(own_folder: Path) -> None:
    """Whatever unit is read: the printer's paper is chosen once."""
    assert run("settings", "paper=letter") == 0
    assert run("draft", "Marta Lindqvist", "jersey-top", "--out", "t", "--unit", "cm") == 0
    assert (own_folder / "t" / "pattern-letter.pdf").exists()
    assert not (own_folder / "t" / "pattern-a4.pdf").exists()


def test_the_sheet_to_check_a_hand_draft_by_is_printed(
    own_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Without a folder nothing is written; with one the same sheet is in it, and in the record."""
    assert run("draft", "Marta Lindqvist", "jersey-top", "--hand") == 0
    sheet = capsys.readouterr().out
    assert "| length " in sheet
    assert "N straight to M" in sheet
    assert [path.name for path in own_folder.iterdir() if path.name != "data"] == []
    run("draft", "Marta Lindqvist", "jersey-top", "--hand", "--out", "t", "--no-pages")
    assert capsys.readouterr().out == sheet
    assert (own_folder / "t" / "hand.md").read_text() == sheet.rstrip("\n") + "\n"
    assert "hand.md" in json.loads((own_folder / "t" / "draft.json").read_text())["files"]


def test_a_sheet_to_write_in_is_no_record(capsys: pytest.CaptureFixture[str]) -> None:
    """Asked for both, it says that one of them is to be left out."""
    assert run("draft", "Marta Lindqvist", "jersey-top", "--hand", "--json") == 2
    assert "leave one out" in capsys.readouterr().err
