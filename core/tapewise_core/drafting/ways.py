"""The direction of a curve at its end, told by a line that is on the paper already."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from tapewise_core.drafting.curve_steps import Curve
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.guide_steps import Beside
from tapewise_core.drafting.side_words import beside_word
from tapewise_core.drafting.steps import MeasureOff, Straight
from tapewise_core.geometry.point import RIGHT, Vector
from tapewise_core.text.told import Told

HELP = "X"
"""The family of points that only help to find another; nobody looks along their lines again."""

LONG = 60.0
"""Nobody tells a direction by a shorter line [mm], where there is a longer one: its ends are told
to the millimetre or to the eighth of an inch (our choice)."""

EXACT = 0.6
"""An angle so near to none or to a right one is told as that [degrees]."""


def way_of(draft: Draft, name: str, way: Vector, next_to: str) -> Told:
    """Say in which direction a curve leaves a point: level, upright, by a line that ends there.

    Lines of the pattern come first, then what was ruled thinly, the last first; in the end the
    line to the curve's point ``next_to`` it.
    """
    level = _slant(RIGHT, way)
    if level < EXACT or level > 90 - EXACT:
        return ("level",) if level < EXACT else ("upright",)
    lines = [*(other for other in _lines(draft) if name in other), (name, next_to)]
    others = [line for line in lines if _along(draft, name, line).length() >= LONG]
    others = others or [max(lines, key=lambda line: _along(draft, name, line).length())]
    for other in others:
        slant = _slant(_along(draft, name, other), way)
        if slant < EXACT or slant > 90 - EXACT:
            words = "along" if slant < EXACT else "square to"
            return (f"{words} {'–'.join(other)}",)
    line = _along(draft, name, others[0])
    angle, side = line.angle_to(way), beside_word(line, way)
    return (f"at {angle:.0f}° to {'–'.join(others[0])}, {side}",)


def _along(draft: Draft, name: str, line: tuple[str, str]) -> Vector:
    """The direction of a line away from a point on it."""
    other = line[0] if line[1] == name else line[1]
    return draft[other] - draft[name]


def _slant(one: Vector, other: Vector) -> float:
    """The angle between two lines, 0 to 90 degrees."""
    angle = one.angle_to(other)
    return min(angle, 180 - angle)


def _lines(draft: Draft) -> Iterator[tuple[str, str]]:
    """The lines that are told between two points, the pattern's own straight ones first, then
    from the end of a curve to the point beside it, which it may lean against."""
    pattern: list[tuple[str, str]] = []
    ends: list[tuple[str, str]] = []
    thin: list[tuple[str, str]] = []
    for step in reversed(draft.steps):
        match step:
            case Straight():
                pattern += pairwise(step.names)
            case Curve():
                pattern += [pair for names in step.straight for pair in pairwise(names)]
                ends += [(names[0], names[1]) for names in (step.names, step.names[::-1])]
            case Beside():
                thin.append((step.start, step.end))
            case MeasureOff() if step.start[0] != HELP:
                thin.append((step.start, step.name))
    yield from pattern
    yield from ends
    yield from thin
