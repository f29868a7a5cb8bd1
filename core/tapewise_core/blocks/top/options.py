"""The style options of a grown-on-sleeve jersey top: body, cloth and allowances.

The neck's options are in :mod:`parts.neck_options`, the sleeve's in
:mod:`parts.sleeve_options`, those for a body that is not an average in
:mod:`parts.figure_options`. Amounts are common practice in the trade unless a row names a source.
"""

from __future__ import annotations

from tapewise_core.measures.body import Body
from tapewise_core.parts.cowl_options import COWL_SIZE
from tapewise_core.parts.ease_options import EASE
from tapewise_core.parts.figure_options import FIGURE, FIGURE_LENGTHS
from tapewise_core.parts.hem_style import HemShape
from tapewise_core.parts.neck_options import NECK
from tapewise_core.parts.neck_size_options import NECK_SIZES
from tapewise_core.parts.neck_style import NeckFinish
from tapewise_core.parts.sleeve_options import SLEEVE
from tapewise_core.parts.trunk_style import Fit, lengthened_by
from tapewise_core.style.cloth import CLOTH
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import Length, cm

BELOW_HIP = cm(3)
"""A top ends so far below the hip line (common practice)."""


def body_length(body: Body, style: Style) -> Length:
    """To three centimetres below the hip line; longer where a close fit takes length."""
    length = body["back_waist_length"] + body["hip_depth"] + BELOW_HIP
    longer = lengthened_by(Fit(style.choice("fit")), style.number("stretch"))
    return length * (1 + longer) if longer else length


SHAPE = Options.of(
    Option(
        key="fit",
        group=Group.STYLE,
        says=said(
            "how close the body is; sets {} and {}", OptionKey("ease"), OptionKey("waist-shaping")
        ),
        kind=ValueKind.CHOICE,
        default=Fit.FITTED,
        choices=tuple(Fit),
    ),
    Option(
        key="body-length",
        group=Group.LENGTHS,
        says=said("length from the nape to the hem"),
        default=body_length,
        default_says=said("back waist length + hip depth + {}", BELOW_HIP),
        low=25,
        high=170,
    ),
    Option(
        key="hem",
        group=Group.STYLE,
        says=said("the hem's shape: straight, rising to the sides, or with a slit at each side"),
        kind=ValueKind.CHOICE,
        default=HemShape.STRAIGHT,
        choices=tuple(HemShape),
    ),
    Option(
        key="hem-rise",
        group=Group.LENGTHS,
        says=said("how far a curved hem rises to the side"),
        default=5.0,
        where=("hem", "curved"),
        low=1,
        high=15,
    ),
    Option(
        key="split-length",
        group=Group.LENGTHS,
        says=said("length of the slit at a split hem"),
        default=8.0,
        where=("hem", "split"),
        low=2,
        high=60,
    ),
)


PLAIN, TURNED = cm(0.8), cm(1.2)
"""The neckline's allowance, and where it is turned to the inside (common practice)."""


WIDEST = 1.3
"""A neckline's allowance is no wider [cm]: back necklines bend with a radius of 1.4 (our geometry),
and a wider allowance would be cut into by its own other side."""


def neck_allowance(body: Body, style: Style) -> Length:
    """A turned neckline needs more than a seam."""
    return TURNED if style.choice("neck-finish") == NeckFinish.TURNED else PLAIN


ALLOWANCES = Options.of(
    Option(
        key="seam-allowance",
        group=Group.ALLOWANCES,
        says=said("at side, underarm and shoulder"),
        default=0.8,
        low=0,
        high=3,
    ),
    Option(
        key="neck-allowance",
        group=Group.ALLOWANCES,
        says=said("at the neckline and along the band"),
        default=neck_allowance,
        default_says=said("{}, {} where the edge is turned", PLAIN, TURNED),
        low=0,
        high=WIDEST,
    ),
    Option(
        key="hem-allowance",
        group=Group.ALLOWANCES,
        says=said("at turned hems"),
        default=2.5,
        low=0,
        high=8,
    ),
)
TOP = (
    CLOTH
    + SHAPE
    + EASE
    + FIGURE
    + NECK
    + COWL_SIZE
    + SLEEVE
    + NECK_SIZES
    + FIGURE_LENGTHS
    + ALLOWANCES
)
