"""Printed sheets: windows onto one canvas, with what is printed round them."""

from __future__ import annotations

from tapewise_core.frozen import dataclass
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing, Ink


@dataclass(frozen=True, slots=True)
class Window:
    """A box of the canvas [mm], and where its upper left corner lies on the sheet [mm]."""

    seen: Box
    at: Point


@dataclass(frozen=True, slots=True)
class Sheet:
    """One page, its size [mm], its own ink, and the window it shows, if any."""

    name: str
    width: float
    height: float
    inks: tuple[Ink, ...] = ()
    window: Window | None = None


@dataclass(frozen=True, slots=True)
class Prints:
    """Sheets that share one canvas, in the order they are printed."""

    title: str
    person: str
    subject: str
    canvas: Drawing
    sheets: tuple[Sheet, ...]
