"""What is asked: options as they are typed, and what is set once for the user."""

from __future__ import annotations

from collections.abc import Iterable

from tapewise_core.errors import OptionError


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


def usual_machines() -> str:
    """Return the machines set for the user, else those assumed."""
    from tapewise_core.tasks.settings import settings

    return settings().machines or "overlocker,coverstitch"


def usual_unit() -> str:
    """Return the unit set for the user, else centimetres."""
    from tapewise_core.tasks.settings import settings

    return settings().unit or "cm"
