"""The people whose files lie in one folder, each with what is wrong with the file, if anything."""

from __future__ import annotations

from functools import cached_property
from pathlib import Path

from msgspec.structs import replace

from tapewise_core.errors import FilesError, TapewiseError
from tapewise_core.frozen import Frozen
from tapewise_core.profiles import index
from tapewise_core.profiles.files import STRAY, read_file, reason
from tapewise_core.profiles.index import Known
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.slug import marked_slug, slug
from tapewise_core.text.legible import legible


class Entry(Frozen, dict=True):
    """One person's file; ``fault`` says in a sentence why it cannot be used, if so."""

    name: str
    path: Path
    known: Known
    fault: str = ""
    shipped: bool = False

    @cached_property
    def profile(self) -> Profile | None:
        """The person, read when first asked for; None where there is a fault."""
        if self.fault:
            return None
        try:
            return read_file(self.path)
        except TapewiseError:  # the file was well when it was listed, so it went since
            return None


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
    told = index.known(folder.parent / "index.json", paths)
    entries = [Entry(row.name, path, row, row.fault, shipped) for path, row in told.items()]
    listed = _without_copies(entries)
    return tuple(sorted(listed, key=lambda entry: (entry.name.casefold(), entry.path.name)))


def _without_copies(entries: list[Entry]) -> list[Entry]:
    """Let one file speak for a person: the one named after her, else the first by name.

    A copy beside it is listed with a fault, for saving would change one of the two only.
    """
    good = [entry for entry in entries if not entry.fault]
    if len({entry.known.id for entry in good}) == len({entry.name for entry in good}) == len(good):
        return entries
    own: dict[str, Entry] = {}
    for entry in sorted(entries, key=_distance):
        if not entry.fault:
            first = own.setdefault(entry.known.id, entry)
            own.setdefault(entry.name, first)
    return [
        entry if entry.fault else _copy(entry, own[entry.known.id], own[entry.name])
        for entry in entries
    ]


def _distance(entry: Entry) -> tuple[bool, bool, str]:
    """How far a file's name is from the one a person of that name is saved under."""
    stem, name = entry.path.stem, entry.name
    return stem != slug(name), not stem.startswith(marked_slug(name)), entry.path.name


def _copy(entry: Entry, by_id: Entry, by_name: Entry) -> Entry:
    own = by_name if by_id is entry else by_id
    if own is entry:
        return entry
    fault = (
        f"{entry.path} is a copy of {own.name}, who is in {own.path.name}; which of the two "
        f"counts? “tapewise profiles copy-in --replace” with this file takes it instead, "
        f"“tapewise profiles delete {entry.path.stem}” does away with it."
    )
    return replace(entry, name=legible(entry.path.stem), fault=legible(fault))


def _is_person(path: Path) -> bool:
    return path.suffix == ".json" and not path.name.startswith((".", STRAY))
