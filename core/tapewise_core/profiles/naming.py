"""Who is meant by a name that was typed."""

from __future__ import annotations

import unicodedata
from collections.abc import Sequence

from tapewise_core.errors import FilesError
from tapewise_core.profiles.entries import Entry
from tapewise_core.profiles.slug import slug


def found(name: str, entries: Sequence[Entry]) -> Entry:
    """Return the entry of a name: as written, else in other capitals, else by file name.

    Raises FilesError with the near names if there is nobody, or if several may be meant.
    """
    wanted = _tidy(name)
    ways = (
        lambda entry: entry.name == wanted,
        lambda entry: entry.name.casefold() == wanted.casefold(),
        lambda entry: entry.path.stem == wanted.casefold(),
        lambda entry: slug(entry.name) == slug(wanted) and bool(wanted),
    )
    for fits in ways:
        fitting = [entry for entry in entries if fits(entry)]
        if len(names := {entry.name for entry in fitting}) > 1:
            told = " or ".join(f"“{one}”" for one in sorted(names))
            raise FilesError(f"“{wanted}” may be {told}; write the name as it stands.")
        if fitting:
            return fitting[0]
    raise FilesError(nobody(wanted, [entry.name for entry in entries]))


def exact(name: str, entries: Sequence[Entry]) -> Entry:
    """Return the entry called exactly so; raises FilesError with the near names if none is."""
    wanted = _tidy(name)
    for entry in entries:
        if entry.name == wanted:
            return entry
    raise FilesError(nobody(wanted, [entry.name for entry in entries], "is called exactly"))


def nobody(wanted: str, names: Sequence[str], what: str = "is saved as") -> str:
    """Say that there is nobody of a name, and who comes near."""
    from difflib import get_close_matches  # only where a name is wrong

    folded = {name.casefold(): name for name in names}
    part = wanted.casefold()
    near = [folded[key] for key in get_close_matches(part, folded, n=3, cutoff=0.5)]
    near = near or [name for key, name in folded.items() if part and part in key]
    if near:
        hint = f"did you mean {' or '.join(near)}?"
    else:
        hint = f"there are {', '.join(names[:12])}." if names else "there is nobody."
    return f"Nobody {what} “{wanted}”; {hint}"


def _tidy(name: str) -> str:
    return unicodedata.normalize("NFC", " ".join(name.split()))
