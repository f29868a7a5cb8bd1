"""What a drafter does lightly, on the way to a line: guides, circles with a ruler, moved lines."""

from __future__ import annotations

import math
from dataclasses import dataclass

from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.drafting.steps import Stated
from tapewise_core.geometry.arc import arc
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.text.told import LineName, Told, joined, said
from tapewise_core.units import Length, mm

SPREAD = 50.0
"""Circles are drawn so far to both sides of where the ruler touches them [degrees]."""


@dataclass(frozen=True, slots=True)
class Light:
    """Draw a curve lightly: a guide that back and front are traced from."""

    name: str
    path: Path
    names: tuple[str, ...]
    manner: Told

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Draw it thinly."""
        for name in self.names:
            paper.point(name)
        return paper.with_guide(self.name, self.path)

    def tell(self) -> Told:
        """Say which points, and in what manner."""
        line = "–".join(self.names)
        return said("Draw lightly a smooth line {}: the {}. {}", line, self.name, self.manner)

    def stated(self) -> tuple[Stated, ...]:
        """State no distance."""
        return ()


@dataclass(frozen=True, slots=True)
class Ruler:
    """Lay a ruler so that it touches two circles, or one of them from a point; ``ends`` are the
    centres (or the point), ``touching`` the points where it touches, ``at`` where they lie."""

    ends: tuple[str, str]
    touching: tuple[str, ...]
    at: tuple[Point, ...]
    through: tuple[str, ...]

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Draw the circles and the ruler's line thinly, and mark where it touches."""
        for name, spot in zip(self.touching, self.at, strict=True):
            centre = paper.point(self.ends[self.touching.index(name)])
            paper = paper.with_guide(
                f"circle round {centre_name(self, name)}", _circle(centre, spot)
            )
            paper = paper.with_point(name, spot)
        last = self.at[1] if len(self.at) > 1 else paper.point(self.ends[1])
        return paper.with_guide("ruler " + "–".join(self.touching), ruled(self.at[0], last))

    def tell(self) -> Told:
        """Say which circles, and how the ruler lies."""
        circles = joined(
            (said("one round {} through {}", centre, end) for centre, end in self._circles()),
            " and ",
        )
        if len(self.touching) > 1:
            words = "Draw circles, {}. Lay the ruler between them so that it touches both, one "
            words += "on each side; mark {} and {} where it touches."
            return said(words, circles, *self.touching)
        words = "Draw a circle, {}. Lay the ruler from {} so that it touches the circle; mark {} "
        return said(words + "where it touches.", circles, self.ends[1], self.touching[0])

    def _circles(self) -> tuple[tuple[str, str], ...]:
        return tuple(zip(self.ends, self.through, strict=False))[: len(self.touching)]

    def stated(self) -> tuple[Stated, ...]:
        """State no distance: the radii are told where the centres are set off."""
        return ()


def centre_name(step: Ruler, touching: str) -> str:
    """Return the centre of the circle that is touched at a point."""
    return step.ends[step.touching.index(touching)]


def _circle(centre: Point, at: Point) -> Path:
    """The part of a circle about the place where the ruler touches it."""
    way = at - centre
    angle = math.degrees(math.atan2(way.x, way.y))
    return arc(centre, way.length(), angle - SPREAD, angle + SPREAD)


@dataclass(frozen=True, slots=True)
class Off:
    """A point beside a straight line: its ``foot`` so far ``along``, itself so far ``out``."""

    foot: str
    name: str
    along: Length
    out: Length
    side: str


@dataclass(frozen=True, slots=True)
class Beside:
    """Set off points of a curve from the straight line between two points."""

    start: str
    end: str
    places: tuple[Off, ...]

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Rule the line thinly and mark the feet and the points beside them."""
        start, end = paper.point(self.start), paper.point(self.end)
        along = (end - start).unit()
        right = along.square() if along.square().x > 0 else -along.square()
        paper = paper.with_guide(f"{self.start}–{self.end}", ruled(start, end))
        for place in self.places:
            foot = start + along * place.along.mm
            way = right if place.side == "right" else -right
            paper = paper.with_point(place.foot, foot)
            paper = paper.with_point(place.name, foot + way * place.out.mm)
        return paper

    def tell(self) -> Told:
        """Say how far along each stands, and how far out."""
        line = f"{self.start}–{self.end}"
        each = (
            said("{} {} from {} and {} {} to its {}", p.foot, p.along, self.start, p.name, p.out,
                 p.side)
            for p in self.places
        )  # fmt: skip
        words = "Rule thinly {}. Mark on it, and square to it, points of the curve: {}."
        return said(words, line, joined(each, "; "))

    def stated(self) -> tuple[Stated, ...]:
        """State how far along, and how far out."""
        feet = ((self.start, place.foot, place.along) for place in self.places)
        return (*feet, *((place.foot, place.name, place.out) for place in self.places))


@dataclass(frozen=True, slots=True)
class Shift:
    """One place of a line that is moved: from a point on it to a new one, so far."""

    start: str
    name: str
    at: Point
    to: Point

    @property
    def by(self) -> Length:
        """How far."""
        return mm((self.to - self.at).length())


@dataclass(frozen=True, slots=True)
class Shifted:
    """Draw a line again, moved ``how`` at several places; ``line`` None for a guide, ``where`` says
    where those places are that have no name yet."""

    of: str
    how: str
    line: str | None
    called: str
    path: Path
    places: tuple[Shift, ...]
    where: str = ""

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Mark the places and draw the line through them."""
        for place in self.places:
            if place.start not in paper.points:
                paper = paper.with_point(place.start, place.at)
            paper = paper.with_point(place.name, place.to)
        if self.line is None:
            return paper.with_guide(self.called, self.path)
        return paper.with_line(self.line, self.path)

    def tell(self) -> Told:
        """Say how far at which place."""
        each = joined((said("{}–{} {}", p.start, p.name, p.by) for p in self.places), ", ")
        line = LineName(self.called)
        names = "–".join(place.name for place in self.places)
        words = "Move the {} {}, square across at each place: {}{}. Draw the {} through {}."
        return said(words, self.of, self.how, each, self.where, line, names)

    def stated(self) -> tuple[Stated, ...]:
        """State how far each place is moved."""
        return tuple((p.start, p.name, p.by) for p in self.places)
