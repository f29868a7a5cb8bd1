"""The options of the flared dress: the top's own, longer and looser, and what a dress has besides.

Amounts are common practice in the trade.
"""

from __future__ import annotations

from dataclasses import replace

from tapewise_core.blocks.top.options import OPTIONS as TOP
from tapewise_core.measures.body import Body
from tapewise_core.style.option import Kind, Option, Style
from tapewise_core.units import Length, cm

ALL_ROUND = 6.0
"""The ease of an easy dress, the same all round [cm]."""

TO_KNEE = 60.0
"""From waist to knee where it was not measured [cm]."""


def to_the_knee(body: Body, style: Style) -> Length:
    """The back waist length, and on to the knee."""
    knee = body["waist_to_knee"] if "waist_to_knee" in body else cm(TO_KNEE)
    return body["back_waist_length"] + knee


def flare(body: Body, style: Style) -> Length:
    """10 cm from the hip, 14 from the waist, which lies higher."""
    return cm(14.0 if style.choice("flare-from") == "waist" else 10.0)


def _own(option: Option) -> Option:
    """A top's option as the dress has it."""
    if option.key == "ease":
        return replace(option, default=ALL_ROUND, default_says="")
    if option.key == "fit":
        return replace(option, says="the side seam's shape; sets waist-shaping")
    if option.key == "body-length":
        says = "back waist length + waist to knee"
        return replace(option, default=to_the_knee, default_says=says, low=60, high=170)
    if option.key == "hem":
        says = "the hem's shape: straight, or with a slit at each side"
        return replace(option, says=says, choices=("straight", "split"))
    return option


FLARE = (
    Option(
        key="flare-from",
        says="where the side begins to flare",
        kind=Kind.CHOICE,
        default="hip",
        choices=("hip", "waist"),
    ),
    Option(
        key="flare",
        says="how far each side flares out to the hem",
        default=flare,
        default_says="10 cm from the hip, 14 from the waist",
        low=0,
        high=50,
    ),
)
EXTRAS = (
    Option(
        key="belt",
        says="a belt to tie, with marks for its loops",
        kind=Kind.SWITCH,
        default="no",
    ),
    Option(key="belt-width", says="finished width of the belt", default=4.0, low=1.5, high=12),
    Option(
        key="belt-ends",
        says="what the belt has beyond the waist to tie it with",
        default=90.0,
        low=20,
        high=200,
    ),
    Option(key="pockets", says="pockets in the side seams", kind=Kind.SWITCH, default="no"),
    Option(
        key="pocket-below-waist",
        says="from the waist line down to the pocket's opening",
        default=6.0,
        low=0,
        high=20,
    ),
    Option(
        key="pocket-opening", says="length of a pocket's opening", default=16.0, low=12, high=22
    ),
)
LEFT_OUT = frozenset({"hem-rise"})
OPTIONS: tuple[Option, ...] = (
    *(_own(option) for option in TOP if option.key not in LEFT_OUT),
    *FLARE,
    *EXTRAS,
)
