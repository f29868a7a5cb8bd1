"""What the command line understands."""

from __future__ import annotations

import argparse
from typing import NoReturn

from tapewise_core import __version__

PERSON = "a saved person's name, an example's, or a profile file (.json)"


BARE = "a bare number is in mm, or in inches for those who read inches"


class Parser(argparse.ArgumentParser):
    """A parser whose faults are one sentence and exit code 2."""

    def error(self, message: str) -> NoReturn:
        """Say what is wrong and where help is."""
        sentence = message[:1].upper() + message[1:]
        self.exit(2, f"tapewise: {sentence}; see “{self.prog} --help”.\n")


def parser() -> Parser:
    """Return the parser with all commands."""
    top = Parser(
        prog="tapewise",
        description="Draft patterns to a person's own measures. Without a command the app opens.",
        epilog='Example: tapewise draft "Marta Lindqvist" jersey-top --out my-top',
    )
    top.add_argument("-V", "--version", action="version", version=f"tapewise {__version__}")
    commands = top.add_subparsers(dest="command", required=True, metavar="COMMAND")
    for add in (_demo, _draft, _check, _garments, _profiles, _measure, _schema, _serve):
        add(commands)
    return top


Commands = argparse._SubParsersAction  # argparse names no public type for it


def _add(commands: Commands[Parser], name: str, says: str, example: str) -> Parser:
    return commands.add_parser(name, help=says, description=says, epilog=f"Example: {example}")


def _machine_readable(command: Parser) -> None:
    command.add_argument("--json", action="store_true", help="print JSON for a machine")


def _unit(command: Parser) -> None:
    command.add_argument(
        "--unit", choices=("cm", "in"), help="what people read, and what bare numbers are in"
    )


def _named(text: str) -> str:
    """A name that is there: an empty one would mean the folder one happens to be in."""
    if not text.strip():
        raise argparse.ArgumentTypeError("nothing is named; give a name such as my-top")
    return text


def _replace(command: Parser) -> None:
    says = "replace files of the same names that no draft wrote"
    command.add_argument("--replace", action="store_true", help=says)


def _demo(commands: Commands[Parser]) -> None:
    says = "draft the jersey top for an example person into ./tapewise-demo; asks nothing"
    command = _add(commands, "demo", says, "tapewise demo")
    _machine_readable(command)


def _draft(commands: Commands[Parser]) -> None:
    example = "tapewise draft ada.json jersey-top --out my-top --set sleeve-length=25 --unit cm"
    command = _add(commands, "draft", "draft a garment and write its files", example)
    command.add_argument("person", metavar="PERSON", help=PERSON)
    command.add_argument("garment", metavar="GARMENT", help="see “tapewise garments”")
    command.add_argument(
        "--out", required=True, type=_named, metavar="DIR", help="the folder to write into"
    )
    _replace(command)
    command.add_argument(
        "--set",
        action="append",
        default=[],
        metavar="OPTION=VALUE",
        help="a style option, as often as wanted; see “tapewise garments GARMENT”",
    )
    _unit(command)
    command.add_argument(
        "--machines",
        default="overlocker,coverstitch",
        metavar="LIST",
        help="any of overlocker, coverstitch, zigzag, joined by commas",
    )
    command.add_argument(
        "--format",
        action="append",
        default=[],
        metavar="NAME",
        help="a further format, as often as wanted; see “tapewise garments --formats”",
    )
    for name, says in (
        ("overlap", f"how far pages overlap; 12 mm is usual (1/2 in); {BARE}"),
        ("roll-width", f"the plotter's roll, for pdf-roll; 914 mm is usual (36 in); {BARE}"),
        ("page-margin", f"what the printer leaves blank; 10 mm is usual (3/8 in); {BARE}"),
    ):
        command.add_argument(f"--{name}", metavar="LENGTH", help=says)
    command.add_argument(
        "--page", metavar="WxH", help="paper of this size too, such as 30x42 cm or 11x17 in"
    )
    command.add_argument(
        "--no-pages",
        action="store_true",
        help="leave out what is made unasked: pages to print at home, and the PDF to read",
    )
    command.add_argument(
        "--unfolded", action="store_true", help="draw halves opened out, to cut from a single layer"
    )
    command.add_argument(
        "--no-allowances", action="store_true", help="draw stitch lines only, to add your own"
    )
    command.add_argument(
        "--piece",
        action="append",
        default=[],
        metavar="NAME",
        help="only this piece on paper, as often as wanted, such as front",
    )
    _machine_readable(command)


def _check(commands: Commands[Parser]) -> None:
    says = "list what is missing, estimated and unlikely about a person's measures"
    command = _add(commands, "check", says, 'tapewise check "Rosa Benítez"')
    command.add_argument("person", metavar="PERSON", help=PERSON)
    command.add_argument(
        "--garment", metavar="NAME", help="say too what this garment would gain from measuring"
    )
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
    says = "list, show, copy in, copy out or delete people"
    command = _add(commands, "profiles", says, 'tapewise profiles show "Marta Lindqvist"')
    _machine_readable(command)
    acts = command.add_subparsers(dest="act", metavar="ACT")
    _machine_readable(_add(acts, "list", "list everyone on file", "tapewise profiles list"))
    for act, says, what in (
        ("show", "show one person's measures", 'show "Marta Lindqvist"'),
        ("copy-in", "save the person a profile file holds", "copy-in ada.json"),
        ("copy-out", "write a person to a file or folder", "copy-out Ada ada.json"),
        ("delete", "delete a saved person", "delete Ada"),
    ):
        _act(acts, act, says, f"tapewise profiles {what}")


def _act(acts: Commands[Parser], act: str, says: str, example: str) -> None:
    command = _add(acts, act, says, example)
    argument = "file" if act == "copy-in" else "person"
    command.add_argument(argument, metavar=argument.upper())
    if act == "copy-out":
        command.add_argument("to", metavar="FILE", help="a file to write, or a folder")
    if act.startswith("copy"):
        command.add_argument("--replace", action="store_true", help="replace what is there")
    if act == "show":
        _unit(command)
    _machine_readable(command)


def _measure(commands: Commands[Parser]) -> None:
    says = "print the measuring sheet, for those who measure first and type later"
    command = _add(commands, "measure", says, "tapewise measure --print --garment jersey-top")
    command.add_argument("--print", action="store_true", required=True, help="print the sheet")
    command.add_argument("--garment", metavar="NAME", help="only what this garment uses")
    command.add_argument(
        "--out", type=_named, metavar="FILE", help="write to a .md, .html or .pdf file"
    )
    _replace(command)
    _unit(command)


def _schema(commands: Commands[Parser]) -> None:
    says = "print the JSON schema of draft.json, a person's file or what check --json prints"
    command = _add(commands, "schema", says, "tapewise schema draft")
    command.add_argument(
        "name", choices=("draft", "person", "check"), metavar="NAME", help="draft, person or check"
    )


def _serve(commands: Commands[Parser]) -> None:
    says = "show the app in a browser on this machine; needs the extra “serve”"
    command = _add(commands, "serve", says, "tapewise serve --port 8000")
    command.add_argument("--port", type=int, default=8000, metavar="N", help="8000 is usual")
