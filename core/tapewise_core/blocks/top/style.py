"""All that a grown-on top reads of what its wearer chose."""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.parts.allowances import Allowances
from tapewise_core.parts.figure_style import FigureStyle, FullnessStyle
from tapewise_core.parts.fitted_style import FittedStyle
from tapewise_core.parts.hem_style import HemStyle
from tapewise_core.parts.neck_style import NeckStyle
from tapewise_core.parts.sleeve_style import SleeveStyle
from tapewise_core.parts.trunk_style import TrunkStyle
from tapewise_core.style.style import Style
from tapewise_core.units import Length


class TopStyle(Frozen):
    """The views of a top's parts."""

    trunk: TrunkStyle
    figure: FigureStyle
    neck: NeckStyle
    sleeve: SleeveStyle
    hem: HemStyle
    fullness: FullnessStyle
    allowances: Allowances
    fitted: FittedStyle

    @classmethod
    def of(cls, style: Style, length: Length | None = None) -> TopStyle:
        """Read it from a style; ``length`` is for a garment that sets the body's length itself."""
        return cls(
            TrunkStyle.of(style, length),
            FigureStyle.of(style),
            NeckStyle.of(style),
            SleeveStyle.of(style),
            HemStyle.of(style),
            FullnessStyle.of(style),
            Allowances.of(style),
            FittedStyle.of(style),
        )
