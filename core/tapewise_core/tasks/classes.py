"""A class copied in from a table, and out into one."""

from __future__ import annotations

import os
from collections.abc import Iterable
from pathlib import Path

from tapewise_core.errors import FilesError, TapewiseError
from tapewise_core.frozen import Frozen
from tapewise_core.profiles import store
from tapewise_core.profiles.files import put, reason
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.class_cells import TableFault
from tapewise_core.tasks.class_table import Row, read_table, table_of


class TakenIn(Frozen):
    """Who was saved from a table, and every fault of the rows that were not."""

    saved: tuple[str, ...]
    faults: tuple[TableFault, ...]


def copy_in(path: Path, *, replace: bool = False) -> TakenIn:
    """Save the people of a table; whoever is saved already is changed only if that was said.

    What the table leaves open stays as it was. Raises FilesError if it cannot be read at all.
    """
    table, saved, faults = read_table(path), [], []
    for row in table.rows:
        try:
            _save(row, replace=replace)
            saved.append(row.profile.name)
        except TapewiseError as error:
            faults.append(TableFault(row.number, "name", str(error), row.profile.name))
    told = sorted((*table.faults, *faults), key=lambda fault: fault.row)
    return TakenIn(tuple(saved), tuple(told))


def _save(row: Row, *, replace: bool) -> None:
    new = row.profile
    there = next(
        (e.profile for e in store.listing() if _called(e, new.name) and not e.shipped), None
    )
    if there is None:
        store.add(new)
        return
    about = {
        key: getattr(new, key) for key in row.given if key not in new.measures and key != "name"
    }
    merged = there.having(**about, measures={**there.measures, **new.measures})
    if _same(merged, there):
        return
    if not replace:
        raise FilesError(f"{there.name} is saved already; say that it is to be replaced.")
    store.keep(merged, there)


def _called(entry: store.Entry, name: str) -> bool:
    """Whether that is somebody's name; capitals make no other person."""
    return entry.name.casefold() == name.casefold()


def _same(one: Profile, other: Profile) -> bool:
    """Whether a table that came out says the same as what is saved."""
    return one.having(measures={}) == other.having(measures={}) and one.values() == other.values()


def copy_out(profiles: Iterable[Profile], path: Path, *, replace: bool = False) -> Path:
    """Write people into a table; raises FilesError with a sentence."""
    if not replace and os.path.exists(path):
        raise FilesError(f"{path} exists already; choose another name or have it replaced.")
    try:
        put(path, table_of(profiles).encode("utf-8-sig"))
    except (OSError, ValueError) as fault:
        raise FilesError(f"{path} cannot be written: {reason(fault)}.") from fault
    return path
