"""Files put in place together: all of them, or none."""

from __future__ import annotations

import contextlib
import errno
import os
import shutil
import tempfile
from collections.abc import Mapping
from pathlib import Path, PurePosixPath

from tapewise_core.errors import FilesError


def write_all(folder: Path, files: Mapping[str, bytes]) -> list[tuple[str, int]]:
    """Write files by relative name into a folder and return names and sizes [bytes].

    Everything is written aside, in a hidden folder beside its place, and moved
    once it is complete; files of these names are replaced, others left alone.
    Raises FilesError with a sentence, leaving no half-written file: the folder
    is as it was, or holds every file.
    """
    names = [safe(name) for name in files]
    made = made_folder(folder)
    try:
        refuse_blocked(folder, names)
        aside = Path(tempfile.mkdtemp(prefix=".tapewise-", dir=folder))
        try:
            write_aside(aside, files)
            _swap(aside, folder, names)
        finally:
            shutil.rmtree(aside, ignore_errors=True)
    except OSError as fault:
        unmake(made)
        raise FilesError(says(fault, folder)) from fault
    except BaseException:
        unmake(made)
        raise
    return [(name, len(content)) for name, content in files.items()]


def safe(name: str) -> str:
    """Return a relative name that stays inside the folder; raises FilesError for any other."""
    path = PurePosixPath(name)
    if not name or path.is_absolute() or ".." in path.parts or "\\" in name:
        raise FilesError(f"“{name}” is not a file name inside the folder asked for.")
    return str(path)


def made_folder(folder: Path) -> list[Path]:
    """Make the folder and those above it; return what was made, innermost first.

    Raises FilesError with a sentence.
    """
    missing: list[Path] = []
    try:
        missing = [path for path in (folder, *folder.parents) if not path.exists()]
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    except FileExistsError:
        raise FilesError(f"{folder} is a file; give the name of a folder to write into.") from None
    except NotADirectoryError:
        raise FilesError(f"{folder} runs through a file; give the name of a folder.") from None
    except OSError as fault:
        unmake(missing)
        raise FilesError(says(fault, folder)) from fault
    except ValueError:
        shown = str(folder).replace("\0", "?")
        raise FilesError(f"{shown} holds a sign that no folder's name can have.") from None
    return missing


def unmake(made: list[Path]) -> None:
    """Take back folders that were made for nothing."""
    for path in made:
        with contextlib.suppress(OSError):
            path.rmdir()


def refuse_blocked(folder: Path, names: list[str]) -> None:
    """Raise FilesError for a folder where a file should go, or a file where a folder should be."""
    for name in names:
        place = folder / name
        if place.is_dir():
            raise FilesError(f"{place} is a folder, and a file of that name is to be written.")
        for above in place.parents:
            if above == folder:
                break
            if above.exists() and not above.is_dir():
                raise FilesError(f"{above} is a file, and a folder of that name is needed.")


def write_aside(aside: Path, files: Mapping[str, bytes]) -> None:
    """Write files into ``new`` in a folder of their own, each down to the disk."""
    (aside / "new").mkdir(mode=0o700, exist_ok=True)  # it may become the folder itself
    for name, content in files.items():
        place = aside / "new" / name
        place.parent.mkdir(parents=True, exist_ok=True)
        with open(place, "wb", opener=_for_owner) as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())


def _for_owner(name: str, flags: int) -> int:
    """Open a file that only its owner may read: it says how a person is built."""
    return os.open(name, flags, 0o600)


def _swap(aside: Path, folder: Path, names: list[str]) -> None:
    """Move each new file into place, keeping the old one until all are there."""
    swapped: list[tuple[Path, Path | None]] = []
    made: list[Path] = []
    try:
        for name in names:
            place, old = folder / name, aside / "old" / name
            made = [*[p for p in place.parents if not p.exists()], *made]
            place.parent.mkdir(parents=True, exist_ok=True)
            kept = _kept(place, old)
            swapped.append((place, kept))
            os.replace(aside / "new" / name, place)
    except BaseException:
        _swap_back(swapped)
        unmake(made)
        raise


def _kept(place: Path, old: Path) -> Path | None:
    """Keep a copy of what stands in a place, if anything does."""
    if not place.exists():
        return None
    old.parent.mkdir(parents=True, exist_ok=True)
    try:
        os.link(place, old)
    except OSError:
        shutil.copy2(place, old)
    return old


def _swap_back(swapped: list[tuple[Path, Path | None]]) -> None:
    for place, old in reversed(swapped):
        with contextlib.suppress(OSError):
            if old is None:
                place.unlink(missing_ok=True)
            else:
                os.replace(old, place)


_FULL = {errno.ENOSPC, errno.EDQUOT, errno.EFBIG}
_FORBIDDEN = {errno.EACCES, errno.EPERM, errno.EROFS}


def says(fault: OSError, folder: Path) -> str:
    """Return one sentence for what the system reports."""
    if fault.errno in _FULL:
        return f"The disk under {folder} is full, so nothing was written; free some space first."
    if fault.errno in _FORBIDDEN:
        return f"{folder} may not be written to; choose another folder or change its permissions."
    if fault.errno in {errno.ENAMETOOLONG, errno.EINVAL}:
        return f"{_short(folder)} is not a name this system allows for a folder; choose another."
    reason = (fault.strerror or "the system gave no reason").lower()
    return f"The files could not be written into {folder}: {reason}."


def _short(folder: Path) -> str:
    """A name no longer than a line or two, its end left out."""
    told = str(folder)
    return told if len(told) <= 120 else told[:119] + "…"
