"""What the save page says and offers: the usual folder, what may be asked of paper, a summary."""

from __future__ import annotations

from pathlib import Path

from tapewise_core.profiles.slug import slug
from tapewise_core.tasks import shop
from tapewise_core.tasks.asked_paper import USUAL_PAPER
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.paper_asked import with_pages
from tapewise_core.tasks.settings import PAPERS
from tapewise_core.text.amounts import OnPaper
from tapewise_core.units import Unit
from tapewise_tui import drafting
from tapewise_tui.desk import Desk
from tapewise_tui.item import Item

ALWAYS = (
    "Always written: the pattern on one sheet, how to draft it by hand, checklist with lay plan, "
    "record."
)

PRINTER = "Tell the printer: 100 % or “actual size”, never “fit to page”; one side of the paper."
"""What a printer must be told, whatever it is."""

LABELS = {
    "To print at home": {
        "pdf-a4": "A4 pages",
        "pdf-letter": "Letter pages",
        "pdf-a4-letter": "A4 or Letter",
        "pdf-a3": "A3 pages",
        "pdf-legal": "Legal pages",
        "pdf-tabloid": "Tabloid pages",
    },
    "To read": {"pdf-reading": "PDF to read", "html": "web page"},
    "For a copy shop": {
        "pdf-a2": "A2 sheets",
        "pdf-a1": "A1 sheets",
        "pdf-a0": "A0 sheets",
        "pdf-24x36": "Arch D sheets",
        "pdf-36x48": "Arch E sheets",
        "pdf-roll": "plotter roll",
    },
    "For a projector or a cutter": {
        "pdf-projector": "projector PDF",
        "svg-projector": "projector SVG",
        "dxf": "cutter DXF",
        "svg-cut": "cutter SVG",
    },
}
"""What formats are called on the page, under the headings they stand under."""

PAPER = (
    ("overlap", "Pages overlap", OnPaper(shop.USUAL_OVERLAP)),
    ("margin", "margins", OnPaper(shop.USUAL_MARGIN)),
    ("roll_width", "roll", OnPaper(shop.USUAL_ROLL)),
)
"""What may be asked of paper: its name in the work, its label, what is usual."""


def formats(desk: Desk) -> tuple[str, ...]:
    """Return the formats ticked; before anything was named or ticked here, pages to print on the
    paper that is usual, and one PDF to read."""
    made = desk.work
    if made.folder:
        return made.formats
    return with_pages(made.formats, USUAL_PAPER, desk.unit, pages=True)


def items(desk: Desk) -> tuple[Item, ...]:
    """Return the formats as a list to tick, under their headings."""
    says, ticked = dict(shop.formats()), formats(desk)
    rows: list[Item] = []
    for heading, names in LABELS.items():
        rows.append(Item(None, heading))
        rows += [Item(key, says[key], key in ticked, label) for key, label in names.items()]
    return tuple(rows)


def named(says: str) -> str:
    """Return a sentence that names formats as the page calls them."""
    labels = {key: label for names in LABELS.values() for key, label in names.items()}
    return " ".join(labels.get(word, word) for word in says.split(" "))


def paper_of(ticked: tuple[str, ...]) -> str:
    """Return the paper to print at home that is ticked, if it is one alone."""
    home = [name for name in ticked if name in LABELS["To print at home"]]
    name = home[0].removeprefix("pdf-") if len(home) == 1 else ""
    return name if name in PAPERS else ""


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


def sheet(garment: str | None, unit: Unit) -> str:
    """Write the measuring sheet of a garment, or of all measures; return what to say.

    Raises FilesError where it cannot be written, or something else stands there.
    """
    from tapewise_core.tasks.sheet import measuring_sheet  # few want it
    from tapewise_core.tasks.sheet_files import write_sheet

    place = _here() / f"measuring-sheet-{garment or 'all'}-{unit.value}.pdf"
    write_sheet(measuring_sheet(garment, unit), place)
    return f"The measuring sheet is written: {place}. Print it at any size, fill it in by hand."


def summary(result: Drafted | str) -> str:
    """Say what is to be written and how its proofs stand, or why there is nothing to write."""
    if isinstance(result, str):
        return f"! {result}"
    said = f"{result.garment.title} for {result.person}. {drafting.verdict(result)}"
    if result.estimated:
        said += f" Estimated, not measured: {'; '.join(result.estimated)}."
    return said
