"""The people whose files lie in one folder, each with what is wrong with the file, if anything."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from tapewise_core.errors import FilesError, TapewiseError
from tapewise_core.profiles.files import read_file, reason
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.slug import digest, slug


@dataclass(frozen=True, slots=True)
class Entry:
    """One person's file; ``fault`` says in a sentence why it cannot be used, if so."""

    name: str
    path: Path
    profile: Profile | None
    fault: str = ""
    shipped: bool = False


def entries_in(folder: Path, *, shipped: bool) -> tuple[Entry, ...]:
    """Return an entry for every person's file in a folder, by name.

    Raises FilesError if the folder is there and cannot be read.
    """
    try:
        paths = [path for path in folder.iterdir() if _is_person(path)]
    except FileNotFoundError:
        return ()
    except OSError as fault:
        raise FilesError(f"{folder} cannot be read: {reason(fault)}.") from fault
    entries = _without_seconds([_entry(path, shipped) for path in paths])
    return tuple(sorted(entries, key=lambda entry: (entry.name.casefold(), entry.path.name)))


def _without_seconds(entries: list[Entry]) -> list[Entry]:
    """Let one file speak for a person: the one named after her, else the first by name.

    A copy beside it is listed with a fault, for saving would change one of the two only.
    """
    own: dict[str, Entry] = {}
    for entry in sorted(entries, key=_distance):
        if entry.profile is not None:
            own.setdefault(entry.name, entry)
    return [_second(entry, own[entry.name]) if entry.profile else entry for entry in entries]


def _distance(entry: Entry) -> tuple[bool, bool, str]:
    """How far a file's name is from the one a person of that name is saved under."""
    stem, plain = entry.path.stem, slug(entry.name)
    return stem != plain, not stem.startswith(f"{plain}-{digest(entry.name)}"), entry.path.name


def _second(entry: Entry, own: Entry) -> Entry:
    if entry is own:
        return entry
    fault = (
        f"{entry.path} is a second file of {own.name}, who is in {own.path.name}; delete one of "
        "the two, or write another name into it."
    )
    return Entry(_legible(entry.path.stem), entry.path, None, _legible(fault), entry.shipped)


def _is_person(path: Path) -> bool:
    return path.suffix == ".json" and not path.name.startswith(".")


def _entry(path: Path, shipped: bool) -> Entry:
    try:
        profile = read_file(path)
    except TapewiseError as error:
        return Entry(_legible(path.stem), path, None, _legible(str(error)), shipped)
    return Entry(profile.name, path, profile, "", shipped)


def _legible(text: str) -> str:
    """Put a mark for every byte of a file's name that is no letter in UTF-8; no screen takes it."""
    return text.encode(errors="replace").decode()
