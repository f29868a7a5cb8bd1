"""The people a person has saved, and the example people behind them.

Each file is named by a slug, never by the name as typed, and found again by the id inside.
Whoever writes does so alone and changes only what it changed; every state is kept.
"""

from __future__ import annotations

import contextlib
from datetime import datetime
from pathlib import Path

from tapewise_core.errors import FilesError, ProfileError, TapewiseError
from tapewise_core.profiles import examples, history, trash
from tapewise_core.profiles.entries import Entry as Entry
from tapewise_core.profiles.entries import entries_in
from tapewise_core.profiles.files import read_file, reason, sync_folder
from tapewise_core.profiles.folders import DATA_VARIABLE as DATA_VARIABLE
from tapewise_core.profiles.folders import alone, data_folder
from tapewise_core.profiles.history import State as State
from tapewise_core.profiles.merging import Clash as Clash
from tapewise_core.profiles.merging import merged
from tapewise_core.profiles.naming import exact, found, nobody
from tapewise_core.profiles.places import Kept as Kept
from tapewise_core.profiles.places import people_folder as people_folder
from tapewise_core.profiles.places import place_of, refuse_taken, save_as, saved, written
from tapewise_core.profiles.profile import Profile, id_of_name
from tapewise_core.profiles.slug import digest, slug


def listing() -> tuple[Entry, ...]:
    """Return everyone saved, by name, then the example people not saved under their name.

    A file that cannot be used is listed with its fault. Raises FilesError only
    if the folder itself cannot be read.
    """
    own = saved()
    names = {entry.name.casefold() for entry in own}
    shipped = entries_in(examples.folder(), shipped=True)
    return (*own, *(entry for entry in shipped if entry.name.casefold() not in names))


def find(name: str) -> Entry:
    """Return the entry of a name: as written, else in other capitals, else by file name.

    Saved people come before examples. Raises FilesError with the near names if
    there is nobody.
    """
    return found(name, listing())


def load(name: str) -> Profile:
    """Return a person; raises FilesError if there is none, ProfileError if the file is broken."""
    entry = find(name)
    if entry.profile is None:
        raise ProfileError(entry.fault or f"{entry.path} is no longer there.")
    return entry.profile


def id_of(name: str) -> str:
    """Return the id of whoever is called exactly so: saved, an example, or not on file yet."""
    usual = people_folder() / f"{slug(name)}.json"
    with contextlib.suppress(TapewiseError):
        if usual.exists() and (there := read_file(usual)).name == name:
            return there.id
        return exact(name, listing()).known.id or id_of_name(name)
    return id_of_name(name)


def on_file(profile: Profile) -> bool:
    """Say whether a person is saved, under whatever name."""
    return place_of(profile) is not None


def save(profile: Profile) -> Path:
    """Save a person as she is, in place of whoever has her id or exactly her name."""
    with alone() as data:
        return save_as(profile, data).path


def add(profile: Profile) -> Path:
    """Save somebody new; raises FilesError if somebody of that name is saved."""
    with alone() as data:
        refuse_taken(profile.name)
        return save_as(profile, data).path


def keep(mine: Profile, base: Profile | None) -> Kept:
    """Save what changed from ``base``, as it was read, and leave all else as it is on file.

    Without a base it is saved as it is. Raises FilesError if the person is no longer on file.
    """
    with alone() as data:
        if base is None:
            return save_as(mine, data)
        place = place_of(base)
        if place is None and _is_example(base):
            return save_as(mine, data)
        if place is None:
            raise FilesError(
                f"{base.name} is no longer on file: deleted or spoilt elsewhere. "
                "“tapewise profiles restore” brings back who was deleted."
            )
        theirs = read_file(place)
        new, clashes = merged(base, mine, theirs)
        if new.name != theirs.name:
            refuse_taken(new.name)
        if clashes:  # what was not taken can still be looked up
            history.note(data, theirs, datetime.fromtimestamp(place.stat().st_mtime))
            history.note(data, mine, datetime.now())
        return Kept(new, written(data, place, theirs, new), clashes)


def _is_example(profile: Profile) -> bool:
    """Whether it is as it came with the program: the first change makes a copy of one's own."""
    return any(one == profile for _, one in examples.examples())


def delete(name: str, *, for_good: bool = False) -> Path:
    """Delete a saved person, called exactly so, or a broken file; return the file that was.

    It can be undone for a day, unless it is for good. Examples stay.
    """
    return remove(named_exactly(name), for_good=for_good)


def named_exactly(name: str) -> Entry:
    """Return the entry called exactly so; raises FilesError with the near names if none is."""
    return exact(name, listing())


def remove(entry: Entry, *, for_good: bool = False) -> Path:
    """Delete one entry of the listing with all kept about her; return the file that was."""
    if entry.shipped:
        raise FilesError(f"{entry.name} is an example that came with the program and stays.")
    whole = not entry.fault
    identity = entry.known.id if whole else f"file{digest(entry.path.name)}"
    with alone() as data:
        try:
            own = entry.known.id if whole else ""
            gone = trash.throw_away(data, entry.path, own or identity, entry.name, datetime.now())
            if for_good:
                trash.purge(data, gone.name.rpartition("-")[0])
                (data / "index.json").unlink(missing_ok=True)
        except OSError as fault:
            raise FilesError(f"{entry.path} cannot be deleted: {reason(fault)}.") from fault
    return entry.path


def restore(name: str) -> Profile:
    """Bring back whoever was deleted under exactly this name within a day.

    Raises FilesError if there is nobody, or somebody of that name is saved by now.
    """
    with alone() as data:
        trash.tidy(data, datetime.now())
        gone = trash.deleted(data)
        for folder, _, profile in gone:
            if profile is not None and profile.name == name.strip():
                refuse_taken(profile.name)
                if place_of(profile) is not None:
                    raise FilesError(f"{profile.name} is on file under another name.")
                return _back(data, folder, profile)
    raise FilesError(nobody(name, [row[2].name for row in gone if row[2]], "was deleted"))


def states(name: str) -> tuple[State, ...]:
    """Return what a person was, the newest first; the first is how she is now."""
    profile = load(name)
    before = history.states(data_folder(), profile.id)
    if before and before[0].profile == profile:
        return before
    when = datetime.fromtimestamp(find(name).path.stat().st_mtime)
    return (State(when, profile), *before)


def restore_state(name: str, which: str) -> State:
    """Make a person what she was in an earlier state, which is a number or a day; return it."""
    was = history.chosen(states(name), which)
    keep(was.profile, load(name))
    return was


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
