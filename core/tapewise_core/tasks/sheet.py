"""The measuring sheet: what to do with the tape, and lines to write the readings on.

For those who measure first and type later, derived from the table of measures.
"""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.garments.shelf import garment as on_shelf
from tapewise_core.measures.advice import BEFORE
from tapewise_core.measures.body import WaistSite
from tapewise_core.measures.measure import Measure
from tapewise_core.measures.order import KEYS, ORDER, group
from tapewise_core.measures.tape_drawing import tape_drawing
from tapewise_core.paper.document import (
    BLANK,
    Block,
    Bullets,
    Document,
    FillIn,
    Heading,
    Paragraph,
    Ticks,
)
from tapewise_core.paper.safe import slug
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

SITES = {
    WaistSite.NARROWEST: "at the narrowest place",
    WaistSite.MIDWAY: "midway from the lowest rib to the hip bone",
    WaistSite.NAVEL: "at the navel",
}
"""Where the elastic may sit, in words."""


def measuring_sheet(garment: str | None, unit: Unit) -> Document:
    """Return the sheet for one garment's measures, or for all of them if none is named.

    Each measure has its figure, how to take it, and lines for two readings in
    ``unit``, in the order in which the app asks for them: what needs a helper comes
    last. Raises OptionError for a garment that does not exist.
    """
    page = on_shelf(garment) if garment else None
    used = ("height", *page.needs, *page.helps) if page else KEYS
    rows = [row for row in ORDER if row.key in used]
    optional = frozenset(page.helps) if page else frozenset()
    alone = [row for row in rows if not row.helper]
    helped = [row for row in rows if row.helper]
    blocks = (
        *_opening(unit),
        *_regions(alone, optional, unit),
        *_helped(helped, len(alone) + 1, optional, unit),
        *_closing(),
    )
    title = f"Measuring sheet: {page.title}" if page else "Measuring sheet: every measure"
    return Document(title, blocks)


def _opening(unit: Unit) -> Iterator[Block]:
    yield Paragraph(f"Name {BLANK * 2}  Date {BLANK}  All readings in {unit.value}.")
    yield Heading("Before you start")
    reader = Reader(unit)
    yield Ticks(tuple(f"{verb} {reader.spell(rest)}" for verb, rest in BEFORE))


def _regions(rows: list[Measure], optional: frozenset[str], unit: Unit) -> Iterator[Block]:
    """What can be taken alone, under its headings."""
    last = ""
    for number, row in enumerate(rows, start=1):
        if group(row) != last:
            last = group(row)
            yield Heading(last.capitalize())
        yield from _entry(number, row, row.key in optional, unit)


def _helped(
    rows: list[Measure], first: int, optional: frozenset[str], unit: Unit
) -> Iterator[Block]:
    """What a second pair of hands makes better, last and together."""
    if not rows:
        return
    yield Heading("With a helper")
    yield Paragraph(
        "These are better taken by someone else, all in one go. Each says what to do alone."
    )
    for number, row in enumerate(rows, start=first):
        yield from _entry(number, row, row.key in optional, unit)


def _entry(number: int, row: Measure, optional: bool, unit: Unit) -> Iterator[Block]:
    """One measure: its picture, how to take it, and where to write."""
    spared = " It may be left out: it is then estimated." if optional else ""
    landmarks = Reader(unit).spell(row.landmarks)
    text = f"{row.name.capitalize()}. {landmarks} {row.how}{spared}"
    third = f"third, if they differ by more than {unit.spell(row.agree * 10)}"
    sites = tuple(f"My elastic sits {where}." for where in SITES.values())
    yield FillIn(
        number,
        text,
        ("first reading", "second reading", third),
        sites if row.key == "waist" else (),
        tape_drawing(row.key),
        f"figures/{slug(row.key)}.svg",
    )


def _closing() -> Iterator[Block]:
    yield Heading("Afterwards")
    yield Bullets(
        (
            "Run tapewise, open the page for measuring and type what you wrote down.",
            "Where two readings differ by more than the sheet allows, read once more: "
            "the two that lie nearest each other count.",
            "Never correct a reading to what it ought to be. The program asks about unlikely ones.",
        )
    )
