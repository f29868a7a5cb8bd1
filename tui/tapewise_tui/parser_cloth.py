"""What ``tapewise cloth`` understands, and what else is asked about cloth."""

from __future__ import annotations

from tapewise_tui.parser_base import Commands, Parser, add, machine_readable, quiet, unit
from tapewise_tui.parser_faults import whole_number


def cloth(commands: Commands[Parser]) -> None:
    """Add the questions about a garment's cloth."""
    says = "say how much cloth a garment takes, whether it fits, and which width is cheaper"
    example = 'tapewise cloth "Marta Lindqvist" jersey-top --width 140=9.90 --width 160=12.50'
    command = add(commands, "cloth", says, example)
    command.add_argument(
        "person",
        metavar="PERSON",
        help="a saved person's name, an example's, or a profile file (.json)",
    )
    command.add_argument("garment", metavar="GARMENT", help="see “tapewise garments”")
    command.add_argument(
        "--set",
        action="append",
        default=[],
        metavar="OPTION=VALUE",
        help="a style option, as often as wanted, such as lay=folded, nap=yes or shrinkage=8",
    )
    command.add_argument(
        "--width",
        action="append",
        default=[],
        metavar="WIDTH[=PRICE]",
        help="the cloth's width, with the price of a metre (of a yard for inch readers); several "
        "are compared",
    )
    command.add_argument("--price", metavar="PRICE", help="the same price for every width")
    length(command)
    closer(command)
    unit(command)
    quiet(command)
    machine_readable(command)


def length(command: Parser) -> None:
    """Let a command be told how much of the cloth there is."""
    says = "how much of the cloth there is; it is proved that all pieces lie on it"
    command.add_argument("--cloth-length", metavar="LENGTH", help=says)


def closer(command: Parser) -> None:
    """Let a command look for a closer lay."""
    command.add_argument(
        "--closer-lay",
        type=whole_number,
        metavar="SECONDS",
        help="look so long for a lay that takes less cloth; more is found with the extra “lay”",
    )
