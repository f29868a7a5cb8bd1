"""The style options of a grown-on-sleeve jersey top: body, cloth and allowances.

The neck's options are in :mod:`parts.neck_options`, the sleeve's in
:mod:`parts.sleeve_options`, those for a body that is not an average in
:mod:`parts.figure_options`. Amounts are common practice in the trade unless a row names a source.
"""

from __future__ import annotations

from tapewise_core.measures.body import Body
from tapewise_core.parts.figure_options import FIGURE, FIGURE_LENGTHS
from tapewise_core.parts.neck_options import NECK, NECK_SIZES
from tapewise_core.parts.sleeve_options import SLEEVE
from tapewise_core.style.cloth import CLOTH
from tapewise_core.style.option import Kind, Option, Style
from tapewise_core.units import Length, cm

FITS = {"fitted": (0.0, 50.0), "straight": (4.0, 0.0), "eased": (8.0, 20.0)}
"""Ease all round [cm] and how far the side seam goes in [%] (common practice)."""


def ease(body: Body, style: Style) -> Length:
    """The fit's own ease."""
    return cm(FITS[style.choice("fit")][0])


def waist_shaping(body: Body, style: Style) -> float:
    """The fit's own shaping."""
    return FITS[style.choice("fit")][1]


def body_length(body: Body, style: Style) -> Length:
    """To three centimetres below the hip line."""
    return body["back_waist_length"] + body["hip_depth"] + cm(3)


SHAPE = (
    Option(
        key="fit",
        says="how close the body is; sets ease and waist-shaping",
        kind=Kind.CHOICE,
        default="fitted",
        choices=tuple(FITS),
    ),
    Option(
        key="body-length",
        says="length from the nape to the hem",
        default=body_length,
        default_says="back waist length + hip depth + 3 cm",
        low=25,
        high=170,
    ),
    Option(
        key="ease",
        says="ease all round the body",
        default=ease,
        default_says="fitted 0, straight 4, eased 8 cm",
        low=-20,
        high=40,
    ),
    Option(
        key="waist-shaping",
        says="how far the side seam goes in towards the waist",
        kind=Kind.PERCENT,
        default=waist_shaping,
        default_says="fitted 50, straight 0, eased 20 %",
        low=0,
        high=100,
    ),
    Option(
        key="hem",
        says="the hem's shape: straight, rising to the sides, or with a slit at each side",
        kind=Kind.CHOICE,
        default="straight",
        choices=("straight", "curved", "split"),
    ),
    Option(
        key="hem-rise",
        says="how far a curved hem rises to the side",
        default=5.0,
        low=1,
        high=15,
    ),
    Option(
        key="split-length", says="length of the slit at a split hem", default=8.0, low=2, high=60
    ),
)


def neck_allowance(body: Body, style: Style) -> Length:
    """A turned neckline needs more than a seam."""
    return cm(1.2 if style.choice("neck-finish") == "turned" else 0.8)


ALLOWANCES = (
    Option(key="seam-allowance", says="at side, underarm and shoulder", default=0.8, low=0, high=3),
    Option(
        key="neck-allowance",
        says="at the neckline and along the band",
        default=neck_allowance,
        default_says="0.8 cm, 1.2 cm where the edge is turned",
        low=0,
        high=2,
    ),
    Option(key="hem-allowance", says="at turned hems", default=2.5, low=0, high=8),
)
OPTIONS = SHAPE + FIGURE + NECK + SLEEVE + NECK_SIZES + FIGURE_LENGTHS + CLOTH + ALLOWANCES
