"""A person's file that cannot be used, and the latest good state that her history holds."""

from __future__ import annotations

import os
from collections.abc import Collection
from datetime import datetime
from pathlib import Path

from tapewise_core.errors import FilesError, ProfileError
from tapewise_core.profiles import history, rules
from tapewise_core.profiles.entries import Entry
from tapewise_core.profiles.files import aside_of, reason, write_file
from tapewise_core.profiles.folders import alone, data_folder
from tapewise_core.profiles.history import State
from tapewise_core.profiles.places import saved
from tapewise_core.profiles.slug import marked_slug, slug
from tapewise_core.profiles.version import is_newer


def good_state(entry: Entry) -> State | None:
    """Return the latest state of whoever was in a file that cannot be used, if it is known.

    A file that a newer program wrote is whole and newer than any state: none stands in for it.
    """
    if not entry.fault or entry.shipped or _newer(entry.path):
        return None
    data = data_folder()
    alive = {one.known.id for one in saved() if not one.fault}
    found = (_latest(data, place.stem, alive, entry) for place in data.glob("history/*.jsonl"))
    return max(filter(None, found), key=lambda state: state.when, default=None)


def _newer(place: Path) -> bool:
    try:
        return is_newer(rules.plain_object(place.read_text("utf-8")))
    except (OSError, ValueError, ProfileError):
        return False


def _latest(data: Path, identity: str, alive: Collection[str], entry: Entry) -> State | None:
    """The newest state of an id that no good file has, if the file is named after it."""
    states = history.states(data, identity) if identity not in alive else ()
    name = states[0].profile.name if states else ""
    stem = entry.path.stem
    return (
        states[0] if name and (stem == slug(name) or stem.startswith(marked_slug(name))) else None
    )


def take_good(entry: Entry) -> State:
    """Put the latest good state in the place of a file that cannot be used; return it.

    The file is set aside among the person's states. Raises FilesError if no state is known, the
    file is a newer program's, or the disk does not let.
    """
    with alone() as data:
        state = good_state(entry)
        if state is None and _newer(entry.path):
            raise FilesError(f"{entry.path} is not spoilt, nothing is taken back: {entry.fault}")
        if state is None:
            raise FilesError(f"No earlier state is known of whoever was in {entry.path}.")
        aside = aside_of(data / "history" / state.profile.id)
        try:
            os.replace(entry.path, aside)
        except OSError as fault:
            raise FilesError(f"{entry.path} cannot be set aside: {reason(fault)}.") from fault
        write_file(entry.path, state.profile)
        history.note(data, state.profile, datetime.now())
        return state
