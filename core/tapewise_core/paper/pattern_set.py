"""Everything a draft has to put on paper, before any page size or file format."""

from __future__ import annotations

from collections.abc import Callable

from tapewise_core.frozen import Frozen
from tapewise_core.paper.document import Document
from tapewise_core.paper.drawing import Drawing
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

ANYBODY = Reader(Unit.CM)
"""Whom a set speaks to that is made for nobody in particular."""


class PatternSet(Frozen):
    """A pattern's pieces at full size, one drawing each, and what is read beside them.

    The inks of a piece name it as their ``part``. ``date`` is printed as it
    stands, so that the same draft gives the same bytes on any day. ``by_hand`` tells how to draft
    it, asked only by what is read: its pictures take longer than all pages. ``reader`` is whom
    the pages speak to. ``fingerprint`` is the same on all sheets of one draft, ``looks`` its style
    in three words; ``whole`` draws the pieces opened out about their folds, for cutters and
    projectors.
    """

    title: str
    description: str
    person: str
    date: str
    pieces: tuple[Drawing, ...]
    by_hand: Callable[[], Document]
    checklist: Document
    note: str = ""
    reader: Reader = ANYBODY
    fingerprint: str = ""
    looks: str = ""
    whole: Callable[[], tuple[Drawing, ...]] = tuple

    @property
    def instructions(self) -> Document:
        """How to draft it by hand."""
        return self.by_hand()

    @property
    def opened(self) -> tuple[Drawing, ...]:
        """The pieces as they are cut from a single layer, none of them half."""
        return self.whole() or self.pieces

    def label(self) -> str:
        """Return the line that says on every page what this is, the fingerprint first.

        Where a line is too long its end is left out, never the fingerprint.
        """
        return " · ".join(filter(None, (*self._names(), self.date, self.looks)))

    def headline(self) -> tuple[str, str]:
        """Return the label in two lines: what it is for whom, and of which day and style."""
        return " · ".join(filter(None, self._names())), " · ".join(
            filter(None, (self.date, self.looks))
        )

    def _names(self) -> tuple[str, str, str]:
        return self.fingerprint, self.title, self.person


def piece_name(piece: Drawing) -> str:
    """Return what a piece's inks say it is, or else its title."""
    return next((ink.part for ink in piece.inks if ink.part), piece.title)
