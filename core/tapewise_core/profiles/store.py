"""The people a person has saved, and the example people behind them.

They lie in the folder ``people`` of the user's data folder for Tapewise; the
environment variable TAPEWISE_DATA names another data folder. Each file is
named by a slug, never by the name as typed. Files are readable by their owner
alone.
"""

from __future__ import annotations

import os
import unicodedata
from collections.abc import Iterator
from difflib import get_close_matches
from itertools import count
from pathlib import Path

from tapewise_core.errors import FilesError, ProfileError
from tapewise_core.profiles import examples
from tapewise_core.profiles.entries import Entry as Entry
from tapewise_core.profiles.entries import entries_in
from tapewise_core.profiles.files import read_file, reason, typed_path, write_file
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.slug import digest, slug

DATA_VARIABLE = "TAPEWISE_DATA"
"""The environment variable that names another data folder."""


def people_folder() -> Path:
    """Return the folder in which people are saved; it need not exist yet.

    Raises FilesError if the environment names a folder that cannot be.
    """
    elsewhere = os.environ.get(DATA_VARIABLE)
    if elsewhere:
        return typed_path(elsewhere) / "people"
    from platformdirs import user_data_path

    return user_data_path("tapewise", appauthor=False) / "people"


def listing() -> tuple[Entry, ...]:
    """Return everyone saved, by name, then the example people not saved under their name.

    A file that cannot be used is listed with its fault. Raises FilesError only
    if the folder itself cannot be read.
    """
    saved = _saved()
    names = {entry.name.casefold() for entry in saved}
    shipped = entries_in(examples.folder(), shipped=True)
    return (*saved, *(entry for entry in shipped if entry.name.casefold() not in names))


def find(name: str) -> Entry:
    """Return the entry of a name: as written, else in other capitals, else by file name.

    Saved people come before examples. Raises FilesError with the near names if
    there is nobody.
    """
    return _find(name, listing())


def load(name: str) -> Profile:
    """Return a person; raises FilesError if there is none, ProfileError if the file is broken."""
    entry = find(name)
    if entry.profile is None:
        raise ProfileError(entry.fault)
    return entry.profile


def save(profile: Profile) -> Path:
    """Save a person, in place of whoever was saved under exactly this name; return the file."""
    place = _place(profile.name)
    write_file(place, profile)
    return place


def delete(name: str) -> Path:
    """Delete a saved person, broken or not; return the file that was. Examples stay."""
    return remove(find(name))


def remove(entry: Entry) -> Path:
    """Delete the file of one entry of the listing; return the file that was. Examples stay."""
    if entry.shipped:
        raise FilesError(f"{entry.name} is an example that came with the program and stays.")
    try:
        entry.path.unlink()
    except OSError as fault:
        raise FilesError(f"{entry.path} cannot be deleted: {reason(fault)}.") from fault
    return entry.path


def copy_in(path: Path, *, replace: bool = False) -> Profile:
    """Save the person a file holds, and return it.

    Raises FilesError if somebody of that name is saved and is not to be replaced.
    """
    profile = read_file(path)
    if not replace and any(entry.name == profile.name for entry in _saved()):
        raise FilesError(f"{profile.name} is saved already; say that it is to be replaced.")
    save(profile)
    return profile


def copy_out(name: str, path: Path, *, replace: bool = False) -> Path:
    """Write a person to a file, or into a folder; return the file.

    Raises FilesError if there is such a file and it is not to be replaced.
    """
    profile = load(name)
    place = path / f"{slug(profile.name)}.json" if path.is_dir() else path
    if not replace and os.path.lexists(place):
        raise FilesError(f"{place} exists already; choose another name or have it replaced.")
    write_file(place, profile)
    return place


def _find(name: str, entries: tuple[Entry, ...]) -> Entry:
    wanted = unicodedata.normalize("NFC", " ".join(name.split()))
    ways = (
        lambda entry: entry.name == wanted,
        lambda entry: entry.name.casefold() == wanted.casefold(),
        lambda entry: entry.path.stem == wanted.casefold(),
        lambda entry: slug(entry.name) == slug(wanted) and bool(wanted),
    )
    for fits in ways:
        for entry in entries:
            if fits(entry):
                return entry
    raise FilesError(_nobody(wanted, [entry.name for entry in entries]))


def _nobody(wanted: str, names: list[str]) -> str:
    folded = {name.casefold(): name for name in names}
    part = wanted.casefold()
    near = [folded[key] for key in get_close_matches(part, folded, n=3, cutoff=0.5)]
    near = near or [name for key, name in folded.items() if part and part in key]
    hint = f"did you mean {' or '.join(near)}?" if near else f"there are {', '.join(names)}."
    return f"Nobody is saved as “{wanted}”; {hint}"


def _saved() -> tuple[Entry, ...]:
    return entries_in(people_folder(), shipped=False)


def _place(name: str) -> Path:
    """Where a person is kept: their own file, else the first slug that is free."""
    for entry in _saved():
        if entry.profile is not None and entry.name == name:
            return entry.path
    folder = _made(people_folder())
    return next(place for stem in _stems(name) if not (place := folder / f"{stem}.json").exists())


def _stems(name: str) -> Iterator[str]:
    plain = slug(name)
    yield plain
    marked = f"{plain}-{digest(name)}"
    yield marked
    yield from (f"{marked}-{number}" for number in count(2))


def _made(folder: Path) -> Path:
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    except OSError as fault:
        raise FilesError(f"{folder} cannot be made: {reason(fault)}.") from fault
    return folder
