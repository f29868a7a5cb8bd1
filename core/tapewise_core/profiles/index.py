"""What is told of everyone on file, remembered in ``index.json`` beside the people."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from pathlib import Path

from tapewise_core.errors import TapewiseError
from tapewise_core.frozen import Frozen
from tapewise_core.profiles import rules
from tapewise_core.profiles.files import read_file
from tapewise_core.profiles.memory import remembered
from tapewise_core.profiles.profile import Profile
from tapewise_core.text.legible import legible


class Known(Frozen):
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
    return remembered(place, paths, look, _known)


def _known(row: Mapping[str, object]) -> Known:
    read = Known(**row)  # type: ignore[arg-type]
    if read.id:
        rules.identity(read.id)  # it names files: nothing that leads elsewhere
    groups = tuple(str(name) for name in read.groups)
    return Known(read.name, read.id, read.unit, int(read.measures), groups, read.last, read.fault)
