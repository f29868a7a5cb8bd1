"""What each measure is called in the open tables, and how steady a hand measures it at home."""

from __future__ import annotations

from tapewise_core.measures.catalogue import BY_KEY, CATALOGUE
from tapewise_core.statistics.population import AGES, WEIGHT

NOWHERE = ("across_front", "high_hip")
"""Measures that no open table holds; they are never estimated."""
LOGS = frozenset(row.key for row in CATALOGUE if row.is_girth) | {WEIGHT, "shoulder_drop"}
"""Modelled by their logarithms: girths, weight, and the one length that is small and scatters
with its size; all others are plain lengths [cm]."""
SHIFTS = {"hip": 55.0, "waist": -50.0}
"""Taken off a girth [cm] before its logarithm: this bends the lines at very full bodies.

The logarithm of the hip is skewed (0.5 in NHANES), and grows faster than the waist's where
bodies are very full. Of a few shifts tried on the fitted half of NHANES these leave least bias
above a body mass index of 40; a full hip is foretold 2 to 5 cm less short with them.
"""

KEYS = tuple(key for key in BY_KEY if key not in NOWHERE)
FIELDS = (*KEYS, WEIGHT, *AGES)
COMMON = ("height", "waist", "hip", WEIGHT)
"""What every survey of adults measured."""
SELECTED = (*COMMON, "upper_arm", AGES[0])
"""What the civilian survey measured too, and so what the soldiers are re-weighted by.

Of the ages only the first, up to 50: no soldier is much older.
"""

HOME_NOISE = {row.key: row.agree for row in CATALOGUE}
"""How far one reading taken at home scatters about the body's own measure [cm] (practice).

As much as two careful readings of one measure may differ by the table of measures: large
girths 1.5, small girths 0.6, lengths 1.
"""

CIVIL_NOISE = {"wrist": 0.06}
"""What civilians' surveys scatter more than soldiers' about an estimate, on the model's scale.

The wrist of those of 16 1/2 years and more in the fitted half of the children's survey lies 0.057
about what the model says from height and girths of the trunk, the soldiers' 0.040: 0.04 more,
widened by half because that is one survey, of slim young people.
"""

Column = str | tuple[str, str]

# Lengths in mm, weight in 0.1 kg. A tuple is a difference, first minus second.
ANSUR1_PLAIN: dict[str, Column] = {
    "height": "STATURE",
    "over_shoulder_girth": "SHOULDER_CIRC",
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
ANSUR1_SITED: dict[str, dict[str, Column]] = {
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

ANSUR2: dict[str, Column] = {
    "height": "stature",
    "over_shoulder_girth": "shouldercircumference",
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
BOTH = tuple(key for key in FIELDS if key in ANSUR2 or key == AGES[0])
"""What both surveys of soldiers hold."""

NHANES = {"height": "BMXHT", "weight": "BMXWT", "waist": "BMXWAIST", "hip": "BMXHIP",
          "upper_arm": "BMXARMC"}  # fmt: skip
HIP_BONE_OVER_NAVEL = {"women": 1.027, "men": 1.030}
"""The survey's waist lies at the hip bone: larger than at the navel by this much."""
MID_OVER_AXILLARY = {"women": 1 - 0.026, "men": 1 - 0.022}
"""The survey's arm girth lies half-way down, the soldiers' at the armpit."""

CHILDREN = {"height": "height", "bust": "chest", "waist": "waist", "hip": "hip", "head": "head",
            "neck": "neck", "upper_arm": "upper_arm", "wrist": "wrist"}  # fmt: skip
"""The survey of children: cm already."""
