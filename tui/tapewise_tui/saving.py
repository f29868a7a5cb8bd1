"""What the save page says and offers: the usual folder, what may be asked of paper, a summary."""

from __future__ import annotations

from pathlib import Path

from tapewise_core.profiles.slug import slug
from tapewise_core.tasks import shop
from tapewise_core.tasks.asked_paper import USUAL_PAPER
from tapewise_core.tasks.drafting import Drafted
from tapewise_core.tasks.paper_asked import with_pages
from tapewise_core.text.told import OnPaper
from tapewise_tui import drafting
from tapewise_tui.desk import Desk

ALWAYS = "Always written: the pattern as SVG, drafting steps with pictures, checklist, record."

PAPER = (
    ("overlap", "Pages overlap by", OnPaper(shop.USUAL_OVERLAP)),
    ("margin", "margins", OnPaper(shop.USUAL_MARGIN)),
    ("roll_width", "roll", OnPaper(shop.USUAL_ROLL)),
)
"""What may be asked of paper: its name in the work, its label, what is usual."""


def formats(desk: Desk) -> tuple[str, ...]:
    """Return the formats ticked; before the first writing, pages to print and one PDF to read."""
    made = desk.work
    if made.formats or made.folder:
        return made.formats
    return with_pages((), USUAL_PAPER, desk.unit, pages=True)


def folder(desk: Desk) -> str:
    """Return the folder named the last time, else one beside where the app was started."""
    usual = f"{slug(desk.profile.name)}-{desk.work.garment}"
    return desk.work.folder or str(_here() / usual)


def _here() -> Path:
    """Where the app was started; the home folder if that is gone by now."""
    try:
        return Path.cwd()
    except OSError:
        return Path.home()


def summary(result: Drafted | str) -> str:
    """Say what is to be written and how its proofs stand, or why there is nothing to write."""
    if isinstance(result, str):
        return f"! {result}"
    said = f"{result.garment.title} for {result.person}. {drafting.verdict(result)}"
    if result.estimated:
        said += f" Estimated, not measured: {'; '.join(result.estimated)}."
    return said
