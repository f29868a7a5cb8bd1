"""A class comes in from one table and goes out into one."""

from __future__ import annotations

import csv
import json
import random
from pathlib import Path

import pytest

from tapewise_core.measures.catalogue import CATALOGUE
from tapewise_core.tasks.people import store
from tapewise_tui.cli import main


def run(*arguments: str) -> int:
    """Run one command; argparse leaves by SystemExit."""
    try:
        return main(("profiles", *arguments))
    except SystemExit as left:
        return int(left.code or 0)


def class_of(number: int, seed: int = 3) -> list[dict[str, str]]:
    """Rows of invented pupils, each measure near the middle of its limits."""
    chance = random.Random(seed)
    rows = []
    for pupil in range(number):
        row = {"name": f"Pupil {pupil:02}", "unit": chance.choice(("cm", "in"))}
        row |= {"reference": "women", "waist_site": "navel", "age": str(20 + pupil)}
        row["groups"] = "Tuesday; beginners" if pupil % 2 else ""
        for measure in CATALOGUE:
            middle = (measure.low + measure.high) / 2
            row[f"{measure.key} [cm]"] = f"{middle + chance.randrange(-9, 9) / 2:g}"
        rows.append(row)
    return rows


def written(path: Path, rows: list[dict[str, str]], delimiter: str = ",") -> Path:
    """Write rows as a table."""
    with path.open("w", newline="", encoding="utf-8") as file:
        table = csv.DictWriter(file, list(rows[0]), delimiter=delimiter)
        table.writeheader()
        table.writerows(rows)
    return path


def back(path: Path) -> dict[str, dict[str, str]]:
    """The rows of a table by name."""
    with path.open(newline="", encoding="utf-8-sig") as file:
        return {row["name"]: row for row in csv.DictReader(file)}


def test_a_class_of_thirty_comes_in_and_out_unchanged_three_faulty_rows_told(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Each fault by row and column, the good rows kept to the cell."""
    rows = class_of(30)
    good = {row["name"]: row for number, row in enumerate(rows) if number not in (4, 11, 20)}
    rows[4]["bust [cm]"] = "9x"
    rows[11]["name"] = ""
    rows[20]["hip [cm]"] = "=SUM(A1:A9)"
    rows[20]["reference"] = "cats"
    assert run("copy-in", str(written(tmp_path / "class.csv", rows))) == 1
    told = capsys.readouterr()
    assert told.out == "Saved 27 people.\n"
    assert "row 6, bust [cm]: Bust: “9x” is not a length" in told.err
    assert "row 13, name: is missing." in told.err
    assert "row 22, hip [cm]: Hip: “=SUM(A1:A9)” is not a length" in told.err
    assert "row 22, reference: “cats” must be" in told.err
    assert len(told.err.splitlines()) == 4
    assert run("copy-out", str(tmp_path / "out.csv")) == 0
    assert back(tmp_path / "out.csv") == good


def test_a_measure_may_be_called_as_the_trade_calls_it(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """In a heading and in what is set: a man's chest, a neck base; both names are one column."""
    table = tmp_path / "men.csv"
    table.write_text("name,chest [cm],Neck base [cm]\nJon,104,41\n", "utf-8")
    assert run("copy-in", str(table)) == 0
    assert run("set", "Jon", "Chest=105", "back waist length=46") == 0
    taken = {key: row.value for key, row in store.load("Jon").measures.items()}
    assert taken == {"bust": 105, "neck": 41, "back_waist_length": 46}
    table.write_text("name,chest [cm],bust [cm]\nIan,104,41\n", "utf-8")
    assert run("copy-in", str(table)) != 0
    assert "bust [cm]: this column stands twice" in capsys.readouterr().err


def test_what_came_out_may_come_in_again(tmp_path: Path) -> None:
    """Nothing is new in it, so nothing is to be replaced."""
    run("copy-in", str(written(tmp_path / "class.csv", class_of(3))))
    run("copy-out", str(tmp_path / "out.csv"))
    assert run("copy-in", str(tmp_path / "out.csv")) == 0
    assert len(store.states("Pupil 01")) == 1


def test_somebody_saved_is_changed_only_when_that_was_said(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """And what the table leaves open stays."""
    run("copy-in", str(written(tmp_path / "class.csv", class_of(2))))
    before = store.load("Pupil 00").values()
    changed = written(tmp_path / "two.csv", [{"name": "Pupil 00", "bust [cm]": "93.5"}])
    capsys.readouterr()
    assert run("copy-in", str(changed)) == 1
    assert "row 2, name: Pupil 00 is saved already" in capsys.readouterr().err
    small = written(tmp_path / "small.csv", [{"name": "pupil 00", "bust [cm]": "93.5"}])
    assert run("copy-in", str(small)) == 1
    assert "row 2, name: Pupil 00 is saved already" in capsys.readouterr().err
    assert run("copy-in", str(changed), "--replace") == 0
    after = store.load("Pupil 00").values()
    assert after["bust"].cm == 93.5
    assert {k: v for k, v in after.items() if k != "bust"} == {
        k: v for k, v in before.items() if k != "bust"
    }


def test_the_template_has_a_heading_for_every_measure(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """An empty class is no fault."""
    assert run("copy-in", "--template") == 0
    text = capsys.readouterr().out
    (head,) = csv.reader(text.splitlines())
    assert head[0] == "name"
    assert {f"{row.key} [cm]" for row in CATALOGUE} <= set(head)
    (tmp_path / "t.csv").write_text(text)
    assert run("copy-in", str(tmp_path / "t.csv")) == 0


TABLES = {
    "semicolons and decimal commas": "name;bust [cm];hip [cm]\nAda;92,5;98\n",
    "tabs": "name\tbust [cm]\thip [cm]\nAda\t92.5\t98\n",
    "quoted decimal commas": 'name,bust [cm],hip [cm]\nAda,"92,5",98\n',
    "inches": "name,bust [in],Hip (in)\nAda,36.42,38 1/2\n",
    "spaces and capitals": " Name , Bust [cm] ,HIP\n Ada , 92.5 , 98 cm \n\n , , \n",
    "ends of lines as on old machines": "name;bust [cm];hip [cm]\rAda;92,5;98\r",
    "a first line that says what is between": "sep=;\r\nname;bust [cm];hip [cm]\r\nAda;92,5;98\r\n",
    "a mark at its start": "\ufeffname,bust [cm],hip [cm]\r\nAda,92.5,98\r\n",
}


@pytest.mark.parametrize("kind", TABLES)
def test_tables_as_spreadsheets_write_them(tmp_path: Path, kind: str) -> None:
    """Whatever stands between the cells."""
    (tmp_path / "t.csv").write_text(TABLES[kind], "utf-8", newline="")
    assert run("copy-in", str(tmp_path / "t.csv")) == 0
    found = store.load("Ada").values()
    assert found["bust"].cm == pytest.approx(92.5, abs=0.1)
    assert found["hip"].cm == pytest.approx(98, abs=0.3)


FAULTY = {
    "row 1, bsut [cm]: is not a measure; did you mean bust": "name,bsut [cm]\nAda,9\n",
    "row 1, bust [ft]: give its lengths in [cm] or [in]": "name,bust [ft]\nAda,3\n",
    "row 1, hip [cm]: this column stands twice": "name,hip [cm],hip [cm]\nAda,98,99\n",
    "row 3, name: Ada stands in row 2 already": "name\nAda\nAda\n",
    "row 3, name: ada stands in row 2 already": "name\nAda\nada\n",
    "no measures: name, unit, reference, waist site, age, groups": "name,Gender\nAda,man\n",
    "row 2, the end: there are more cells than headings": "name\nAda,98\n",
    "row 2, name: must be one line": "name\n\"Ada\x1bB\"\n",
    "row 2, name: must be one line of plain": "name\nAda\0B\n",
    "row 2, bsut [cm]: is not a measure": "sep=,\nname,bsut [cm]\nAda,9\n",
    "row 4, hip [cm]: Hip: 0 cm": "sep=,\nname,hip [cm]\nBea,98\nAda,0\n",
    "row 2, age: must be more than 0": "name,age\nAda,200\n",
    "row 2, hip [cm]: Hip: 0 cm cannot be": "name,hip [cm]\nAda,0\n",
    "row 2, hip [cm]: Hip: “9": f"name,hip [cm]\nAda,{'9' * 400}\n",
}  # fmt: skip


@pytest.mark.parametrize("says", FAULTY)
def test_a_fault_is_told_by_row_and_column(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], says: str
) -> None:
    """In one line, and the command ends with 1."""
    (tmp_path / "t.csv").write_text(FAULTY[says], "utf-8")
    assert run("copy-in", str(tmp_path / "t.csv")) == 1
    assert says in capsys.readouterr().err
    assert run("copy-in", str(tmp_path / "t.csv"), "--json") == 1
    (fault,) = json.loads(capsys.readouterr().out)["faults"][:1]
    assert set(fault) == {"row", "column", "says"}


@pytest.mark.parametrize(
    ("content", "says"),
    [(b"", "no column"), (b"a,b\n1,2\n", "no column"), (b"name\n\xff\xfe\xfa", "UTF-8"),
     (b"x" * 1_000_001, "larger than 1 MB"), (b"name\n" + b"x" * 200_000, "cannot be read")],
)  # fmt: skip
def test_what_is_no_table_of_people_is_one_sentence(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], content: bytes, says: str
) -> None:
    """It names the file; nobody is saved."""
    (tmp_path / "t.csv").write_bytes(content)
    assert run("copy-in", str(tmp_path / "t.csv")) == 2
    err = capsys.readouterr().err
    assert says in err
    assert len(err.splitlines()) == 1


@pytest.mark.parametrize("name", ["=1+1", "+ada", "-ada", "@ada"])
def test_what_looks_like_a_formula_stays_text(tmp_path: Path, name: str) -> None:
    """In, and out with a mark that keeps a spreadsheet from working it out, and in again."""
    written(tmp_path / "t.csv", [{"name": name, "hip [cm]": "98"}])
    assert run("copy-in", str(tmp_path / "t.csv")) == 0
    assert store.load(name).name == name
    run("copy-out", str(tmp_path / "out.csv"))
    assert f"'{name}" in (tmp_path / "out.csv").read_text("utf-8-sig")
    assert run("copy-in", str(tmp_path / "out.csv")) == 0


def test_a_group_goes_out_by_itself(tmp_path: Path) -> None:
    """Everybody of it, and a file that is there is not replaced unasked."""
    run("copy-in", str(written(tmp_path / "class.csv", class_of(4))))
    assert run("copy-out", "--group", "Tuesday", str(tmp_path / "out.csv")) == 0
    assert set(back(tmp_path / "out.csv")) == {"Pupil 01", "Pupil 03"}
    assert run("copy-out", str(tmp_path / "out.csv")) == 2
    assert run("copy-out", "Pupil 00", str(tmp_path / "out.csv"), "--replace") == 0
    assert set(back(tmp_path / "out.csv")) == {"Pupil 00"}
    assert run("copy-out", "--group", "Friday", str(tmp_path / "f.csv")) == 2


def test_a_heading_without_a_unit_is_in_the_rows_own(tmp_path: Path) -> None:
    """A row in inches is read in inches; a heading that names a unit counts for every row."""
    text = "name,bust,unit,hip [cm]\nUma,38,in,100\nIda,96,cm,100\nZoe,96,,100\n"
    (tmp_path / "t.csv").write_text(text, "utf-8")
    assert run("copy-in", str(tmp_path / "t.csv")) == 0
    for name, bust in (("Uma", 96.52), ("Ida", 96.0), ("Zoe", 96.0)):
        measures = store.load(name).measures
        assert measures["bust"].value == pytest.approx(bust)
        assert measures["hip"].value == pytest.approx(100.0)
