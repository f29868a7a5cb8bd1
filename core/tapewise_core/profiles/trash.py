"""Who and what was deleted, with everything that belongs to it, to be brought back for a day.

A folder for each deletion, named by the id and the second; what lies in it lies as it lay in the
data folder. The file that counts, a person's or a project's, goes last and comes back last, so
that whatever ends the program on the way, the next start knows what to finish.
"""

from __future__ import annotations

import contextlib
import os
import shutil
from collections.abc import Iterator, Sequence
from datetime import datetime, timedelta
from pathlib import Path

from tapewise_core.errors import TapewiseError
from tapewise_core.profiles.files import STRAY, put, read_file, sync_folder
from tapewise_core.profiles.folders import private
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.slug import marked_slug

KEPT = timedelta(days=1)
"""How long whoever was deleted can be brought back."""

_FOLDERS = ("people", "history", "projects", "work")

_COPIES = "copies"
"""Where copies of a person's file lie: apart from hers, which says that a deletion is whole."""

_PROJECT = "project-"
"""How the name of a folder begins that holds one project; no id has a hyphen."""


def throw_away(
    data: Path, person: Path, identity: str, name: str, now: datetime, copies: Sequence[Path] = ()
) -> Path:
    """Take a person's file, copies beside it and all that belongs to it out of sight.

    Raises OSError.
    """
    bin_ = _bin_for(data, identity, now)
    for copy in copies:
        os.replace(copy, private(bin_ / _COPIES) / copy.name)
    return _moved(data, (*belongings(data, identity, name), person), bin_)


def throw_away_project(data: Path, owner: str, places: Sequence[Path], now: datetime) -> Path:
    """Take a project's files out of sight, the one that counts being the last; raises OSError."""
    return _moved(data, places, _bin_for(data, f"{_PROJECT}{owner}-{places[-1].stem}", now))


def _bin_for(data: Path, label: str, now: datetime) -> Path:
    return private(private(_bin(data)) / f"{label}-{int(now.timestamp())}")


def _moved(data: Path, places: Sequence[Path], bin_: Path) -> Path:
    for place in places:
        moved = bin_ / place.relative_to(data)
        private(moved.parent)
        os.replace(place, moved)
    sync_folder(places[-1].parent)
    return bin_


def belongings(data: Path, identity: str, name: str) -> Iterator[Path]:
    """Yield what is kept about a person besides her own file."""
    found = (
        *(data / "history").glob(f"{identity}.*"),  # her states, and files set aside
        data / "projects" / identity,
        *(data / "work").glob(f"{marked_slug(name)}.json*"),
    )
    yield from (place for place in found if identity and os.path.lexists(place))


def deleted(data: Path) -> list[tuple[Path, Path, Profile | None]]:
    """Return folder, file and person of each deletion, the newest first."""
    found = []
    for folder in _bins(data):
        for place in (folder / "people").glob("*.json"):
            found.append((folder, place, _person(place)))
    return sorted(found, key=lambda one: when(one[0]), reverse=True)


def deleted_projects(data: Path) -> list[tuple[Path, Path]]:
    """Return folder and file of each project that was deleted by itself, the newest first."""
    found = [(one, p) for one in _bins(data) if _alone(one) for p in one.glob("projects/*/*.json")]
    return sorted(found, key=lambda pair: when(pair[0]), reverse=True)


def bring_back(data: Path, folder: Path) -> None:
    """Put everything of one deletion back in its place, the person last; raises OSError."""
    for copy in (folder / _COPIES).glob("*"):
        _put_back(copy, private(data / "people") / copy.name)
    for part in reversed(_FOLDERS):
        for place in sorted((folder / part).glob("*")):
            _put_back(place, private(data / part) / place.name)
    shutil.rmtree(folder)


def _put_back(place: Path, back: Path) -> None:
    """What was written since the deletion began stays; states of before come in front of it."""
    if not os.path.lexists(back):
        os.replace(place, back)
    elif place.is_dir():
        for child in place.iterdir():
            _put_back(child, back / child.name)
    elif place.suffix == ".jsonl":
        put(place, place.read_bytes() + b"\n" + back.read_bytes())
        os.replace(place, back)


def purge(data: Path, identity: str) -> None:
    """Leave nothing of anybody deleted under an id."""
    for folder in _bins(data):
        label = folder.name.rpartition("-")[0]
        if identity and (label == identity or label.startswith(f"{_PROJECT}{identity}-")):
            over = folder.with_name(f"{label}-0")  # cut short here, the next start ends it
            shutil.rmtree(over, ignore_errors=True)
            os.replace(folder, over)
            shutil.rmtree(over, ignore_errors=True)
    for memory in (data / "index.json", data / "projects" / "index.json"):
        memory.unlink(missing_ok=True)


def due(data: Path, now: datetime) -> bool:
    """Say whether there is something to tidy up."""
    return any(_strays(data)) or any(_is_over(one, now) or _is_half(one) for one in _bins(data))


def tidy(data: Path, now: datetime) -> None:
    """Take away strays and what was deleted over a day ago, and undo deletions cut short."""
    for stray in _strays(data):
        with contextlib.suppress(OSError):
            stray.unlink()
    for folder in _bins(data):
        if _is_over(folder, now):
            shutil.rmtree(folder, ignore_errors=True)
        elif _is_half(folder):
            with contextlib.suppress(OSError):
                bring_back(data, folder)


def _strays(data: Path) -> Iterator[Path]:
    for above in ("", "deleted/*/"):
        for pattern in ("", "people/", "history/", "work/", "projects/", "projects/*/"):
            yield from data.glob(f"{above}{pattern}{STRAY}*.tmp")


def _is_over(folder: Path, now: datetime) -> bool:
    return now - when(folder) > KEPT


def _is_half(folder: Path) -> bool:
    return not any(folder.glob("projects/*/*.json" if _alone(folder) else "people/*"))


def _alone(folder: Path) -> bool:
    """Whether it holds a project without its person."""
    return folder.name.startswith(_PROJECT)


def _bin(data: Path) -> Path:
    return data / "deleted"


def _bins(data: Path) -> list[Path]:
    return [path for path in _bin(data).glob("*-*") if path.is_dir()]


def when(folder: Path) -> datetime:
    """Return when the deletion was that a folder holds."""
    seconds = folder.name.rpartition("-")[2]
    return datetime.fromtimestamp(int(seconds) if seconds.isdecimal() else 0)


def _person(place: Path) -> Profile | None:
    try:
        return read_file(place)
    except TapewiseError:
        return None
