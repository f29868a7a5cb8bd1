"""What the least that could be done takes, measured beside what Tapewise takes: its floors."""

from __future__ import annotations

import io
import re
import resource
import subprocess
import sys
import time
from collections.abc import Callable, Iterable, Mapping
from statistics import median

import svgwrite
from reportlab.pdfgen.canvas import Canvas
from reportlab.pdfgen.pathobject import PDFPathObject

from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing, Stroke

A4 = (595.28, 841.89)
"""A page in points."""


def here(act: Callable[[], object], runs: int = 9) -> float:
    """Return the processor time of an act [s], the median of some runs after one that warms up."""
    act()
    times = []
    for _ in range(runs):
        begun = time.process_time()
        act()
        times.append(time.process_time() - begun)
    return median(times)


def started(*arguments: str, runs: int = 5) -> float:
    """Return the processor time of a Python program from its start to its end [s].

    The first run leaves its bytecode, as setting a program up does, and does not count.
    """
    times = []
    for _ in range(runs + 1):
        before = _children()
        subprocess.run([sys.executable, *arguments], stdout=subprocess.DEVNULL, check=True)
        times.append(_children() - before)
    return median(times[1:])


def _children() -> float:
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


def paths_of(files: Mapping[str, bytes]) -> dict[str, list[str]]:
    """Return the path data in every SVG file, by the file's name."""
    return {
        name: re.findall(r' d="([^"]+)"', content.decode())
        for name, content in files.items()
        if name.endswith(".svg")
    }


def by_svgwrite(files: Mapping[str, list[str]]) -> None:
    """Write the same paths with svgwrite alone."""
    for paths in files.values():
        drawing = svgwrite.Drawing(debug=False)
        for data in paths:
            drawing.add(drawing.path(data))
        drawing.tostring()


class _Pen:
    """A pen on a path of reportlab's."""

    def __init__(self, path: PDFPathObject) -> None:
        self.path = path

    def move_to(self, point: Point) -> None:
        self.path.moveTo(point.x, point.y)

    def line_to(self, point: Point) -> None:
        self.path.lineTo(point.x, point.y)

    def curve_to(self, leave: Point, arrive: Point, end: Point) -> None:
        self.path.curveTo(leave.x, leave.y, arrive.x, arrive.y, end.x, end.y)


def by_reportlab(drawings: Iterable[Drawing], pages: int) -> None:
    """Draw the same lines with reportlab alone: once in a form, which every page shows."""
    page = Canvas(io.BytesIO(), pagesize=A4)
    page.beginForm("all")
    for ink in (ink for drawing in drawings for ink in drawing.inks):
        if isinstance(ink, Stroke):
            path = page.beginPath()
            ink.path.draw(_Pen(path))
            page.drawPath(path)
    page.endForm()
    for _ in range(pages):
        page.doForm("all")
        page.showPage()
    page.save()
