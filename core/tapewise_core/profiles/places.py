"""The file of each person: found by the id inside, written by one at a time, named by a slug."""

from __future__ import annotations

import os
from collections.abc import Iterator
from datetime import datetime
from itertools import count
from pathlib import Path

from tapewise_core.errors import FilesError, TapewiseError
from tapewise_core.frozen import Frozen
from tapewise_core.profiles import history
from tapewise_core.profiles.entries import Entry, entries_in
from tapewise_core.profiles.files import read_file, reason, write_file
from tapewise_core.profiles.folders import data_folder, private
from tapewise_core.profiles.merging import Clash
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.slug import marked_slug, slug


class Kept(Frozen):
    """A person as she is on file now, and measures that somebody else changed otherwise."""

    profile: Profile
    path: Path
    clashes: tuple[Clash, ...] = ()


def people_folder() -> Path:
    """Return the folder in which people are saved; it need not exist yet.

    Raises FilesError if the environment names a folder that cannot be.
    """
    return data_folder() / "people"


def saved() -> tuple[Entry, ...]:
    """Return everyone on file, by name."""
    return entries_in(people_folder(), shipped=False)


def save_as(profile: Profile, data: Path) -> Kept:
    """Write a person as she is, in place of whoever has her id or exactly her name."""
    place = place_of(profile)
    if place is None and (place := named(profile.name)) is not None:
        profile = profile.having(id=read_file(place).id)
    return Kept(profile, written(data, place, read_file(place) if place else None, profile))


def place_of(profile: Profile) -> Path | None:
    """Return the file with a person's id: first where it should lie, else wherever it does."""
    usual = people_folder() / f"{slug(profile.name)}.json"
    if usual.exists() and _id_in(usual) == profile.id:
        return usual
    return next((e.path for e in saved() if not e.fault and e.known.id == profile.id), None)


def _id_in(place: Path) -> str:
    try:
        return read_file(place).id
    except TapewiseError:
        return ""


def named(name: str) -> Path | None:
    """Return the file of whoever is called exactly so."""
    return next((e.path for e in saved() if not e.fault and e.name == name), None)


def refuse_taken(name: str) -> None:
    """Raise FilesError if somebody is called exactly so."""
    if named(name) is not None:
        raise FilesError(f"There is somebody called {name} already; add a second name.")


def written(data: Path, place: Path | None, old: Profile | None, new: Profile) -> Path:
    """Write a person, her earlier state noted before and the new one after."""
    if place is not None and old is not None:
        if old == new:
            return place
        history.note(data, old, datetime.fromtimestamp(place.stat().st_mtime))
    if place is None or (old is not None and old.name != new.name):
        place = _moved(place, _free(new.name, place))
    write_file(place, new)
    history.note(data, new, datetime.now())
    return place


def _moved(place: Path | None, to: Path) -> Path:
    """Give a file its new name before it is written, so that there is never a second one."""
    if place not in (None, to):
        try:
            os.rename(place, to)
        except OSError as fault:
            raise FilesError(f"{place} cannot be renamed: {reason(fault)}.") from fault
    return to


def _free(name: str, own: Path | None) -> Path:
    """The first place for a name that nobody else has; a rename cut short may have it already."""
    folder = private(people_folder())
    places = (folder / f"{stem}.json" for stem in _stems(name))
    return next(place for place in places if place == own or not os.path.lexists(place))


def _stems(name: str) -> Iterator[str]:
    yield slug(name)
    marked = marked_slug(name)
    yield marked
    yield from (f"{marked}-{number}" for number in count(2))
