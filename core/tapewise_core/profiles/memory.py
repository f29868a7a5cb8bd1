"""What many files say, remembered in one, so that a thousand are not read each time.

What is remembered of a file counts only while the file's time, size and number are the same, so
the memory may be deleted at any time; what another version remembered does not count.
"""

from __future__ import annotations

import contextlib
import json
import os
from collections.abc import Callable, Iterable, Mapping
from pathlib import Path
from typing import Any, TypeVar

from msgspec import Struct
from msgspec.structs import asdict

from tapewise_core import __version__
from tapewise_core.profiles.files import put

Told = TypeVar("Told", bound=Struct)

FEWEST = 50
"""How many files there are at least where remembering pays (our choice)."""


def remembered(
    place: Path,
    paths: Iterable[Path],
    look: Callable[[Path], Told],
    made: Callable[[Mapping[str, object]], Told],
) -> dict[Path, Told]:
    """Return what is told of each file: what is remembered, else what a look at it says.

    ``place`` is the memory, in a folder that all files lie below; ``made`` makes what is told of
    what is remembered of it, and raises for what cannot be.
    """
    before, found, rows = _load(place), {}, {}
    fresh, above = 0, len(str(place.parent)) + 1
    for path in paths:
        name = str(path)[above:]
        mark, row = _mark(path), before.get(name)
        told = _recalled(row, mark, made) if row is not None and mark is not None else None
        if told is None:
            told, fresh = look(path), fresh + 1
            row = [mark, asdict(told)]
        found[path], rows[name] = told, row
    if len(found) >= FEWEST and (fresh or len(before) != len(found)):
        _save(place, rows)
    return found


def _recalled(
    row: Any, mark: list[int], made: Callable[[Mapping[str, object]], Told]
) -> Told | None:
    try:
        return made(row[1]) if row[0] == mark else None
    except (ValueError, KeyError, IndexError, TypeError, AttributeError):
        return None


def _mark(path: Path) -> list[int] | None:
    """What changes whenever a file does; None if it cannot be asked."""
    try:
        seen = os.stat(path)
    except (OSError, ValueError):
        return None
    return [seen.st_mtime_ns, seen.st_size, seen.st_ino]


def _load(place: Path) -> dict[str, object]:
    try:
        content = json.loads(place.read_bytes())
        return dict(content["files"]) if content["by"] == __version__ else {}
    except (OSError, ValueError, KeyError, TypeError, RecursionError):
        return {}


def _save(place: Path, rows: Mapping[str, object]) -> None:
    """Remember, if the disk lets; without it everything is only slower."""
    with contextlib.suppress(OSError, ValueError):
        put(place, json.dumps({"by": __version__, "files": rows}).encode())
