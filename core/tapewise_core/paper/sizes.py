"""Sheets of paper people print on.

[iso216] for the A sizes, ANSI/ASME Y14.1 for Letter; 10 mm all round are left
blank, because printers leave 3 to 6.4 mm (common practice).
"""

from __future__ import annotations

from dataclasses import dataclass

MARGIN = 10.0
"""Left blank all round [mm]."""


@dataclass(frozen=True, slots=True)
class PageSize:
    """A sheet upright: its name as people say it, width and height [mm]."""

    name: str
    width: float
    height: float

    def turned(self) -> PageSize:
        """Return the sheet on its side."""
        return PageSize(f"{self.name} on its side", self.height, self.width)

    @property
    def paper(self) -> str:
        """The paper's own name, whichever way it lies."""
        return self.name.removesuffix(" on its side")


A4 = PageSize("A4", 210.0, 297.0)
A3 = PageSize("A3", 297.0, 420.0)
A0 = PageSize("A0", 841.0, 1189.0)
LETTER = PageSize("Letter", 215.9, 279.4)
A4_OR_LETTER = PageSize("A4 or Letter", 210.0, 279.4)
"""As wide as A4, as high as Letter, so that one set prints unscaled on both."""

ROLL = 914.0
"""Width of a usual plotter roll [mm]: 36 in to the millimetre."""

LONGEST = 5080.0
"""The longest side a PDF page may have [mm]: 14 400 units [iso32000-1, annex C]."""
