"""One picture for each step of a draft."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.picturing.finished_picture import finished_sheets
from tapewise_core.drafting.picturing.locator import Locator
from tapewise_core.drafting.picturing.scene import scenes
from tapewise_core.drafting.picturing.sheet import Flattened, Sheet
from tapewise_core.drafting.picturing.step_picture import step_sheet
from tapewise_core.geometry.outline import Box
from tapewise_core.paper.drawing import Drawing
from tapewise_core.units import Unit


def step_pictures(draft: Draft, unit: Unit) -> Iterator[tuple[Drawing, ...]]:
    """Yield a picture for each step, lengths in the reader's unit: where the step happens, what it
    adds heavier, its measures with arrows. The last of a piece is its dimensioned drawing, and a
    second one shows how the corner of its hem is mirrored."""
    flat = Flattened()
    last = tuple(path for name, path in draft.paper.lines.items() if name != "cutting_line")
    where = Locator(last, flat)
    for number, scene in enumerate(scenes(draft), start=1):
        sheets = (
            tuple(finished_sheets(scene, scene.shown, flat, unit))
            if scene.shown
            else (step_sheet(scene, flat, unit, where),)
        )
        title = f"{draft.title}, step {number}"
        yield tuple(_drawing(title, sheet) for sheet in sheets)


def _drawing(title: str, sheet: Sheet) -> Drawing:
    box = Box(0, 0, sheet.width, sheet.height)
    return Drawing(title, "reduced, not to measure from", box, tuple(sheet.placing.inks))
