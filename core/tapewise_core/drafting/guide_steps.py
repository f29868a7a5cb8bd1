"""What a drafter does lightly, on the way to a line: points set off beside a straight one."""

from __future__ import annotations

from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.drafting.side_words import side_word
from tapewise_core.drafting.steps import Stated
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.text.told import LineName, Told, joined, said
from tapewise_core.units import Length, mm

ON_IT = 0.5
"""A point that lies nearer to the line is told to lie on it [mm]: less cannot be told."""

FEW = 3
"""So many points are told in a sentence, more of them in a table."""


class Off(Frozen):
    """A point beside a straight line: so far ``along`` it, so far ``out`` from there."""

    name: str
    along: Length
    out: Length
    side: str

    def out_told(self) -> Told:
        """Say how far out, and to which side."""
        return said("{} {}", self.out, self.side) if self.beside else said("on the line")

    @property
    def beside(self) -> bool:
        """Say whether it is far enough out to be told so."""
        return self.out.mm >= ON_IT


class Beside(Frozen):
    """Set off points from the straight line between two others; ``of`` is what passes them."""

    start: str
    end: str
    of: str
    places: tuple[Off, ...]

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Rule the line thinly and mark the points beside it."""
        start, end = paper.point(self.start), paper.point(self.end)
        along = (end - start).unit()
        marked = paper.with_guide(f"{self.start}–{self.end}", ruled(start, end))
        for foot, place in zip(self.feet(paper), self.places, strict=True):
            marked = marked.with_point(place.name, foot + _way(along, place.side) * place.out.mm)
        return marked

    def feet(self, paper: DraftingPaper) -> tuple[Point, ...]:
        """Return where on the line the way out to each point begins."""
        start = paper.point(self.start)
        along = (paper.point(self.end) - start).unit()
        return tuple(start + along * place.along.mm for place in self.places)

    def opening(self) -> Told:
        """Say where the points are set off from."""
        words = "Rule thinly {}. Points of the {}, measured along it from {} and square out: "
        return said(words, f"{self.start}–{self.end}", LineName(self.of), self.start)

    def tell(self) -> Told:
        """Say how far along each point stands, and how far out."""
        each = (said("{} {} along, {}", p.name, p.along, p.out_told()) for p in self.places)
        return (*self.opening(), *joined(each, "; "), ".")

    def table(self) -> tuple[tuple[Told, ...], ...]:
        """Return the points in rows, its head first; no rows where a sentence will do."""
        if len(self.places) <= FEW:
            return ()
        head: tuple[Told, ...] = (("point",), (f"along from {self.start}",), ("square out",))
        return (head, *(((p.name,), (p.along,), p.out_told()) for p in self.places))

    def stated(self) -> tuple[Stated, ...]:
        """State no distance between two points: where the way turns none is marked."""
        return ()


def off_line(name: str, at: Point, start: Point, end: Point) -> Off:
    """Return how a point is set off from the line between two others."""
    chord = (end - start).unit()
    way, out = chord.square(), (at - start).dot(chord.square())
    side = side_word(way if out > 0 else -way)
    return Off(name, mm((at - start).dot(chord)), mm(abs(out)), side)


def _way(along: Vector, side: str) -> Vector:
    """The direction that such a word means beside a line."""
    way = along.square()
    return way if side_word(way) == side else -way
