"""The paper: named points and named lines, as they stand at one moment."""

from __future__ import annotations

from collections.abc import Iterable
from types import MappingProxyType

from msgspec.structs import replace

from tapewise_core.drafting.marks import NotchMark
from tapewise_core.errors import DraftError
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point

SAME = 0.01
"""Places nearer to each other than this are one [mm]."""


class DraftingPaper(Frozen):
    """Everything on the paper at one moment; adding to it makes a new paper.

    ``lines`` belong to the pattern, ``guides`` only help to find it, ``marks`` are
    notches across them.
    """

    # proxies by name, because their | copies a table at once: every step of a draft does
    points: MappingProxyType[str, Point] = MappingProxyType({})
    lines: MappingProxyType[str, Path] = MappingProxyType({})
    guides: MappingProxyType[str, Path] = MappingProxyType({})
    marks: tuple[NotchMark, ...] = ()

    def with_point(self, name: str, point: Point) -> DraftingPaper:
        """Return this paper with one more point."""
        if name in self.points:
            raise DraftError(f"Point {name} is already on the paper.")
        points = MappingProxyType(self.points | {name: point})
        return DraftingPaper(points, self.lines, self.guides, self.marks)

    def with_line(self, name: str, path: Path) -> DraftingPaper:
        """Return this paper with one more line of the pattern."""
        if name in self.lines:
            raise DraftError(f"The {name} is already on the paper.")
        return replace(self, lines=MappingProxyType(self.lines | {name: path}))

    def with_guide(self, name: str, path: Path) -> DraftingPaper:
        """Return this paper with one more construction line; a later one of a name replaces it."""
        guides = MappingProxyType(self.guides | {name: path})
        return DraftingPaper(self.points, self.lines, guides, self.marks)

    def with_marks(self, marks: tuple[NotchMark, ...]) -> DraftingPaper:
        """Return this paper with more notches."""
        return replace(self, marks=(*self.marks, *marks))

    def only(self, points: Iterable[str], lines: Iterable[str]) -> DraftingPaper:
        """Return a paper with just some of the points and lines, as traced onto fresh paper."""
        return DraftingPaper(
            MappingProxyType({name: self.point(name) for name in points}),
            MappingProxyType({name: self.line(name) for name in lines}),
        )

    def point(self, name: str) -> Point:
        """Return a point by its letter; raises DraftError if it is not there yet."""
        if name not in self.points:
            known = ", ".join(self.points) or "none"
            raise DraftError(f"There is no point {name} on the paper yet; so far: {known}.")
        return self.points[name]

    def letter(self, at: Point) -> str:
        """Return the letter that stands at a place, empty without one."""
        return next((name for name, point in self.points.items() if _same(point, at)), "")

    def next_of(self, family: str) -> int:
        """Return the number of the next point of a family, such as C1, C2 and so on."""
        numbers = (name[1:] for name in self.points if name[0] == family)
        return 1 + max((int(digits) for digits in numbers if digits.isdigit()), default=0)

    def line(self, name: str) -> Path:
        """Return a line by its name; raises DraftError if it is not there yet."""
        if name not in self.lines:
            known = ", ".join(self.lines) or "none"
            raise DraftError(f"There is no line “{name}” on the paper yet; so far: {known}.")
        return self.lines[name]


def _same(one: Point, other: Point) -> bool:
    return (one - other).length() < SAME
