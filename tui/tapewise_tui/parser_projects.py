"""What ``tapewise projects`` and ``tapewise settings`` understand."""

from __future__ import annotations

from tapewise_tui.parser_base import Commands, Parser, add, machine_readable


def projects(commands: Commands[Parser]) -> None:
    """Add the acts with projects."""
    says = "list, show, copy, delete or restore what is being made for people"
    command = add(commands, "projects", says, "tapewise projects show jersey-top")
    machine_readable(command)
    acts = command.add_subparsers(dest="act", metavar="ACT")
    listed = add(acts, "list", "list projects", "tapewise projects list")
    listed.add_argument("person", nargs="?", metavar="PERSON", help="only hers")
    machine_readable(listed)
    for act, says in (
        ("show", "show one project"),
        ("copy", "save a second project with the same choices"),
        ("delete", "delete a project; what it wrote stays"),
        ("restore", "bring back what was deleted today, or the last good state of a spoilt one"),
    ):
        one = add(
            acts, act, says, f"tapewise projects {act} summer-top" + " autumn-top" * (act == "copy")
        )
        if act == "restore":
            help_ = "left out, what can be brought back is listed"
            one.add_argument("name", nargs="?", metavar="NAME", help=help_)
        else:
            one.add_argument("name", metavar="NAME")
        if act == "copy":
            one.add_argument("to", metavar="NEW", help="what the second one is called")
        if act == "delete":
            one.add_argument("--yes", action="store_true", help="do not ask")
        one.add_argument("--person", metavar="PERSON", help="whose, if several have one so called")
        machine_readable(one)


def settings(commands: Commands[Parser]) -> None:
    """Add the settings."""
    says = "show what is set once for all: unit, paper, machines, look; or set it"
    command = add(commands, "settings", says, "tapewise settings unit=in machines=serger,zigzag")
    help_ = "unit=cm or in, paper=a4 or letter, machines=LIST, look=chalk or paper"
    command.add_argument("setting", nargs="*", metavar="SETTING=VALUE", help=help_)
    command.add_argument("--restore", action="store_true", help="set again what was set before")
    machine_readable(command)
