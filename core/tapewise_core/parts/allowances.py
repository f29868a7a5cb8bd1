"""The allowances of a top's edges."""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.parts.end_style import banded
from tapewise_core.style.style import Style
from tapewise_core.units import Length

HEMS = ("hem", "sleeve_hem")
"""Lines whose edge is turned unless a band is sewn to it."""


class Allowances(Frozen):
    """What is added at seams, at the neckline and its band, and at turned hems."""

    seam: Length
    neck: Length
    hem: Length
    banded: tuple[str, ...] = ()
    """Hems that a band is sewn to instead of being turned."""

    @classmethod
    def of(cls, style: Style) -> Allowances:
        """Read them from a style."""
        return cls(
            style.length("seam-allowance"),
            style.length("neck-allowance"),
            style.length("hem-allowance"),
            banded(style),
        )

    def turned(self, line: str) -> bool:
        """Say whether a line is a hem whose edge is turned."""
        return line in HEMS and line not in self.banded

    def along(self, line: str) -> float:
        """Return what is added along a line of a half [mm]."""
        if line == "neckline":
            return self.neck.mm
        return (self.hem if self.turned(line) else self.seam).mm
