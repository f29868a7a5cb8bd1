"""The manual page, made from what the commands understand."""

from __future__ import annotations

import argparse
from collections.abc import Iterator

from tapewise_core import __version__
from tapewise_tui.exits import MEANINGS
from tapewise_tui.parser_base import Parser, acts_of


def manual(top: Parser) -> str:
    """Return the page in the language of man, section 1."""
    return "\n".join(_lines(top)) + "\n"


def _lines(top: Parser) -> Iterator[str]:
    yield f'.TH TAPEWISE 1 "" "tapewise {__version__}" "User commands"'
    yield from (".SH NAME", "tapewise \\- draft patterns to a person's own measures")
    yield from (".SH SYNOPSIS", ".B tapewise", "[COMMAND] [OPTIONS]")
    yield from (".SH DESCRIPTION", _plain(top.description or ""))
    yield ".SH COMMANDS"
    for command in acts_of(top).values():
        yield from _command(command)
    yield ".SH EXIT STATUS"
    for code, meaning in MEANINGS.items():
        yield from (".TP", f".B {code}", _plain(meaning))


def _command(command: Parser) -> Iterator[str]:
    yield f".SS {_plain(command.prog)}"
    yield _plain(command.description or "")
    for action in command._actions:
        if action.help is argparse.SUPPRESS or isinstance(action, argparse._SubParsersAction):
            continue
        names = ", ".join(action.option_strings) or str(action.metavar or action.dest)
        value = f" {action.metavar}" if action.option_strings and action.metavar else ""
        yield from (".TP", f".B {_plain(names + value)}", _plain(action.help or ""))
    yield from (".PP", _plain(command.epilog or ""))
    for act in acts_of(command).values():
        yield from _command(act)


def _plain(text: str) -> str:
    """A hyphen as it is typed, no line taken for a request."""
    spelt = " ".join(text.split()).replace("\\", "\\e").replace("-", "\\-")
    return f"\\&{spelt}" if spelt.startswith((".", "'")) else spelt
