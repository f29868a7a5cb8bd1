"""How two measures of one body stand to each other, at the very most.

Each row bounds the ratio of one measure to another. The bounds lie outside
every adult of two open tables, ANSUR I (US Army 1988) and ANSUR II (2012), ten
thousand people in all, by a margin for very full bodies, for other ways of
finding the waist and for home measuring; the ratios found there are noted
beside each row as least and greatest. Where neither table has the measure, the
bounds are common practice.
"""

from __future__ import annotations

from tapewise_core.frozen import Frozen


class Proportion(Frozen):
    """``small`` over ``large`` lies from ``least`` to ``most`` on any body.

    ``asks`` is the question that tells a person what to look at.
    """

    small: str
    large: str
    least: float
    most: float
    asks: str


PROPORTIONS: tuple[Proportion, ...] = (
    # 0.38 to 0.70
    Proportion("wrist", "upper_arm", 0.25, 0.85, "Were the two exchanged?"),
    # 0.91 to 1.16
    Proportion(
        "bust", "high_bust", 0.82, 1.45, "Did the tape lie a hand's breadth apart for the two?"
    ),
    # 0.73 to 0.98
    Proportion("under_bust", "bust", 0.58, 1.02, "Were the two exchanged?"),
    # 0.78 to 1.01
    Proportion("under_bust", "high_bust", 0.68, 1.12, "Were the two exchanged?"),
    # 0.14 to 0.26
    Proportion("bust_span", "bust", 0.09, 0.34, "Did the span go straight from point to point?"),
    # 0.30 to 0.50
    Proportion("across_back", "bust", 0.20, 0.60, "Did it go from armpit crease to armpit crease?"),
    # in neither table: common practice
    Proportion("across_front", "across_back", 0.55, 1.50, "Did both go from crease to crease?"),
    # 0.75 to 1.14
    Proportion(
        "bust", "over_shoulder_girth", 0.60, 1.35, "Did that girth go round the arms as well?"
    ),
    # in neither table: common practice
    Proportion("high_hip", "hip", 0.68, 1.30, "Did it go over the tops of the hip bones?"),
    # 0.24 to 0.55
    Proportion("shoulder_length", "across_back", 0.18, 0.68, "Was the shoulder one side's alone?"),
    # 0.18 to 0.67
    Proportion(
        "shoulder_drop",
        "shoulder_length",
        0.07,
        0.90,
        "Was the drop measured straight down, as a difference of heights?",
    ),
    # 0.18 to 0.33, from the narrowest waist to the navel
    Proportion("back_waist_length", "height", 0.15, 0.37, "Did it run from the nape bone?"),
    # 0.30 to 0.66
    Proportion(
        "armscye_depth", "back_waist_length", 0.22, 0.80, "Did both begin at the nape bone?"
    ),
    # in neither table: common practice
    Proportion(
        "back_waist_length", "front_waist_length", 0.62, 1.30, "Did both end at the same elastic?"
    ),
    # in neither table: common practice
    Proportion(
        "neck_to_bust_point",
        "front_waist_length",
        0.40,
        0.92,
        "Did both begin at the side neck point?",
    ),
    # 0.03 to 0.18
    Proportion(
        "hip_depth", "height", 0.02, 0.22, "Did it run from the waist to the line of the hip?"
    ),
    # 0.10 to 0.48
    Proportion("hip_depth", "waist_to_knee", 0.06, 0.65, "Did both begin at the waist?"),
    # 0.48 to 0.60
    Proportion("waist_to_knee", "waist_to_floor", 0.40, 0.68, "Did both begin at the waist?"),
    # 0.55 to 0.69
    Proportion("waist_to_floor", "height", 0.50, 0.74, "Did it run from the waist, without shoes?"),
    # 0.84 to 0.89
    Proportion(
        "nape_to_floor", "height", 0.79, 0.94, "Did it hang from the nape bone to the floor?"
    ),
    # 0.28 to 0.38
    Proportion(
        "arm_length", "height", 0.24, 0.44, "Did it run from the shoulder point to the wrist?"
    ),
)
