"""What was typed about paper, understood: lengths, the paper's size, and what is made unasked."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import TYPE_CHECKING

from tapewise_core.errors import OptionError, ReadingError
from tapewise_core.paper.sizes import LONGEST, PageSize
from tapewise_core.tasks.asked_paper import Paper
from tapewise_core.tasks.settings import settings
from tapewise_core.text.amounts import OnPaper
from tapewise_core.text.told import said
from tapewise_core.text.typed import parse_length
from tapewise_core.units import Unit

if TYPE_CHECKING:
    from tapewise_core.writers.makers import PaperOptions

READING = "pdf-reading"
SIZED = "pdf-page"
"""The format of paper whose size is typed."""

HOME = {Unit.CM: "pdf-a4", Unit.IN: "pdf-letter"}
"""The paper that is at home where lengths are told in a unit (common practice)."""

AT_HOME = ("pdf-a4", "pdf-letter", "pdf-a4-letter", "pdf-a3", "pdf-legal", "pdf-tabloid")
AT_A_SHOP = ("pdf-a2", "pdf-a1", "pdf-a0", "pdf-24x36", "pdf-36x48", SIZED)
JOINED = (*AT_HOME, *AT_A_SHOP)

USED_BY = {
    "overlap": JOINED,
    "page_margin": (*JOINED, "pdf-roll"),
    "roll_width": ("pdf-roll",),
    "page": (SIZED,),
}
"""Which formats make use of what may be asked of paper."""

SMALLEST = 140.0
"""Paper narrower than this holds no square to measure [mm]."""

_BARE = re.compile(r"[\d.,\s]+")


def with_pages(formats: Sequence[str], paper: Paper, unit: Unit, *, pages: bool) -> tuple[str, ...]:
    """Return the formats asked for, with what is made unasked: pages to print, one PDF to read.

    ``--page`` asks for its format by itself. Pages of another home paper take the place of
    the usual one, which is what is set once for all or follows from the unit; without
    ``pages`` nothing is added.
    """
    paper_at_home = settings().paper
    home = f"pdf-{paper_at_home}" if paper_at_home else HOME[unit]
    asked = [*formats, *([SIZED] if paper.page else [])]
    usual = [] if set(asked) & {*AT_HOME, SIZED} else [home]
    return tuple(dict.fromkeys([*usual, READING, *asked] if pages else asked))


def refuse_idle(formats: Sequence[str], paper: Paper) -> None:
    """Raise OptionError for a wish that no format asked for makes use of."""
    typed = {
        "overlap": paper.overlap,
        "page_margin": paper.margin,
        "roll_width": paper.roll_width,
        "page": paper.page,
    }
    for key, text in typed.items():
        if text is not None and not set(formats) & set(USED_BY[key]):
            option = f"--{key.replace('_', '-')}"
            first, *more = USED_BY[key]
            others = f" and the like ({', '.join(more)})" if more else ""
            raise OptionError(
                f"{option} is for {first}{others}, which is not asked for; leave {option} out, or "
                f"add --format {first}."
            )


def paper_options(paper: Paper, unit: Unit) -> PaperOptions:
    """Return what was typed as lengths in mm; raises OptionError with a sentence."""
    from tapewise_core.writers.makers import PaperOptions

    usual = PaperOptions()
    return PaperOptions(
        overlap=_length("overlap", paper.overlap, unit, usual.overlap),
        roll=_length("roll", paper.roll_width, unit, usual.roll),
        margin=_length("margin", paper.margin, unit, usual.margin),
        page=_page(paper.page, unit) if paper.page else None,
    )


def _length(what: str, text: str | None, unit: Unit, usual: float) -> float:
    """A bare number is in mm, as paper is sold and printers are set, or in inches."""
    if not text:
        return usual
    bare = unit is Unit.CM and _BARE.fullmatch(text.strip())
    try:
        found = parse_length(f"{text} mm" if bare else text, unit, of=f"The paper's {what}")
    except ReadingError as error:
        raise OptionError(error.told) from None
    if found > LONGEST:
        says = "The paper's {}: no paper is as long as {}; the longest has {}."
        raise OptionError(said(says, what, OnPaper(found), OnPaper(LONGEST, "down")))
    return found


def _page(text: str, unit: Unit) -> PageSize:
    """A size such as ``210x297`` (mm), ``30x42 cm`` or ``11x17 in``, whichever way it lies."""
    sides = re.split(r"[x×*]", text.strip().lower())
    if len(sides) != 2:
        raise OptionError(f"--page takes a width and a height, such as 30x42 cm, not “{text}”.")
    named = re.search(r"[a-z]+\s*$", sides[1])
    first = sides[0] if re.search(r"[a-z]", sides[0]) or not named else f"{sides[0]} {named[0]}"
    width, height = sorted(_length("size", side, unit, 0.0) for side in (first, sides[1]))
    if not SMALLEST <= width <= height <= LONGEST:
        sides_of = f"{unit.number(SMALLEST)} to {unit.spell(LONGEST)}"
        raise OptionError(
            f"--page {text.strip()} is no paper to print on; each side has {sides_of}."
        )
    return PageSize(f"{text.strip()}", width, height)
