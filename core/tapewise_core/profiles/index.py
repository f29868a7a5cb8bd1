"""What is told of everyone on file, remembered, so that a thousand files are not read each time.

The file ``index.json`` beside the people; what it says of a file counts only while the file's
time, size and number are the same, so it may be deleted at any time.
"""

from __future__ import annotations

import contextlib
import json
import os
from collections.abc import Iterable, Mapping
from dataclasses import asdict, dataclass
from pathlib import Path

from tapewise_core.errors import TapewiseError
from tapewise_core.profiles import rules
from tapewise_core.profiles.files import put, read_file
from tapewise_core.profiles.profile import Profile
from tapewise_core.text.legible import legible

FEWEST = 50
"""How many people there are at least where remembering pays (our choice)."""


@dataclass(frozen=True, slots=True)
class Known:
    """What is told of a file without reading it: whose it is, or what is wrong with it."""

    name: str
    id: str = ""
    unit: str = ""
    measures: int = 0
    groups: tuple[str, ...] = ()
    last: str = ""
    fault: str = ""


def known_of(profile: Profile) -> Known:
    """Return what is told of a person."""
    days = [row.taken for row in profile.measures.values() if row.taken]
    last = max(days).isoformat() if days else ""
    unit = profile.unit.value
    return Known(profile.name, profile.id, unit, len(profile.measures), profile.groups, last)


def look(path: Path) -> Known:
    """Read a file and return what is told of it."""
    try:
        return known_of(read_file(path))
    except TapewiseError as error:
        return Known(legible(path.stem), fault=legible(str(error)))


def known(place: Path, paths: Iterable[Path]) -> dict[Path, Known]:
    """Return what is told of each file, from the index where it still holds."""
    before, found, marks = _load(place), {}, {}
    fresh = 0
    for path in paths:
        mark = _mark(path)
        row = before.get(path.name)
        if mark is None or row is None or row[0] != mark:
            row, fresh = (mark, look(path)), fresh + 1
        found[path], marks[path.name] = row[1], row
    if len(found) >= FEWEST and (fresh or len(before) != len(found)):
        _save(place, marks)
    return found


_Row = tuple[list[int] | None, Known]


def _mark(path: Path) -> list[int] | None:
    """What changes whenever a file does; None if it cannot be asked."""
    try:
        seen = os.stat(path)
    except (OSError, ValueError):
        return None
    return [seen.st_mtime_ns, seen.st_size, seen.st_ino]


def _load(place: Path) -> dict[str, _Row]:
    try:
        rows = json.loads(place.read_bytes())["files"]
        return {name: (mark, _known(row)) for name, (mark, row) in rows.items()}
    except (OSError, ValueError, KeyError, TypeError, AttributeError, RecursionError):
        return {}


def _known(row: Mapping[str, object]) -> Known:
    read = Known(**row)  # type: ignore[arg-type]
    if read.id:
        rules.identity(read.id)  # it names files: nothing that leads elsewhere
    groups = tuple(str(name) for name in read.groups)
    return Known(read.name, read.id, read.unit, int(read.measures), groups, read.last, read.fault)


def _save(place: Path, rows: Mapping[str, _Row]) -> None:
    """Remember, if the disk lets; without it everything is only slower."""
    files = {name: [mark, asdict(row)] for name, (mark, row) in rows.items()}
    with contextlib.suppress(OSError, ValueError):
        put(place, json.dumps({"files": files}).encode())
