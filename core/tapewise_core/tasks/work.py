"""What is being made for each person: projects, kept between runs.

A person has many, each a JSON file in ``projects``, in a folder named by the person's id, so
that a new name takes nothing away and nobody inherits anything. A file holds no measure: one
that cannot be used costs a few choices and stops nobody. It is set aside under another name, and
its last good state is taken up in its place.
"""

from __future__ import annotations

import contextlib
import os
from collections.abc import Iterator
from dataclasses import replace
from itertools import count
from pathlib import Path

from tapewise_core.errors import FilesError
from tapewise_core.profiles import store
from tapewise_core.profiles.files import STRAY, put, reason
from tapewise_core.profiles.folders import alone, data_folder, private
from tapewise_core.profiles.slug import digest, slug
from tapewise_core.tasks.settings import settings
from tapewise_core.tasks.work_text import PAGES as PAGES
from tapewise_core.tasks.work_text import Work as Work
from tapewise_core.tasks.work_text import text_of, work_of

BEFORE = ".before"
"""How the name ends of the file that holds a project's last state but one."""


def folder() -> Path:
    """Return the folder that keeps everybody's projects; it need not exist yet.

    Raises FilesError if the data folder's name cannot be.
    """
    return data_folder() / "projects"


def load(person: str) -> Work:
    """Return a person's latest project as it was left, or a fresh start; files stay as they are."""
    owner = store.id_of(person)
    bring_over(person, owner)
    found = [(work.when, _time(p), work) for p in _places(owner) if (work := _usable(p))]
    latest_one = max(found, key=lambda row: row[:2], default=("", 0, fresh(person)))[2]
    return replace(latest_one, person=person, owner=owner)


def fresh(person: str) -> Work:
    """Return a new project for a person, with what is set for the user."""
    usual, new = settings(), Work(person)
    machines = tuple(usual.machines.split(", ")) if usual.machines else new.machines
    formats = (f"pdf-{usual.paper}",) if usual.paper else new.formats
    return replace(new, machines=machines, formats=formats)


def _time(place: Path) -> int:
    """When a file was written last, for those that changed in one second."""
    with contextlib.suppress(OSError):
        return place.stat().st_mtime_ns
    return 0


def take_up(person: str) -> tuple[Work, str]:
    """Return a person's latest project to go on with, and a sentence on what could not be used.

    A file that cannot be used is renamed, not deleted.
    """
    owner = store.id_of(person)
    said = [bring_over(person, owner)]
    said += [_mended(person, place) for place in _places(owner)]
    made = load(person)
    said += _dropped(made)
    return made, " ".join(filter(None, said))


def projects(person: str | None = None) -> tuple[Work, ...]:
    """Return all projects that can be used, or a person's, by person and name."""
    names = [person] if person is not None else []
    for name in names or list(_old_people()):
        bring_over(name, store.id_of(name))
    owners = [store.id_of(name) for name in names] if names else _owners()
    found = [_usable(place) for owner in owners for place in _places(owner)]
    return tuple(sorted((work for work in found if work), key=lambda w: (w.person, w.title)))


def latest() -> Work | None:
    """Return the work that changed last, or None if there is none."""
    try:
        return max(projects(), key=lambda work: work.when, default=None)
    except (OSError, FilesError):
        return None


def of_garment(work: Work, garment: str) -> Work:
    """Return a person's project of another garment, as it was left, or a new one.

    What belongs to the person's workshop, not to the garment, is taken along.
    """
    there = _usable(_place(replace(work, garment=garment, name="")))
    if there is None:
        new = replace(work, garment=garment, name="", asked={}, ticked=(), drafts=(), folder="")
        return replace(new, cloth="")
    return replace(there, person=work.person, owner=work.owner, page=work.page, when=work.when)


def save(work: Work) -> None:
    """Keep a project, readable by the owner alone; raises FilesError with a sentence."""
    kept = work if work.owner else replace(work, owner=store.id_of(work.person))
    place = _place(kept)
    with alone():
        private(place.parent.parent)
        private(place.parent)
        try:
            _keep_before(place)
            put(place, text_of(kept).encode())
        except (OSError, ValueError) as fault:
            raise FilesError(f"{place} cannot be written: {reason(fault)}.") from fault


def delete(work: Work) -> None:
    """Delete a project; raises FilesError with a sentence."""
    place = _place(work)
    try:
        place.unlink()
        place.with_name(place.name + BEFORE).unlink(missing_ok=True)
    except OSError as fault:
        raise FilesError(f"{place} cannot be deleted: {reason(fault)}.") from fault


def follow(owner: str, name: str) -> None:
    """Write a person's new name into all her projects; raises FilesError with a sentence."""
    for place in _places(owner):
        work = _usable(place)
        if work is not None and work.person != name:
            save(replace(work, person=name, owner=owner))


def bring_over(person: str, owner: str) -> str:
    """Make a project of what an older version kept; return a sentence if it cannot be used."""
    old = data_folder() / "work" / f"{slug(person)}-{digest(person)}.json"
    try:
        work, _ = work_of(_text(old))
        if work.person != person:
            raise ValueError("it is somebody else's")
    except FileNotFoundError:
        return ""
    except (OSError, ValueError) as fault:
        return _set_aside(person, old, _why(fault))
    save(replace(work, owner=owner))
    with contextlib.suppress(OSError):
        old.unlink()
    return ""


def _old_people() -> Iterator[str]:
    for place in (data_folder() / "work").glob("*.json"):
        with contextlib.suppress(OSError, ValueError):
            yield work_of(_text(place))[0].person


def _owners() -> list[str]:
    return sorted(place.name for place in folder().glob("*") if place.is_dir())


def _places(owner: str) -> list[Path]:
    return sorted((folder() / owner).glob("*.json"))


def _place(work: Work) -> Path:
    owner = work.owner or store.id_of(work.person)
    return folder() / owner / f"{slug(work.title)}.json"


def _usable(place: Path) -> Work | None:
    try:
        return replace(work_of(_text(place))[0], owner=place.parent.name)
    except (OSError, ValueError):
        return None


def _text(place: Path) -> str:
    """Return what a file says; raises OSError, or ValueError with the reason."""
    try:
        return place.read_text("utf-8")
    except UnicodeDecodeError:
        raise ValueError("it is not text in UTF-8") from None


def _dropped(work: Work) -> list[str]:
    """Name what of a project there is no longer; the file is written without it."""
    try:
        _, told = work_of(_text(_place(work)))
    except (OSError, ValueError):
        return []
    if not told:
        return []
    with contextlib.suppress(FilesError):
        save(work)
    gone = " and ".join((", ".join(told[:-1]), told[-1])) if told[1:] else told[0]
    return [f"There is no longer {gone} that “{work.title}” asked for; all else is kept."]


def _mended(person: str, place: Path) -> str:
    """Set a file aside that cannot be used, and put its last good state in its place."""
    try:
        work_of(_text(place))
    except (OSError, ValueError) as fault:
        said = _set_aside(person, place, _why(fault))
    else:
        return ""
    before = place.with_name(place.name + BEFORE)
    if _usable_before(before):
        with contextlib.suppress(OSError):
            os.replace(before, place)
            return said.replace(", and this is a fresh start", ", and its last good state is back")
    return said


def _usable_before(place: Path) -> bool:
    try:
        return bool(work_of(_text(place)))
    except (OSError, ValueError):
        return False


def _keep_before(place: Path) -> None:
    """Keep what stands in a place, if it can be used, for when what replaces it is spoilt."""
    if _usable_before(place):
        aside = place.with_name(f"{STRAY}{place.name}.tmp")
        aside.unlink(missing_ok=True)
        os.link(place, aside)
        os.replace(aside, place.with_name(place.name + BEFORE))


def _why(fault: OSError | ValueError) -> str:
    return f"it cannot be read: {reason(fault)}" if isinstance(fault, OSError) else str(fault)


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
