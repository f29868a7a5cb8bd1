"""What is asked: options as they are typed, what is set once for the user, a yes or no."""

from __future__ import annotations

import sys
from collections.abc import Iterable

from tapewise_core.errors import OptionError
from tapewise_core.text.legible import legible
from tapewise_core.units import Unit


def asked(settings: Iterable[str]) -> dict[str, str]:
    """Turn OPTION=VALUE into a mapping; raises OptionError for anything else."""
    found: dict[str, str] = {}
    for setting in settings:
        key, equals, value = setting.partition("=")
        if not equals or not key.strip() or not value.strip():
            raise OptionError(
                f"--set takes OPTION=VALUE, such as sleeve-length=25, not “{setting}”."
            )
        if key.strip() in found:
            raise OptionError(f"--set names {key.strip()} twice; name it once.")
        found[key.strip()] = value.strip()
    return found


def with_length(settings: dict[str, str], length: str | None) -> dict[str, str]:
    """Return settings with the length of cloth there is; raises OptionError if it is said twice."""
    if length is None:
        return settings
    if "cloth-length" in settings:
        raise OptionError("--cloth-length and --set cloth-length say the same; leave one out.")
    return {**settings, "cloth-length": length}


def usual_machines() -> str:
    """Return the machines set for the user, else those assumed."""
    from tapewise_core.tasks.settings import settings

    return settings().machines or "overlocker,coverstitch"


def unit_of(asked_for: str | None) -> Unit:
    """Return the unit that is asked for, else the one set for the user, else centimetres."""
    from tapewise_core.tasks.settings import settings

    return Unit(asked_for or settings().unit or "cm")


def agreed(what: str, question: str) -> bool:
    """Ask a question that is answered no unless yes; raises OptionError where nobody is there."""
    if not sys.stdin.isatty():
        raise OptionError(f"{what} needs --yes where nobody can be asked.")
    try:
        answer = input(f"{legible(question)} [y/N] ")
    except EOFError:
        return False
    return answer.strip().lower() in ("y", "yes")
