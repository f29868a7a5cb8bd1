"""What is being made for each person: projects, kept between runs.

A person has many, each a JSON file in ``projects``, in a folder named by the person's id, so
that a new name takes nothing away and nobody inherits anything. A file holds no measure: one
that cannot be used costs a few choices and stops nobody. It is set aside under another name, and
its last good state is taken up in its place.
"""

from __future__ import annotations

import contextlib
from collections.abc import Iterator
from datetime import datetime
from pathlib import Path

from msgspec.structs import replace

from tapewise_core.errors import FilesError
from tapewise_core.profiles import store, trash
from tapewise_core.profiles.deleting import Gone
from tapewise_core.profiles.files import reason
from tapewise_core.profiles.folders import alone, data_folder
from tapewise_core.sewing.machines import Machine
from tapewise_core.tasks.project import PAGES as PAGES
from tapewise_core.tasks.project import PART_OF as PART_OF
from tapewise_core.tasks.project import PLACES as PLACES
from tapewise_core.tasks.project import Work as Work
from tapewise_core.tasks.settings import settings
from tapewise_core.tasks.work_files import (
    BEFORE,
    dropped,
    mended,
    old_people,
    owners,
    place_of,
    places,
    usable,
)
from tapewise_core.tasks.work_files import bring_over as bring_over
from tapewise_core.tasks.work_files import folder as folder
from tapewise_core.tasks.work_files import keep as keep
from tapewise_core.tasks.work_files import save as save
from tapewise_core.tasks.work_index import briefs
from tapewise_core.tasks.work_merging import merged as merged


def load(person: str) -> Work:
    """Return a person's latest project as it was left, or a fresh start; files stay as they are."""
    owner = store.id_of(person)
    bring_over(person, owner)
    found = [(work.when, _time(p), work) for p in places(owner) if (work := usable(p))]
    latest_one = max(found, key=lambda row: row[:2], default=("", 0, fresh(person)))[2]
    return replace(latest_one, person=person, owner=owner)


def fresh(person: str) -> Work:
    """Return a new project for a person, with what is set for the user."""
    usual, new = settings(), Work(person)
    there = usual.machines.split(", ")
    machines = tuple(one.value for one in Machine if one in there) or new.machines
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
    said += [mended(person, place) for place in places(owner)]
    made = load(person)
    said += dropped(made)
    return made, " ".join(filter(None, said))


def projects(person: str | None = None) -> tuple[Work, ...]:
    """Return all projects that can be used, or a person's, by person and name."""
    names = [person] if person is not None else []
    for name in names or list(old_people()):
        bring_over(name, store.id_of(name))
    ids = [store.id_of(name) for name in names] if names else owners()
    found = [usable(place) for owner in ids for place in places(owner)]
    return tuple(sorted((work for work in found if work), key=lambda w: (w.person, w.title)))


def latest() -> Work | None:
    """Return the work that changed last, or None if there is none."""
    try:
        for name in old_people():
            bring_over(name, store.id_of(name))
        told = [(one.when, place) for place, one in briefs().items() if not one.fault]
    except (OSError, FilesError):
        return None
    return usable(max(told, key=lambda row: row[0])[1]) if told else None


def of_garment(work: Work, garment: str) -> Work:
    """Return a person's project of another garment, as it was left, or a new one.

    What belongs to the person's workshop, not to the garment, is taken along.
    """
    there = usable(place_of(replace(work, garment=garment, name="")))
    if there is None:
        new = replace(work, garment=garment, name="", asked={}, ticked=(), drafts=(), folder="")
        return replace(new, cloth="", tried="", sewn="", notes="")
    return replace(there, person=work.person, owner=work.owner, page=work.page, when=work.when)


def with_draft(work: Work, folder: Path, fingerprint: str, when: str) -> Work:
    """Return a project that knows of one more draft, written into a folder at ISO time ``when``."""
    row = {"when": when, "folder": str(folder.resolve()), "fingerprint": fingerprint}
    return replace(work, drafts=(*work.drafts, row))


def delete(work: Work) -> None:
    """Delete a project; it can be brought back for a day. Raises FilesError with a sentence."""
    place = place_of(work)
    before = place.with_name(place.name + BEFORE)
    with alone() as data:
        try:
            there = [one for one in (before, place) if one is place or one.exists()]
            trash.throw_away_project(data, place.parent.name, there, datetime.now())
        except OSError as fault:
            raise FilesError(f"{place} cannot be deleted: {reason(fault)}.") from fault


def gone(person: str | None = None) -> tuple[Gone, ...]:
    """Return the projects that can be brought back, of a person or all, the last gone first."""
    return tuple(one for one, _, _ in _deleted(person) if one.until >= datetime.now())


def bring_back(one: Gone) -> Work:
    """Bring back a project that was deleted; raises FilesError if its place is taken by now."""
    for there, bin_, work in _deleted():
        if there != one:
            continue
        with alone() as data:
            if place_of(work).exists():
                raise FilesError(f"{one.person} has a project “{one.name}” again; rename it first.")
            try:
                trash.bring_back(data, bin_)
            except OSError as fault:
                says = f"{one.name} cannot be brought back: {reason(fault)}."
                raise FilesError(says) from fault
            return work
    raise FilesError(f"“{one.name}” was deleted too long ago, or is back already.")


def _deleted(person: str | None = None) -> Iterator[tuple[Gone, Path, Work]]:
    """Each project that was deleted, the folder that holds it, and what it was."""
    owner = store.id_of(person) if person is not None else None
    for bin_, place in trash.deleted_projects(data_folder()):
        work = usable(place) if owner in (None, place.parent.name) else None
        if work is not None:
            yield Gone(work.title, trash.when(bin_), work.person), bin_, work


def follow(owner: str, name: str) -> None:
    """Write a person's new name into all her projects; raises FilesError with a sentence."""
    for place in places(owner):
        work = usable(place)
        if work is not None and work.person != name:
            save(replace(work, person=name, owner=owner))
