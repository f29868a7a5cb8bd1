"""What all commands have in common on the command line."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Sequence
from typing import Any, NoReturn

from tapewise_core.text.legible import legible
from tapewise_core.text.near import near_words
from tapewise_tui.parser_faults import plainly, unknown


class Parser(argparse.ArgumentParser):
    """A parser whose faults are one sentence and exit code 2."""

    _given: list[str]

    def _print_message(self, message: str, file: Any = None) -> None:
        """Print help so that an output that takes no more is noticed, not passed over."""
        print(message, end="", file=file or sys.stderr, flush=True)

    def parse_args(self, args: Any = None, namespace: Any = None) -> Any:
        """Parse, and say of an option that there is not what may be meant by it."""
        found, rest = self.parse_known_args(args, namespace)
        used = self._used(found)
        rest = [word for word in rest if not used._take(found, word)]
        if rest:
            used._refuse_option(rest)
            used.error(f"“{rest[0]}” is more than this command takes")
        return found

    def parse_known_args(self, args: Any = None, namespace: Any = None) -> Any:
        """Parse, remembering what was given for when something is found missing."""
        self._given = list(args or ())
        return super().parse_known_args(args, namespace)

    def _refuse_option(self, given: Sequence[str]) -> None:
        """Leave with the names that come near if an option was given that there is not."""
        there = tuple(self._option_string_actions)
        wrong = unknown(given, there)
        if wrong is not None:
            self.error(f"There is no option {wrong}; {near_words(wrong, there)}".rstrip("."))

    def _take(self, found: argparse.Namespace, word: str) -> bool:
        """Take a word that stands after options for what may be left out and is not there yet."""
        for action in self._actions:
            free = not action.option_strings and action.nargs == "?"
            if free and getattr(found, action.dest, None) is None and not word.startswith("-"):
                setattr(found, action.dest, word)
                return True
        return False

    def _used(self, found: argparse.Namespace) -> Parser:
        """The parser of the command and act that were named."""
        used = self
        for name in (getattr(found, "command", None), getattr(found, "act", None)):
            used = acts_of(used).get(name or "", used)
        return used

    def _check_value(self, action: argparse.Action, value: Any) -> None:
        if action.choices is not None and value not in action.choices:
            there = tuple(map(str, action.choices))
            what = str(action.metavar or action.dest).lower()
            raise argparse.ArgumentError(
                None, f"There is no {what} “{value}”; {near_words(str(value), there)}".rstrip(".")
            )

    def _after(self, option: str) -> str:
        """What follows an option, as its help has it."""
        action = self._option_string_actions.get(option)
        if action is None:
            return "something"
        return str(action.metavar or " or ".join(map(str, action.choices or ["something"])))

    def error(self, message: str) -> NoReturn:
        """Say what is wrong and where help is."""
        sentence = plainly(message, self._after)
        if sentence.startswith("Missing: "):  # a slip in an option is what led to it
            given, self._given = self._given, list[str]()
            self._refuse_option(given)
        sentence = sentence[:1].upper() + sentence[1:]
        see = " See" if sentence.endswith("?") else "; see"
        self.exit(2, f"tapewise: {legible(sentence)}{see} “{self.prog} --help”.\n")


PERSON = "a saved person's name, an example's, or a profile file (.json)"

Commands = argparse._SubParsersAction  # argparse names no public type for it


def acts_of(parser: Parser) -> dict[str, Parser]:
    """Return the parsers of the commands or acts under one, by name."""
    for action in parser._actions:
        if isinstance(action, argparse._SubParsersAction):
            return dict(action.choices)
    return {}


def quiet(command: Parser) -> None:
    """Let a command say only what is wrong."""
    command.add_argument("--quiet", action="store_true", help="say only what is wrong")


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


def named(text: str) -> str:
    """Pass a name that is there: an empty one would mean the folder one happens to be in."""
    if not text.strip():
        raise argparse.ArgumentTypeError("nothing is named; give a name such as my-top")
    return text


def replace(command: Parser) -> None:
    """Let a command write over files."""
    says = "replace files of the same names that no draft wrote"
    command.add_argument("--replace", action="store_true", help=says)
