"""The part of the paper that a step's picture shows."""

from __future__ import annotations

from tapewise_core.drafting.picturing.scene import Scene
from tapewise_core.geometry.outline import Box

AROUND = 0.14
"""Shown round what happens, as a share of its longer side (our choice)."""

NAMED = 0.3
"""The same where notches are marked, whose names need room."""

LEAST = 80.0
"""The least a picture shows across [mm] (our choice)."""


def window(scene: Scene, shape: float) -> Box:
    """Return the part of the paper to show, ``shape`` times as high as wide: where the step
    happens and something round it, moved back over the draft where it would lie beside it."""
    focus = scene.focus
    room = (NAMED if scene.new_marks else AROUND) * max(focus.width, focus.height, LEAST)
    wide = max(focus.width + 2 * room, (focus.height + 2 * room) / shape, LEAST)
    high = wide * shape
    across = _slid((focus.left + focus.right) / 2, wide, scene.whole.left, scene.whole.right, room)
    down = _slid((focus.top + focus.bottom) / 2, high, scene.whole.top, scene.whole.bottom, room)
    return Box(across - wide / 2, down - high / 2, across + wide / 2, down + high / 2)


def _slid(middle: float, length: float, low: float, high: float, room: float) -> float:
    """The middle of a stretch, moved so that it lies over another where it can."""
    low, high = low - room, high + room
    if length >= high - low:
        return (low + high) / 2
    return min(max(middle, low + length / 2), high - length / 2)
