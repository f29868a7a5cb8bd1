"""What the command line understands."""

from __future__ import annotations

import argparse

from tapewise_core import __version__
from tapewise_tui.exits import MEANINGS
from tapewise_tui.parser_base import Commands, Parser, quiet
from tapewise_tui.parser_base import add as _add
from tapewise_tui.parser_base import machine_readable as _machine_readable
from tapewise_tui.parser_base import unit as _unit
from tapewise_tui.parser_cloth import closer, cloth, length
from tapewise_tui.parser_faults import whole_number
from tapewise_tui.parser_fitting import fitting
from tapewise_tui.parser_loved import loved
from tapewise_tui.parser_people import acts as people_acts
from tapewise_tui.parser_projects import projects, settings

PERSON = "a saved person's name, an example's, or a profile file (.json)"


BARE = "a bare number is in mm, or in inches for those who read inches"


def parser() -> Parser:
    """Return the parser with all commands."""
    top = Parser(
        prog="tapewise",
        description="Draft patterns to a person's own measures. Without a command the app opens.",
        epilog=_map(),
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    top.add_argument("-V", "--version", action="version", version=f"tapewise {__version__}")
    commands = top.add_subparsers(dest="command", required=True, metavar="COMMAND")
    for add in (
        *(_demo, _draft, cloth, _batch, _check, _garments, _profiles, loved, fitting),
        *(projects, settings),
        *(_measure, _schema, _serve, _words, _doctor, _help, _completion, _man),
    ):
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
    quiet(command)
    _machine_readable(command)


def _draft(commands: Commands[Parser]) -> None:
    example = "tapewise draft ada.json jersey-top --out my-top --set sleeve-length=25 --unit cm"
    command = _add(commands, "draft", "draft a garment and write its files", example)
    command.add_argument("person", nargs="?", metavar="PERSON", help=PERSON)
    command.add_argument("garment", nargs="?", metavar="GARMENT", help="see “tapewise garments”")
    help_ = "draw a project again, or keep this draft as a project of that name"
    command.add_argument("--project", metavar="NAME", help=help_)
    help_ = "print the lengths to check a hand draft by; without --out nothing is written"
    command.add_argument("--hand", action="store_true", help=help_)
    help_ = "as a garment of hers that fits; see “tapewise loved”"
    command.add_argument("--like", metavar="NAME", help=help_)
    quiet(command)
    _style(command, out_needed=False)
    length(command)
    closer(command)
    _pages(command)
    _machine_readable(command)


def _batch(commands: Commands[Parser]) -> None:
    says = "draft a garment for everyone in a table, a folder each"
    example = "tapewise batch class.csv jersey-top --out class --set ease=4"
    command = _add(commands, "batch", says, example)
    help_ = "a table; “tapewise profiles copy-in --template” prints an empty one"
    command.add_argument("people", metavar="TABLE", help=help_)
    command.add_argument("garment", metavar="GARMENT", help="see “tapewise garments”")
    help_ = "how many people at a time; as many as there are processors is usual"
    command.add_argument("--jobs", type=whole_number, metavar="N", help=help_)
    help_ = "write how to draft it by hand too, with its pictures"
    command.add_argument("--steps", action="store_true", help=help_)
    help_ = "work on a cluster, such as tcp://HOST:8786; needs the extra “cluster”"
    command.add_argument("--cluster", metavar="ADDRESS", help=help_)
    quiet(command)
    _style(command)
    _machine_readable(command)


def _style(command: Parser, *, out_needed: bool = True) -> None:
    """Let a command be told style, paper and formats."""
    says = "the folder to write into"
    command.add_argument("--out", required=out_needed, type=_named, metavar="DIR", help=says)
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
        metavar="LIST",
        help="any of overlocker, coverstitch, zigzag, straight, hand, joined by commas; "
        "overlocker,coverstitch unless “tapewise settings” says otherwise",
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


def _pages(command: Parser) -> None:
    """Let a draft be told what is printed of it."""
    _replace(command)
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
    command.add_argument(
        "--port", type=whole_number, default=8000, metavar="N", help="8000 is usual"
    )
