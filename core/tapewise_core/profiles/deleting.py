"""Deleting people, and bringing them back for a day."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path

from tapewise_core.errors import FilesError
from tapewise_core.frozen import Frozen
from tapewise_core.profiles import trash
from tapewise_core.profiles.entries import Entry
from tapewise_core.profiles.files import reason, sync_folder
from tapewise_core.profiles.folders import alone, data_folder
from tapewise_core.profiles.naming import nobody
from tapewise_core.profiles.places import place_of, refuse_taken, saved
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.slug import digest


class Gone(Frozen):
    """Who or what was deleted and when; ``person`` is whose project it was, empty for a person."""

    name: str
    when: datetime
    person: str = ""

    @property
    def until(self) -> datetime:
        """Until when it can be brought back."""
        return self.when + trash.KEPT


def gone() -> tuple[Gone, ...]:
    """Return whoever can be brought back, who was deleted last first."""
    rows = trash.deleted(data_folder())
    found = (Gone(profile.name, trash.when(folder)) for folder, _, profile in rows if profile)
    return tuple(one for one in found if one.until >= datetime.now())


def remove(entry: Entry, *, for_good: bool = False) -> Path:
    """Delete one entry of the listing with all kept about her; return the file that was."""
    if entry.shipped:
        raise FilesError(f"{entry.name} is an example that came with the program and stays.")
    identity = f"file{digest(entry.path.name)}" if entry.fault else entry.known.id
    with alone() as data:
        try:
            gone = trash.throw_away(
                data, entry.path, identity, entry.name, datetime.now(), _copies(entry)
            )
            if for_good:
                trash.purge(data, gone.name.rpartition("-")[0])
        except OSError as fault:
            raise FilesError(f"{entry.path} cannot be deleted: {reason(fault)}.") from fault
    return entry.path


def _copies(entry: Entry) -> list[Path]:
    """Copies of a person's file that somebody laid beside it; they would be all of her again."""
    if entry.fault:
        return []
    who = (entry.known.id, entry.known.name)
    return [e.path for e in saved() if e.path != entry.path and (e.known.id, e.known.name) == who]


def restore(name: str) -> Profile:
    """Bring back whoever was deleted under exactly this name within a day.

    Raises FilesError if there is nobody, or somebody of that name is saved by now.
    """
    with alone() as data:
        trash.tidy(data, datetime.now())
        deleted = trash.deleted(data)
        for folder, _, profile in deleted:
            if profile is not None and profile.name == name.strip():
                refuse_taken(profile.name)
                if place_of(profile) is not None:
                    raise FilesError(f"{profile.name} is on file under another name.")
                return _back(data, folder, profile)
    raise FilesError(nobody(name, [row[2].name for row in deleted if row[2]], "was deleted as"))


def tidy() -> None:
    """Take away what a crash left behind and what was deleted more than a day ago."""
    now = datetime.now()
    if trash.due(data_folder(), now):
        with alone() as data:
            trash.tidy(data, now)


def _back(data: Path, folder: Path, profile: Profile) -> Profile:
    try:
        trash.bring_back(data, folder)
    except OSError as fault:
        raise FilesError(f"{profile.name} cannot be restored: {reason(fault)}.") from fault
    sync_folder(data / "people")
    return profile
