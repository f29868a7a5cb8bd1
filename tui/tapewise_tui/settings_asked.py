"""Options of a style as they are typed: ``--set OPTION=VALUE``."""

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
