"""The options of the neck: the neckline's kind and finish, and every size of it.

Amounts are common practice in the trade.
"""

from __future__ import annotations

import math

from tapewise_core.measures.body import Body
from tapewise_core.parts.arm import overarm_fall
from tapewise_core.parts.figure_style import FigureStyle
from tapewise_core.parts.neck_style import NeckFinish, Neckline
from tapewise_core.parts.neck_usual import USUAL, Usual
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import said
from tapewise_core.units import Length, cm

BEYOND_NECK = cm(1.5)
"""How far a pulled-on neckline lies outside the neck's own base."""


LEAST_SHOULDER = 40.0
"""The shoulder that a wide neckline leaves, by default [mm]."""

BACK_CURVE = 18.0
"""The back neckline lies at least so far below its ends, by default [mm]."""


def usual(style: Style) -> Usual:
    """Return what the chosen neckline has; a style with its neckline settled is enough."""
    return USUAL[Neckline(style.choice("neckline"))]


def own_half_width(body: Body, figure: FigureStyle) -> Length:
    """Half the width of a round neckline: a fifth of the neck and a little, or 9 cm flat."""
    own = body["neck"] / 5 + BEYOND_NECK if "neck" in body else cm(9)
    return own + figure.broad_neck


def fall_of(body: Body, figure: FigureStyle) -> float:
    """Return how steeply this figure's overarm falls [degrees]."""
    return overarm_fall(body["shoulder_length"].mm, figure.shoulder_drop.mm)


def neck_half_width(body: Body, style: Style) -> Length:
    """The neck's own half width, wider for a scoop or a boat while 4 cm of shoulder are left."""
    figure = FigureStyle.of(style)
    level = body["shoulder_length"].mm * math.cos(math.radians(fall_of(body, figure)))
    room = max(level - LEAST_SHOULDER, 0.0)
    wider = min(usual(style).wider * 10, room)
    return own_half_width(body, figure) + cm(wider / 10)


def neck_rise(body: Body, style: Style) -> Length:
    """A quarter of the neck's own half width, from 2 to 2.5 cm."""
    own = own_half_width(body, FigureStyle.of(style)).mm
    own = min(own, style.length("neck-half-width").mm)
    return cm(min(max(own / 40, LEAST_RISE), MOST_RISE))


LEAST_RISE, MOST_RISE = 2.0, 2.5
"""Between these lies the usual rise [cm]."""


BOAT_DEPTH = 40.0
"""A boat lies so far below its ends in front [mm], midway between 3 and 5 (common practice)."""


def back_neck_depth(body: Body, style: Style) -> Length:
    """The neckline's own, or as deep as it needs to lie below its ends, which a wide one and a
    round back leave lower."""
    kind, figure = usual(style), FigureStyle.of(style)
    rise, width = style.length("neck-rise"), style.length("neck-half-width")
    needed = BACK_CURVE - side_neck_height(body, figure, rise, width)
    return cm(round(max(kind.back_depth * 10, needed), 1) / 10)


def side_neck_height(body: Body, figure: FigureStyle, rise: Length, half_width: Length) -> float:
    """Return how far the neckline's end lies above the nape on the back [mm]; a minus is below."""
    height = rise.mm - figure.round_back.mm
    wider = half_width.mm - own_half_width(body, figure).mm
    return height - max(wider, 0.0) * math.tan(math.radians(fall_of(body, figure)))


def neck_depth(body: Body, style: Style) -> Length:
    """The neckline's own; a boat's is as far below its ends, wherever these lie."""
    kind, figure = Neckline(style.choice("neckline")), FigureStyle.of(style)
    if kind is not Neckline.BOAT:
        return cm(usual(style).depth)
    rise, width = style.length("neck-rise"), style.length("neck-half-width")
    return cm(round(BOAT_DEPTH - side_neck_height(body, figure, rise, width)) / 10)


def neck_finish(body: Body, style: Style) -> str:
    """The neckline's own."""
    return usual(style).finish


DEEP = (Neckline.ROUND, Neckline.SCOOP, Neckline.V, Neckline.HIGH)
"""Necklines with a depth of their own, in the order in which they are told."""

WIDE = (Neckline.SCOOP, Neckline.V, Neckline.COWL, Neckline.BOAT)
"""Wider necklines, in the same way."""

NECK = Options.of(
    Option(
        key="neckline",
        group=Group.STYLE,
        says=said("the neckline's kind; sets its width, depth and finish"),
        kind=ValueKind.CHOICE,
        default=Neckline.ROUND,
        choices=tuple(USUAL),
    ),
    Option(
        key="neck-finish",
        group=Group.STYLE,
        says=said("what the neckline is finished with"),
        kind=ValueKind.CHOICE,
        default=neck_finish,
        default_says=said("as the neckline asks: turned on boat and cowl, else a band"),
        choices=tuple(NeckFinish),
    ),
    Option(
        key="neck-half-width",
        group=Group.NECK,
        says=said("from the centre to the side neck"),
        default=neck_half_width,
        default_says=said(
            "neck ÷ 5 + {}; high {} narrower; scoop {}, v {}, cowl {}, boat up to {} wider",
            BEYOND_NECK,
            cm(-USUAL[Neckline.HIGH].wider),
            *(cm(USUAL[kind].wider) for kind in WIDE),
        ),
        low=5,
        high=22,
    ),
    Option(
        key="neck-rise",
        group=Group.NECK,
        says=said("height of the side neck above the nape"),
        default=neck_rise,
        default_says=said(
            "a quarter of the neck's own half width, {} to {}", cm(LEAST_RISE), cm(MOST_RISE)
        ),
        low=0.5,
        high=4,
    ),
    Option(
        key="back-neck-depth",
        group=Group.NECK,
        says=said("how far below the nape the neckline lies on the centre back"),
        default=back_neck_depth,
        default_says=said(
            "round, v and high 0, cowl {}, scoop {}, boat {}, or as deep as {} below its ends",
            *(
                cm(USUAL[kind].back_depth)
                for kind in (Neckline.COWL, Neckline.SCOOP, Neckline.BOAT)
            ),
            cm(BACK_CURVE / 10),
        ),
        low=0,
        high=25,
    ),
    Option(
        key="neck-depth",
        group=Group.NECK,
        says=said("depth of the front neckline on the centre, below the nape's level"),
        default=neck_depth,
        default_says=said(
            "round {}, scoop {}, v {}, high {}, boat {} below its ends",
            *(cm(USUAL[kind].depth) for kind in DEEP),
            cm(BOAT_DEPTH / 10),
        ),
        where=("neckline", *DEEP, Neckline.BOAT),
        low=3,
        high=30,
    ),
)
