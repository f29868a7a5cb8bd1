"""The sizes of what a neckline is finished with: its band, and a facing.

Amounts are common practice in the trade.
"""

from __future__ import annotations

import math

from tapewise_core.geometry.point import Point, Vector
from tapewise_core.measures.body import Body
from tapewise_core.parts.figure_style import FigureStyle
from tapewise_core.parts.neck_finish import head_of
from tapewise_core.parts.neck_options import fall_of, side_neck_height, usual
from tapewise_core.parts.neck_style import Collar, Neckline, Sewn
from tapewise_core.parts.neck_usual import USUAL
from tapewise_core.parts.neckband_ratio import lying, standing
from tapewise_core.parts.neckline import back_neckline, front_neckline
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import said


def band_ratio(body: Body, style: Style) -> float:
    """A V's own; else that of a neckline of these sizes, until the one drawn settles it."""
    own = usual(style).band_ratio
    if Neckline(style.choice("neckline")) is Neckline.HIGH:
        stretch = style.number("stretch") / 100
        return standing(about_neckline(body, style), stretch, head_of(body)).ratio
    if own is not None:
        return own
    width, stretch = style.length("band-width"), style.number("stretch") / 100
    return lying(about_neckline(body, style), width, stretch, head_of(body)).ratio


def about_neckline(body: Body, style: Style) -> float:
    """Return the length of a round neckline of a style's sizes [mm], without what the figure
    changes in it."""
    figure, half = FigureStyle.of(style), style.length("neck-half-width")
    fall = math.radians(fall_of(body, figure))
    overarm = Vector(math.cos(fall), math.sin(fall))
    neck = Point(half.mm, -side_neck_height(body, figure, style.length("neck-rise"), half))
    back = back_neckline(Point(0.0, style.length("back-neck-depth").mm), neck, overarm)
    front = front_neckline(Point(0.0, style.length("neck-depth").mm), neck, overarm)
    return 2 * (back.length() + front.length())


NECK_SIZES = Options.of(
    Option(
        key="band-width",
        group=Group.BANDS,
        says=said("finished width of the neckband"),
        default=2.0,
        where=("neck-finish", "band"),
        low=1,
        high=6,
    ),
    Option(
        key="band-ratio",
        group=Group.BANDS,
        says=said("neckband's length as a share of the neckline"),
        kind=ValueKind.RATIO,
        default=band_ratio,
        default_says=said(
            "by the neckline drawn, the band's width and the cloth; v {}",
            f"{USUAL[Neckline.V].band_ratio:g}",
        ),
        where=("neck-finish", "band"),
        low=0.5,
        high=1,
    ),
    Option(
        key="collar",
        group=Group.NECK,
        says=said("how a high neck's collar stands: a funnel, or folded over"),
        kind=ValueKind.CHOICE,
        default=Collar.FUNNEL,
        choices=tuple(Collar),
        where=("neckline", Neckline.HIGH),
    ),
    Option(
        key="collar-height",
        group=Group.NECK,
        says=said("how high a collar stands when it is worn"),
        default=5.0,
        where=("neckline", Neckline.HIGH),
        low=3,
        high=12,
    ),
    Option(
        key="band-sewn",
        group=Group.BANDS,
        says=said("how a neckband is sewn on: in the round, or flat with one shoulder open"),
        kind=ValueKind.CHOICE,
        default=Sewn.ROUND,
        choices=tuple(Sewn),
        where=("neck-finish", "band"),
    ),
    Option(
        key="facing-width",
        group=Group.NECK,
        says=said("width of a neck facing"),
        default=5.0,
        where=("neck-finish", "facing"),
        low=3,
        high=10,
    ),
)
