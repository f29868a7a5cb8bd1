"""What each measure is called in the open tables, and how steady a hand measures it at home."""

from __future__ import annotations

from tapewise_core.measures.catalogue import BY_KEY, CATALOGUE
from tapewise_core.statistics.population import WEIGHT

LOGS = frozenset(row.key for row in CATALOGUE if row.is_girth) | {WEIGHT, "shoulder_drop"}
"""Modelled by their logarithms: girths, weight, and the one length that is small and scatters
with its size; all others are plain lengths [cm]."""

KEYS = tuple(BY_KEY)
FIELDS = (*KEYS, WEIGHT)
SELECTED = ("height", "waist", "hip", "upper_arm", WEIGHT)
"""What the civilian survey measured too, and so what the soldiers are re-weighted by."""

HOME_NOISE = {row.key: row.agree for row in CATALOGUE}
"""How far one reading taken at home scatters about the body's own measure [cm] (practice).

As much as two careful readings of one measure may differ by the table of measures: large
girths 1.5, small girths 0.6, lengths 1.
"""

DEFINITION_NOISE = {
    **dict.fromkeys(("waist", "hip", "arm_length", "across_back"), 0.8),
    **dict.fromkeys(("bust", "high_bust", "under_bust"), 0.7),
    **dict.fromkeys(("upper_arm", "bust_span", "armscye_depth", "front_waist_length"), 0.4),
    **dict.fromkeys(("head", "neck", "shoulder_drop", "neck_to_bust_point"), 0.4),
    **dict.fromkeys(("back_waist_length", "hip_depth", "waist_to_knee"), 0.4),
    **dict.fromkeys(("shoulder_length", "waist_to_floor", "nape_to_floor"), 0.2),
}
"""How far the tables' definition of a measure and ours may part on one body [cm] (practice).

No more than lets intervals hold 97 of 100 people of the same survey. Two surveys of soldiers
part by more where their teams put a landmark elsewhere: ``proving`` prints what is left then.
"""

# Lengths in mm, weight in 0.1 kg. A tuple is a difference, first minus second.
ANSUR1_PLAIN: dict[str, str | tuple[str, str]] = {
    "height": "STATURE",
    "bust": "CHEST_CIRC",
    "high_bust": "CHEST_CIRC_AT_SCYE",
    "under_bust": "CHEST_CIRC.BELOW_BUST_",
    "hip": "BUTTOCK_CIRC",
    "head": "HEAD_CIRC",
    "neck": "NECK_CIRC.BASE",
    "upper_arm": "ARM_CIRC.AXILLARY",
    "wrist": "WRIST_CIRC.STYLION",
    "armscye_depth": "SCYE_DEPTH",
    "shoulder_length": "SHOULDER_LNTH",
    "shoulder_drop": ("NECK_HT.LATERAL", "ACROMION_HT"),
    "across_back": "INTRSCY_DIST",
    "arm_length": "SLEEVE.OUTSEAM_LNTH",
    "neck_to_bust_point": "NECK_TO_BUSTPOINT_LNTH",
    "bust_span": "BUSTPOINT_TO_BUSTPOINT_BRTH",
    "nape_to_floor": "CERVIC_HT",
    "weight": "WEIGHT",
}
ANSUR1_SITED: dict[str, dict[str, str | tuple[str, str]]] = {
    "narrowest": {
        "waist": "WAIST_CIRC_NATURAL",
        "back_waist_length": "WAIST_NAT_LNTH",
        "hip_depth": ("WAIST_HT_NATURAL", "BUTT_HT"),
        "waist_to_knee": ("WAIST_HT_NATURAL", "PATELLA.MID_HT"),
        "waist_to_floor": "WAIST_HT_NATURAL",
        "bust_to_waist": ("CHEST_HT", "WAIST_HT_NATURAL"),
    },
    "navel": {
        "waist": "WAIST_CIRC.OMPHALION",
        "back_waist_length": "WAIST_OMPH_LNTH",
        "hip_depth": ("WAIST_HT.OMPHALION", "BUTT_HT"),
        "waist_to_knee": ("WAIST_HT.OMPHALION", "PATELLA.MID_HT"),
        "waist_to_floor": "WAIST_HT.OMPHALION",
        "bust_to_waist": ("CHEST_HT", "WAIST_HT.OMPHALION"),
    },
}
"""The front waist length is the neck-to-bust-point length plus the drop from there to the waist."""

ANSUR2: dict[str, str | tuple[str, str]] = {
    "height": "stature",
    "bust": "chestcircumference",
    "waist": "waistcircumference",
    "hip": "buttockcircumference",
    "head": "headcircumference",
    "neck": "neckcircumferencebase",
    "wrist": "wristcircumference",
    "back_waist_length": "waistbacklength",
    "hip_depth": ("waistheightomphalion", "buttockheight"),
    "shoulder_length": "shoulderlength",
    "across_back": "interscyei",
    "arm_length": "sleeveoutseam",
    "waist_to_knee": ("waistheightomphalion", "kneeheightmidpatella"),
    "waist_to_floor": "waistheightomphalion",
    "nape_to_floor": "cervicaleheight",
    "weight": "weightkg",
}
"""All at the navel. The flexed arm is another measure than the hanging one, and is left out."""

NHANES = {"height": "BMXHT", "weight": "BMXWT", "waist": "BMXWAIST", "hip": "BMXHIP",
          "upper_arm": "BMXARMC"}  # fmt: skip
HIP_BONE_OVER_NAVEL = {"women": 1.027, "men": 1.030}
"""The survey's waist lies at the hip bone: larger than at the navel by this much."""
MID_OVER_AXILLARY = {"women": 1 - 0.026, "men": 1 - 0.022}
"""The survey's arm girth lies half-way down, the soldiers' at the armpit."""
