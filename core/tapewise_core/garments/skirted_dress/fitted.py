"""What only a fitting sets of a dress, by how its sleeves are cut and which skirt it has."""

from __future__ import annotations

from tapewise_core.blocks.skirt.hung_options import Skirt
from tapewise_core.garments.skirted_dress.cut_style import SleeveCut
from tapewise_core.parts.fitted_options import BODICE_FITTED, FITTED, SET_IN_FITTED
from tapewise_core.style.options import Options

ONLY_SET_IN = tuple(
    key for key in SET_IN_FITTED.keys if key not in BODICE_FITTED and key != "back-shorter"
)
"""What an armhole and its sleeve have, and a front and a back with a side of their own."""


def _dress() -> Options:
    found = FITTED.only(*BODICE_FITTED.keys, *ONLY_SET_IN)
    for key in ONLY_SET_IN:
        found = found.changed(key, where=("sleeve-cut", SleeveCut.SET_IN.value))
    found = found.changed("sleeve-flatter", where=("sleeve-cut", SleeveCut.GROWN_ON.value))
    return found.changed("sides-higher", where=("skirt", Skirt.CIRCLE.value))


DRESS_FITTED = _dress()
"""All that a dress is drafted for, each where it has something to do."""
