"""A point that a curve passes, by which whoever draws it sees that it runs where it should."""

from __future__ import annotations

from dataclasses import dataclass

from tapewise_core.geometry.point import Point
from tapewise_core.units import Length


@dataclass(frozen=True, slots=True)
class Passing:
    """A curve passes the point ``name``, which lies ``by`` from ``start``, ``called`` in words."""

    name: str
    at: Point
    start: str
    by: Length
    called: str
