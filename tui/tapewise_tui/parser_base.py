"""What all commands have in common on the command line."""

from __future__ import annotations

import argparse
import sys
from typing import Any, NoReturn

from tapewise_core.text.legible import legible


class Parser(argparse.ArgumentParser):
    """A parser whose faults are one sentence and exit code 2."""

    def _print_message(self, message: str, file: Any = None) -> None:
        """Print help so that an output that takes no more is noticed, not passed over."""
        print(message, end="", file=file or sys.stderr, flush=True)

    def error(self, message: str) -> NoReturn:
        """Say what is wrong and where help is."""
        sentence = message[:1].upper() + message[1:]
        self.exit(2, f"tapewise: {legible(sentence)}; see “{self.prog} --help”.\n")


Commands = argparse._SubParsersAction  # argparse names no public type for it


def add(commands: Commands[Parser], name: str, says: str, example: str) -> Parser:
    """Add a command with one sentence and one example."""
    return commands.add_parser(name, help=says, description=says, epilog=f"Example: {example}")


def machine_readable(command: Parser) -> None:
    """Let a command print JSON."""
    command.add_argument("--json", action="store_true", help="print JSON for a machine")


def unit(command: Parser) -> None:
    """Let a command be read in another unit."""
    command.add_argument(
        "--unit", choices=("cm", "in"), help="what people read, and what bare numbers are in"
    )
