"""What came of a batch: a table for a spreadsheet, and a sheet for whoever teaches."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator, Sequence
from datetime import date

from tapewise_core.measures.catalogue import NAMES
from tapewise_core.tasks.batch_row import FAILED, LOOK, MADE, Result
from tapewise_core.tasks.class_cells import plain_text

HEADINGS = (
    "row", "name", "folder", "result", "sure", "proofs failing", "unlikely", "estimated", "says",
)  # fmt: skip


def summary(results: Sequence[Result]) -> str:
    """Return a table with a row for each person."""
    out = io.StringIO()
    table = csv.writer(out, lineterminator="\n")
    table.writerow(HEADINGS)
    table.writerows([plain_text(str(cell)) for cell in _cells(one)] for one in results)
    return out.getvalue()


def _cells(one: Result) -> tuple[object, ...]:
    told = (" ".join(one.failing), " ".join(one.unlikely), ", ".join(one.estimated))
    sure = "" if one.result == FAILED else one.sure
    return (one.row, one.name, one.folder, one.result, sure, *told, one.says)


def sheet(results: Sequence[Result], garment: str, today: date) -> str:
    """Return a page in Markdown: what needs a look first, then whose is ready."""
    return "\n".join(_lines(results, garment, today)) + "\n"


def _lines(results: Sequence[Result], garment: str, today: date) -> Iterator[str]:
    made = [one for one in results if one.result == MADE and not one.uncertain]
    ready = [one for one in made if one.ready]
    yield f"# {garment} for {len(results)} people, {today.isoformat()}"
    yield f"\n{len(ready)} of {len(results)} are ready to print and cut."
    for title, chosen in (
        ("Not made", [one for one in results if one.result == FAILED]),
        ("Do not cut yet: a proof fails", [one for one in results if one.result == LOOK]),
        ("Measure, or sew a trial garment first", [one for one in results if one.uncertain]),
        ("Measure once more", [one for one in made if one.unlikely]),
        ("Ready", ready),
    ):
        if chosen:
            yield f"\n## {title}\n"
            yield from (f"- {_plain(_told(one))}" for one in chosen)


def _told(one: Result) -> str:
    who = f"**{one.name}**" if one.name else f"row {one.row}"
    said = [one.says, *one.failing, *one.unlikely]
    if one.estimated:
        said.append(f"Estimated: {', '.join(NAMES[key] for key in one.estimated)}.")
    return f"{who}: {' '.join(filter(None, said))}" if any(said) else who


def _plain(text: str) -> str:
    """A line stays a line, and nobody's name becomes a link or a picture."""
    return " ".join(text.split()).replace("<", "&lt;").replace("[", "\\[")
