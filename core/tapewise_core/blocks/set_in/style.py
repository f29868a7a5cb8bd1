"""All that a top with set-in sleeves reads of what its wearer chose."""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.parts.allowances import Allowances
from tapewise_core.parts.bare_style import BareStyle
from tapewise_core.parts.figure_style import FigureStyle, FullnessStyle
from tapewise_core.parts.fitted_style import FittedStyle
from tapewise_core.parts.hem import HEM
from tapewise_core.parts.hem_style import HemStyle
from tapewise_core.parts.neck_style import NeckStyle, Sewn
from tapewise_core.parts.sleeve_style import SleeveStyle
from tapewise_core.parts.trunk_style import TrunkStyle
from tapewise_core.style.style import Style
from tapewise_core.units import Length


class ArmholeStyle(Frozen):
    """``drop`` below the armscye line, the sleeve's ``ease`` and that at its hem, all None where
    they are not asked for; ``shorter`` is the fraction by which the cap is shorter than its
    armhole; ``flat``: sleeves are set in before the sides are closed."""

    drop: Length | None
    ease: Length | None
    hem_ease: Length | None
    shorter: float
    flat: bool

    @classmethod
    def of(cls, style: Style) -> ArmholeStyle:
        """Read it from a style."""

        def asked(key: str) -> Length | None:
            return style.length(key) if style.asked(key) else None

        return cls(
            asked("armhole-drop"),
            asked("sleeve-ease"),
            asked("sleeve-hem-ease"),
            style.number("cap-shortening", 0.0) / 100,
            style.choice("sleeve-sewn", Sewn.FLAT) == Sewn.FLAT,
        )


class SetInStyle(Frozen):
    """The views of the garment's parts; ``lower`` is what the body ends at: its hem, or the waist
    seam of a bodice."""

    trunk: TrunkStyle
    figure: FigureStyle
    neck: NeckStyle
    sleeve: SleeveStyle
    hem: HemStyle
    fullness: FullnessStyle
    allowances: Allowances
    armhole: ArmholeStyle
    fitted: FittedStyle
    bare: BareStyle | None
    """How the armholes are finished without sleeves; None with them."""
    lower: str = HEM

    @classmethod
    def of(cls, style: Style, length: Length | None = None) -> SetInStyle:
        """Read it from a style; ``length`` is for a garment that sets the body's length itself."""
        return cls(
            TrunkStyle.of(style, length),
            FigureStyle.of(style),
            NeckStyle.of(style),
            SleeveStyle.of(style),
            HemStyle.of(style),
            FullnessStyle.of(style),
            Allowances.of(style),
            ArmholeStyle.of(style),
            FittedStyle.of(style),
            BareStyle.of(style),
        )

    @property
    def bodice(self) -> bool:
        """Whether it ends at the waist, to have a skirt joined to it."""
        return self.lower != HEM
