"""How two measures of one body stand to each other, at the very most.

Each row bounds the ratio of one measure to another. The bounds lie outside
every adult of two open tables, ANSUR I (US Army 1988) and ANSUR II (2012), ten
thousand people in all, by a margin for very full bodies, for other ways of
finding the waist and for home measuring; the ratios found there are noted
beside each row as least and greatest. Where neither table has the measure, the
bounds are common practice.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Proportion:
    """``small`` over ``large`` lies from ``least`` to ``most`` on any body.

    ``advice`` ends the sentence that tells a person what to look at.
    """

    small: str
    large: str
    least: float
    most: float
    advice: str


PROPORTIONS: tuple[Proportion, ...] = (
    # 0.38 to 0.70
    Proportion("wrist", "upper_arm", 0.25, 0.85, "were the two exchanged?"),
    # 0.91 to 1.16
    Proportion("bust", "high_bust", 0.82, 1.45, "the two lie a hand's breadth apart."),
    # 0.73 to 0.98
    Proportion("under_bust", "bust", 0.58, 1.02, "were the two exchanged?"),
    # 0.78 to 1.01
    Proportion("under_bust", "high_bust", 0.68, 1.12, "were the two exchanged?"),
    # 0.14 to 0.26
    Proportion("bust_span", "bust", 0.09, 0.34, "the span goes straight from point to point."),
    # 0.30 to 0.50
    Proportion("across_back", "bust", 0.20, 0.60, "it goes from armpit crease to armpit crease."),
    # 0.24 to 0.55
    Proportion("shoulder_length", "across_back", 0.18, 0.68, "the shoulder is one side's alone."),
    # 0.18 to 0.67
    Proportion(
        "shoulder_drop",
        "shoulder_length",
        0.07,
        0.90,
        "the drop is a difference of heights, measured straight down.",
    ),
    # 0.18 to 0.33, from the narrowest waist to the navel
    Proportion("back_waist_length", "height", 0.15, 0.37, "it runs from the nape bone."),
    # 0.30 to 0.66
    Proportion("armscye_depth", "back_waist_length", 0.22, 0.80, "both begin at the nape bone."),
    # in neither table: common practice
    Proportion(
        "back_waist_length", "front_waist_length", 0.62, 1.30, "both end at the same elastic."
    ),
    # in neither table: common practice
    Proportion(
        "neck_to_bust_point", "front_waist_length", 0.40, 0.92, "both begin at the side neck point."
    ),
    # 0.03 to 0.18
    Proportion("hip_depth", "height", 0.02, 0.22, "it runs from the waist to the line of the hip."),
    # 0.10 to 0.48
    Proportion("hip_depth", "waist_to_knee", 0.06, 0.65, "both begin at the waist."),
    # 0.48 to 0.60
    Proportion("waist_to_knee", "waist_to_floor", 0.40, 0.68, "both begin at the waist."),
    # 0.55 to 0.69
    Proportion("waist_to_floor", "height", 0.50, 0.74, "it runs from the waist, without shoes."),
    # 0.84 to 0.89
    Proportion("nape_to_floor", "height", 0.79, 0.94, "it hangs from the nape bone to the floor."),
    # 0.28 to 0.38
    Proportion("arm_length", "height", 0.24, 0.44, "it runs from the shoulder point to the wrist."),
)
