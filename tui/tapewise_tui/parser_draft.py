"""What ``tapewise demo``, ``draft`` and ``batch`` understand."""

from __future__ import annotations

from tapewise_tui.parser_base import (
    PERSON,
    Commands,
    Parser,
    add,
    machine_readable,
    named,
    quiet,
    replace,
    unit,
)
from tapewise_tui.parser_cloth import closer, length
from tapewise_tui.parser_faults import whole_number

BARE = "a bare number is in mm, or in inches for those who read inches"


def demo(commands: Commands[Parser]) -> None:
    """Add the command that shows what comes out."""
    says = "draft the jersey top for an example person into ./tapewise-demo; asks nothing"
    command = add(commands, "demo", says, "tapewise demo")
    quiet(command)
    machine_readable(command)


def draft(commands: Commands[Parser]) -> None:
    """Add the command that drafts for one person."""
    example = "tapewise draft ada.json jersey-top --out my-top --set sleeve-length=25 --unit cm"
    command = add(commands, "draft", "draft a garment and write its files", example)
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
    machine_readable(command)


def batch(commands: Commands[Parser]) -> None:
    """Add the command that drafts for everyone in a table."""
    says = "draft a garment for everyone in a table, a folder each"
    example = "tapewise batch class.csv jersey-top --out class --set ease=4"
    command = add(commands, "batch", says, example)
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
    machine_readable(command)


def _style(command: Parser, *, out_needed: bool = True) -> None:
    """Let a command be told style, paper and formats."""
    says = "the folder to write into"
    command.add_argument("--out", required=out_needed, type=named, metavar="DIR", help=says)
    command.add_argument(
        "--set",
        action="append",
        default=[],
        metavar="OPTION=VALUE",
        help="a style option, as often as wanted; see “tapewise garments GARMENT”",
    )
    unit(command)
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
    replace(command)
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
