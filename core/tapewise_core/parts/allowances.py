"""The allowances of a top's edges."""

from __future__ import annotations

from tapewise_core.frozen import dataclass
from tapewise_core.style.style import Style
from tapewise_core.units import Length


@dataclass(frozen=True, slots=True)
class Allowances:
    """What is added at seams, at the neckline and its band, and at turned hems."""

    seam: Length
    neck: Length
    hem: Length

    @classmethod
    def of(cls, style: Style) -> Allowances:
        """Read them from a style."""
        return cls(
            style.length("seam-allowance"),
            style.length("neck-allowance"),
            style.length("hem-allowance"),
        )

    def along(self, line: str) -> float:
        """Return what is added along a line of a half [mm]."""
        kinds = {"neckline": self.neck, "hem": self.hem, "sleeve_hem": self.hem}
        return kinds.get(line, self.seam).mm
