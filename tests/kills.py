"""A writer killed at random moments of all it does with people, projects and settings.

By hand: ``python tests/kills.py [NUMBER] [SEED]``. After each kill the next start must find the
person, alive or deleted, in one whole state, every other file readable, and nothing lying about.
"""

from __future__ import annotations

import itertools
import os
import random
import re
import signal
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

from msgspec.structs import replace

from tapewise_core.profiles import store
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import damaged, settings, work

NAMES = ("Ada Byron", "Ada King")
KEYS = ("hip", "neck", "waist")

_OURS = re.compile(
    r"lock|index\.json|settings\.json(\.before)?|people/ada-(byron|king)\.json"
    r"|history/[a-z0-9]+\.jsonl|projects/index\.json|projects/[a-z0-9]+/summer\.json(\.before)?"
    r"|deleted/.*(people|history|projects)/[^.][^/]*(/[^.][^/]*)?"
)
"""Every file there may be once all is well."""


def begin() -> None:
    """Put somebody on file."""
    made = Profile.of(NAMES[0])
    for key in KEYS:
        made = made.with_value(key, 50.0)
    store.save(made)


def work_on(chance: random.Random) -> None:
    """Change whatever can be changed, for ever."""
    acts: tuple[Callable[[random.Random], None], ...] = (
        _measures, _measures, _measures, _rename, _project, _project, _settings, _delete,
        _delete_project,
    )  # fmt: skip
    while True:
        chance.choice(acts)(chance)


def _person() -> Profile:
    if store.gone():
        store.restore(store.gone()[0].name)
    found = next(entry.profile for entry in store.listing() if not entry.shipped)
    assert found is not None
    return found


def _measures(chance: random.Random) -> None:
    """All three alike: a mixture of two states would show."""
    base = mine = _person()
    cm = float(chance.randrange(20, 200))
    for key in KEYS:
        mine = mine.with_value(key, cm)
    store.keep(mine, base)


def _rename(chance: random.Random) -> None:
    base = _person()
    store.keep(base.with_name(chance.choice(NAMES)), base)


def _project(chance: random.Random) -> None:
    person = _person()
    made = work.Work(person.name, name="summer", owner=person.id, notes=str(chance.random()) * 50)
    work.save(made)


def _settings(chance: random.Random) -> None:
    settings.keep(replace(settings.settings(), unit=chance.choice(("cm", "in"))))


def _delete(chance: random.Random) -> None:
    store.delete(_person().name)


def _delete_project(chance: random.Random) -> None:
    there = work.projects(_person().name)
    if there:
        work.delete(there[0])
        if chance.random() < 0.5:
            work.bring_back(work.gone()[0])


def killed(seed: int, after: float) -> list[str]:
    """Let a process work on and kill it after so many seconds; return what was wrong with it."""
    child = os.fork()
    if child == 0:
        try:
            work_on(random.Random(seed))
        except BaseException:  # wherever it is, the process must be no more after it
            os._exit(3)
    time.sleep(after)
    os.kill(child, signal.SIGKILL)
    _, status = os.waitpid(child, 0)
    return [] if os.WIFSIGNALED(status) else ["the writer ended by itself"]


def faults(data: Path) -> list[str]:
    """What is wrong after a kill and the next start."""
    store.tidy()
    own = [entry for entry in store.listing() if not entry.shipped]
    wrong = [f"nobody, or two: {own}"] if len(own) + bool(store.gone()) < 1 or len(own) > 1 else []
    profiles = [entry.profile for entry in own]
    for profile in filter(None, profiles):
        values = {row.value for row in profile.measures.values()}
        wrong += [f"a mixture: {values}"] if len(values) != 1 else []
        for state in store.states(profile.name):
            mixed = len({row.value for row in state.profile.measures.values()}) != 1
            wrong += ["a mixture in the history"] if mixed else []
    wrong += damaged.met()
    names = (str(path.relative_to(data)) for path in data.rglob("*") if path.is_file())
    return wrong + [f"a stray: {name}" for name in names if not _OURS.fullmatch(name)]


def run(data: Path, number: int, seed: int, longest: float = 0.2) -> list[str]:
    """Kill so many times; return everything that was wrong, none if all is well."""
    chance = random.Random(seed)
    begin()
    wrong = []
    for one in range(number):
        told = killed(seed * 1_000_003 + one, chance.uniform(0.0, longest))
        wrong += [f"kill {one}: {fault}" for fault in (*told, *faults(data))]
    return wrong


def main(number: int, seed: int) -> int:
    """Kill by hand, in a folder of its own."""
    with tempfile.TemporaryDirectory() as folder:
        os.environ[store.DATA_VARIABLE] = folder
        wrong = run(Path(folder), number, seed)
        states = sum(1 for path in Path(folder).rglob("*.jsonl") for _ in path.open())
        print("\n".join(wrong) or f"{number} kills, {states} states kept, nothing lost or left.")
    return 1 if wrong else 0


if __name__ == "__main__":
    asked = [int(word) for word in itertools.islice(sys.argv[1:], 2)]
    sys.exit(main(*(asked + [500, 7][len(asked) :])))
