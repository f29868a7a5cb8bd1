"""What joins pieces: seams, and lines that run on across them."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.drafting.making import PLAIN, Making
from tapewise_core.frozen import Frozen


class SeamKind(StrEnum):
    """What a seam is in the finished garment; proofs are chosen by it."""

    SHOULDER = "shoulder"
    PLACKET = "placket"
    SIDE = "side"
    NECKBAND = "neckband"
    NECK_EDGE = "neck edge"
    FACING = "facing"
    FACING_SHOULDER = "facing shoulder"
    BAND_JOIN = "band join"
    SLEEVE = "sleeve"
    OVERARM = "overarm"
    RAGLAN = "raglan"
    ARMBAND = "armhole band"
    CUFF = "cuff"
    HEM_BAND = "hem band"
    ARM_EDGE = "armhole edge"
    ARM_FACING = "armhole facing"
    WAIST = "waist"
    WAISTBAND = "waistband"
    PANEL = "panel"
    TIER = "tier"
    CASING = "casing"
    SLEEVE_HEM = "sleeve hem"
    HEM = "hem"
    SLIT = "slit"
    POCKET = "pocket"
    BELT = "belt"
    DART = "dart"


class EdgeRun(Frozen):
    """Edges of one piece walked one after another, from their ends if ``backwards``.

    ``times`` is 2 where the run occurs on both halves of the body; a walk takes one half.
    """

    piece: str
    edges: tuple[str, ...]
    times: int = 1
    backwards: bool = False


class Fullness(Frozen):
    """How much longer a seam's first side is than its second [mm], between two walked places of
    the second: eased in there, or gathered."""

    more: float
    start: float
    end: float
    gathered: bool = False

    def beside(self, walked: float) -> float:
        """Return where on the first side a walked place of the second lies [mm]."""
        share = (walked - self.start) / (self.end - self.start)
        return walked + self.more * min(max(share, 0.0), 1.0)


class Seam(Frozen):
    """Two sides sewn together, and how.

    ``ratio`` is the length of the first as a share of the second; ``where`` tells seams of one
    kind apart, such as left and right; ``fullness`` is what the first has more on the way;
    ``begins`` is how far along the second a first that goes all round is set in [mm], and
    ``drawn_in`` the share of its own length to which the second is gathered beforehand.
    """

    kind: SeamKind
    first: tuple[EdgeRun, ...]
    second: tuple[EdgeRun, ...]
    ratio: float = 1.0
    making: Making = PLAIN
    where: str = ""
    fullness: Fullness | None = None
    begins: float = 0.0
    drawn_in: float = 1.0


SMOOTH = 10.0
"""How far two corners that join may be from a straight angle together [degrees] (common
practice)."""


class Join(Frozen):
    """Two edges of one line that must run on smoothly where a seam joins their ends.

    Each is a piece, the line's edge on it and the edge beside; ``within`` is how far the two
    corners may be from a straight angle together [degrees].
    """

    name: str
    first: tuple[str, str, str]
    second: tuple[str, str, str]
    within: float = SMOOTH
