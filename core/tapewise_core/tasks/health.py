"""Where a user's things lie, and what is wrong with them."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

from tapewise_core.errors import TapewiseError
from tapewise_core.profiles import store
from tapewise_core.profiles.folders import DATA_VARIABLE, data_folder
from tapewise_core.tasks import damaged, work


def where() -> dict[str, str]:
    """Return the places of a user's things by what they are."""
    try:
        data = data_folder()
        people = [entry for entry in store.listing() if not entry.shipped]
    except TapewiseError as error:
        return {"data folder": f"none: {error}"}
    chosen = f", named by {DATA_VARIABLE}" if os.environ.get(DATA_VARIABLE) else ""
    return {
        "data folder": f"{data}{chosen}",
        "people": f"{len(people)} in {data / 'people'}",
        "projects": f"{len(work.projects())} in {work.folder()}",
        "notes of trouble": str(data / "trouble.txt")
        if (data / "trouble.txt").exists()
        else "none",
    }


def trouble() -> list[str]:
    """Return what is wrong, a sentence each."""
    try:
        return list(_troubles(data_folder()))
    except TapewiseError as error:
        return [str(error)]


def _troubles(data: Path) -> Iterator[str]:
    if data.exists() and not os.access(data, os.R_OK | os.W_OK | os.X_OK):
        yield f"{data} may not be written to; change its permissions."
        return
    if os.name == "posix" and data.exists() and data.stat().st_mode & 0o077:
        yield f"{data} may be looked into by others; “chmod 700” closes it."
    yield from damaged.met()
