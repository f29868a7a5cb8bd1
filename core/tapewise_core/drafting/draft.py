"""A draft: numbered steps and the paper after each of them."""

from __future__ import annotations

from collections.abc import Callable
from functools import cached_property

from msgspec.structs import replace

from tapewise_core.drafting.curve_steps import Curve
from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.drafting.side_words import beside_word, side_word
from tapewise_core.drafting.steps import (
    MeasureOff,
    Note,
    Start,
    Step,
    Straight,
    Trace,
)
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import DOWN, LEFT, RIGHT, UP, Point
from tapewise_core.text.told import Part, Told
from tapewise_core.units import Length, mm


class Draft(Frozen, dict=True):
    """A construction so far; every verb returns a new draft with one more step.

    ``begun`` are the steps drawn so far on ``drawn``; ``ending`` adds its last ones when they are
    asked for: a draft that only has its sizes compared never needs them.
    """

    title: str
    begun: tuple[Step, ...] = ()
    drawn: tuple[DraftingPaper, ...] = ()
    ending: Callable[[Draft], Draft] | None = None

    @cached_property
    def _whole(self) -> Draft:
        """The draft with its ending done."""
        return self.ending(replace(self, ending=None)) if self.ending else self

    @property
    def steps(self) -> tuple[Step, ...]:
        """Every step in order."""
        return self._whole.begun if self.ending else self.begun

    @property
    def papers(self) -> tuple[DraftingPaper, ...]:
        """The paper after each step."""
        return self._whole.drawn if self.ending else self.drawn

    @property
    def paper(self) -> DraftingPaper:
        """The paper as it stands."""
        papers = self.papers
        return papers[-1] if papers else DraftingPaper()

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
        line = start, through
        direction = (self[through] - self[start]).unit()
        way = f"along {'–'.join(line)}"
        return self.then(MeasureOff(start, name, by, direction, way, called, line=line))

    def square(
        self, line: tuple[str, str], name: str, by: Length, called: str | Told, at: str = ""
    ) -> Draft:
        """Measure square to a line from its end, or from a point ``at``, and mark a new point.

        A length below zero is measured to the other side; above zero it is to the right of
        whoever walks the line.
        """
        start, end = line
        square = (self[end] - self[start]).unit().square()
        direction = square if by.mm > 0 else -square
        way = f"{side_word(direction)}, square to {'–'.join(line)},"
        by = by if by.mm > 0 else mm(-by.mm)
        return self.then(MeasureOff(at or end, name, by, direction, way, called, line=line))

    def slanting(
        self,
        start: str,
        name: str,
        by: Length,
        angle: float,
        to: tuple[str, ...],
        called: str | Told,
    ) -> Draft:
        """Measure at an angle to a line that starts at a point, and mark a new point.

        ``angle`` [degrees] is turned counterclockwise as seen, to the right of a line that runs
        down; where it is straight back the line is carried on.
        """
        along, line = (self[to[-1]] - self[start]).unit(), "–".join(to)
        way = along.turned(-angle)
        words = f"{beside_word(along, way)}, at {abs(angle):g}° to {line},"
        if abs(angle) == 180:
            words = f"straight back from {line}"
        return self.then(MeasureOff(start, name, by, way, words, called, line=to))

    def rule(self, line: str, *names: str, remark: str = "") -> Draft:
        """Join points with a straight line of the pattern."""
        return self.then(Straight(line, names, remark))

    def curve(
        self, line: str, path: Path, names: tuple[str, ...], manner: str | Told = ()
    ) -> Draft:
        """Draw a curve of the pattern through known points, the first and last its ends."""
        return self.then(Curve(line, path, names, manner))

    def trace(self, of: str, source: DraftingPaper, fold: str = "fold") -> Draft:
        """Copy another draft's points and lines, and what it has where this one is folded."""
        return self.then(Trace(of, source, fold))

    def note(self, *words: Part) -> Draft:
        """Say something that leaves no mark."""
        return self.then(Note(words))

    def then(self, step: Step) -> Draft:
        """Return the draft with one more step done."""
        paper = step.draw(self.paper)
        return Draft(self.title, (*self.steps, step), (*self.papers, paper))
