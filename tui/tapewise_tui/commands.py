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
    """Run the command that was parsed; returns the exit code."""
    return command(options.command)(options)
