"""How the bodice's sleeves are cut, as the wearer chose it."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.parts.bare_style import is_bare
from tapewise_core.style.style import Style


class SleeveCut(StrEnum):
    """In one with the bodice, or set into its armholes."""

    GROWN_ON = "grown-on"
    SET_IN = "set-in"

    @classmethod
    def of(cls, style: Style) -> SleeveCut:
        """Read it from a style; a bodice without sleeves has the armholes of a set-in one."""
        return cls.SET_IN if is_bare(style) else cls(style.choice("sleeve-cut"))
