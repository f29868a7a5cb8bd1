"""The measures a top makes use of, how far it follows each, and the proofs it answers for."""

from __future__ import annotations

from types import MappingProxyType

from tapewise_core.parts.bare_style import is_bare
from tapewise_core.parts.sleeve_style import SleeveStyle
from tapewise_core.parts.trunk_style import TrunkStyle
from tapewise_core.proofs.levels import ASKED
from tapewise_core.proofs.proof import ALWAYS, ProofId
from tapewise_core.style.style import Style


def idle(style: Style) -> tuple[str, ...]:
    """The lower arm matters only to sleeves that reach it."""
    return () if SleeveStyle.of(style).length.mm > SHORT_SLEEVE else ("wrist", "arm_length")


def idle_below(style: Style) -> tuple[str, ...]:
    """The knee does not matter to a top that ends above it."""
    return () if TrunkStyle.of(style).length.mm > ABOVE_KNEE else BELOW_WAIST


def idle_across(style: Style) -> tuple[str, ...]:
    """The widths across matter only to armholes, which grown-on sleeves have none of."""
    return () if is_bare(style) else tuple(ACROSS)


ACROSS = MappingProxyType(dict.fromkeys(("across_back", "across_front"), (1.0, "the armhole")))
"""How far an armhole follows the widths across."""

BARE_PROOFS = frozenset({ProofId.ARMHOLE, ProofId.GAPE, ProofId.BAND})
"""What armholes without a sleeve answer for."""


ABOVE_KNEE = 850.0
"""A top no longer from the nape ends above everybody's knee [mm] [ansur1]."""


SHORT_SLEEVE = 130.0
"""A sleeve no longer ends above the fullest upper arm of nearly everybody [mm] [ansur1]."""


NEEDS = (
    "bust", "waist", "hip", "upper_arm", "head",
    "back_waist_length", "hip_depth", "armscye_depth", "shoulder_length", "shoulder_drop",
)  # fmt: skip


HELPS = (
    "neck", "front_waist_length", "high_bust", "neck_to_bust_point", "wrist", "arm_length",
)  # fmt: skip


MEASURED_ONLY = ("front_waist_length", "high_bust", "neck_to_bust_point")
"""Of no use estimated: each tells what sets this bust apart from the average that an estimate
is."""

ARMHOLE_MEASURED_ONLY = (*MEASURED_ONLY, "across_front")
"""The same of a garment that can have armholes."""


BELOW_WAIST = ("waist_to_knee", "waist_to_floor")


LONG_HELPS = (*HELPS, *BELOW_WAIST)


COVERS = ALWAYS | {
    ProofId.HEAD, ProofId.NECKBAND, ProofId.STRIDE, ProofId.GIRTH, ProofId.EASE, ProofId.LINE,
    ProofId.UNDERARM_TOP, ProofId.UNDERARM_FOOT, ProofId.SIDE, ProofId.HAND,
    *(frozenset(ASKED) - {ProofId.HEM}),
}  # fmt: skip
"""The proofs that every top answers for."""


MOVES = MappingProxyType({
    "bust": (1.0, "round the bust"),
    "waist": (0.5, "round the waist"),
    "hip": (1.0, "round the hip"),
    "upper_arm": (1.0, "round the sleeve"),
    "head": (1.0, "at the neckline"),
    "back_waist_length": (1.0, "the waist line"),
    "hip_depth": (1.0, "the length"),
    "armscye_depth": (1.0, "the underarm"),
    "shoulder_length": (1.0, "the sleeve's length"),
    "shoulder_drop": (1.5, "the sleeve's slope"),
    "neck": (0.4, "the neckline's width"),
    "front_waist_length": (1.0, "the front's length"),
    "high_bust": (0.2, "the bust line"),
    "neck_to_bust_point": (0.6, "the bust line"),
    "arm_length": (0.3, "the sleeve's width"),
    "wrist": (0.5, "the sleeve's hem"),
})  # fmt: skip
