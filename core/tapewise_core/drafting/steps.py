"""The things a drafter does. Each draws itself and tells itself.

Geometry and wording of one act stand side by side, so that they cannot drift.
``told`` repeats, for whoever checks, the distances that the wording states.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

from tapewise_core.drafting.sheet import Sheet
from tapewise_core.errors import DraftError
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.units import Length, Unit

Told = tuple[str, str, Length]
"""From a point, to a point, the distance told."""


class Step(Protocol):
    """One act at the drafting table."""

    def draw(self, sheet: Sheet) -> Sheet:
        """Return the paper after this act."""
        ...

    def tell(self, unit: Unit) -> str:
        """Return the act as a sentence or two for a person with pencil and ruler."""
        ...

    def told(self) -> tuple[Told, ...]:
        """Return every distance between two points that the sentence states."""
        ...


@dataclass(frozen=True, slots=True)
class Start:
    """Mark the first point."""

    name: str
    where: str

    def draw(self, sheet: Sheet) -> Sheet:
        """Put the point at the origin."""
        return sheet.with_point(self.name, Point(0, 0))

    def tell(self, unit: Unit) -> str:
        """Say where it goes on the paper."""
        return f"Mark {self.name}, {unit.reword(self.where)}."

    def told(self) -> tuple[Told, ...]:
        """State no distance."""
        return ()


@dataclass(frozen=True, slots=True)
class Measure:
    """Measure from a point in a direction and mark a new point; ``guide`` rules it thinly too."""

    start: str
    name: str
    by: Length
    along: Vector
    way: str
    called: str
    guide: bool = True

    def draw(self, sheet: Sheet) -> Sheet:
        """Mark the point; raises DraftError with the working if the length is not positive."""
        if self.by.mm <= 0:
            told = self.by.tell(Unit.CM)
            raise DraftError(f"{self.start}–{self.name}, {self.called}, would be {told}.")
        start = sheet.point(self.start)
        end = start + self.along * self.by.mm
        ruled_thin = sheet.with_guide(f"{self.start}–{self.name}", ruled(start, end))
        return (ruled_thin if self.guide else sheet).with_point(self.name, end)

    def tell(self, unit: Unit) -> str:
        """Say from where, which way and how far."""
        return (
            f"From {self.start} measure {self.way} {self.by.tell(unit)}; "
            f"mark {self.name}, {self.called}."
        )

    def told(self) -> tuple[Told, ...]:
        """State the measured distance."""
        return ((self.start, self.name, self.by),)


@dataclass(frozen=True, slots=True)
class Level:
    """Rule a construction line square across the paper through a point."""

    at: str
    by: float
    called: str

    def draw(self, sheet: Sheet) -> Sheet:
        """Rule it thinly."""
        start = sheet.point(self.at)
        return sheet.with_guide(self.called, ruled(start, start + Vector(self.by, 0)))

    def tell(self, unit: Unit) -> str:
        """Say what the line is."""
        return f"Through {self.at} rule a thin line square across: {self.called}."

    def told(self) -> tuple[Told, ...]:
        """State no distance."""
        return ()


@dataclass(frozen=True, slots=True)
class Rule:
    """Join points with a straight line that belongs to the pattern."""

    line: str
    names: tuple[str, ...]
    remark: str = ""

    def draw(self, sheet: Sheet) -> Sheet:
        """Rule the line."""
        return sheet.with_line(self.line, ruled(*(sheet.point(name) for name in self.names)))

    def tell(self, unit: Unit) -> str:
        """Say which points, and what the line is."""
        remark = f", {self.remark}" if self.remark else ""
        return f"Rule {'–'.join(self.names)}{remark}: the {self.line.replace('_', ' ')}."

    def told(self) -> tuple[Told, ...]:
        """State no distance."""
        return ()


@dataclass(frozen=True, slots=True)
class Curve:
    """Draw a curve through known ends; ``checks`` are points on it with their distances."""

    line: str
    path: Path
    names: tuple[str, ...]
    manner: str
    checks: tuple[tuple[str, Point, str, Length, str], ...] = ()

    def draw(self, sheet: Sheet) -> Sheet:
        """Draw the curve and mark its check points."""
        for name in self.names:
            sheet.point(name)
        drawn = sheet.with_line(self.line, self.path)
        for name, point, *_ in self.checks:
            drawn = drawn.with_point(name, point)
        return drawn

    def tell(self, unit: Unit) -> str:
        """Say which points, in what manner, and what to check on the way."""
        way = f"Draw a smooth curve {'–'.join(self.names)}: the {self.line.replace('_', ' ')}."
        checks = [
            f"It passes {name}, {by.tell(unit)} from {start} {called}."
            for name, _, start, by, called in self.checks
        ]
        return " ".join([way, unit.reword(self.manner), *checks])

    def told(self) -> tuple[Told, ...]:
        """State the distances to the check points."""
        return tuple((start, name, by) for name, _, start, by, _ in self.checks)


@dataclass(frozen=True, slots=True)
class Trace:
    """Copy points and lines of another draft onto fresh paper."""

    what: str
    source: Sheet

    def draw(self, sheet: Sheet) -> Sheet:
        """Put the traced sheet down."""
        return self.source

    def tell(self, unit: Unit) -> str:
        """Say what is traced."""
        return f"Trace {self.what} onto fresh paper."

    def told(self) -> tuple[Told, ...]:
        """State no distance."""
        return ()


@dataclass(frozen=True, slots=True)
class Note:
    """Say something that leaves no mark on the paper."""

    words: tuple[str | Length, ...]

    def draw(self, sheet: Sheet) -> Sheet:
        """Leave the paper as it is."""
        return sheet

    def tell(self, unit: Unit) -> str:
        """Say it, with lengths in the reader's unit."""
        return "".join(w if isinstance(w, str) else w.tell(unit) for w in self.words)

    def told(self) -> tuple[Told, ...]:
        """State no distance between points."""
        return ()


@dataclass(frozen=True, slots=True)
class Outline:
    """Add the allowances: draw the line to cut along outside the pattern's own lines."""

    edges: tuple[tuple[str, Length, str], ...]
    path: Path

    def draw(self, sheet: Sheet) -> Sheet:
        """Draw the cut line."""
        return sheet.with_line("cutting_line", self.path)

    def tell(self, unit: Unit) -> str:
        """Say what each edge gets."""
        each = "; ".join(
            f"{name.replace('_', ' ')} {by.tell(unit)}{remark}" for name, by, remark in self.edges
        )
        return f"Add the allowances outside the lines, then cut along the outer line: {each}."

    def told(self) -> tuple[Told, ...]:
        """State no distance between points."""
        return ()
