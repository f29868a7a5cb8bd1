"""What one measure is; the table of all of them is in :mod:`tapewise_core.measures.catalogue`."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.text.told import Told


class Region(StrEnum):
    """Where on the body the tape is, in the order that turns nobody round twice."""

    HEAD_AND_NECK = "head and neck"
    TRUNK_ROUND = "round the trunk"
    ARM = "arm and shoulder"
    TRUNK_LENGTHS = "lengths of the trunk"
    LONG_LENGTHS = "long lengths"


class View(StrEnum):
    """From which side a figure shows the tape's path."""

    FRONT = "front"
    BACK = "back"
    SIDE = "side"


class Measure(Frozen, kw_only=True):
    """One row of the table; lengths in cm.

    ``definition`` is the standard's in our own words; ``standard`` names it.
    Two readings closer than ``agree`` are one reading; farther apart than
    ``third`` a third is due. ``low`` to ``high`` is what is plausible for an
    adult; outside it a value is unlikely, never refused. ``helper`` says that
    a second person makes it better; ``how`` tells what to do without one.
    ``bare`` are the landmarks of whoever wears no bra, if they are others.
    """

    key: str
    name: str
    definition: str
    standard: str
    landmarks: str | Told
    how: str
    region: Region
    view: View
    is_girth: bool
    helper: bool
    agree: float
    third: float
    low: float
    high: float
    bare: str | Told = ""

    def find(self, *, bra: bool) -> str | Told:
        """Return the landmarks as somebody finds them who wears a bra, or who wears none."""
        return self.landmarks if bra or not self.bare else self.bare
