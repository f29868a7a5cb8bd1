"""Which module does what each command says; it is imported when it is asked for, no other is."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Mapping
from importlib import import_module

COMMANDS: Mapping[str, str] = {
    "demo": "commands_draft",
    "draft": "commands_draft",
    "check": "commands_draft",
    "batch": "commands_batch",
    "cloth": "commands_cloth",
    "garments": "commands_shop",
    "measure": "commands_shop",
    "schema": "commands_shop",
    "serve": "commands_shop",
    "profiles": "commands_people",
    "loved": "commands_loved",
    "fitting": "commands_fitting",
    "projects": "commands_projects",
    "settings": "commands_projects",
    "words": "commands_about",
    "doctor": "commands_about",
    "help": "commands_about",
    "completion": "commands_about",
    "man": "commands_about",
}
"""The module of each command; the function is called as the command is."""


def command(name: str) -> Callable[[argparse.Namespace], int]:
    """Return what does a command."""
    found: Callable[[argparse.Namespace], int]
    found = getattr(import_module(f"tapewise_tui.{COMMANDS[name]}"), name)
    return found


def run(options: argparse.Namespace) -> int:
    """Run the command that was parsed; returns the exit code.

    A garment that there is not is told before the command is read, which takes far longer.
    """
    named: str | None = getattr(options, "garment", None)
    if named is not None:
        from tapewise_core.tasks.named import refuse_unknown

        refuse_unknown(named)
    return command(options.command)(options)
