"""The neck as the wearer chose it: its neckline, its finish and every size of both."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.drafting.piece import COLLAR_PIECE
from tapewise_core.frozen import Frozen
from tapewise_core.parts.allowances import Allowances
from tapewise_core.parts.fitted_style import FittedStyle
from tapewise_core.parts.placket_style import PlacketStyle
from tapewise_core.style.style import Style
from tapewise_core.units import Length, mm


class Neckline(StrEnum):
    """The neckline's kind."""

    ROUND = "round"
    SCOOP = "scoop"
    V = "v"
    BOAT = "boat"
    HIGH = "high"
    COWL = "cowl"


class NeckFinish(StrEnum):
    """What a neckline is finished with."""

    BAND = "band"
    TURNED = "turned"
    FACING = "facing"


class Collar(StrEnum):
    """How a high neck's collar stands: once, or folded over."""

    FUNNEL = "funnel"
    FOLDED = "folded"


class Sewn(StrEnum):
    """Whether a band or a sleeve is sewn on in the round or while the cloth lies flat."""

    ROUND = "round"
    FLAT = "flat"


class NeckStyle(Frozen):
    """A neckline from its depths below the nape's level to its finish, ``band_ratio`` the band's
    length as a share of the neckline, None where it follows from the neckline drawn and from how
    far the cloth stretches (``stretch``, as a fraction). A garment without facings has none of
    any width. ``band_longer`` is the fraction by which fittings let the band out; ``flat``: the
    band is sewn on before the second shoulder is closed; a V's never."""

    kind: Neckline
    finish: NeckFinish
    half_width: Length
    rise: Length
    back_depth: Length
    depth: Length
    band_width: Length
    band_ratio: float | None
    stretch: float
    facing_width: Length
    allowances: Allowances
    band_longer: float = 0.0
    flat: bool = False
    opens: float = 0.0
    """What a placket adds to the neck's opening [mm]."""
    cowl_depth: Length = mm(0)
    """How far a cowl's fold hangs below the side necks."""

    @classmethod
    def of(cls, style: Style) -> NeckStyle:
        """Read it from a style."""
        return cls(
            Neckline(style.choice("neckline")),
            NeckFinish(style.choice("neck-finish")),
            style.length("neck-half-width"),
            style.length("neck-rise"),
            _back_depth(style),
            style.length("neck-depth"),
            _band_width(style),
            _ratio(style),
            style.number("stretch") / 100,
            style.length("facing-width", mm(0)),
            Allowances.of(style),
            style.number("band-longer", 0.0) / 100,
            style.choice("band-sewn", Sewn.ROUND) == Sewn.FLAT,
            PlacketStyle.of(style).opens,
            style.length("cowl-depth", mm(0)),
        )

    @property
    def high(self) -> bool:
        """Whether the band is a collar that stands up."""
        return self.kind is Neckline.HIGH

    @property
    def strip(self) -> str:
        """The name of the strip that is sewn round the neckline, as a piece."""
        return COLLAR_PIECE if self.high else "neckband"

    @property
    def cowl(self) -> bool:
        """Whether the front is spread at its neck, so that a fold hangs there."""
        return self.kind is Neckline.COWL

    @property
    def pointed(self) -> bool:
        """Whether the front ends in a point."""
        return self.kind is Neckline.V

    @property
    def turned(self) -> bool:
        """Whether the neckline's own edge is turned to the inside."""
        return self.finish is NeckFinish.TURNED


def _back_depth(style: Style) -> Length:
    """As chosen, and raised by what fittings found: below nothing it lies above the nape."""
    depth, higher = style.length("back-neck-depth"), FittedStyle.of(style).back_neck
    return depth - mm(higher).called("raised after fittings") if higher else depth


def _band_width(style: Style) -> Length:
    """A band's own width; a collar is as wide as it is high, twice where it is folded over."""
    if Neckline(style.choice("neckline")) is not Neckline.HIGH:
        return style.length("band-width")
    folds = 2 if style.choice("collar") == Collar.FOLDED else 1
    return style.length("collar-height") * folds if folds > 1 else style.length("collar-height")


def _ratio(style: Style) -> float | None:
    """The ratio that was chosen, or a V's own; any other is settled when the neckline is drawn."""
    own = style.asked("band-ratio") or Neckline(style.choice("neckline")) is Neckline.V
    return style.number("band-ratio") if own else None
