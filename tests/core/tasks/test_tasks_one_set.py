"""A folder holds one draft: its fingerprint, what it replaces, what it leaves alone."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest
from making import DAY, person, top
from msgspec.structs import replace

from tapewise_core.drafting.labels import allowance_words
from tapewise_core.errors import ForeignFilesError
from tapewise_core.sewing.machines import Machine
from tapewise_core.tasks.asked_paper import Paper, Shown
from tapewise_core.tasks.contents import contents
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.files import save
from tapewise_core.units import Unit

MADE = top()
BOAT = top({"neckline": "boat"})


def tree(folder: Path) -> set[str]:
    """Return the files under a folder, with /."""
    return {p.relative_to(folder).as_posix() for p in folder.rglob("*") if p.is_file()}


def test_a_new_draft_takes_the_place_of_the_one_before(tmp_path: Path) -> None:
    """What the old one left and the new one does not write is gone, and is named."""
    save(MADE, tmp_path / "top", ("pdf-a4",))
    written = save(BOAT, tmp_path / "top", ("dxf",))
    assert {"pattern-a4.pdf", "pieces/neckband.svg"} <= set(written.removed)
    told = written.removed_words()
    assert "pattern-a4.pdf, " in told
    pictures = sum(name.startswith("steps/") for name in written.removed)
    assert pictures > 1
    assert told.endswith(f", {pictures} pictures in steps/.")
    assert ".svg" not in told.replace("pieces/neckband.svg", "")
    names = {name for name, _ in written.files}
    assert tree(tmp_path / "top") == names
    assert set(json.loads((tmp_path / "top" / "draft.json").read_text())["files"]) == names


def test_what_no_draft_wrote_is_never_touched(tmp_path: Path) -> None:
    """A person's own checklist stands in the way until she says that it may go."""
    place = tmp_path / "top"
    place.mkdir()
    (place / "checklist.md").write_text("mine")
    (place / "my own checklist.md").write_text("mine too")
    with pytest.raises(ForeignFilesError, match=r"holds “checklist\.md” already") as told:
        save(MADE, place)
    assert told.value.names == ("checklist.md",)
    assert tree(place) == {"checklist.md", "my own checklist.md"}
    save(MADE, place, replace=True)
    assert "mine" not in (place / "checklist.md").read_text()
    save(MADE, place)
    assert (place / "my own checklist.md").read_text() == "mine too"


@pytest.mark.parametrize("record", ["", "[]", '{"format": "shopping"}', '{"files": ["a.txt"]}'])
def test_a_file_that_is_no_record_owns_nothing(tmp_path: Path, record: str) -> None:
    """Another program's draft.json is somebody's file like any other."""
    (tmp_path / "draft.json").write_text(record)
    (tmp_path / "a.txt").write_text("mine")
    with pytest.raises(ForeignFilesError, match=r"draft\.json"):
        save(MADE, tmp_path)
    assert save(MADE, tmp_path, replace=True).removed == ()
    assert (tmp_path / "a.txt").exists()


def test_a_record_that_names_odd_files_harms_none(tmp_path: Path) -> None:
    """Names that lead out of the folder, or are no names, are passed over."""
    (tmp_path / "mine.txt").write_text("mine")
    save(MADE, tmp_path / "top")
    record = tmp_path / "top" / "draft.json"
    told = json.loads(record.read_text())
    record.write_text(json.dumps({**told, "files": [*told["files"], "../mine.txt", 7, None, ""]}))
    assert save(MADE, tmp_path / "top").removed == ()
    assert (tmp_path / "mine.txt").exists()


def others() -> dict[str, Drafted]:
    """Drafts that differ from the first in one thing that makes another garment of it."""
    return {
        "person": draft(person(name="Bea Test"), "jersey-top", {}, made=DAY),
        "measure": top(bust=92.5),
        "guess": draft(person({"bust": 92.0, "waist": 74.0, "hip": 99.0}), "jersey-top", {}),
        "option": BOAT,
        "cloth": top({"stretch": "55"}),
        "garment": draft(person(), "flared-dress", {}, made=DAY),
    }


def test_a_fingerprint_tells_drafts_apart() -> None:
    """Person, measures, options, cloth or garment: each gives another one."""
    prints = {name: made.fingerprint for name, made in others().items()}
    assert len({MADE.fingerprint, *prints.values()}) == 7
    assert all(re.fullmatch("[2-9A-HJKMNP-Z]{6}", one) for one in prints.values())


def test_the_same_draft_has_the_same_fingerprint() -> None:
    """Whatever the day, the unit it is read in, the machines, and measures it makes no use of."""
    later = replace(MADE, made=DAY.replace(year=2027))
    machines = frozenset({Machine.ZIGZAG})
    sewn = draft(person(), "jersey-top", {}, made=DAY, machines=machines)
    read = draft(person(), "jersey-top", {}, made=DAY, unit=Unit.IN)
    idle = top(waist_to_knee=61.0)
    for same in (later, sewn, read, idle):
        assert same.fingerprint == MADE.fingerprint


def test_every_sheet_says_the_fingerprint() -> None:
    """Labels, documents, record and HTML, in every file that is text."""
    files = contents(BOAT, ("html", "svg-projector", "dxf", "svg-cut"))
    for name, content in files.items():
        if not name.startswith("steps/"):
            assert BOAT.fingerprint in content.decode(), name
    assert json.loads(files["draft.json"])["fingerprint"] == BOAT.fingerprint
    assert "boat neck" in files["pattern.svg"].decode()


def test_sheets_without_allowances_are_another_set() -> None:
    """A sheet without lies beside none that has them, and the checklist says to add them."""
    files = contents(MADE, ("html",), Paper(shown=Shown(allowances=False)))
    own = json.loads(files["draft.json"])["fingerprint"]
    assert own != MADE.fingerprint
    for name, content in files.items():
        if not name.startswith("steps/"):
            assert own in content.decode(), name
            assert MADE.fingerprint not in content.decode(), name
    told = files["checklist.md"].decode()
    assert f"set {own}: without allowances, round neck" in told
    assert "Allowances are in the pattern" not in told
    assert "chalk them on the cloth round every piece" in told
    assert re.search(r"Neckband: neckline, join 0\.8 cm", told)


def test_the_checklist_puts_no_whole_piece_on_a_fold() -> None:
    """Opened out, a piece is cut from one layer; on a fold it would be cut twice over."""
    whole = contents(MADE, paper=Paper(shown=Shown(unfolded=True)))
    told = whole["checklist.md"].decode()
    assert "Front: cut 1, single, from one layer of cloth" in told
    assert "cut 1 on the fold" not in told
    assert "cut 1 on the fold, the straight edge" in contents(MADE)["checklist.md"].decode()


def test_the_checklist_tells_the_allowances_of_every_piece() -> None:
    """Also of edges that the first piece has not, such as a skirt's hem."""
    dress = draft(person(), "skirted-dress", {}, made=DAY)
    told = contents(dress)["checklist.md"].decode()
    line = next(line for line in told.splitlines() if "Allowances are in the pattern" in line)
    assert "Back, Front: neckline, shoulder" in line
    assert re.search(r"Skirt: .*hem 1\.5 cm\.$", line), line
    assert all(allowance_words(piece, Unit.CM) in line for piece in dress.pattern.pieces)
