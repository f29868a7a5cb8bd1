"""Curves: through points of their own, or round a point as a string turns."""

from __future__ import annotations

from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.drafting.steps import Stated, listed
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.text.told import LineName, Told, joined, said
from tapewise_core.units import Length


class Curve(Frozen):
    """Draw a curve through points.

    ``straight`` are those of them between which it is ruled, ``ways`` its directions at both
    ends in words, none where it is ruled there; both are found by :mod:`drafting.by_hand`.
    """

    line: str
    path: Path
    names: tuple[str, ...]
    manner: str | Told = ()
    straight: tuple[tuple[str, ...], ...] = ()
    ways: tuple[Told, Told] = ((), ())

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Draw the curve."""
        for name in self.names:
            paper.point(name)
        return paper.with_line(self.line, self.path)

    def tell(self) -> Told:
        """Say which points, where it is ruled, how it leaves and ends, and in what manner."""
        opening = said("Draw the {} through {}", LineName(self.line), listed(self.names))
        manner = said("{}", self.manner) if self.manner else ()
        return joined(((*opening, *self._shape(), "."), self._ends(), manner))

    def _shape(self) -> Told:
        if not self.straight:
            return (": one smooth line",)
        parts = listed(tuple(f"from {names[0]} to {names[-1]}" for names in self.straight))
        return (f": ruled {parts}, and one smooth line with the rest, without a corner",)

    def _ends(self) -> Told:
        first, last = self.ways
        words = (
            said("leaves {} {}", self.names[0], first) if first else (),
            said("comes to {} {}", self.names[-1], last) if last else (),
        )
        both = joined(words, " and ")
        return ("It ", *both, ".") if both else ()

    def stated(self) -> tuple[Stated, ...]:
        """State no distance: its points are marked before."""
        return ()


class Round(Frozen):
    """Draw part of a circle round a point, through others that lie as far from it."""

    line: str
    path: Path
    names: tuple[str, ...]
    centre: str
    radius: Length

    def draw(self, paper: DraftingPaper) -> DraftingPaper:
        """Draw the arc."""
        return paper.with_line(self.line, self.path)

    def tell(self) -> Told:
        """Say how a string turns round the centre."""
        words = "Turn a tape or a string round {}, {} long, and draw the {} through {}, part of a "
        line = LineName(self.line)
        return said(words + "circle.", self.centre, self.radius, line, listed(self.names))

    def stated(self) -> tuple[Stated, ...]:
        """State how far its points lie from the centre."""
        return tuple((self.centre, name, self.radius) for name in self.names)
