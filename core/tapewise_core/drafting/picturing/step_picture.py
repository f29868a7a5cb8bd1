"""One step as a small picture: where it happens, what it adds heavier, its measures with arrows."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from tapewise_core.drafting.picturing.detail import draw_detail
from tapewise_core.drafting.picturing.ground import Place
from tapewise_core.drafting.picturing.lines import draw_lines
from tapewise_core.drafting.picturing.locator import Locator
from tapewise_core.drafting.picturing.scene import Measure, Scene, Spot
from tapewise_core.drafting.picturing.sheet import Flattened, Sheet
from tapewise_core.drafting.picturing.signs import arrow, notch, overlaps, set_off
from tapewise_core.drafting.picturing.window import window
from tapewise_core.drafting.picturing.words import Words, in_lines
from tapewise_core.geometry.outline import Box
from tapewise_core.units import Unit

WIDE, HIGH, LOW = 56.0, 56.0, 34.0
"""A picture's width, and its largest and least height [mm]: three stand beside each other on a
page."""

TALL, MANY = 74.0, 3
"""The largest height where more than so many lengths are told [mm]."""

NOTCHED = 60.0
"""The least height where notches are marked, whose names need room [mm]."""

CROWD = 6
"""More notches than this are marked on a large picture."""


class Room(NamedTuple):
    """A picture's width, and its least and its largest height [mm]."""

    width: float
    least: float
    most: float


CROWDED = Room(96.0, NOTCHED, 96.0)
"""A large picture's."""

MARGIN = 4.0
"""Room for letters round what is shown [mm]."""

NEW, NAMED, OLD, LENGTH = 3.2, 2.8, 2.5, 2.8
"""Type of a step's own letters, of those it names, of others and of lengths [mm]: 7 points and
more."""


def step_sheet(scene: Scene, flat: Flattened, unit: Unit, where: Locator) -> Sheet:
    """Return a step's picture, which says with ``where`` what part of the pattern it shows; a
    large one where words find no room on a small one."""
    sheet = _drawn(scene, flat, unit, where, _room(scene))
    return _drawn(scene, flat, unit, where, CROWDED) if sheet.placing.missed else sheet


def _drawn(scene: Scene, flat: Flattened, unit: Unit, where: Locator, room: Room) -> Sheet:
    sheet, shown = _sheet(scene, room)
    draw_lines(scene, sheet, flat)
    lengths = _measured(scene, sheet)
    for mark in (*scene.marks, *scene.new_marks):
        notch(sheet, mark, heavy=mark in scene.new_marks)
    spots = [spot for spot in scene.spots if sheet.holds(spot.at)]
    for spot in spots:
        sheet.dot(sheet.at(spot.at), 1.1 if spot.new else 0.7 if spot.named else 0.5)
    where.draw(shown, sheet)
    nearer = draw_detail(scene, sheet, flat, unit)
    told = [(unit.spell(one.by), *ends) for one, ends in lengths if one is not nearer]
    _words(scene, sheet, spots, told)
    return sheet


def _sheet(scene: Scene, room: Room) -> tuple[Sheet, Box]:
    """The picture as high as what it shows asks for, and the part of the draft that it shows."""
    focus = scene.focus
    wide = room.width - 2 * MARGIN
    shape = focus.height / max(focus.width, 1.0)
    shape = min(max(shape, (room.least - 2 * MARGIN) / wide), (room.most - 2 * MARGIN) / wide)
    part = window(scene, shape)
    return Sheet(part, wide / part.width, room.width, wide * shape + 2 * MARGIN), part


def _room(scene: Scene) -> Room:
    """The room of a step's first picture."""
    if len(scene.new_marks) > CROWD:
        return CROWDED
    if scene.new_marks:
        return Room(WIDE, NOTCHED, TALL)
    return Room(WIDE, LOW, TALL if len(scene.measures) > MANY else HIGH)


def _measured(scene: Scene, sheet: Sheet) -> list[tuple[Measure, tuple[Place, Place]]]:
    """Draw each measure with arrows along its line, or beside it where one is drawn already."""
    drawn: list[tuple[Measure, tuple[Place, Place]]] = []
    ends = [(one, (sheet.at(one.start), sheet.at(one.end))) for one in scene.measures]
    ends.sort(key=lambda item: math.dist(*item[1]))
    lying: list[tuple[Measure, tuple[Place, Place]]] = []
    for one, line in ends:
        over = any(overlaps(line, other) for _, other in drawn)
        (lying if over else drawn).append((one, line))
    for _, line in drawn:
        arrow(sheet, *line)
    for one, line in lying:
        drawn.append((one, set_off(sheet, *line)))
    return drawn


def _words(
    scene: Scene,
    sheet: Sheet,
    spots: Sequence[Spot],
    lengths: Sequence[tuple[str, Place, Place]],
) -> None:
    """The step's own letters first, then its lengths, what it names, and others where there is
    room for them close by."""
    placing = sheet.placing
    for spot in spots:
        if spot.new:
            placing.beside(_letters(spot, NEW, bold=True), sheet.at(spot.at))
    for mark in scene.new_marks:
        placing.beside(Words.of(*in_lines(mark.name), size=OLD), sheet.at(mark.at))
    for told, start, end in lengths:
        placing.along(Words.of(told, size=LENGTH), start, end)
    for spot in spots:
        if spot.named and not spot.new:
            placing.beside(_letters(spot, NAMED), sheet.at(spot.at))
    for spot in spots:
        if not spot.named and not spot.new:
            placing.beside(_letters(spot, OLD), sheet.at(spot.at), far=False)


def _letters(spot: Spot, size: float, *, bold: bool = False) -> Words:
    return Words.of(", ".join(spot.names), size=size, bold=bold)
