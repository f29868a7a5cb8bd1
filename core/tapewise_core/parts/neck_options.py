"""The options of the neck: the neckline's kind and finish, and every size of it.

Amounts are common practice in the trade.
"""

from __future__ import annotations

import math

from tapewise_core.measures.body import Body
from tapewise_core.parts.arm import overarm_fall
from tapewise_core.style.option import Kind, Option, Style
from tapewise_core.units import Length, cm

BEYOND_NECK = cm(1.5)
"""How far a pulled-on neckline lies outside the neck's own base."""

WIDER = {"round": 0.0, "scoop": 2.0, "v": 0.5, "boat": 4.5}
"""How much wider than the neck asks for each neckline is, on each side [cm]."""

DEPTH = {"round": 9.0, "scoop": 14.0, "v": 16.0, "boat": 4.5}
"""How deep each neckline is in front, below the nape's level [cm]."""

BACK_DEPTH = {"round": 0.0, "scoop": 1.0, "v": 0.0, "boat": 1.5}
"""How far below the nape each neckline lies at the back [cm]."""

LEAST_SHOULDER = 40.0
"""The shoulder that a wide neckline leaves, by default [mm]."""

BACK_CURVE = 18.0
"""The back neckline lies at least so far below its ends, by default [mm]."""

RATIOS = {"v": 0.92}
"""A V is straight and its band is hardly stretched; every other neckline is round."""


def own_half_width(body: Body, style: Style) -> Length:
    """Half the width of a round neckline: a fifth of the neck and a little, or 9 cm flat."""
    own = body["neck"] / 5 + BEYOND_NECK if "neck" in body else cm(9)
    return own + style.length("broad-neck")


def fall_of(body: Body, style: Style) -> float:
    """Return how steeply this style's overarm falls [degrees]."""
    return overarm_fall(body["shoulder_length"].mm, style.length("shoulder-drop").mm)


def lowest_fall(body: Body, style: Style) -> float:
    """Return how steeply the overarm of the lower shoulder falls [degrees]."""
    drop = style.length("shoulder-drop").mm
    if style.choice("lower-shoulder") != "none":
        drop += style.length("lower-shoulder-by").mm
    return overarm_fall(body["shoulder_length"].mm, drop)


def neck_half_width(body: Body, style: Style) -> Length:
    """The neck's own half width, wider for a scoop or a boat while 4 cm of shoulder are left."""
    level = body["shoulder_length"].mm * math.cos(math.radians(fall_of(body, style)))
    room = max(level - LEAST_SHOULDER, 0.0)
    wider = min(WIDER[style.choice("neckline")] * 10, room)
    return own_half_width(body, style) + cm(wider / 10)


def neck_rise(body: Body, style: Style) -> Length:
    """A quarter of the neck's own half width, from 2 to 2.5 cm."""
    own = min(own_half_width(body, style).mm, style.length("neck-half-width").mm)
    return cm(min(max(own / 40, 2.0), 2.5))


def back_neck_depth(body: Body, style: Style) -> Length:
    """The neckline's own, or as deep as a wide one needs to lie below its ends."""
    kind = style.choice("neckline")
    if not WIDER[kind]:
        return cm(BACK_DEPTH[kind])
    needed = BACK_CURVE - side_neck_height(body, style)
    return cm(round(max(BACK_DEPTH[kind] * 10, needed), 1) / 10)


def side_neck_height(body: Body, style: Style) -> float:
    """Return how far the neckline's end lies above the nape on the back [mm]; a minus is below."""
    rise = style.length("neck-rise").mm - style.length("round-back").mm
    wider = style.length("neck-half-width").mm - own_half_width(body, style).mm
    return rise - max(wider, 0.0) * math.tan(math.radians(fall_of(body, style)))


def neck_finish(body: Body, style: Style) -> str:
    """A boat's edge is turned, every other neckline gets a band."""
    return "turned" if style.choice("neckline") == "boat" else "band"


NECK = (
    Option(
        key="neckline",
        says="the neckline's kind; sets its width, depth and finish",
        kind=Kind.CHOICE,
        default="round",
        choices=tuple(WIDER),
    ),
    Option(
        key="neck-finish",
        says="what the neckline is finished with",
        kind=Kind.CHOICE,
        default=neck_finish,
        default_says="a band; boat: a turned edge",
        choices=("band", "turned", "facing"),
    ),
    Option(
        key="neck-half-width",
        says="from the centre to the side neck",
        default=neck_half_width,
        default_says="neck ÷ 5 + 1.5 cm; scoop 2, v 0.5, boat up to 4.5 cm wider",
        low=5,
        high=22,
    ),
    Option(
        key="neck-rise",
        says="height of the side neck above the nape",
        default=neck_rise,
        default_says="a quarter of the neck's own half width, 2 to 2.5 cm",
        low=0.5,
        high=4,
    ),
    Option(
        key="back-neck-depth",
        says="how far below the nape the neckline lies on the centre back",
        default=back_neck_depth,
        default_says="round and v 0, scoop 1, boat 1.5 cm or as its width needs",
        low=0,
        high=25,
    ),
    Option(
        key="neck-depth",
        says="depth of the front neckline on the centre, below the nape's level",
        default=lambda body, style: cm(DEPTH[style.choice("neckline")]),
        default_says="round 9, scoop 14, v 16, boat 4.5 cm",
        low=3,
        high=30,
    ),
)
NECK_SIZES = (
    Option(key="band-width", says="finished width of the neckband", default=2.0, low=1, high=6),
    Option(
        key="band-ratio",
        says="neckband's length as a share of the neckline",
        kind=Kind.RATIO,
        default=lambda body, style: RATIOS.get(style.choice("neckline"), 0.83),
        default_says="0.83; v 0.92",
        low=0.5,
        high=1,
    ),
    Option(key="facing-width", says="width of a neck facing", default=5.0, low=3, high=10),
)
