"""What every garment asks about its cloth; usual values are common practice."""

from __future__ import annotations

from dataclasses import dataclass

from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import About, said
from tapewise_core.units import cm

CLOTH = Options.of(
    Option(
        key="stretch",
        group=Group.CLOTH,
        says=said(
            "how far the cloth stretches across: what {} on the fold gain, as a percentage",
            About(100),
        ),
        kind=ValueKind.PERCENT,
        default=50.0,
        low=0,
        high=200,
    ),
    Option(
        key="cloth-width",
        group=Group.CLOTH,
        says=said("width of the cloth as bought"),
        default=150.0,
        low=50,
        high=320,
    ),
    Option(
        key="shrinkage",
        group=Group.CLOTH,
        says=said("how much shorter the cloth is after its first wash"),
        kind=ValueKind.PERCENT,
        default=5.0,
        low=0,
        high=20,
    ),
)
WEIGHT = Option(
    key="cloth-weight",
    group=Group.CLOTH,
    says=said("weight of the cloth for a square metre"),
    kind=ValueKind.WEIGHT,
    default=220.0,
    low=60,
    high=600,
)


@dataclass(frozen=True, slots=True)
class ClothStyle:
    """``stretch`` and ``shrinkage`` as fractions, ``weight`` in grams for a square metre. A
    garment that asks for the stretch alone is cut from a usual cloth that does not shrink."""

    stretch: float
    width: float
    shrinkage: float
    weight: float

    @classmethod
    def of(cls, style: Style) -> ClothStyle:
        """Read it from a style."""
        return cls(
            style.number("stretch") / 100,
            style.length("cloth-width", cm(USUAL_WIDTH)).mm,
            style.number("shrinkage", 0.0) / 100,
            style.number("cloth-weight", USUAL_WEIGHT),
        )


USUAL_WIDTH, USUAL_WEIGHT = 150.0, 200.0
"""A cloth's width [cm] and weight [g/m²] where a garment does not ask (common practice)."""
