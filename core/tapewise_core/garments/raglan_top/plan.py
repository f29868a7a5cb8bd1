"""A raglan sleeve as it is to be drafted: as wide as asked, its hem, its length, its underarm."""

from __future__ import annotations

from tapewise_core.blocks.set_in.sleeve import LEAST_SEAM, MOST_TAPER, hem_asked
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.measures.body import Body
from tapewise_core.parts.shape.half_raglan import HalfSleeve, over
from tapewise_core.parts.shape.raglan_line import RaglanLine
from tapewise_core.parts.shape.raglan_sleeve import RaglanSleeve, raglan_sleeve
from tapewise_core.parts.shape.sleeve import bent_hem
from tapewise_core.text.told import Told, said
from tapewise_core.units import Length, mm

Lines = tuple[RaglanLine, RaglanLine]
"""The back's raglan line and the front's."""

ROUNDS, NEAR = 8, 0.02
"""A hem's length is met within so much [mm], in so many rounds at the most."""

SLANTED = 3
"""The seams' slant depends on the underarm's level, and that on the slant: looked at so often."""

NARROWEST = 30.0
"""No half of a hem is narrower [mm] (our choice)."""


class Plan(Frozen):
    """A solved sleeve: its ``length`` from the shoulder point, the girth of the ``hem`` as asked,
    and by how much each half is narrower there than under the arm [mm]."""

    sleeve: RaglanSleeve
    length: Length
    hem: float
    inset: float

    def hem_of(self, half: HalfSleeve) -> Path:
        """Return half a hem from the overarm, bent to meet the underarm seam square."""
        middle = Point(0, self.length.mm - over(half.bend))
        corner = Point(half.width - self.inset, middle.y)
        mean = self.sleeve.width / 2 - self.inset
        return bent_hem(middle, corner, half.turn.end, mean)

    @property
    def around(self) -> float:
        """The hem's girth as drawn [mm]."""
        return sum(self.hem_of(half).length() for half in (self.sleeve.back, self.sleeve.front))


def width_asked(body: Body, style: SetInStyle) -> float:
    """Return the sleeve's width round the arm [mm]: with its ease, and what fittings found."""
    return body["upper_arm"].mm + style.sleeve.ease.mm + style.fitted.sleeve_wider


def planned(body: Body, style: SetInStyle, lines: Lines) -> Plan:
    """Return the sleeve that a body and a style ask for, sewn to both halves' lines."""
    width, lean = width_asked(body, style), 0.0
    for _ in range(SLANTED):
        sleeve = raglan_sleeve(*lines, width, lean)
        plan = _hemmed(body, style, sleeve)
        slant = plan.inset / (plan.length.mm - sleeve.level)
        if abs(slant - lean) < SLANT:
            break
        lean = slant
    return plan


SLANT = 1e-3
"""Until they agree to a twentieth of a degree."""


def _hemmed(body: Body, style: SetInStyle, sleeve: RaglanSleeve) -> Plan:
    """The sleeve with a hem as asked, as far as its seams may slant."""
    least = sleeve.level + LEAST_SEAM
    length = style.sleeve.length if style.sleeve.length.mm >= least else mm(least)
    asked = hem_asked(body, style, sleeve.width)
    most = MOST_TAPER * (length.mm - sleeve.level)
    deepest = min(most, min(sleeve.back.width, sleeve.front.width) - NARROWEST)

    def kept(inset: float) -> float:
        return min(max(inset, -most), deepest)

    plan = Plan(sleeve, length, asked, kept((sleeve.width - asked) / 2))
    for _ in range(ROUNDS):
        short = asked - plan.around
        if abs(short) < NEAR:
            break
        plan = Plan(sleeve, length, asked, kept(plan.inset - short / 2))
    return plan


def held_back(plan: Plan, arm: float) -> Told:
    """Say what ease the armholes allow, where another was asked; ``arm`` is the girth [mm]."""
    sleeve = plan.sleeve
    if abs(sleeve.width - sleeve.asked) < 1:
        return ()
    words = "These armholes take a raglan sleeve with {} to {} of ease, not {}."
    return said(words, mm(sleeve.least - arm), mm(sleeve.widest - arm), mm(sleeve.asked - arm))
