"""What ``tapewise profiles`` understands."""

from __future__ import annotations

from tapewise_tui.parser_base import Commands, Parser, add, machine_readable, quiet, unit

_EXAMPLE = "Marta Lindqvist"


def acts(there: Commands[Parser]) -> None:
    """Add all acts with people."""
    for act in (_list, _show, _copy_in, _copy_out, _delete, _restore, _history, _compare):
        machine_readable(act(there))
    for act in (_duplicate, _set, _group):
        machine_readable(act(there))
    for name, command in there.choices.items():
        if name not in ("list", "show", "history", "compare"):
            quiet(command)


def _list(there: Commands[Parser]) -> Parser:
    command = add(there, "list", "list everyone on file", "tapewise profiles list")
    command.add_argument("--group", metavar="NAME", help="only those of a group")
    return command


def _show(there: Commands[Parser]) -> Parser:
    example = f'tapewise profiles show "{_EXAMPLE}"'
    command = _of_person(there, "show", "show one person's measures", example)
    unit(command)
    return command


def _copy_in(there: Commands[Parser]) -> Parser:
    says = "save the person a profile file holds, or everyone in a table"
    command = add(there, "copy-in", says, "tapewise profiles copy-in class.csv")
    command.add_argument("file", nargs="?", metavar="FILE", help="a .json file, or a .csv table")
    command.add_argument("--template", action="store_true", help="print an empty table")
    command.add_argument("--replace", action="store_true", help="replace what is there")
    return command


def _copy_out(there: Commands[Parser]) -> Parser:
    says = "write a person to a file or folder, or many people into a table"
    command = add(there, "copy-out", says, "tapewise profiles copy-out Ada ada.json")
    help_ = "left out, everybody saved goes into a .csv table"
    command.add_argument("person", nargs="?", metavar="PERSON", help=help_)
    command.add_argument("to", metavar="FILE", help="a file to write, or a folder")
    command.add_argument("--group", metavar="NAME", help="only those of a group")
    command.add_argument("--replace", action="store_true", help="replace what is there")
    return command


def _delete(there: Commands[Parser]) -> Parser:
    says = "delete a saved person, named exactly, with everything kept about her"
    command = _of_person(there, "delete", says, "tapewise profiles delete Ada --yes")
    command.add_argument("--yes", action="store_true", help="do not ask")
    command.add_argument(
        "--for-good", action="store_true", help="leave nothing that could be restored"
    )
    return command


def _restore(there: Commands[Parser]) -> Parser:
    says = "bring back whoever was deleted today or is spoilt, or an earlier state of a person"
    command = add(there, "restore", says, "tapewise profiles restore Ada 3")
    help_ = "left out, whoever can be brought back is listed"
    command.add_argument("person", nargs="?", metavar="PERSON", help=help_)
    help_ = "a state by number or day, as “tapewise profiles history” lists them"
    command.add_argument("which", nargs="?", metavar="STATE", help=help_)
    return command


def _history(there: Commands[Parser]) -> Parser:
    says = "list what a person was before, the newest first"
    command = _of_person(there, "history", says, "tapewise profiles history Ada")
    unit(command)
    return command


def _compare(there: Commands[Parser]) -> Parser:
    says = "show what differs between two states of a person, or since the last day before"
    command = _of_person(there, "compare", says, "tapewise profiles compare Ada 2 1")
    for name, usual in (("a", "left out, the last of an earlier day"), ("b", "left out, now")):
        help_ = f"a state by number or day; {usual}"
        command.add_argument(name, nargs="?", metavar=name.upper(), help=help_)
    unit(command)
    return command


def _duplicate(there: Commands[Parser]) -> Parser:
    says = "save a second person with the same measures"
    command = _of_person(there, "duplicate", says, 'tapewise profiles duplicate Ada "Ada, padded"')
    command.add_argument("name", metavar="NAME", help="what the second one is called")
    return command


def _set(there: Commands[Parser]) -> Parser:
    says = "set measures of a person, all else as it is"
    command = _of_person(there, "set", says, "tapewise profiles set Ada hip=98.5 waist=74")
    help_ = "or age=YEARS; nothing after the = takes it off"
    command.add_argument("setting", nargs="+", metavar="MEASURE=LENGTH", help=help_)
    unit(command)
    return command


def _group(there: Commands[Parser]) -> Parser:
    says = "put a person into groups, take her out of them, or list all groups"
    command = add(there, "group", says, "tapewise profiles group Ada Tuesday")
    help_ = "left out, all groups are listed"
    command.add_argument("person", nargs="?", metavar="PERSON", help=help_)
    command.add_argument("group", nargs="*", metavar="GROUP", help="left out, hers are listed")
    command.add_argument("--leave", action="store_true", help="take her out")
    return command


def _of_person(there: Commands[Parser], act: str, says: str, example: str) -> Parser:
    command = add(there, act, says, example)
    command.add_argument("person", metavar="PERSON")
    return command
