"""Printed sheets: windows onto one canvas, with what is printed round them."""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing, Ink


class Window(Frozen):
    """A box of the canvas [mm], and where its upper left corner lies on the sheet [mm]."""

    seen: Box
    at: Point


class Sheet(Frozen):
    """One page, its size [mm], its own ink, and the window it shows, if any."""

    name: str
    width: float
    height: float
    inks: tuple[Ink, ...] = ()
    window: Window | None = None


class Prints(Frozen):
    """Sheets that share one canvas, in the order they are printed."""

    title: str
    person: str
    subject: str
    canvas: Drawing
    sheets: tuple[Sheet, ...]
