"""The files of projects: read, set aside where they cannot be used, brought over from before."""

from __future__ import annotations

import contextlib
import os
from collections.abc import Iterator
from pathlib import Path

from msgspec.structs import replace

from tapewise_core.errors import FilesError
from tapewise_core.profiles import store
from tapewise_core.profiles.files import aside_of, keep_beside, put, reason, why
from tapewise_core.profiles.folders import alone, data_folder, private
from tapewise_core.profiles.slug import marked_slug, slug
from tapewise_core.tasks.json_object import text_in
from tapewise_core.tasks.project import Work
from tapewise_core.tasks.work_merging import merged
from tapewise_core.tasks.work_text import text_of, work_of

BEFORE = ".before"
"""How the name ends of the file that holds a project's last state but one."""


def folder() -> Path:
    """Return the folder that keeps everybody's projects; it need not exist yet.

    Raises FilesError if the data folder's name cannot be.
    """
    return data_folder() / "projects"


def save(work: Work) -> None:
    """Keep a project, readable by the owner alone; raises FilesError with a sentence."""
    kept = work if work.owner else replace(work, owner=store.id_of(work.person))
    place = place_of(kept)
    with alone():
        private(place.parent.parent)
        private(place.parent)
        try:
            if usable(place) is not None:
                keep_beside(place, place.with_name(place.name + BEFORE))
            elif os.path.lexists(place):
                _set_aside(place)  # whatever it is, it is not written over
            put(place, text_of(kept).encode())
        except (OSError, ValueError) as fault:
            raise FilesError(f"{place} cannot be written: {reason(fault)}.") from fault


def keep(mine: Work, base: Work | None) -> Work:
    """Save what changed from ``base``, as it was read, and leave all else as it is on file.

    Without a base it is saved as it is. Returns what is on file then; raises FilesError.
    """
    with alone():
        theirs = usable(place_of(mine)) if base is not None else None
        both = mine if base is None or theirs in (None, base) else merged(base, mine, theirs)
        save(both)
        return both


def bring_over(person: str, owner: str) -> str:
    """Make a project of what an older version kept; return a sentence if it cannot be used."""
    old = data_folder() / "work" / f"{marked_slug(person)}.json"
    try:
        work, _ = work_of(text_in(old))
        if work.person != person:
            raise ValueError("it is somebody else's")
    except FileNotFoundError:
        return ""
    except (OSError, ValueError) as fault:
        return _set_aside_told(person, old, why(fault), _set_aside(old))
    save(replace(work, owner=owner))
    with contextlib.suppress(OSError):
        old.unlink()
    return ""


def old_people() -> Iterator[str]:
    """Yield the names of those whose work an older version kept."""
    for place in (data_folder() / "work").glob("*.json"):
        with contextlib.suppress(OSError, ValueError):
            yield work_of(text_in(place))[0].person


def owners() -> list[str]:
    """Return the ids of everybody who has projects."""
    with contextlib.suppress(OSError), os.scandir(folder()) as found:
        return sorted(one.name for one in found if one.is_dir())
    return []


def places(owner: str) -> list[Path]:
    """Return the files of a person's projects."""
    whole = folder() / owner
    with contextlib.suppress(OSError), os.scandir(whole) as found:
        names = sorted(one.name for one in found)
        return [whole / name for name in names if name.endswith(".json") and name[0] != "."]
    return []


def place_of(work: Work) -> Path:
    """Return where a project is kept, or would be: no two titles share a file."""
    own = folder() / (work.owner or store.id_of(work.person))
    usual = own / f"{slug(work.title)}.json"
    there = usable(usual)
    if there is not None and there.title == work.title:
        return usual
    for place in places(own.name):
        found = usable(place)
        if found is not None and found.title == work.title:
            return place
    return usual if there is None else own / f"{marked_slug(work.title)}.json"


def usable(place: Path) -> Work | None:
    """Return the project a file holds, or None if it cannot be used."""
    try:
        return replace(work_of(text_in(place))[0], owner=place.parent.name)
    except (OSError, ValueError):
        return None


def dropped(work: Work) -> list[str]:
    """Say what of a project there is no longer; the file is written without it."""
    try:
        _, told = work_of(text_in(place_of(work)))
    except (OSError, ValueError):
        return []
    if not told:
        return []
    with contextlib.suppress(FilesError):
        save(work)
    gone = " and ".join((", ".join(told[:-1]), told[-1])) if told[1:] else told[0]
    return [f"There is no longer {gone} that “{work.title}” asked for; all else is kept."]


def fault_of(place: Path) -> str:
    """Say why a file cannot be used, as the end of a sentence; nothing if it can."""
    try:
        work_of(text_in(place))
    except (OSError, ValueError) as fault:
        return why(fault)
    return ""


def before(place: Path) -> Work | None:
    """Return the state of a project before the one in a file, if it can be used."""
    return usable(place.with_name(place.name + BEFORE))


def mended(person: str, place: Path) -> str:
    """Set a file aside that cannot be used, and put its last good state in its place."""
    fault = fault_of(place)
    if not fault:
        return ""
    aside = _set_aside(place)
    now = "its last good state is back" if aside and _put_back(place) else FRESH
    return _set_aside_told(person, place, fault, aside, now)


def _put_back(place: Path) -> bool:
    """Put a project's last state but one in its place, if it can be used."""
    if before(place) is None:
        return False
    try:
        os.replace(place.with_name(place.name + BEFORE), place)
    except OSError:
        return False
    return True


def _set_aside(place: Path) -> Path | None:
    """Rename a file that cannot be used; return its new place, None where the disk does not let."""
    try:
        return place.rename(aside_of(place))
    except OSError:
        return None


FRESH = "this is a fresh start"
"""How it goes on where no state could be used."""


def _set_aside_told(
    person: str, place: Path, fault: str, aside: Path | None, now: str = FRESH
) -> str:
    """Return a sentence about a file that cannot be used: where it went, and how it goes on."""
    told = f"What {person} was making cannot be used ({fault})"
    if aside is None:
        return f"{told} and could not be set aside: {place}."
    return f"{told}; the file is set aside as {aside}, and {now}."
