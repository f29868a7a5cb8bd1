"""What fittings taught, as a draft reads it: amounts that only an adjustment sets."""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.style.style import Style
from tapewise_core.units import mm

NONE = mm(0)
"""What nobody found at a fitting."""


class FittedStyle(Frozen):
    """Amounts [mm] of one half, nothing where no fitting asked for them.

    ``front_longer`` is length between neck point and waist, ``back_longer`` between nape and
    waist; ``bust_forward`` and ``hip_forward`` are what the front's side has more and the back's
    less; ``underarm_lower`` and ``sleeve_wider`` move what a set-in sleeve is solved for;
    ``back_shorter`` takes the lower edge up at the centre back; ``flatter`` lays a grown-on sleeve
    so many degrees nearer to level; ``cap_forward`` is how far the sleeve is turned in its armhole;
    ``sides_higher`` takes the hem up at the sides.
    """

    front_longer: float = 0.0
    back_longer: float = 0.0
    back_neck_higher: float = 0.0
    across_back: float = 0.0
    across_front: float = 0.0
    bust_forward: float = 0.0
    hip_forward: float = 0.0
    underarm_lower: float = 0.0
    sleeve_wider: float = 0.0
    back_shorter: float = 0.0
    flatter: float = 0.0
    cap_forward: float = 0.0
    sides_higher: float = 0.0

    @classmethod
    def of(cls, style: Style) -> FittedStyle:
        """Read it from a style."""
        return cls(
            style.length("front-longer", NONE).mm,
            style.length("back-longer", NONE).mm,
            style.length("back-neck-higher", NONE).mm,
            style.length("across-back-wider", NONE).mm,
            style.length("across-front-wider", NONE).mm,
            style.length("bust-forward", NONE).mm,
            style.length("hip-forward", NONE).mm,
            style.length("underarm-lower", NONE).mm,
            style.length("sleeve-wider", NONE).mm,
            (style.length("back-shorter", NONE) + style.length("back-waist-shorter", NONE)).mm,
            style.number("sleeve-flatter", 0.0),
            style.length("cap-forward", NONE).mm,
            style.length("sides-higher", NONE).mm,
        )

    @property
    def back_neck(self) -> float:
        """How far the back's neckline goes up in all [mm]."""
        return self.back_neck_higher + self.back_longer
