"""All that a straight skirt reads of what its wearer chose."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.parts.end_style import hem_band
from tapewise_core.parts.fitted_style import FittedStyle
from tapewise_core.style.style import Style
from tapewise_core.units import Length, cm, mm


class Vent(StrEnum):
    """What opens a narrow hem for a stride."""

    NONE = "none"
    SLITS = "slits"
    BACK = "back"


class StraightStyle(Frozen):
    """``flare`` is how far each side goes out from the hip to the hem, less than nothing where it
    goes in; ``dip`` how far the waist lies lower at the centre back, ``belly`` higher at the
    centre front; ``cloth_weight`` in grams for a square metre; ``band`` is how wide a hem band is,
    which the length is without."""

    length: Length
    hip_ease: Length
    flare: Length
    vent: Vent
    vent_length: Length
    dip: Length
    belly: Length
    seam: Length
    hem_allowance: Length
    cloth_weight: float
    band: Length

    @classmethod
    def of(cls, style: Style) -> StraightStyle:
        """Read it from a style."""
        band = hem_band(style)
        return cls(
            style.length("skirt-length") - band,
            style.length("hip-ease"),
            style.length("flare"),
            Vent(style.choice("vent")),
            style.length("vent-length"),
            _dip(style),
            style.length("full-belly"),
            style.length("seam-allowance"),
            style.length("skirt-hem-allowance"),
            style.number("cloth-weight"),
            band,
        )


def _dip(style: Style) -> Length:
    """The usual dip, and what fittings found; below nothing the waist goes up there."""
    found = FittedStyle.of(style).back_shorter
    return BACK_DIP + mm(found).called("after fittings") if found else BACK_DIP


BACK_DIP = cm(1)
"""A skirt's waist lies so much lower at the centre back than at the sides' waist line (common
practice)."""
