"""How deep a cowl hangs.

Amounts are common practice in the trade unless marked otherwise.
"""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.parts.figure_style import FigureStyle
from tapewise_core.parts.neck_options import BEYOND_NECK, fall_of, own_half_width
from tapewise_core.parts.neck_style import Neckline
from tapewise_core.parts.shape.cowl import drape_of
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import said
from tapewise_core.units import Length, cm


class Usually(Frozen):
    """By how much a half's neck edge is spread unasked: a share of the shoulder, seen from above,
    less so much of it [mm]; within what such a shoulder can be turned for (our geometry)."""

    share: float
    kept: float

    def __call__(self, body: Body, style: Style) -> Length:
        """Return how deep a cowl hangs."""
        figure, wide = FigureStyle.of(style), style.length("neck-half-width").mm
        level = body["shoulder_length"].mm * math.cos(math.radians(fall_of(body, figure)))
        left = own_half_width(body, figure).mm + level - BEYOND_NECK.mm - wide
        spread = max(self.share * (left - self.kept), LEAST_SPREAD)
        return cm(round(drape_of(wide, wide + spread)) / 10)


LEAST_SPREAD = 9.0
"""A cowl is spread by so much at least, unasked [mm] (our choice)."""

GROWN_ON = Usually(0.85, 46.0)
"""A shoulder that runs on into a sleeve bends there, so that less of it can be turned."""

SET_IN = Usually(0.75, 15.0)
"""A shoulder that ends in an armhole is straight."""

COWL_SIZE = Options.of(
    Option(
        key="cowl-depth",
        group=Group.NECK,
        says=said(
            "how far a cowl's fold hangs below a straight line between the side necks, as a chain "
            "pinned there would; the front is spread as wide as that needs"
        ),
        default=GROWN_ON,
        default_says=said("as deep as the shoulder can be spread for, about"),
        where=("neckline", Neckline.COWL),
        low=2,
        high=25,
    ),
)
"""Beside the neck's own sizes."""
