"""Reading and writing one person's file, whole or not at all."""

from __future__ import annotations

import contextlib
import os
from itertools import count
from pathlib import Path

from tapewise_core.errors import FilesError, ProfileError
from tapewise_core.profiles.profile import Profile

LARGEST_FILE = 1_000_000
"""Bytes above which a file is no person's; a full one has under 10,000."""


STRAY = ".tapewise-"
"""How the name of a file begins that is not in its place yet."""


def read_file(path: Path) -> Profile:
    """Return the profile a file holds.

    Raises FilesError if the file cannot be read, and ProfileError, with the file
    named and all faults, if it does not hold a profile.
    """
    content = file_bytes(path)
    if len(content) > LARGEST_FILE:
        raise ProfileError(f"{path} is larger than 1 MB, so it is no person's file.")
    try:
        return Profile.from_text(content.decode("utf-8-sig"))
    except UnicodeDecodeError:
        raise ProfileError(f"{path} is not text in UTF-8; save it in that encoding.") from None
    except ProfileError as error:
        raise ProfileError((f"{path}: ", *error.told), error.faults, str(path)) from None


def file_bytes(path: Path) -> bytes:
    """Return what a file holds, of a large one no more than tells that it is too large.

    Raises FilesError with a sentence.
    """
    try:
        if path.exists() and not path.is_file():
            raise FilesError(f"{path} is not a file; give the name of one.")
        with path.open("rb") as file:
            return file.read(LARGEST_FILE + 1)
    except FileNotFoundError:
        raise FilesError(f"There is no file {path}.") from None
    except (OSError, ValueError) as fault:
        raise FilesError(f"{path} cannot be read: {reason(fault)}.") from fault


def typed_path(text: str) -> Path:
    """Return the path that was typed, ``~`` being the home folder.

    Raises FilesError for the home of somebody who has none here, and for a name
    that no system allows.
    """
    if "\0" in text:
        raise FilesError(f"“{text.replace(chr(0), '?')}” holds a sign that no file name can have.")
    try:
        return Path(text).expanduser()
    except RuntimeError:
        home = Path(text).parts[0]
        raise FilesError(f"{text}: there is no home folder “{home}” here; name another.") from None


def write_file(path: Path, profile: Profile) -> None:
    """Write a profile aside and put it in place; a crash leaves the old file or the new.

    The file is for its owner alone, since it says how a person is built. A link
    stays a link. Raises FilesError, with the old file as it was.
    """
    place = Path(os.path.realpath(path))
    try:
        put(place, profile.text().encode())
    except (OSError, ValueError) as fault:
        raise FilesError(f"{path} cannot be written: {reason(fault)}.") from fault


def put(place: Path, content: bytes) -> None:
    """Write a file aside and put it in place, for its owner alone; raises OSError."""
    import tempfile  # whoever only reads does not wait for it

    handle, aside = tempfile.mkstemp(prefix=STRAY, suffix=".tmp", dir=place.parent)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())
        os.replace(aside, place)
    except BaseException:
        with contextlib.suppress(OSError):
            os.unlink(aside)
        raise
    sync_folder(place.parent)


def keep_beside(place: Path, beside: Path) -> None:
    """Keep what a file holds under a second name, in place of what has it; raises OSError."""
    aside = beside.with_name(f"{STRAY}{beside.name}.tmp")
    with contextlib.suppress(FileNotFoundError):
        aside.unlink()
    try:
        os.link(place, aside)
    except OSError:  # not every disk knows second names
        put(beside, place.read_bytes())
    else:
        os.replace(aside, beside)


def aside_of(place: Path) -> Path:
    """Return a free name beside a file, for one that cannot be used."""
    names = (f"{place.name}.unusable{'' if n == 1 else f'-{n}'}" for n in count(1))
    return next(path for name in names if not os.path.lexists(path := place.with_name(name)))


def sync_folder(folder: Path) -> None:
    """Have the disk keep what a folder lists now, where the system can be asked to."""
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def why(fault: OSError | ValueError) -> str:
    """Return why a file cannot be used, as the end of a sentence."""
    return f"it cannot be read: {reason(fault)}" if isinstance(fault, OSError) else str(fault)


def reason(fault: OSError | ValueError) -> str:
    """Return what the system says is wrong, as the end of a sentence."""
    says = (fault.strerror or "") if isinstance(fault, OSError) else "its name is not possible"
    return says[:1].lower() + says[1:] or "the system gives no reason"
