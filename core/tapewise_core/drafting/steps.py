"""The things a drafter does. Each draws itself and tells itself.

Geometry and wording of one act stand side by side, so that they cannot drift.
``stated`` repeats, for whoever checks, the distances that the wording states.
"""

from __future__ import annotations

from typing import Protocol

from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.errors import DraftError
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.text.told import LineName, Told, said
from tapewise_core.units import Length

Stated = tuple[str, str, Length]
"""From a point, to a point, the distance that a step states."""


class Step(Protocol):
    """One act at the drafting table."""

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Return the paper after this act."""
        ...

    def tell(self) -> Told:
        """Return the act as a sentence or two for a person with pencil and ruler."""
        ...

    def stated(self) -> tuple[Stated, ...]:
        """Return every distance between two points that the sentence states."""
        ...


class Start(Frozen):
    """Mark the first point."""

    name: str
    where: str | Told

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Put the point at the origin."""
        return paper.with_point(self.name, Point(0, 0))

    def tell(self) -> Told:
        """Say where it goes on the paper."""
        return said("Mark {}, {}.", self.name, self.where)

    def stated(self) -> tuple[Stated, ...]:
        """State no distance."""
        return ()


class MeasureOff(Frozen):
    """Measure from a point in a direction and mark a new point, the way ruled thinly.

    ``line`` are the points of the line that the way is told by, none for a way of the paper's.
    """

    start: str
    name: str
    by: Length
    along: Vector
    way: str
    called: str | Told
    line: tuple[str, ...] = ()

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Mark the point; raises DraftError with the working if the length is not positive."""
        if self.by.mm <= 0:
            line = f"{self.start}–{self.name}"
            raise DraftError(said("{}, {}, would be {}.", line, self.called, self.by))
        start = paper.point(self.start)
        end = start + self.along * self.by.mm
        ruled_thin = paper.with_guide(f"{self.start}–{self.name}", ruled(start, end))
        return ruled_thin.with_point(self.name, end)

    def tell(self) -> Told:
        """Say from where, which way and how far."""
        opening = f"From {self.start} measure {self.way} "
        return (opening, *said("{}; mark {}, {}.", self.by, self.name, self.called))

    def stated(self) -> tuple[Stated, ...]:
        """State the measured distance."""
        return ((self.start, self.name, self.by),)


class Straight(Frozen):
    """Join points with a straight line that belongs to the pattern."""

    line: str
    names: tuple[str, ...]
    remark: str = ""

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Rule the line."""
        return paper.with_line(self.line, ruled(*(paper.point(name) for name in self.names)))

    def tell(self) -> Told:
        """Say which points, and what the line is."""
        remark = f", {self.remark}" if self.remark else ""
        return said("Rule {}{}: the {}.", "–".join(self.names), remark, LineName(self.line))

    def stated(self) -> tuple[Stated, ...]:
        """State no distance."""
        return ()


class Trace(Frozen):
    """Copy points and lines of another draft, which is called ``of``, onto fresh paper; ``fold`` is
    what it has where this one lies on the fold."""

    of: str
    source: DraftingPaper
    fold: str = "fold"

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Put the traced paper down."""
        return self.source

    def tell(self) -> Told:
        """Say what is traced, and which points are copied."""
        lines = (self.fold, *(str(LineName(name)) for name in self.source.lines))
        points = listed(tuple(self.source.points))
        return (
            f"Lay fresh paper over the {spoken(self.of)}. Trace the {listed(lines)}, and copy the "
            f"points {points}.",
        )

    def stated(self) -> tuple[Stated, ...]:
        """State no distance."""
        return ()


def spoken(title: str) -> str:
    """Return a draft's title as a sentence names it.

    >>> spoken("Back, left half")
    'left half of the back'
    """
    piece, _, half = title.lower().partition(", ")
    return f"{half} of the {piece}" if half else piece


def listed(names: tuple[str, ...]) -> str:
    """Return names as they are read: with commas, and "and" before the last.

    >>> listed(("A", "B", "C"))
    'A, B and C'
    """
    return " and ".join(filter(None, (", ".join(names[:-1]), names[-1])))


class Note(Frozen):
    """Say something that leaves no mark on the paper."""

    words: Told

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Leave the paper as it is."""
        return paper

    def tell(self) -> Told:
        """Say it."""
        return self.words

    def stated(self) -> tuple[Stated, ...]:
        """State no distance between points."""
        return ()
