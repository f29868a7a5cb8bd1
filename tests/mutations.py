"""Change one thing in the code at a time, run the tests that belong to it, and list what survives.

Run by hand::

    python tests/mutations.py                 # proofs/, geometry/, units.py and text/typed.py
    python tests/mutations.py geometry/arc.py --jobs 4

Every change is made in the memory of a forked process of its own, so nothing in the checkout is
ever altered, whatever stops the run. A file is tested by its own examples, by the tests named
after it and those of its folder's mirror that import it (by all of either where none does) and by
the published checks that do, those of paper apart. What survives and is not listed with a reason
in ``mutations_accepted.toml`` makes the exit code 1.
"""

from __future__ import annotations

import argparse
import importlib
import importlib.abc
import importlib.machinery
import importlib.util
import os
import signal
import sys
import time
import tomllib
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from types import CodeType

from changing import Change, changed, changes_of

HOUSE = Path(__file__).resolve().parents[1]
CODE = HOUSE / "core" / "tapewise_core"
USUAL = ("proofs", "geometry", "units.py", "text/typed.py")
ACCEPTED = Path(__file__).with_name("mutations_accepted.toml")

LIBRARIES = ("pytest", "_pytest.doctest", "hypothesis", "shapely", "numpy", "scipy", "pydantic")
"""What every test loads; imported once, before the first fork."""

PATIENCE = 4.0
"""A run that takes so many times what the unchanged file takes is stopped: it caught itself."""


LONGEST = 600.0
"""No file's tests may take longer [s]."""


class Loader(importlib.machinery.SourceFileLoader):
    """Loads one module from changed code instead of its file; nothing is cached."""

    code: CodeType

    def get_code(self, fullname: str) -> CodeType:
        """Return the changed code."""
        return self.code


class Finder(importlib.abc.MetaPathFinder):
    """Finds the one changed module."""

    def __init__(self, name: str, path: Path, code: CodeType) -> None:
        self.name, self.loader = name, Loader(name, str(path))
        self.loader.code = code

    def find_spec(self, fullname: str, path: object, target: object = None) -> object:
        """Return the changed module's spec, None for every other."""
        if fullname != self.name:
            return None
        return importlib.util.spec_from_file_location(
            fullname, self.loader.path, loader=self.loader
        )


@dataclass(frozen=True)
class Subject:
    """One file with the tests that belong to it."""

    path: Path

    @property
    def name(self) -> str:
        """Its place below the core's folder."""
        return self.path.relative_to(CODE).as_posix()

    @property
    def module(self) -> str:
        """What it is imported as."""
        return ".".join(("tapewise_core", *self.path.relative_to(CODE).with_suffix("").parts))

    def tests(self) -> list[str]:
        """The test files, its own first."""
        core, stem, room = HOUSE / "tests" / "core", self.path.stem, self.path.parent.name
        names = (f"test_{stem}.py", f"test_{stem}_*.py", f"{room}/test_*_{stem}.py")
        named = [path for name in names for path in core.rglob(name)]
        mirror = [*(core / room).rglob("test_*.py"), *core.glob(f"test_{room}*.py")]
        published = (HOUSE / "tests" / "published").glob("test_[!p]*.py")
        own = [path for path in named if self._is_used_in(path)] or named
        near = [path for path in mirror if self._is_used_in(path)] or mirror
        far = [path for path in published if self._is_used_in(path)]
        return [str(path) for path in dict.fromkeys([self.path, *own, *near, *far])]

    def _is_used_in(self, path: Path) -> bool:
        return f"from {self.module} import" in path.read_text(encoding="utf-8")


def run_tests(subject: Subject, code: CodeType) -> int:
    """Run a subject's tests on changed code in this process; return pytest's exit code."""
    import pytest

    sys.meta_path.insert(0, Finder(subject.module, subject.path, code))
    quiet = os.open(os.devnull, os.O_WRONLY)
    os.dup2(quiet, 1)
    os.dup2(quiet, 2)
    # plain assertions: pytest's own loader, which rewrites them, would load the file unchanged
    usual = ("-x", "-q", "-p", "no:cacheprovider", "-p", "no:xdist", "-o", "addopts=")
    more = ("--assert=plain", "--doctest-modules", "--hypothesis-profile=mutations")
    return int(pytest.main([*usual, *more, *subject.tests()]))


def forked(subject: Subject, code: CodeType, longest: float) -> int:
    """Start the tests in a process of their own, which ends itself in time; return its number."""
    child = os.fork()
    if child:
        return child
    try:
        signal.alarm(max(1, round(longest)))
        os._exit(run_tests(subject, code))
    finally:
        os._exit(70)


def survivors(subject: Subject, jobs: int) -> Iterator[Change]:
    """Yield the changes that no test notices."""
    text = subject.path.read_text(encoding="utf-8")
    longest = _unchanged(subject, text) * PATIENCE * jobs + 5
    waiting, running = list(changes_of(text)), dict[int, Change]()
    while waiting or running:
        while waiting and len(running) < jobs:
            change = waiting.pop(0)
            code = compile(changed(text, change), str(subject.path), "exec")
            running[forked(subject, code, longest)] = change
        child, status = os.wait()
        change = running.pop(child)
        if os.waitstatus_to_exitcode(status) == 0:
            yield change


def _unchanged(subject: Subject, text: str) -> float:
    """Return how long the tests take on the file as it is [seconds]; they must pass."""
    since = time.monotonic()
    child = forked(subject, compile(text, str(subject.path), "exec"), LONGEST)
    _, status = os.waitpid(child, 0)
    ended = os.waitstatus_to_exitcode(status)
    if ended:
        sys.exit(f"{subject.name}: its tests fail as it is (pytest's exit code {ended}).")
    return time.monotonic() - since


def subjects(names: Sequence[str]) -> list[Subject]:
    """Return the files that some names stand for."""
    found: list[Path] = []
    for name in names:
        place = CODE / name
        if not place.exists():
            sys.exit(f"There is no {name} in {CODE.relative_to(HOUSE)}.")
        found += sorted(place.rglob("*.py")) if place.is_dir() else [place]
    return [Subject(path) for path in found if path.name != "__init__.py"]


def accepted() -> set[tuple[str, str, str]]:
    """Return file, line and change of every survivor that is listed with a reason."""
    rows = tomllib.loads(ACCEPTED.read_text(encoding="utf-8")).get("survivor", [])
    if any(not row["reason"].strip() for row in rows):
        sys.exit(f"{ACCEPTED.name}: every survivor needs its reason.")
    return {(row["file"], row["line"], change) for row in rows for change in row["changes"]}


def report(subject: Subject, jobs: int, listed: set[tuple[str, str, str]]) -> int:
    """Print what becomes of one file's changes; return how many survive without a reason."""
    text = subject.path.read_text(encoding="utf-8")
    whole, lines = len(list(changes_of(text))), text.splitlines()
    found = [
        ((subject.name, lines[change.line - 1].strip(), change.says), change)
        for change in survivors(subject, jobs)
    ]
    fresh = [(key, change) for key, change in found if key not in listed]
    print(f"{subject.name}: {whole} changes, {len(found)} survive, {len(fresh)} without a reason")
    for (_, line, says), change in sorted(fresh, key=lambda row: row[1].line):
        print(f"  {change.line}: {line}\n      {says}")
    gone = {key for key in listed if key[0] == subject.name} - {key for key, _ in found}
    for _, line, says in sorted(gone):
        print(f"  listed and caught now, take it out: {line}: {says}")
    sys.stdout.flush()
    return len(fresh)


def main(arguments: Iterable[str] | None = None) -> int:
    """Run; return 1 if anything survives without a reason."""
    parser = argparse.ArgumentParser(description=(__doc__ or "").partition("\n")[0])
    parser.add_argument("names", nargs="*", default=USUAL, metavar="FILE", help="below the core")
    parser.add_argument("--jobs", type=int, default=os.cpu_count() or 1, metavar="N")
    options = parser.parse_args(None if arguments is None else list(arguments))
    if not hasattr(os, "fork"):
        sys.exit("This needs a system that can fork, such as Linux or macOS.")
    sys.path[:0] = [str(HOUSE / part) for part in ("core", "tui", "tests")]
    os.chdir(HOUSE)
    for library in LIBRARIES:
        importlib.import_module(library)
    listed = accepted()
    left = [report(subject, options.jobs, listed) for subject in subjects(options.names)]
    return 1 if any(left) else 0


if __name__ == "__main__":
    sys.exit(main())
