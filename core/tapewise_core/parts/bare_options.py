"""The options of an armhole without a sleeve: how it is finished, and its sizes.

Amounts are common practice in the trade.
"""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.measures.body import Body
from tapewise_core.parts.bare_style import ArmholeFinish, is_bare
from tapewise_core.parts.shape.underarm import BARE_DROP, DROPS, by_fit
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import said
from tapewise_core.units import Length, cm, mm


def armhole_drop(body: Body, style: Style) -> Length:
    """The fit's own; unasked, it goes down or up for the arm and its sleeve."""
    return cm(by_fit(style.length("ease").mm, sleeveless=is_bare(style)).drop / 10)


ARMHOLE_DROP = Option(
    key="armhole-drop",
    group=Group.EASE,
    says=said("how far the underarm lies below the armscye line"),
    default=armhole_drop,
    default_says=said(
        "fitted {}, straight {}, eased {}, without sleeves {}; moved for the arm",
        *map(mm, (*DROPS, BARE_DROP)),
    ),
    low=0,
    high=10,
)
"""Of every body that has an armhole."""

BARE = Options.of(
    Option(
        key="armhole-finish",
        group=Group.STYLE,
        says=said("what an armhole without a sleeve is finished with"),
        kind=ValueKind.CHOICE,
        default=ArmholeFinish.BAND,
        choices=tuple(ArmholeFinish),
        where=("sleeve", "none"),
    ),
    Option(
        key="armhole-band-width",
        group=Group.BANDS,
        says=said("finished width of the armhole's band"),
        default=1.5,
        where=("sleeve", "none"),
        besides=("armhole-finish", ArmholeFinish.BAND),
        low=1,
        high=4,
    ),
    Option(
        key="armhole-band-ratio",
        group=Group.BANDS,
        says=said("the armhole's band's length as a share of the armhole"),
        kind=ValueKind.RATIO,
        default=0.92,
        default_says=said("by the armhole drawn, the band's width and the cloth"),
        where=("sleeve", "none"),
        besides=("armhole-finish", ArmholeFinish.BAND),
        low=0.7,
        high=1,
    ),
    Option(
        key="armhole-facing-width",
        group=Group.BANDS,
        says=said("width of the armhole's facing"),
        default=4.0,
        where=("sleeve", "none"),
        besides=("armhole-finish", ArmholeFinish.FACING),
        low=3,
        high=6,
    ),
)
"""After the sleeve, whose word decides whether they do something."""

BARE_OR_GROWN_ON = BARE + Options.of(
    replace(
        ARMHOLE_DROP,
        default_says=said("{}; moved for the arm", mm(BARE_DROP)),
        where=("sleeve", "none"),
    )
)
"""The same of a body whose sleeves are grown on where it has any, and which else has no armhole."""
