"""What every garment asks about its cloth; usual values are common practice."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.drafting.cloth import Cloth, Spread
from tapewise_core.frozen import Frozen
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.amounts import About
from tapewise_core.text.told import said
from tapewise_core.units import cm


class Wash(StrEnum):
    """When the cloth is washed for the first time: before it is cut, or after."""

    BEFORE = "before"
    AFTER = "after"


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
    Option(
        key="shrinkage-across",
        group=Group.CLOTH,
        says=said("how much narrower the cloth is after its first wash"),
        kind=ValueKind.PERCENT,
        default=0.0,
        low=0,
        high=20,
    ),
    Option(
        key="stretch-along",
        group=Group.CLOTH,
        says=said("how far the cloth stretches along its ribs; 0 if it does not or was not tried"),
        kind=ValueKind.PERCENT,
        default=0.0,
        low=0,
        high=200,
    ),
    Option(
        key="wash",
        group=Group.CLOTH,
        says=said(
            "whether the cloth is washed before or after it is cut; after, all pieces are drawn "
            "larger by what it will shrink"
        ),
        kind=ValueKind.CHOICE,
        default=Wash.BEFORE,
        choices=tuple(Wash),
    ),
    Option(
        key="lay",
        group=Group.CLOTH,
        says=said(
            "how the cloth lies to be cut: open in one layer, folded lengthwise, or a knitted "
            "tube, whose width is then that all round"
        ),
        kind=ValueKind.CHOICE,
        default=Spread.OPEN,
        choices=tuple(Spread),
    ),
    Option(
        key="nap",
        group=Group.CLOTH,
        says=said("whether all pieces must point the same way, as for a pile or a print"),
        kind=ValueKind.SWITCH,
        default="no",
    ),
    Option(
        key="cloth-repeat",
        group=Group.CLOTH,
        says=said("the length after which the cloth's own pattern repeats; 0 for a plain cloth"),
        default=0.0,
        low=0,
        high=100,
    ),
    Option(
        key="cloth-length",
        group=Group.CLOTH,
        says=said("how much of the cloth there is, as bought; 0 where it is still to buy"),
        default=0.0,
        low=0,
        high=2000,
    ),
)
CUTTING = frozenset(
    {"shrinkage-across", "stretch-along", "wash", "lay", "nap", "cloth-repeat", "cloth-length"}
)
"""What of it decides how the cloth is cut, and no line of the garment as it is worn."""

KNOWN_BY = frozenset(
    {"stretch", "stretch-along", "cloth-width", "shrinkage", "shrinkage-across", "cloth-weight"}
)
"""What tells one cloth from another that has no name."""

WEIGHT = Option(
    key="cloth-weight",
    group=Group.CLOTH,
    says=said("weight of the cloth for a square metre"),
    kind=ValueKind.WEIGHT,
    default=220.0,
    low=60,
    high=600,
)


class ClothStyle(Frozen):
    """Stretches and shrinkages as fractions, ``weight`` in grams for a square metre, lengths in
    mm. A garment that asks for the stretch alone is cut from a usual cloth that does not shrink."""

    stretch: float
    width: float
    shrinkage: float
    weight: float
    stretch_along: float
    shrinkage_across: float
    length: float
    spread: Spread
    nap: bool
    repeat: float
    washed: bool

    @classmethod
    def of(cls, style: Style) -> ClothStyle:
        """Read it from a style."""
        return cls(
            style.number("stretch") / 100,
            style.length("cloth-width", cm(USUAL_WIDTH)).mm,
            style.number("shrinkage", 0.0) / 100,
            style.number("cloth-weight", USUAL_WEIGHT),
            style.number("stretch-along", 0.0) / 100,
            style.number("shrinkage-across", 0.0) / 100,
            style.length("cloth-length", cm(0)).mm,
            Spread(style.choice("lay", Spread.OPEN)),
            style.choice("nap", "no") == "yes",
            style.length("cloth-repeat", cm(0)).mm,
            Wash(style.choice("wash", Wash.BEFORE)) is Wash.BEFORE,
        )

    @property
    def usable_width(self) -> float:
        """What a garment's pieces, as they are worn, may take of the width [mm]."""
        cloth = Cloth(
            self.stretch, 0.0, 0.0, self.width, spread=self.spread, washed=self.washed,
            shrinkage_across=self.shrinkage_across,
        )  # fmt: skip
        return cloth.usable_width


USUAL_WIDTH, USUAL_WEIGHT = 150.0, 200.0
"""A cloth's width [cm] and weight [g/m²] where a garment does not ask (common practice)."""
