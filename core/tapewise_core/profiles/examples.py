"""The invented people who come with the program."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from tapewise_core.errors import FilesError
from tapewise_core.profiles.files import read_file
from tapewise_core.profiles.profile import Profile

DEMO = "Marta Lindqvist"
"""The person ``tapewise demo`` draws for; two measures are missing, so that estimates show."""


def folder() -> Path:
    """Return where the example people lie: in the package, or at the root of a checkout."""
    here = Path(__file__).resolve()
    packed = here.parent / "people"
    return packed if packed.is_dir() else here.parents[3] / "profiles"


def examples() -> Iterator[tuple[Path, Profile]]:
    """Yield each example person with the file it lies in, by file name."""
    for path in sorted(folder().glob("*.json")):
        yield path, read_file(path)


def example(name: str) -> Profile:
    """Return the example person of that name; raises FilesError if there is none."""
    for _, profile in examples():
        if profile.name == name:
            return profile
    raise FilesError(f"No example person is called {name}; the program may be installed in part.")
