"""The style options of a grown-on-sleeve jersey top.

Amounts are common practice in the trade unless a row names a source.
"""

from __future__ import annotations

import math

from tapewise_core.garments.option import Kind, Option, Style
from tapewise_core.garments.sleeve import overarm_fall
from tapewise_core.measures.body import Body
from tapewise_core.units import Length, cm

BEYOND_NECK = cm(1.5)
"""How far a pulled-on neckline lies outside the neck's own base (common practice)."""

PLAIN_RAISE = cm(1)
"""The front's raised side neck where the body was not measured for it (common practice)."""

MOST_RAISE = 30.0
"""The most a side neck is raised; what a body asks beyond goes to the hem [mm] (common practice)."""


def neck_half_width(body: Body, style: Style) -> Length:
    """A fifth of the neck's girth and a little, or 9 cm flat."""
    return body["neck"] / 5 + BEYOND_NECK if "neck" in body else cm(9)


def neck_rise(body: Body, style: Style) -> Length:
    """A quarter of the half width, from 2 to 2.5 cm."""
    return cm(min(max(style.length("neck-half-width").mm / 40, 2.0), 2.5))


def raise_asked(body: Body, style: Style) -> Length | None:
    """What the front asks for beyond the back, where both waist lengths were measured."""
    if body.has("front_waist_length") and body.has("back_waist_length"):
        back = body["back_waist_length"] + style.length("neck-rise").called("neck rise")
        return body["front_waist_length"] - back
    return None


def front_raise(body: Body, style: Style) -> Length:
    """The body's own raise from 0 to 3 cm where it was measured, else 1 cm."""
    asked = raise_asked(body, style)
    return PLAIN_RAISE if asked is None else asked


def front_hem_drop(body: Body, style: Style) -> Length:
    """What the front asks for beyond the most a side neck is raised."""
    asked = raise_asked(body, style)
    return cm(max(0.0, asked.mm - MOST_RAISE) / 10) if asked is not None else cm(0)


def body_length(body: Body, style: Style) -> Length:
    """To three centimetres below the hip line."""
    return body["back_waist_length"] + body["hip_depth"] + cm(3)


def sleeve_length(body: Body, style: Style) -> Length:
    """A cap of 8 cm, or as much longer as its square hem needs to end outside the body's quarter."""
    fall = math.radians(overarm_fall(body))
    half = (body["upper_arm"].mm + style.length("sleeve-ease").mm) / 2
    quarter = (body["bust"].mm + style.length("ease").mm) / 4
    reach = quarter + half * math.sin(fall) - style.length("neck-half-width").mm
    needed = reach / math.cos(fall) - body["shoulder_length"].mm
    return cm(max(8.0, math.ceil(needed / 5 + 0.1) / 2))


SHAPE = (
    Option(
        key="body-length",
        says="length from the nape to the hem",
        default=body_length,
        default_says="back waist length + hip depth + 3 cm",
        low=25,
        high=170,
    ),
    Option(key="ease", says="ease all round the body", default=0.0, low=-20, high=40),
    Option(key="sleeve-ease", says="ease round the arm", default=6.0, low=0, high=24),
    Option(
        key="waist-shaping",
        says="how far the side seam goes in towards the waist",
        kind=Kind.PERCENT,
        default=50.0,
        low=0,
        high=100,
    ),
)
NECK = (
    Option(
        key="neck-half-width",
        says="from the centre to the side neck",
        default=neck_half_width,
        default_says="neck ÷ 5 + 1.5 cm",
        low=5,
        high=18,
    ),
    Option(
        key="neck-rise",
        says="height of the side neck above the nape",
        default=neck_rise,
        default_says="a quarter of neck-half-width, 2 to 2.5 cm",
        low=0.5,
        high=4,
    ),
    Option(
        key="neck-depth",
        says="depth of the front neckline on the centre, below the nape's level",
        default=9.0,
        low=4,
        high=30,
    ),
    Option(
        key="front-raise",
        says="how far the front's side neck lies above the back's",
        default=front_raise,
        default_says="front waist length − (back waist length + neck-rise) where measured, else 1 cm",
        low=0,
        high=3,
    ),
    Option(
        key="front-hem-drop",
        says="extra length at the centre front's hem",
        default=front_hem_drop,
        default_says="what the front needs beyond a raise of 3 cm, else 0",
        low=0,
        high=6,
    ),
    Option(key="band-width", says="finished width of the neckband", default=2.0, low=1, high=6),
    Option(
        key="band-ratio",
        says="neckband's length as a share of the neckline",
        kind=Kind.RATIO,
        default=0.83,
        low=0.5,
        high=1,
    ),
)
SLEEVE = (
    Option(
        key="sleeve-length",
        says="length from the shoulder point to the sleeve's hem, from a cap to the wrist",
        default=sleeve_length,
        default_says="8 cm, or as long as the body's width needs for a straight hem",
        low=3,
        high=90,
    ),
)
CLOTH = (
    Option(
        key="stretch",
        says="how far the cloth stretches across: (stretched − 10) ÷ 10 for 10 cm on the fold",
        kind=Kind.PERCENT,
        default=50.0,
        low=0,
        high=200,
    ),
    Option(key="cloth-width", says="width of the cloth as bought", default=150.0, low=50, high=320),
    Option(
        key="shrinkage",
        says="how much shorter the cloth is after its first wash",
        kind=Kind.PERCENT,
        default=5.0,
        low=0,
        high=20,
    ),
)
ALLOWANCES = (
    Option(key="seam-allowance", says="at side, underarm and shoulder", default=0.8, low=0, high=3),
    Option(
        key="neck-allowance",
        says="at the neckline and along the band",
        default=0.8,
        low=0,
        high=2,
    ),
    Option(key="hem-allowance", says="at turned hems", default=2.5, low=0, high=8),
)
OPTIONS = SHAPE + NECK + SLEEVE + CLOTH + ALLOWANCES
