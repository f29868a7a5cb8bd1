"""A garment for a whole class: a folder each, one summary, begun again after a break."""

from __future__ import annotations

import contextlib
import csv
import json
import os
import pickle
import signal
import stat
import subprocess
import sys
import time
from datetime import date
from pathlib import Path

import pytest
from making import MIDDLE

from tapewise_core.tasks import batch_row
from tapewise_core.tasks.batch import orders
from tapewise_core.tasks.batch_row import Order, drafted_row
from tapewise_core.tasks.class_table import read_table
from tapewise_core.tasks.people import person
from tapewise_tui.cli import main

HEAD = "name,reference,waist_site,height [cm],bust [cm],waist [cm],hip [cm]\n"


def table(folder: Path, number: int, more: str = "") -> Path:
    """A class of so many, and further rows as they stand."""
    rows = [f"Pupil {n},women,navel,{160 + n},{88 + n},{70 + n},{95 + n}\n" for n in range(number)]
    place = folder / "class.csv"
    place.write_text(HEAD + "".join(rows) + more, "utf-8")
    return place


def run(*arguments: object) -> int:
    """Run one batch; argparse leaves by SystemExit."""
    try:
        return main(("batch", *map(str, arguments)))
    except SystemExit as left:
        return int(left.code or 0)


def summary(out: Path) -> list[dict[str, str]]:
    """The rows of the summary."""
    with (out / "summary.csv").open(newline="", encoding="utf-8-sig") as file:
        return list(csv.DictReader(file))


def files(out: Path) -> dict[str, bytes]:
    """Every file in the folders of a batch."""
    return {str(p.relative_to(out)): p.read_bytes() for p in out.glob("*/**/*") if p.is_file()}


def test_everyone_has_a_folder_and_a_row(tmp_path: Path) -> None:
    """The pattern, its pieces, the checklist and the record, as a draft writes them."""
    assert run(table(tmp_path, 2), "jersey-top", "--out", "out", "--jobs", 2) == 0
    out = tmp_path / "out"
    assert {path.name for path in out.iterdir() if path.is_dir()} == {"pupil-0", "pupil-1"}
    rows = summary(out)
    assert [(row["row"], row["name"], row["result"]) for row in rows] == [
        ("2", "Pupil 0", "made"), ("3", "Pupil 1", "made"),
    ]  # fmt: skip
    record = json.loads((out / "pupil-1" / "draft.json").read_text())
    assert record["person"] == "Pupil 1"
    assert record["measures"]["bust"]["value"] == 89
    written = {name.removeprefix("pupil-1/") for name in files(out) if "pupil-1/" in name}
    assert set(record["files"]) == written >= {"pattern.svg", "pieces/back.svg", "checklist.md"}
    assert float(rows[1]["sure"]) == record["verdict"]["sure"] < 0.8
    told = (out / "teacher.md").read_text("utf-8")
    assert "0 of 2 are ready" in told
    assert "## Measure, or sew a trial garment first\n\n- **Pupil 0**: All" in told


def test_who_is_measured_is_ready(tmp_path: Path) -> None:
    """Nothing is left in doubt, so nothing is to be tried on first."""
    keys, values = zip(*MIDDLE.items(), strict=True)
    place = tmp_path / "class.csv"
    head = ",".join(("name", *(f"{key} [cm]" for key in keys)))
    place.write_text(f"{head}\nAda,{','.join(map(str, values))}\n", "utf-8")
    assert run(place, "jersey-top", "--out", tmp_path / "out", "--jobs", 1) == 0
    (row,) = summary(tmp_path / "out")
    assert (row["result"], row["sure"], row["says"]) == ("made", "1.0", "")
    told = (tmp_path / "out" / "teacher.md").read_text("utf-8")
    assert "1 of 1 are ready" in told
    assert "## Ready" in told


def test_a_row_that_fails_stops_no_other(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A faulty cell, a child to be measured, half a hip: each is told in the summary."""
    more = "Wrong,women,navel,160,9x,70,95\nSmall,women,navel,110,,,\n"
    more += "Half,women,navel,165,90,72,49\n"
    assert run(table(tmp_path, 1, more), "jersey-top", "--out", "out", "--jobs", 1) == 1
    rows = {row["name"] or row["row"]: row for row in summary(tmp_path / "out")}
    assert rows["Pupil 0"]["result"] == "made"
    assert rows["Wrong"]["result"] == "failed"
    assert rows["Wrong"]["sure"] == ""
    assert rows["Wrong"]["says"].startswith("bust [cm]: Bust: “9x”")
    assert rows["Small"]["result"] == "failed"
    assert rows["Small"]["says"].startswith("Still to measure")
    assert "hip" in rows["Half"]["unlikely"].lower()
    assert "row 3, Wrong: bust [cm]" in capsys.readouterr().err
    told = (tmp_path / "out" / "teacher.md").read_text("utf-8")
    assert told.index("## Not made") < told.index("**Small**") < told.index("## Measure")


def test_two_faults_in_a_row_are_one_row_of_the_summary(tmp_path: Path) -> None:
    """Both are told there, with the name; without a name by number."""
    more = "Wrong,cats,navel,160,9x,70,95\n,women,navel,160,90,70,95\n"
    assert run(table(tmp_path, 0, more), "jersey-top", "--out", "out", "--jobs", 1) == 1
    first, second = summary(tmp_path / "out")
    assert (first["row"], first["name"]) == ("2", "Wrong")
    assert "reference: “cats”" in first["says"]
    assert "bust [cm]: Bust: “9x”" in first["says"]
    assert (second["row"], second["name"], second["says"]) == ("3", "", "name: is missing.")


def test_a_bare_number_that_only_some_readers_mean_wrongly_is_the_row_s(tmp_path: Path) -> None:
    """25 is a sleeve in cm and none in inches: the one who reads cm has her top."""
    place = tmp_path / "class.csv"
    rows = "Ada,cm,women,navel,165,90,72,98\nBea,in,women,navel,165,90,72,98\n"
    place.write_text(HEAD.replace("name,", "name,unit,") + rows, "utf-8")
    arguments = ("jersey-top", "--out", "out", "--jobs", 1, "--set", "skirt-length=60")
    assert run(place, "circle-skirt", *arguments[1:]) == 1
    results = {row["name"]: row["result"] for row in summary(tmp_path / "out")}
    assert results["Ada"] != "failed"
    assert results["Bea"] == "failed"


def test_begun_again_only_the_rest_is_made(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """What is there stays untouched; whoever changed, and whatever is gone, is made anew."""
    place, out = table(tmp_path, 3), tmp_path / "out"
    run(place, "jersey-top", "--out", out, "--jobs", 1)
    before = {p: p.stat().st_mtime_ns for p in out.glob("*/draft.json")}
    (out / "pupil-2" / "draft.json").unlink()
    place.write_text(place.read_text().replace("161,89", "161,90"))
    capsys.readouterr()
    assert run(place, "jersey-top", "--out", out, "--jobs", 1, "--json") == 0
    told = json.loads(capsys.readouterr().out)
    assert told["skipped"] == 1
    after = {p: p.stat().st_mtime_ns for p in out.glob("*/draft.json")}
    assert {path.parent.name for path in before if before[path] == after[path]} == {"pupil-0"}
    assert len(summary(out)) == 3


def test_other_options_are_made_anew(tmp_path: Path) -> None:
    """The same people with another sleeve are other patterns."""
    place, out = table(tmp_path, 1), tmp_path / "out"
    run(place, "jersey-top", "--out", out, "--jobs", 1)
    first = (out / "pupil-0" / "draft.json").read_bytes()
    run(place, "jersey-top", "--out", out, "--jobs", 1, "--set", "sleeve-length=20")
    record = json.loads((out / "pupil-0" / "draft.json").read_text())
    assert record["options"]["sleeve-length"] == 20
    assert (out / "pupil-0" / "draft.json").read_bytes() != first


def test_two_names_of_one_slug_have_a_folder_each(tmp_path: Path) -> None:
    """Nobody's pattern is written over."""
    more = "Zoe,women,navel,165,90,72,98\nZoë,women,navel,170,99,80,104\n"
    assert run(table(tmp_path, 0, more), "jersey-top", "--out", "out", "--jobs", 2) == 0
    folders = {row["folder"] for row in summary(tmp_path / "out")}
    assert len(folders) == 2
    records = [json.loads(p.read_text()) for p in (tmp_path / "out").glob("*/draft.json")]
    assert {record["person"] for record in records} == {"Zoe", "Zoë"}


@pytest.mark.parametrize(
    ("arguments", "says"),
    [(("jersey-tpo",), "did you mean jersey-top?"),
     (("jersey-top", "--set", "sleev-length=3"), "did you mean sleeve-length"),
     (("jersey-top", "--format", "pdf-a5"), "did you mean pdf-a"),
     (("jersey-top", "--set", "sleeve-length=long"), "“long” is not a length"),
     (("jersey-top", "--set", "sleeve-length=900"), "must be from"),
     (("jersey-top", "--set", "neckline=squre"), "is one of"),
     (("jersey-top", "--set", "ease=2", "--set", "ease=3"), "twice"),
     (("jersey-top", "--overlap", "20"), "add --format pdf"),
     (("jersey-top", "--format", "pdf-a4", "--overlap", "wide"), "“wide” is not a length"),
     (("jersey-top", "--jobs", "0"), "--jobs is a number from 1"),
     (("jersey-top", "--jobs", "x"), "--jobs: “x” is no whole number"),
     (("jersey-top", "--machines", "loom"), "loom")],
)  # fmt: skip
def test_what_nobody_could_have_is_said_at_once(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], arguments: tuple[str, ...], says: str
) -> None:
    """One sentence, exit 2, nothing written."""
    place = table(tmp_path, 1)
    assert run(place, *arguments, "--out", "out") == 2
    err = capsys.readouterr().err
    assert says in err
    assert len(err.splitlines()) == 1
    assert not (tmp_path / "out").exists()


@pytest.mark.trouble
def test_a_fault_of_the_program_is_one_row_s_and_written_down(
    tmp_path: Path, data_folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The others are made; the place of the fault is in the notes."""
    real = batch_row._drafted

    def faulty(order: Order, profile: object) -> object:
        if order.row == 3:
            raise ZeroDivisionError("planted")
        return real(order, profile)  # type: ignore[arg-type]

    monkeypatch.setattr(batch_row, "_drafted", faulty)
    assert run(table(tmp_path, 3), "jersey-top", "--out", "out", "--jobs", 1) == 1
    results = [row["result"] for row in summary(tmp_path / "out")]
    assert results == ["made", "failed", "made"]
    assert "in faulty" in (data_folder / "trouble.txt").read_text("utf-8")


@pytest.mark.skipif(os.name != "posix", reason="a process ends itself as POSIX does it")
def test_a_row_that_takes_its_process_down_is_one_row(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The others are made in another."""
    real = batch_row._drafted

    def deadly(order: Order, profile: object) -> object:
        if order.row == 3:
            os.kill(os.getpid(), signal.SIGKILL)
        return real(order, profile)  # type: ignore[arg-type]

    monkeypatch.setattr(batch_row, "_drafted", deadly)
    assert run(table(tmp_path, 4), "jersey-top", "--out", "out", "--jobs", 2) == 1
    results = {row["row"]: row["result"] for row in summary(tmp_path / "out")}
    assert results == {"2": "made", "3": "failed", "4": "made", "5": "made"}


@pytest.mark.skipif(os.name != "posix", reason="a program is killed as POSIX does it")
def test_a_killed_batch_is_gone_on_with(tmp_path: Path) -> None:
    """Half a class is there; the rest is made, and the results are those of one whole run."""
    place, out = table(tmp_path, 5), tmp_path / "out"
    command = [sys.executable, "-m", "tapewise_tui", "batch", str(place), "jersey-top"]
    first = subprocess.Popen([*command, "--out", str(out), "--jobs", "1"])
    while not (out / "batch.jsonl").exists():
        assert first.poll() is None
        time.sleep(0.02)
    first.send_signal(signal.SIGKILL)
    first.wait()
    assert run(place, "jersey-top", "--out", out, "--jobs", 1) == 0
    run(place, "jersey-top", "--out", tmp_path / "whole", "--jobs", 1)
    assert files(out) == files(tmp_path / "whole")
    assert summary(out) == summary(tmp_path / "whole")


@pytest.mark.skipif(os.name != "posix", reason="a program is killed as POSIX does it")
def test_the_processes_of_a_killed_batch_end_with_it(tmp_path: Path) -> None:
    """None waits for rows for ever: what all of them write into is closed soon."""
    command = [sys.executable, "-m", "tapewise_tui", "batch", str(table(tmp_path, 40))]
    more = ["jersey-top", "--out", str(tmp_path / "out"), "--jobs", "2"]
    first = subprocess.Popen([*command, *more], stdout=subprocess.PIPE, start_new_session=True)
    try:
        while not (tmp_path / "out" / "batch.jsonl").exists():
            assert first.poll() is None
            time.sleep(0.02)
        first.send_signal(signal.SIGKILL)
        first.communicate(timeout=20)
    finally:
        with contextlib.suppress(ProcessLookupError):
            os.killpg(first.pid, signal.SIGKILL)


def test_the_row_is_plain_values_in_and_out(tmp_path: Path) -> None:
    """It can be sent elsewhere, and gives the same twice."""
    order = Order(2, "x", person("Marta Lindqvist").text(), "jersey-top", date(2026, 11, 2))
    again = pickle.loads(pickle.dumps(order))
    first, second = drafted_row(order), pickle.loads(pickle.dumps(drafted_row(again)))
    assert first == second
    assert first[0].result == "made"


def test_steps_and_formats_are_written_when_asked_for(tmp_path: Path) -> None:
    """How to draft it by hand, and the pages to read."""
    arguments = ("--steps", "--format", "html", "--jobs", 1)
    assert run(table(tmp_path, 1), "circle-skirt", "--out", "out", *arguments) == 0
    folder = tmp_path / "out" / "pupil-0"
    assert (folder / "instructions.md").exists()
    assert (folder / "pattern.html").exists()
    assert list((folder / "steps").iterdir())


def test_what_an_earlier_run_left_of_a_person_goes(tmp_path: Path) -> None:
    """Steps that were written once and are no longer asked for; files of others stay."""
    place, out = table(tmp_path, 1), tmp_path / "out"
    run(place, "circle-skirt", "--out", out, "--jobs", 1, "--steps")
    (out / "pupil-0" / "mine.txt").write_text("keep")
    run(place, "circle-skirt", "--out", out, "--jobs", 1)
    assert not (out / "pupil-0" / "steps").exists()
    assert (out / "pupil-0" / "mine.txt").exists()


@pytest.mark.skipif(os.name != "posix", reason="permissions as POSIX has them")
def test_a_batch_is_for_its_owner_alone(tmp_path: Path) -> None:
    """Everything in it says how people are built."""
    run(table(tmp_path, 1), "circle-skirt", "--out", "out", "--jobs", 1)
    assert not stat.S_IMODE((tmp_path / "out").stat().st_mode) & 0o077


def test_a_local_cluster_gives_what_the_processes_give(tmp_path: Path) -> None:
    """File for file, row for row."""
    distributed = pytest.importorskip("distributed", reason="the extra “cluster” is not installed")
    place = table(tmp_path, 2, "Small,women,navel,110,,,\n")
    with distributed.LocalCluster(
        n_workers=1, threads_per_worker=1, dashboard_address=None
    ) as cluster:
        run(place, "jersey-top", "--out", "far", "--cluster", cluster.scheduler_address)
    run(place, "jersey-top", "--out", "near", "--jobs", 1)
    assert files(tmp_path / "far") == files(tmp_path / "near")
    assert summary(tmp_path / "far") == summary(tmp_path / "near")


def test_every_row_is_ordered_in_its_place(tmp_path: Path) -> None:
    """Row numbers are those a spreadsheet shows, empty rows counted."""
    place = table(tmp_path, 1, ",,,,,,\nZoe,women,navel,165,90,72,98\n")
    usual = Order(0, "", "", "jersey-top", date(2026, 11, 2))
    assert [order.row for order in orders(read_table(place), usual)] == [2, 4]


def test_what_is_not_ready_to_cut_is_to_be_looked_at(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Made or not: as many as the teacher's page leaves out of those that are ready."""
    odd = "Odd,women,navel,165,90,72,150\n"
    run(table(tmp_path, 1, odd), "jersey-top", "--out", "out", "--jobs", 1)
    look = int(capsys.readouterr().out.split(" drafted, ")[1].split(" to look at")[0])
    ready = int((tmp_path / "out" / "teacher.md").read_text("utf-8").split("\n\n")[1].split()[0])
    rows = summary(tmp_path / "out")
    assert look == len(rows) - ready
    assert look > sum(row["result"] == "failed" for row in rows)
