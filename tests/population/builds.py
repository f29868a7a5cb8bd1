"""Made-up builds, far wider than people are, and twelve that a drafter knows by sight."""

from __future__ import annotations

import random
from collections.abc import Iterator, Mapping

from tapewise_core.profiles.profile import Profile

AVERAGE = {
    "height": 166.0, "bust": 92.0, "high_bust": 88.0, "waist": 75.0, "hip": 99.0, "head": 56.0,
    "neck": 36.0, "upper_arm": 29.0, "wrist": 15.8, "back_waist_length": 41.0,
    "front_waist_length": 43.6, "neck_to_bust_point": 27.0, "armscye_depth": 18.8,
    "hip_depth": 20.0, "shoulder_length": 12.4, "shoulder_drop": 5.2, "across_back": 35.0,
    "arm_length": 57.0, "waist_to_knee": 58.0, "waist_to_floor": 103.0,
}  # fmt: skip
"""A woman of middle build [cm]."""

NAMED: Mapping[str, Mapping[str, float]] = {
    "average": {},
    "busty": {
        "bust": 112, "high_bust": 96, "waist": 80, "hip": 104, "front_waist_length": 49,
        "neck_to_bust_point": 32.5, "upper_arm": 31,
    },
    "pear": {"bust": 84, "high_bust": 82, "waist": 66, "hip": 112, "front_waist_length": 42.8},
    "round": {
        "bust": 124, "high_bust": 116, "waist": 122, "hip": 126, "upper_arm": 42, "neck": 43,
        "front_waist_length": 47.5, "armscye_depth": 21.5, "across_back": 43, "wrist": 18.5,
    },
    "apple": {
        "bust": 108, "high_bust": 102, "waist": 112, "hip": 106, "upper_arm": 36, "neck": 40,
        "front_waist_length": 46, "armscye_depth": 20.3, "across_back": 39,
    },
    "thin": {
        "bust": 78, "high_bust": 77, "waist": 62, "hip": 86, "upper_arm": 22.5, "wrist": 14.2,
        "neck": 33, "across_back": 31, "shoulder_length": 12.8, "armscye_depth": 17.4,
    },
    "thin, tall": {
        "height": 186, "bust": 84, "high_bust": 82, "waist": 68, "hip": 93, "upper_arm": 25,
        "back_waist_length": 45.5, "front_waist_length": 47.5, "armscye_depth": 19.5,
        "hip_depth": 22, "shoulder_length": 14.4, "arm_length": 64, "across_back": 35,
    },
    "small": {
        "height": 148, "bust": 82, "high_bust": 79, "waist": 68, "hip": 88, "upper_arm": 25.5,
        "back_waist_length": 36.5, "front_waist_length": 38.6, "armscye_depth": 17,
        "neck_to_bust_point": 24, "hip_depth": 17.5, "shoulder_length": 11.2, "arm_length": 50,
        "across_back": 32,
    },
    "stooped": {
        "bust": 96, "high_bust": 93, "waist": 84, "hip": 100, "front_waist_length": 39.5,
        "back_waist_length": 42.5, "across_back": 39, "upper_arm": 30,
    },
    "square shoulders": {"shoulder_drop": 3.4, "shoulder_length": 13.6, "across_back": 37},
    "sloping shoulders": {"shoulder_drop": 7.2, "upper_arm": 33, "across_back": 34},
    "man": {
        "height": 178, "bust": 102, "high_bust": 102, "waist": 92, "hip": 101, "upper_arm": 33,
        "wrist": 17.5, "neck": 40, "head": 58, "back_waist_length": 46,
        "front_waist_length": 47, "armscye_depth": 22, "hip_depth": 19, "shoulder_length": 15,
        "shoulder_drop": 5.8, "across_back": 41, "arm_length": 61,
    },
}  # fmt: skip
"""Twelve builds by what differs from the middle one [cm]."""


def named() -> Iterator[Profile]:
    """Yield the twelve."""
    for name, changed in NAMED.items():
        yield measured(name, {**AVERAGE, **changed})


def builds(count: int, seed: int = 20) -> Iterator[Profile]:
    """Yield bodies: high bust 72 to 128, bust 0 to 18 more, waist 0.7 to 1.1 of it, arms, heights
    and shoulders alike; one in three has no front waist length."""
    rng = random.Random(seed)
    for number in range(count):
        yield one_build(rng, f"build {number}")


def one_build(rng: random.Random, name: str) -> Profile:
    """Return one such body."""
    return measured(name, _one(rng))


def _one(rng: random.Random) -> dict[str, float]:
    """One body's measures [cm]."""
    high, tall = rng.uniform(72, 128), rng.uniform(148, 195)
    cup = rng.uniform(0, 18) if rng.random() < 0.5 else rng.uniform(0, 6)
    full, bust = (high - 72) / 56, high + cup
    waist = bust * rng.uniform(0.7, 1.1)
    back, shoulder = tall * rng.uniform(0.23, 0.265), tall * rng.uniform(0.068, 0.082)
    armscye = back * rng.uniform(0.42, 0.48) + 2.5 * full
    found = {
        "height": tall,
        "bust": bust,
        "high_bust": high,
        "waist": waist,
        "hip": max(bust, waist) * rng.uniform(0.9, 1.2),
        "head": rng.uniform(53, 60),
        "neck": 33 + 11 * full + rng.uniform(-1, 1),
        "upper_arm": 23 + 20 * full + rng.uniform(-2, 2),
        "wrist": 14 + 4.5 * full + rng.uniform(-0.6, 0.6),
        "back_waist_length": back,
        "neck_to_bust_point": armscye + rng.uniform(5.5, 11) + 0.2 * cup,
        "armscye_depth": armscye,
        "hip_depth": tall * rng.uniform(0.1, 0.125),
        "shoulder_length": shoulder,
        "shoulder_drop": shoulder * rng.uniform(0.25, 0.55),
        "across_back": high * 0.33 + 6 + rng.uniform(-1.5, 2),
        "arm_length": tall * rng.uniform(0.32, 0.35),
        "waist_to_knee": tall * rng.uniform(0.33, 0.37),
        "waist_to_floor": tall * rng.uniform(0.6, 0.63),
    }
    if rng.random() > 1 / 3:
        found["front_waist_length"] = back + 2.2 + rng.uniform(-3, 2) + 0.28 * cup
    return found


def measured(name: str, measures: Mapping[str, float]) -> Profile:
    """Return somebody with these measures taken [cm]."""
    profile = Profile.of(name)
    for key, value in measures.items():
        profile = profile.with_value(key, round(value, 1))
    return profile
