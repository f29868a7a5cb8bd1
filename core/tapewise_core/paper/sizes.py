"""Sheets of paper people print on.

[iso216] for the A sizes, ANSI/ASME Y14.1 for Letter, Legal and Tabloid (Ledger on its side),
exact inches for the copy shop's sheets; 10 mm all round are left
blank, because printers leave 3 to 6.4 mm (common practice).
"""

from __future__ import annotations

from tapewise_core.frozen import Frozen

MARGIN = 10.0
"""Left blank all round [mm]."""

OVERLAP = 12.0
"""How much two neighbours print twice [mm], unless asked otherwise."""


class PageSize(Frozen):
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
A2 = PageSize("A2", 420.0, 594.0)
A1 = PageSize("A1", 594.0, 841.0)
A0 = PageSize("A0", 841.0, 1189.0)
LETTER = PageSize("Letter", 215.9, 279.4)
LEGAL = PageSize("Legal", 215.9, 355.6)
TABLOID = PageSize("Tabloid", 279.4, 431.8)
ARCH_D = PageSize("24 by 36 in", 609.6, 914.4)
ARCH_E = PageSize("36 by 48 in", 914.4, 1219.2)
A4_OR_LETTER = PageSize("A4 or Letter", 210.0, 279.4)
"""As wide as A4, as high as Letter, so that one set prints unscaled on both."""

ROLL = 914.0
"""Width of a usual plotter roll [mm]: 36 in to the millimetre."""

LONGEST = 5080.0
"""The longest side a PDF page may have [mm]: 14 400 units [iso32000-1, annex C]."""

HOME = 330.0
"""Paper no wider than this [mm] comes from a printer at home: A3 and Tabloid are."""
