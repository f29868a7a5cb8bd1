"""Every state of a person, so that none is lost: the last fifty, and the last of each day.

A file a person in the folder ``history``, named by the person's id, a line for each state.
"""

from __future__ import annotations

import json
import os
from collections.abc import Sequence
from datetime import datetime
from pathlib import Path

from tapewise_core.errors import FilesError, OptionError, ProfileError
from tapewise_core.frozen import Frozen
from tapewise_core.profiles.files import put, reason
from tapewise_core.profiles.folders import private
from tapewise_core.profiles.profile import Profile

LAST = 50
"""How many of the newest states are kept, besides the last of each day."""

_TRIMMED_AT = 120
"""Lines of the file above which those that are kept no longer are taken out (our choice)."""


class State(Frozen):
    """A person as she was from a moment on."""

    when: datetime
    profile: Profile


def file_of(data: Path, identity: str) -> Path:
    """Return the file of a person's states."""
    return data / "history" / f"{identity}.jsonl"


def states(data: Path, identity: str) -> tuple[State, ...]:
    """Return the states kept of a person, the newest first; a line that is broken is left out.

    Raises FilesError if the file is there and cannot be read.
    """
    return tuple(reversed(kept(_read(_lines(file_of(data, identity))))))


def kept(all_states: Sequence[State]) -> tuple[State, ...]:
    """Return those of some states, oldest first, that are kept: the last ones, one a day."""
    older = all_states[:-LAST]
    last_of_day = {state.when.date(): state for state in older}
    newer_days = {state.when.date() for state in all_states[-LAST:]}
    days = (state for day, state in last_of_day.items() if day not in newer_days)
    return (*days, *all_states[-LAST:])


def chosen(kept_states: Sequence[State], which: str) -> State:
    """Return a state by its number, 1 being how she is now, or by its day, the last of that day.

    Raises OptionError if there is no such state.
    """
    if which.isascii() and which.isdigit() and len(which) < 6:
        if 1 <= int(which) <= len(kept_states):
            return kept_states[int(which) - 1]
        raise OptionError(f"There is no state {which}; there are 1 to {len(kept_states)}.")
    for state in kept_states:
        if state.when.date().isoformat() == which:
            return state
    raise OptionError(
        f"“{which}” is no state; give a number from 1 (now) to {len(kept_states)} "
        "or a day such as 2026-11-02 that “tapewise profiles history” lists."
    )


def note(data: Path, profile: Profile, when: datetime) -> None:
    """Add a state unless it is the newest already; whoever calls writes alone.

    Raises FilesError if it cannot be kept.
    """
    place = file_of(data, profile.id)
    lines = _lines(place)
    if lines and (newest := _state(lines[-1])) and newest.profile == profile:
        return
    private(place.parent)
    try:
        if len(lines) < _TRIMMED_AT:
            _append(place, f"{_row(State(when, profile))}\n".encode())
        else:
            rows = (*kept(_read(lines)), State(when, profile))
            put(place, "".join(f"{_row(state)}\n" for state in rows).encode())
    except OSError as fault:
        raise FilesError(f"{place} cannot be written: {reason(fault)}.") from fault


def _append(place: Path, line: bytes) -> None:
    """Add a line; one that a crash cut off before stays a line of its own."""
    handle = os.open(place, os.O_RDWR | os.O_CREAT | os.O_APPEND, 0o600)
    with os.fdopen(handle, "r+b") as file:
        size = file.seek(0, os.SEEK_END)
        file.seek(max(size - 1, 0))
        cut = file.read(1) not in (b"", b"\n")
        file.write(b"\n" + line if cut else line)


def _row(state: State) -> str:
    person = json.loads(state.profile.text())
    row = {"when": state.when.isoformat(timespec="milliseconds"), "person": person}
    return json.dumps(row, ensure_ascii=False)


def _lines(place: Path) -> list[str]:
    try:
        text = place.read_text("utf-8", errors="replace")
    except FileNotFoundError:
        return []
    except OSError as fault:
        raise FilesError(f"{place} cannot be read: {reason(fault)}.") from fault
    return [line for line in text.split("\n") if line]


def _read(lines: Sequence[str]) -> list[State]:
    """Return the states, one that says no more than the one before left out."""
    read = [state for line in lines if (state := _state(line)) is not None]
    pairs = zip([None, *read], read, strict=False)
    return [state for before, state in pairs if not before or before.profile != state.profile]


def _state(line: str) -> State | None:
    try:
        row = json.loads(line)
        when = datetime.fromisoformat(row["when"])
        return State(when, Profile.from_text(json.dumps(row["person"])))
    except (ValueError, KeyError, TypeError, RecursionError, ProfileError):
        return None
