"""How a front's own length is drawn, in a sentence."""

from __future__ import annotations

from tapewise_core.parts.shape.bust_room import Room
from tapewise_core.text.told import OptionKey, Told, joined, said
from tapewise_core.units import mm

WORTH_SAYING = 5.0
"""A smaller amount taken from the measures goes without saying [mm]."""


def room_told(room: Room) -> Told:
    """Say where a front that is longer or shorter than the back is drawn so, where it is."""
    ways = (
        ("the front's neck point {} up", room.raised),
        ("the front's neck point {} down", -room.raised),
        ("the back's neck point {} up", room.back_raised),
        ("{} eased in at the side", room.eased),
        ("a side dart of {}", room.dart),
        ("{} gathered at the side", room.gathered),
    )
    drawn = [said(words, mm(by)) for words, by in ways if by >= WORTH_SAYING]
    if not drawn:
        return ()
    longer = "longer" if room.surplus > 0 else "shorter"
    words = "The front is {} {} than the back: {}; set {} to change it."
    each = joined(drawn, ", ")
    return said(words, mm(abs(room.surplus)), longer, each, OptionKey("bust-room"))
