"""Which form a person's file is written in, and what is said of one that a newer program wrote."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from tapewise_core.errors import ProfileError

FORMAT: Final = "tapewise profile"
VERSION: Final = 2


def newest(version: int) -> int:
    """Pass a version: what was read is kept as the newest from then on."""
    return VERSION


def is_newer(content: Mapping[str, object]) -> bool:
    """Say whether a file's content is of a version that this program does not know yet."""
    version = content.get("version")
    return content.get("format") == FORMAT and type(version) is int and version > VERSION


def refuse_newer(content: Mapping[str, object]) -> None:
    """Raise ProfileError for a newer format: it may differ in anything, so that is said alone."""
    if is_newer(content):
        raise ProfileError(
            f"This file is of version {content['version']}, written by a newer Tapewise; "
            f"this one reads up to version {VERSION}, so update the program."
        )
