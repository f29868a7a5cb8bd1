"""A draft: numbered steps and the paper after each of them."""

from __future__ import annotations

from dataclasses import dataclass, replace

from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.drafting.passing import Passing
from tapewise_core.drafting.steps import (
    Curve,
    LevelLine,
    MeasureOff,
    Note,
    Start,
    Step,
    Straight,
    Trace,
)
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import DOWN, LEFT, RIGHT, UP, Point, Vector
from tapewise_core.text.told import Part, Told
from tapewise_core.units import Length


@dataclass(frozen=True, slots=True)
class Draft:
    """A construction so far; every verb returns a new draft with one more step."""

    title: str
    steps: tuple[Step, ...] = ()
    papers: tuple[DraftingPaper, ...] = ()

    @property
    def paper(self) -> DraftingPaper:
        """The paper as it stands."""
        return self.papers[-1] if self.papers else DraftingPaper()

    def __getitem__(self, name: str) -> Point:
        """Return a point on the paper by its letter."""
        return self.paper.point(name)

    def start(self, name: str, where: str | Told) -> Draft:
        """Mark the first point of the draft, the origin."""
        return self.then(Start(name, where))

    def down(self, start: str, name: str, by: Length, called: str | Told) -> Draft:
        """Measure straight down from a point and mark a new one."""
        return self.then(MeasureOff(start, name, by, DOWN, "straight down", called))

    def up(self, start: str, name: str, by: Length, called: str | Told) -> Draft:
        """Measure straight up from a point and mark a new one."""
        return self.then(MeasureOff(start, name, by, UP, "straight up", called))

    def across(self, start: str, name: str, by: Length, called: str | Told) -> Draft:
        """Measure square across to the right and mark a new point."""
        return self.then(MeasureOff(start, name, by, RIGHT, "square across to the right", called))

    def inward(self, start: str, name: str, by: Length, called: str | Told) -> Draft:
        """Measure square across to the left, towards the centre, and mark a new point."""
        return self.then(MeasureOff(start, name, by, LEFT, "square across to the left", called))

    def along(self, start: str, through: str, name: str, by: Length, called: str | Told) -> Draft:
        """Measure from a point towards and past another and mark a new point."""
        direction = (self[through] - self[start]).unit()
        return self.then(MeasureOff(start, name, by, direction, f"along {start}–{through}", called))

    def square(self, line: tuple[str, str], name: str, by: Length, called: str | Told) -> Draft:
        """Measure square down from the end of a line and mark a new point."""
        start, end = line
        direction = (self[end] - self[start]).unit().square()
        way = f"downward, square to {start}–{end},"
        return self.then(MeasureOff(end, name, by, direction, way, called))

    def toward(
        self, start: str, name: str, by: Length, way: Vector, where: str, called: str | Told
    ) -> Draft:
        """Measure from a point in any direction, ``where`` in words, and mark a new point."""
        return self.then(MeasureOff(start, name, by, way.unit(), where, called))

    def level(self, at: str, by: float, called: str) -> Draft:
        """Rule a thin line square across through a point; ``by`` is its length [mm]."""
        return self.then(LevelLine(at, by, called))

    def rule(self, line: str, *names: str, remark: str = "") -> Draft:
        """Join points with a straight line of the pattern."""
        return self.then(Straight(line, names, remark))

    def curve(
        self,
        line: str,
        path: Path,
        names: tuple[str, ...],
        manner: str | Told,
        checks: tuple[Passing, ...] = (),
    ) -> Draft:
        """Draw a curve of the pattern through known ends."""
        return self.then(Curve(line, path, names, manner, checks))

    def trace(self, what: str, source: DraftingPaper) -> Draft:
        """Copy another draft's points and lines."""
        return self.then(Trace(what, source))

    def note(self, *words: Part) -> Draft:
        """Say something that leaves no mark."""
        return self.then(Note(words))

    def then(self, step: Step) -> Draft:
        """Return the draft with one more step done."""
        paper = step.draw(self.paper)
        return replace(self, steps=(*self.steps, step), papers=(*self.papers, paper))
