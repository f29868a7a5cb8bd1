"""What ``tapewise loved`` understands."""

from __future__ import annotations

from tapewise_tui.parser_base import Commands, Parser, add, machine_readable, unit


def loved(commands: Commands[Parser]) -> None:
    """Add the command."""
    says = "keep what a garment that fits measures flat, to draft others like it"
    example = 'tapewise loved Ada "the blue one" bust=46 waist=41 hip=49 stretch=40'
    command = add(commands, "loved", says, example)
    help_ = "left out with --measures"
    command.add_argument("person", nargs="?", metavar="PERSON", help=help_)
    help_ = "what the garment is called; left out, hers are listed"
    command.add_argument("name", nargs="?", metavar="GARMENT", help=help_)
    help_ = "a flat measure, or stretch=PERCENT; nothing after the = takes it off"
    command.add_argument("setting", nargs="*", default=[], metavar="MEASURE=LENGTH", help=help_)
    command.add_argument("--remove", action="store_true", help="take the garment off")
    help_ = "list what is measured, and how"
    command.add_argument("--measures", action="store_true", help=help_)
    unit(command)
    machine_readable(command)
