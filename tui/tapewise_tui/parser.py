"""What the command line understands."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Mapping

from tapewise_core import __version__
from tapewise_tui.exits import MEANINGS
from tapewise_tui.parser_base import PERSON, Commands, Parser, named, quiet, replace
from tapewise_tui.parser_base import add as _add
from tapewise_tui.parser_base import machine_readable as _machine_readable
from tapewise_tui.parser_base import unit as _unit
from tapewise_tui.parser_cloth import cloth
from tapewise_tui.parser_draft import batch, demo, draft
from tapewise_tui.parser_faults import whole_number
from tapewise_tui.parser_fitting import fitting
from tapewise_tui.parser_loved import loved
from tapewise_tui.parser_people import acts as people_acts
from tapewise_tui.parser_projects import projects, settings


def parser(first: str = "") -> Parser:
    """Return the parser of one command, if the first word names one, else of all."""
    top = Parser(
        prog="tapewise",
        description="Draft patterns to a person's own measures. Without a command the app opens.",
        epilog=_map(),
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    top.add_argument("-V", "--version", action="version", version=f"tapewise {__version__}")
    commands = top.add_subparsers(dest="command", required=True, metavar="COMMAND")
    for add in [_ADDING[first]] if first in _ADDING else _ADDING.values():
        add(commands)
    return top


def _map() -> str:
    """Which command when, and what the exit codes mean."""
    codes = "\n".join(f"  {code:>3}  {meaning}" for code, meaning in MEANINGS.items())
    return f"""Where to begin:
  tapewise                      opens the app, which asks for everything step by step
  tapewise demo                 shows what comes out
  tapewise measure --print      a sheet to measure by
  tapewise garments             what can be drafted, and with which options
  tapewise draft "Marta Lindqvist" jersey-top --out my-top
  tapewise help COMMAND         says all about one command

Exit codes:
{codes}"""


def _words(commands: Commands[Parser]) -> None:
    says = "explain words of the trade, with the American word beside the British one"
    command = _add(commands, "words", says, "tapewise words ease")
    _machine_readable(command)
    command.add_argument("word", nargs="?", default="", metavar="WORD", help="one word alone")


def _doctor(commands: Commands[Parser]) -> None:
    says = "say what is installed, where things lie and what is wrong with them"
    _machine_readable(_add(commands, "doctor", says, "tapewise doctor"))


def _help(commands: Commands[Parser]) -> None:
    command = _add(commands, "help", "say all about one command", "tapewise help profiles delete")
    command.add_argument("words", nargs="*", metavar="COMMAND")


def _completion(commands: Commands[Parser]) -> None:
    says = "print what a shell needs to complete commands and options"
    example = "tapewise completion bash > ~/.local/share/bash-completion/completions/tapewise"
    command = _add(commands, "completion", says, example)
    command.add_argument("shell", choices=("bash", "zsh", "tcsh"), metavar="SHELL")


def _man(commands: Commands[Parser]) -> None:
    _add(commands, "man", "print the manual page", "tapewise man > tapewise.1")


def _check(commands: Commands[Parser]) -> None:
    says = "list what is missing, estimated and unlikely about a person's measures"
    command = _add(commands, "check", says, 'tapewise check "Rosa Benítez"')
    command.add_argument("person", metavar="PERSON", help=PERSON)
    command.add_argument(
        "--garment", metavar="NAME", help="say too what this garment would gain from measuring"
    )
    quiet(command)
    _unit(command)
    _machine_readable(command)


def _garments(commands: Commands[Parser]) -> None:
    says = "list the garments, or one garment's options with defaults and limits"
    command = _add(commands, "garments", says, "tapewise garments jersey-top")
    command.add_argument("name", nargs="?", metavar="NAME", help="a garment")
    command.add_argument("--formats", action="store_true", help="list the formats for --format")
    command.add_argument(
        "--sources", action="store_true", help="list the publications a garment rests on"
    )
    _unit(command)
    _machine_readable(command)


def _profiles(commands: Commands[Parser]) -> None:
    says = "list, show, copy, compare, restore or delete people"
    command = _add(commands, "profiles", says, 'tapewise profiles show "Marta Lindqvist"')
    _machine_readable(command)
    acts = command.add_subparsers(dest="act", metavar="ACT")
    people_acts(acts)


def _measure(commands: Commands[Parser]) -> None:
    says = "print the measuring sheet, for those who measure first and type later"
    command = _add(commands, "measure", says, "tapewise measure --print --garment jersey-top")
    command.add_argument("--print", action="store_true", required=True, help="print the sheet")
    command.add_argument("--garment", metavar="NAME", help="only what this garment uses")
    command.add_argument(
        "--out", type=named, metavar="FILE", help="write to a .md, .html or .pdf file"
    )
    replace(command)
    _unit(command)


def _schema(commands: Commands[Parser]) -> None:
    says = "print the JSON schema of draft.json, a person's file or what check --json prints"
    command = _add(commands, "schema", says, "tapewise schema draft")
    command.add_argument(
        "name",
        choices=("draft", "person", "check"),
        metavar="SCHEMA",
        help="draft, person or check",
    )


def _serve(commands: Commands[Parser]) -> None:
    says = "show the app in a browser on this machine; needs the extra “serve”"
    command = _add(commands, "serve", says, "tapewise serve --port 8000")
    command.add_argument(
        "--port", type=whole_number, default=8000, metavar="N", help="8000 is usual"
    )


_ADDING: Mapping[str, Callable[[Commands[Parser]], None]] = {
    "demo": demo,
    "draft": draft,
    "cloth": cloth,
    "batch": batch,
    "check": _check,
    "garments": _garments,
    "profiles": _profiles,
    "loved": loved,
    "fitting": fitting,
    "projects": projects,
    "settings": settings,
    "measure": _measure,
    "schema": _schema,
    "serve": _serve,
    "words": _words,
    "doctor": _doctor,
    "help": _help,
    "completion": _completion,
    "man": _man,
}
"""What adds each command, in the order of help. A command costs half a millisecond."""
