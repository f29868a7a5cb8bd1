"""Several writers of one person, and one who is stopped at any moment: nothing is lost."""

from __future__ import annotations

import os
import random
import signal
import subprocess
import sys
import time
from pathlib import Path

import kills
import pytest

from tapewise_core.errors import FilesError
from tapewise_core.profiles import store
from tapewise_core.profiles.profile import Profile

ROUNDS = 25
KEYS = ("hip", "neck", "waist")


@pytest.fixture(autouse=True)
def data(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A data folder of the test's own, that other programs started here use too."""
    monkeypatch.setenv(store.DATA_VARIABLE, str(tmp_path / "data"))
    return tmp_path / "data"


def ada() -> Profile:
    """Put somebody on file with three measures."""
    made = Profile.of("Ada Byron")
    for key in KEYS:
        made = made.with_value(key, 50.0)
    store.save(made)
    return made


def started(code: str, *arguments: object, stdin: int | None = None) -> subprocess.Popen[str]:
    """Start a program that knows ``store`` and ``Profile``; it may be spoken to."""
    head = "import sys\nfrom tapewise_core.profiles import store\n"
    head += "from tapewise_core.profiles.profile import Profile\n"
    command = [sys.executable, "-c", head + code, *map(str, arguments)]
    pipe = subprocess.PIPE
    return subprocess.Popen(command, stdin=stdin, stdout=pipe, stderr=pipe, text=True)


WRITER = """
key, rounds = sys.argv[1], int(sys.argv[2])
base = store.load("Ada Byron")
print("ready", flush=True)
for number in range(rounds):
    mine = base.with_value(key, 60 + number)
    base = store.keep(mine, base).profile
    assert base.measures[key].value == 60 + number
"""


def test_three_writers_of_one_person_lose_nothing() -> None:
    """Each has read her once and changes its own measure; every change of each is on file."""
    ada()
    writers = [started(WRITER, key, ROUNDS) for key in KEYS]
    faults = [writer.communicate(timeout=120)[1] for writer in writers]
    assert faults == ["", "", ""]
    found = store.load("Ada Byron").values()
    assert {key: found[key].cm for key in KEYS} == dict.fromkeys(KEYS, 59.0 + ROUNDS)


NEWCOMER = """
print("ready", flush=True)
sys.stdin.readline()
store.save(Profile.of(sys.argv[1]))
"""


def test_two_new_people_of_one_slug_saved_at_once_are_both_kept() -> None:
    """Names that differ in marks alone get a file each, however close together they come."""
    for number in range(3):
        names = (f"Zoe {number}", f"Zoë {number}")
        both = [started(NEWCOMER, name, stdin=subprocess.PIPE) for name in names]
        for one in both:
            assert one.stdout is not None
            one.stdout.readline()
        for one in both:
            one.communicate("go\n", timeout=60)
        assert {store.load(name).name for name in names} == set(names)


def test_a_measure_changed_in_two_windows_is_asked_about() -> None:
    """What is on file stays, both values are told, and neither is lost."""
    base = ada()
    store.keep(base.with_value("hip", 98.0), base)
    kept = store.keep(base.with_value("hip", 99.0).with_value("neck", 36.0), base)
    (clash,) = kept.clashes
    assert clash.key == "hip"
    assert clash.mine is not None
    assert clash.theirs is not None
    assert (clash.mine.value, clash.theirs.value) == (99.0, 98.0)
    assert kept.profile.measures["hip"].value == 98.0
    assert kept.profile.measures["neck"].value == 36.0
    assert {state.profile.measures["hip"].value for state in store.states("Ada Byron")} >= {98, 99}
    again = store.keep(kept.profile.with_value("hip", 99.0), kept.profile)
    assert (again.clashes, again.profile.measures["hip"].value) == ((), 99.0)


def test_both_making_the_same_change_is_no_question() -> None:
    """Nor is a measure taken off in both."""
    base = ada()
    for change in (base.with_value("hip", 98.0), base.without("neck")):
        store.keep(change, base)
        assert store.keep(change, base).clashes == ()


def test_groups_of_two_windows_come_together() -> None:
    """What one adds and the other takes away."""
    base = store.keep(Profile.of("Ada").having(groups=("Monday",)), None).profile
    store.keep(base.having(groups=("Monday", "Tuesday")), base)
    kept = store.keep(base.having(groups=("Friday",)), base)
    assert kept.profile.groups == ("Tuesday", "Friday")


def test_whoever_was_deleted_elsewhere_does_not_come_back(data: Path) -> None:
    """The other window is told; nothing is written."""
    base = ada()
    store.delete("Ada Byron")
    with pytest.raises(FilesError, match="no longer on file"):
        store.keep(base.with_value("hip", 98.0), base)
    assert not list((data / "people").glob("*.json"))


def test_a_rename_and_a_measure_from_two_windows_are_one_person(data: Path) -> None:
    """Found by the id inside, not by the name."""
    base = ada()
    store.keep(base.with_name("Ada King"), base)
    kept = store.keep(base.with_value("hip", 98.0), base)
    assert kept.profile.name == "Ada King"
    assert [path.name for path in (data / "people").glob("*.json")] == ["ada-king.json"]


KILLED = """
base = store.load("Ada Byron")
print("ready", flush=True)
number = 60.0
while True:
    number += 0.5
    mine = base.with_name("Ada King" if base.name == "Ada Byron" and number % 2 else base.name)
    for key in ("hip", "neck", "waist"):
        mine = mine.with_value(key, number % 200 + 1)
    base = store.keep(mine.with_name("Ada Byron"), base).profile
"""

KILLS = int(os.environ.get("KILLS", "15"))


@pytest.mark.skipif(os.name != "posix", reason="a program is killed as POSIX does it")
def test_a_writer_killed_at_any_moment_leaves_one_whole_state_and_no_stray(data: Path) -> None:
    """The measures of a state belong together; after the next start nothing else lies about."""
    chance = random.Random(7)
    ada()
    for _ in range(KILLS):
        writer = started(KILLED)
        assert writer.stdout is not None
        writer.stdout.readline()
        time.sleep(chance.uniform(0.0, 0.06))
        writer.send_signal(signal.SIGKILL)
        writer.communicate()
        store.tidy()
        (state,) = (entry for entry in store.listing() if not entry.shipped)
        assert state.profile is not None
        assert len({row.value for row in state.profile.measures.values()}) == 1
        names = {path.name for path in data.rglob("*") if path.is_file()}
        assert names <= {"ada-byron.json", "lock", f"{state.known.id}.jsonl"}


@pytest.mark.skipif(os.name != "posix", reason="a program is killed as POSIX does it")
def test_all_that_is_kept_survives_a_kill_at_any_moment(data: Path) -> None:
    """People, their states, projects, settings, deletions; ``tests/kills.py`` kills more often."""
    assert kills.run(data, 12, seed=11) == []
