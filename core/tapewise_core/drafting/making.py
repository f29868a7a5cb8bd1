"""How a seam is made: chosen by whoever draws the seam, told by the sewing order."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class How(StrEnum):
    """The ways of making a seam, in no order; the sewing order has a row for each."""

    SIDE_DART = "side darts"
    PLAIN = "plain seam"
    STAYED = "shoulders on a stay"
    BAND_RING = "neckband joined into a ring"
    BAND = "neckband in the round"
    BAND_MITRE = "neckband joined in a mitre"
    V_BAND = "neckband round a V"
    TURNED_NECK = "neckline's edge turned in"
    TURNED_V = "edge of a V turned in"
    FACING_RING = "facing joined into a ring"
    FACING = "neckline faced"
    V_FACING = "V faced"
    POCKET = "pocket in a side seam"
    SLEEVE_FLAT = "sleeve set in flat"
    SIDES = "sides closed"
    SLEEVE_HEM = "sleeve's hem turned up"
    PANELS = "panels joined"
    STAYED_WAIST = "waist joined on a stay"
    WAISTBAND_RING = "waistband joined into a ring"
    WAISTBAND = "waistband"
    CASING = "casing for elastic, at a curved edge"
    SLIT = "slit"
    VENT = "vent with an underlap"
    HEM = "hem turned up"
    HUNG_HEM = "hem of a circle, which hangs first"
    BELT = "belt"


@dataclass(frozen=True, slots=True)
class Elastic:
    """An elastic to be drawn in: what to cut, its lap with it, and how wide it is [mm]."""

    length: float
    width: float


@dataclass(frozen=True, slots=True)
class Making:
    """How a seam is made, and the elastic drawn into it if there is one."""

    how: How = How.PLAIN
    elastic: Elastic | None = None


PLAIN = Making()
"""Right sides together, and nothing else to it."""

UNNOTICED = 3.0
"""A seam whose sides differ by no more needs no easing in [mm] (common practice)."""
