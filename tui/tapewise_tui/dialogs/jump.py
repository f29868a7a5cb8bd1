"""The lines of the list of all measures, to go to one."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.measures.body import Origin
from tapewise_core.measures.catalogue import ALSO, measure
from tapewise_core.measures.order import group
from tapewise_tui import readings_told, words
from tapewise_tui.desk import Desk
from tapewise_tui.line import Line
from tapewise_tui.widgets.find import FindDialog


def jump_dialog(desk: Desk, key: str) -> FindDialog:
    """Return the dialog, the cursor on the measure shown."""
    return FindDialog("Go to a measure", tuple(_lines(desk)), key)


def _lines(desk: Desk) -> Iterator[Line]:
    heading = ""
    missing = desk.check.missing
    for row in map(measure, desk.order):
        if group(row) != heading:
            heading = group(row)
            yield Line(None, words.sentence(heading))
        kept = row.key not in missing
        said = _told(readings_told.standing(desk, row.key)) if kept else ""
        yield Line(
            row.key, f" ({'x' if kept else ' '}) {row.name:<20}{said}", ALSO.get(row.key, "")
        )


def _told(standing: str) -> str:
    """What stands for a measure as a list says it, where it goes without saying that it was
    measured."""
    return standing.removesuffix(".").replace(f", {Origin.MEASURED.value}", "")
