"""The pen that paths are drawn with."""

from __future__ import annotations

from typing import Protocol

from tapewise_core.geometry.point import Point


class Pen(Protocol):
    """Anything a path can be drawn with: an SVG writer, a PDF page, a cutter."""

    def move_to(self, point: Point) -> None:
        """Lift the pen and set it down here."""
        ...

    def line_to(self, point: Point) -> None:
        """Rule a straight line to here."""
        ...

    def curve_to(self, leave: Point, arrive: Point, end: Point) -> None:
        """Draw a cubic Bézier curve to ``end`` by its two handles."""
        ...
