"""Where what belongs to the user lies, for the owner alone; and who may write there at a time.

Everything lies in the user's data folder for Tapewise; the environment variable
TAPEWISE_DATA names another. ``people`` has a file a person, ``history`` what they were before,
``projects`` and ``work`` what is made for them, ``deleted`` what can be brought back for a day.
"""

from __future__ import annotations

import contextlib
import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from tapewise_core.errors import FilesError
from tapewise_core.profiles.files import reason, typed_path

DATA_VARIABLE = "TAPEWISE_DATA"
"""The environment variable that names another data folder."""

PATIENCE = 20.0
"""How long one writer waits for another [s] (our choice); one writes for a few milliseconds."""


def data_folder() -> Path:
    """Return the user's data folder; it need not exist yet.

    Raises FilesError if the environment names a folder that cannot be.
    """
    elsewhere = os.environ.get(DATA_VARIABLE)
    if elsewhere:
        return typed_path(elsewhere)
    from platformdirs import user_data_path

    try:
        found = user_data_path("tapewise", appauthor=False)
    except RuntimeError:
        found = Path("~")
    if not found.is_absolute():
        raise FilesError(
            f"There is no home folder to keep people in; set {DATA_VARIABLE} to a folder."
        )
    return found


_OURS = (
    *("people", "history", "projects", "work", "deleted"),
    *("lock", "index.json", "settings.json", "trouble.txt"),
)
"""What lies in a data folder of Tapewise alone; beside the settings, what they were."""


def _own_data_folder() -> Path:
    """Make the data folder; one that exists is closed to others unless more lies in it."""
    folder = data_folder()
    try:
        shared = any(
            name not in _OURS and not name.startswith("settings.json.")
            for name in os.listdir(folder)
        )
    except OSError:
        shared = False
    if shared:
        return folder
    return private(folder)


def write_private(place: Path, text: str) -> None:
    """Write a text for the owner alone, whatever the umask says; raises OSError."""
    private(place.parent)
    with open(
        place, "w", encoding="utf-8", opener=lambda path, flags: os.open(path, flags, 0o600)
    ) as file:
        file.write(text)
    with contextlib.suppress(OSError):
        place.chmod(0o600)


def private(folder: Path) -> Path:
    """Make a folder for the owner alone, or close one that others may look into; return it.

    Raises FilesError if it cannot be made.
    """
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    except OSError as fault:
        raise FilesError(f"{folder} cannot be made: {reason(fault)}.") from fault
    with contextlib.suppress(OSError):
        if folder.stat().st_mode & 0o077:
            folder.chmod(0o700)
    return folder


@contextmanager
def alone() -> Iterator[Path]:
    """Write as the only one, whatever other windows are open; gives the data folder.

    Raises FilesError if somebody else keeps writing, or the folder cannot be made.
    """
    folder = _own_data_folder()
    from filelock import FileLock, Timeout

    lock = FileLock(folder / "lock", timeout=PATIENCE, mode=0o600, is_singleton=True)
    try:
        lock.acquire(poll_interval=0.004)
    except Timeout:
        raise FilesError(
            f"Another Tapewise keeps {folder} locked; close it and try again."
        ) from None
    except OSError as fault:
        raise FilesError(f"{folder} cannot be written to: {reason(fault)}.") from fault
    try:
        yield folder
    finally:
        lock.release()
