"""What ``tapewise fitting`` understands."""

from __future__ import annotations

from tapewise_tui.parser_base import Commands, Parser, add, machine_readable, quiet, unit


def fitting(commands: Commands[Parser]) -> None:
    """Add the command."""
    says = "after trying on: say what is seen, try the change it asks for, keep it for later drafts"
    example = (
        'tapewise fitting "Marta Lindqvist" --garment jersey-top --symptom back-neck-stands-off '
        "--answer above --keep"
    )
    command = add(commands, "fitting", says, example)
    command.add_argument("person", nargs="?", metavar="PERSON", help="left out with --symptoms")
    _what_is_seen(command)
    _what_is_kept(command)
    quiet(command)
    unit(command)
    machine_readable(command)


def _what_is_seen(command: Parser) -> None:
    """Add what is said of a fitting, and what its change is tried on."""
    command.add_argument("--garment", metavar="NAME", help="what was tried on")
    help_ = "what is seen; --symptoms lists all; asked in order at a terminal"
    command.add_argument("--symptom", metavar="NAME", help=help_)
    command.add_argument("--answer", metavar="NAME", help="the answer to its question")
    help_ = "how much is changed; left out, the middle of what is usual"
    command.add_argument("--amount", metavar="AMOUNT", help=help_)
    command.add_argument("--keep", action="store_true", help="keep the change with the person")
    help_ = "the day of the fitting, such as 2026-03-03; today is usual"
    command.add_argument("--date", metavar="DAY", help=help_)
    command.add_argument(
        "--set",
        action="append",
        default=[],
        metavar="OPTION=VALUE",
        help="a style option of what was tried on, as often as wanted",
    )
    help_ = "write the folds, and before and after laid over each other, into this folder"
    command.add_argument("--out", metavar="DIR", help=help_)
    command.add_argument("--replace", action="store_true", help="replace files of the same names")


def _what_is_kept(command: Parser) -> None:
    """Add the lists, and the taking off."""
    command.add_argument("--symptoms", action="store_true", help="list what may be seen")
    command.add_argument("--list", action="store_true", help="list what is kept after fittings")
    help_ = "take the adjustment of this number off, as --list counts them"
    command.add_argument("--remove", metavar="NUMBER", help=help_)
