"""What tells one person from another, whatever both are called."""

from __future__ import annotations

import os

from tapewise_core.profiles.slug import digest


def id_of_name(name: str) -> str:
    """Return the id of whoever is written down without one; the same for the same name."""
    return f"name{digest(name, 16)}"


def new_id() -> str:
    """Return an id that nobody has."""
    return os.urandom(8).hex()
