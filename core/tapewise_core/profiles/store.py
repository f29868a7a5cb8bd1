"""The people a person has saved, and the example people behind them.

Each file is named by a slug, never by the name as typed, and found again by the id inside.
Whoever writes does so alone and changes only what it changed; every state is kept.
"""

from __future__ import annotations

import contextlib
from collections import Counter
from datetime import datetime
from pathlib import Path

from tapewise_core.errors import FilesError, ProfileError, TapewiseError
from tapewise_core.profiles import examples, history
from tapewise_core.profiles.damaged import good_state as good_state
from tapewise_core.profiles.damaged import take_good as take_good
from tapewise_core.profiles.deleting import Gone as Gone
from tapewise_core.profiles.deleting import gone as gone
from tapewise_core.profiles.deleting import remove as remove
from tapewise_core.profiles.deleting import restore as restore
from tapewise_core.profiles.deleting import tidy as tidy
from tapewise_core.profiles.entries import Entry as Entry
from tapewise_core.profiles.entries import entries_in
from tapewise_core.profiles.files import read_file
from tapewise_core.profiles.folders import DATA_VARIABLE as DATA_VARIABLE
from tapewise_core.profiles.folders import alone, data_folder
from tapewise_core.profiles.history import State as State
from tapewise_core.profiles.identity import id_of_name
from tapewise_core.profiles.merging import Clash as Clash
from tapewise_core.profiles.merging import merged
from tapewise_core.profiles.naming import exact, found
from tapewise_core.profiles.places import Kept as Kept
from tapewise_core.profiles.places import people_folder as people_folder
from tapewise_core.profiles.places import place_of, refuse_taken, save_as, saved, written
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.slug import slug


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


def groups() -> dict[str, int]:
    """Return the groups that people on file are in, by name, with how many are in each."""
    count = Counter(name for entry in saved() if not entry.fault for name in entry.known.groups)
    return dict(sorted(count.items(), key=lambda pair: (pair[0].casefold(), pair[0])))


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
