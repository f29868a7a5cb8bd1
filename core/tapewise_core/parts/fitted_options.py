"""What only a fitting sets: options that are in a style where an adjustment needs them.

None is offered beside the others, so a draft that no fitting touched is as it was. Limits are our
choice: three fittings of the 2 cm that one may change.
"""

from __future__ import annotations

from tapewise_core.parts.sleeve_style import WITH_SLEEVE
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.text.told import Told, said

MOST = 6.0
"""All fittings together change a length by no more than this [cm] (our choice)."""

LEVEL = 25.0
"""A grown-on sleeve is laid flatter by no more than this in all [degrees]."""


SLEEVED = ("sleeve", *WITH_SLEEVE)
"""Where there is a sleeve to be changed."""


def _length(key: str, says: Told, where: tuple[str, ...] = ()) -> Option:
    return Option(
        key=key, group=Group.FIGURE, says=says, default=0.0, low=-MOST, high=MOST, where=where
    )


FITTED = Options.of(
    _length("front-longer", said("length of the front over the bust, after fittings")),
    _length("back-longer", said("length of the back from nape to waist, after fittings")),
    _length("back-neck-higher", said("how far the back neckline is raised after fittings")),
    _length("across-back-wider", said("half across back, after fittings")),
    _length("across-front-wider", said("half across front, after fittings")),
    _length("bust-forward", said("the front's share of the bust, after fittings")),
    _length("hip-forward", said("the front's share of the hip, after fittings")),
    _length("underarm-lower", said("how far the underarm moves down after fittings")),
    _length("sleeve-wider", said("room round the upper arm, after fittings"), SLEEVED),
    _length("back-shorter", said("how much shorter the centre back is below, after fittings")),
    _length("back-waist-shorter", said("how far the waist seam goes up behind after fittings")),
    _length(
        "cap-forward", said("how far the sleeve is turned in its armhole after fittings"), SLEEVED
    ),
    _length("sides-higher", said("how far the hem is taken up at the sides after fittings")),
    Option(
        key="sleeve-flatter",
        group=Group.FIGURE,
        says=said("how many degrees nearer to level the sleeve lies after fittings"),
        kind=ValueKind.RATIO,
        default=0.0,
        low=0,
        high=LEVEL,
    ),
    Option(
        key="band-longer",
        group=Group.BANDS,
        says=said("what the neckband is longer by after fittings; a minus is shorter"),
        kind=ValueKind.PERCENT,
        default=0.0,
        where=("neck-finish", "band"),
        low=-15,
        high=15,
    ),
    _length("left-shoulder-lower", said("how far the left shoulder is lowered after fittings")),
)

GROWN_ON_FITTED = FITTED.only(
    "front-longer", "back-longer", "back-neck-higher", "back-shorter", "sleeve-flatter",
    "band-longer", "left-shoulder-lower", "sides-higher",
)  # fmt: skip
"""What a body with grown-on sleeves is drafted for."""

BODICE_FITTED = FITTED.only(
    *(key for key in GROWN_ON_FITTED.keys if key != "back-shorter"), "back-waist-shorter"
)
"""What such a body is drafted for where it ends at a waist seam."""

SET_IN_FITTED = FITTED.only(
    "front-longer", "back-longer", "back-neck-higher", "across-back-wider", "across-front-wider",
    "bust-forward", "hip-forward", "underarm-lower", "sleeve-wider", "cap-forward", "band-longer",
    "left-shoulder-lower", "sides-higher", "back-shorter",
)  # fmt: skip
"""What a body with set-in sleeves is drafted for."""

RAGLAN_FITTED = FITTED.only(
    *(key for key in SET_IN_FITTED.keys if key not in ("cap-forward", "left-shoulder-lower"))
)
"""What a body with raglan sleeves is drafted for: these have no cap, and both are alike."""

STRAIGHT_FITTED = FITTED.only("back-waist-shorter")
"""What a straight skirt is drafted for."""

SKIRT_FITTED = FITTED.only("sides-higher")
"""What a circle skirt is drafted for."""
