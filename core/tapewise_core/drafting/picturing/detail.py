"""An enlarged detail of a step's smallest length, where its picture is too small to show it."""

from __future__ import annotations

import math
from collections.abc import Iterator

from tapewise_core.drafting.picturing.ground import Place, Rows
from tapewise_core.drafting.picturing.lines import draw_lines
from tapewise_core.drafting.picturing.scene import Measure, Scene
from tapewise_core.drafting.picturing.sheet import Flattened, Sheet
from tapewise_core.drafting.picturing.signs import arrow
from tapewise_core.drafting.picturing.words import Words
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Vector
from tapewise_core.paper.drawing import Layer
from tapewise_core.units import Unit

TINY = 1.8
"""A length that is shorter than this on the picture is shown enlarged [mm]."""

NOTHING = 0.3
"""A length that is shorter than this on the draft is nothing to be seen [mm]."""

SIDE = 18.0
"""How wide and high the detail is [mm]."""

SHOWS = 3.4
"""It shows so many times the length, and at least ``LEAST`` [mm of the draft]."""

LEAST = 6.0

TYPE = 2.5
"""Its letters [mm]: 7 points and more."""

STEP = 4.0
"""How finely a free place is looked for [mm]."""


def draw_detail(scene: Scene, sheet: Sheet, flat: Flattened, unit: Unit) -> Measure | None:
    """Draw the detail where there is room for it; return the length that is written in it."""
    small = [m for m in scene.measures if m.by > NOTHING and m.by * sheet.scale < TINY]
    if not small:
        return None
    one = min(small, key=lambda measure: measure.by)
    at = sheet.at(one.start.toward(one.end, 0.5))
    found = next(_free(sheet, at), None)
    if found is None:
        return None
    (x, y), rows = found
    lens = _enlarged(one, scene, flat)
    if not _told(one, scene, lens, unit):
        return None
    _joined(sheet, at, (x, y))
    corner = Vector(x - SIDE / 2, y - SIDE / 2)
    sheet.placing.inks += (ink.moved(corner) for ink in lens.placing.inks)
    sheet.placing.take(rows)
    return one


def _free(sheet: Sheet, at: Place) -> Iterator[tuple[Place, Rows]]:
    """Middles of free squares, the nearest to a place first, with the cells they take."""
    half = SIDE / 2 + 0.5
    across = [half + STEP * n for n in range(int((sheet.width - 2 * half) / STEP) + 1)]
    down = [half + STEP * n for n in range(int((sheet.height - 2 * half) / STEP) + 1)]
    for middle in sorted(((x, y) for x in across for y in down), key=lambda m: math.dist(m, at)):
        rows = sheet.placing.ground.box(*middle, half, half)
        if rows is not None:
            yield middle, rows


def _enlarged(one: Measure, scene: Scene, flat: Flattened) -> Sheet:
    """The lines and points round a length on a picture of its own."""
    shows = max(one.by * SHOWS, LEAST)
    middle = one.start.toward(one.end, 0.5)
    part = Box(middle.x, middle.y, middle.x, middle.y).grown(shows / 2)
    lens = Sheet(part, SIDE / shows, SIDE, SIDE)
    draw_lines(scene, lens, flat)
    arrow(lens, lens.at(one.start), lens.at(one.end))
    for spot in scene.spots:
        if lens.holds(spot.at):
            lens.dot(lens.at(spot.at), 1.0 if spot.new else 0.6)
    return lens


def _told(one: Measure, scene: Scene, lens: Sheet, unit: Unit) -> bool:
    """Write the length and the letters at its ends; return whether there was room for all."""
    told = lens.placing.along(
        Words.of(unit.spell(one.by), size=TYPE), lens.at(one.start), lens.at(one.end)
    )
    ends = (spot for spot in scene.spots if spot.at in (one.start, one.end))
    letters = [
        lens.placing.beside(
            Words.of(", ".join(spot.names), size=TYPE, bold=spot.new), lens.at(spot.at), far=False
        )
        for spot in ends
    ]
    return told and all(letters)


def _joined(sheet: Sheet, at: Place, middle: Place) -> None:
    """Frame the detail, and lead a thin line from its edge to the place it shows."""
    x, y = middle
    box = Box(x, y, x, y).grown(SIDE / 2)
    sheet.frame(box, Layer.GUIDE, width=0.3)
    edge = min(max(at[0], box.left), box.right), min(max(at[1], box.top), box.bottom)
    if math.dist(edge, at) > 1.5:
        sheet.stroke((edge, at), Layer.GUIDE, width=0.15)
