"""What a person is making: garment, options, machines, what is ticked; kept between runs.

One JSON file a person in the folder ``work`` beside the people. It holds no
measure, so a file that cannot be used costs a few choices and stops nobody: it is set aside
under another name, and a fresh start is made.
"""

from __future__ import annotations

import contextlib
import os
from dataclasses import replace
from itertools import count
from pathlib import Path

from tapewise_core.errors import FilesError
from tapewise_core.profiles import store
from tapewise_core.profiles.files import reason
from tapewise_core.profiles.slug import digest, slug
from tapewise_core.tasks.work_text import PAGES as PAGES
from tapewise_core.tasks.work_text import Work as Work
from tapewise_core.tasks.work_text import text_of, work_of
from tapewise_core.writers.files import write_all


def folder() -> Path:
    """Return the folder that keeps everybody's work; it need not exist yet.

    Raises FilesError if the data folder's name cannot be.
    """
    return store.people_folder().parent / "work"


def load(person: str) -> Work:
    """Return a person's work as it was left, or a fresh start; the file stays as it is."""
    return _usable(_place(person)) or Work(person)


def take_up(person: str) -> tuple[Work, str]:
    """Return a person's work to go on with, and a sentence if its file had to be set aside.

    A file that cannot be used is renamed, not deleted, and a fresh start is made.
    """
    place = _place(person)
    try:
        return _read(place), ""
    except FileNotFoundError:
        return Work(person), ""
    except OSError as fault:
        why = f"it cannot be read: {reason(fault)}"
    except ValueError as fault:
        why = str(fault)
    return Work(person), _set_aside(person, place, why)


def latest() -> Work | None:
    """Return the work that changed last, or None if there is none."""
    try:
        found = [work for place in folder().glob("*.json") if (work := _usable(place))]
    except (OSError, FilesError):
        return None
    return max(found, key=lambda work: work.when, default=None)


def save(work: Work) -> None:
    """Keep a person's work, readable by the owner alone; raises FilesError with a sentence."""
    place = _place(work.person)
    try:
        place.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    except OSError as fault:
        raise FilesError(f"{place.parent} cannot be made: {reason(fault)}.") from fault
    write_all(place.parent, {place.name: text_of(work).encode()})
    with contextlib.suppress(OSError):
        os.chmod(place, 0o600)


def follow(old: str, new: str) -> None:
    """Keep what is made for a person under her new name; raises FilesError with a sentence."""
    made = _usable(_place(old))
    if made is not None and old != new:
        save(replace(made, person=new))
        with contextlib.suppress(OSError):
            _place(old).unlink()


def _place(person: str) -> Path:
    """Two people whose names make one slug still have a file each."""
    return folder() / _file_name(person)


def _file_name(person: str) -> str:
    return f"{slug(person)}-{digest(person)}.json"


def _usable(place: Path) -> Work | None:
    try:
        return _read(place)
    except (OSError, ValueError):
        return None


def _read(place: Path) -> Work:
    """Return the work a file holds; raises OSError, or ValueError with the reason."""
    try:
        text = place.read_text("utf-8")
    except UnicodeDecodeError:
        raise ValueError("it is not text in UTF-8") from None
    work = work_of(text)
    if _file_name(work.person) != place.name:
        raise ValueError("it is somebody else's")
    return work


def _set_aside(person: str, place: Path, why: str) -> str:
    """Rename a file that cannot be used; return a sentence about it."""
    told = f"What {person} was making cannot be used ({why})"
    names = (f"{place.name}.unusable{'' if n == 1 else f'-{n}'}" for n in count(1))
    aside = next(path for name in names if not os.path.lexists(path := place.with_name(name)))
    try:
        place.rename(aside)
    except OSError:
        return f"{told} and could not be set aside: {place}."
    return f"{told}; the file is set aside as {aside}, and this is a fresh start."
