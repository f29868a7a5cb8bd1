"""People copied in from files, out into files, and from one to a second."""

from __future__ import annotations

import os
from pathlib import Path

from tapewise_core.errors import FilesError
from tapewise_core.profiles.files import read_file, write_file
from tapewise_core.profiles.folders import alone
from tapewise_core.profiles.identity import id_of_name, new_id
from tapewise_core.profiles.places import named, place_of, save_as
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.slug import slug
from tapewise_core.profiles.store import add, load


def copy_in(path: Path, *, replace: bool = False) -> Profile:
    """Save the person a file holds, and return it.

    Raises FilesError if somebody of that name or id is saved and is not to be replaced.
    """
    profile = read_file(path)
    return take_in(profile, replace=replace, source=path)


def take_in(profile: Profile, *, replace: bool = False, source: Path | None = None) -> Profile:
    """Save a person from elsewhere, as :func:`copy_in` does; a copy beside the file goes."""
    with alone() as data:
        if profile.id == id_of_name(profile.name) and place_of(profile) is None:
            profile = profile.having(id=new_id())
        place = place_of(profile) or named(profile.name)
        if place is not None and not replace:
            there = read_file(place).name
            raise FilesError(f"{there} is saved already; say that it is to be replaced.")
        kept = save_as(profile, data)
        if source is not None and _is_copy(source, kept.path):
            source.unlink()
        return kept.profile


def copy_out(name: str, path: Path, *, replace: bool = False) -> Path:
    """Write a person to a file, or into a folder; return the file.

    Raises FilesError if there is such a file and it is not to be replaced.
    """
    profile = load(name)
    place = path / f"{slug(profile.name)}.json" if os.path.isdir(path) else path
    if not replace and os.path.lexists(place):
        raise FilesError(f"{place} exists already; choose another name or have it replaced.")
    write_file(place, profile)
    return place


def duplicate(name: str, new_name: str) -> Profile:
    """Save a second person with the measures of one; raises FilesError if the name is taken."""
    made = load(name).with_name(new_name).having(id=new_id())
    add(made)
    return made


def _is_copy(source: Path, place: Path) -> bool:
    return source.resolve().parent == place.parent.resolve() and not source.samefile(place)
