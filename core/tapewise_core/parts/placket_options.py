"""The options of a shoulder placket, and what it does not go with.

Amounts are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.measures.body import Body
from tapewise_core.parts.bare_style import is_bare
from tapewise_core.parts.figure_style import FigureStyle
from tapewise_core.parts.neck_options import own_half_width
from tapewise_core.parts.neck_style import NeckFinish, Neckline, NeckStyle
from tapewise_core.parts.placket_style import Placket, PlacketStyle
from tapewise_core.parts.shape.underarm import BARE_IN
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.amounts import Bound
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import Length, cm, mm

USUAL = 70.0
"""A placket's usual length [mm]."""

SHORTEST, LONGEST = 3.0, 14.0
"""The least and the most that may be asked for [cm]."""

BEYOND = 15.0
"""So much of the shoulder is sewn beyond a placket at the least [mm]."""

NARROWED = 15.0
"""An armhole without a sleeve may leave so much less shoulder than is known before it is drawn
[mm] (our geometry)."""

APART = 35.0
"""Buttons sit about so far from each other [mm]."""


def placket_length(body: Body, style: Style) -> Length:
    """7 cm, less where the shoulder is short."""
    spare = NARROWED if is_bare(style) else 0.0
    room = int((_room(body, style) - spare) / 5) * 5
    return mm(min(USUAL, max(room, SHORTEST * 10)))


def _room(body: Body, style: Style) -> float:
    """What a shoulder has for a placket [mm]."""
    wider = style.length("neck-half-width").mm - own_half_width(body, FigureStyle.of(style)).mm
    inside = BARE_IN if is_bare(style) else 0.0
    return body["shoulder_length"].mm - max(wider, 0.0) - inside - BEYOND


def placket_buttons(body: Body, style: Style) -> str:
    """One on the neckband, and one for about every 3.5 cm."""
    return str(1 + max(1, round(style.length("placket-length").mm / APART)))


OPENS = ("shoulder-placket", Placket.LEFT, Placket.RIGHT)

PLACKET = Options.of(
    Option(
        key="shoulder-placket",
        group=Group.NECK,
        says=said("which of the wearer's shoulders opens from the neck, with buttons"),
        kind=ValueKind.CHOICE,
        default=Placket.NONE,
        choices=tuple(Placket),
    ),
    Option(
        key="placket-length",
        group=Group.NECK,
        says=said("how far the shoulder placket reaches from the neckline"),
        default=placket_length,
        default_says=said("{}, less on a short shoulder", mm(USUAL)),
        where=OPENS,
        low=SHORTEST,
        high=LONGEST,
    ),
    Option(
        key="placket-buttons",
        group=Group.NECK,
        says=said("how many buttons or snaps, the one on the neckband among them"),
        kind=ValueKind.CHOICE,
        default=placket_buttons,
        default_says=said("one on the band, and one for about every {}", cm(APART / 10)),
        where=OPENS,
        choices=("2", "3", "4", "5", "6"),
    ),
)


def placket_agrees(body: Body, style: Style) -> tuple[Told, ...]:
    """Return a sentence for what a placket does not go with; none if all agree."""
    asked, neck = PlacketStyle.of(style), NeckStyle.of(style)
    if asked.side is Placket.NONE:
        return ()
    found: list[Told] = []
    if neck.kind not in (Neckline.ROUND, Neckline.SCOOP):
        found.append(ROUND)
    if neck.finish is not NeckFinish.BAND:
        found.append(BAND)
    if neck.flat:
        found.append(FLAT)
    if asked.length.mm > _room(body, style) + 0.01:
        found.append(_long(asked.length, _room(body, style)))
    return tuple(found)


def _long(length: Length, room: float) -> Told:
    words = "{} is {}, and this shoulder leaves {} at the most beside the neckline."
    return said(words, OptionKey("placket-length"), length, Bound(max(room, 0.0), "down"))


ROUND = said(
    "A shoulder placket is drafted for a round or scooped neckline; set {} to round or scoop, or "
    "{} to none.",
    OptionKey("neckline"), OptionKey("shoulder-placket"),
)  # fmt: skip

BAND = said(
    "A shoulder placket ends in a neckband; set {} to band, or {} to none.",
    OptionKey("neck-finish"), OptionKey("shoulder-placket"),
)  # fmt: skip

FLAT = said(
    "With a shoulder placket the band is open anyway; set {} to round, or {} to none.",
    OptionKey("band-sewn"), OptionKey("shoulder-placket"),
)  # fmt: skip
