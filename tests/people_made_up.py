"""Bodies and styles made up at random, far past the usual, for tests that must hold for all."""

from __future__ import annotations

import random
from collections.abc import Iterator
from types import MappingProxyType

from tapewise_core.measures.body import Body, Value
from tapewise_core.measures.catalogue import NAMES


def bodies(count: int, seed: int = 7) -> Iterator[Body]:
    """Yield bodies from thin to very full, short to tall, pears, apples and straight ones."""
    rng = random.Random(seed)
    for _ in range(count):
        yield made_up(rng)


def made_up(rng: random.Random) -> Body:
    """Return one body: lengths go with height, girths with fullness, all with much chance."""
    tall, full = rng.uniform(145, 200), rng.uniform(0, 1)
    bust = 74 + 66 * full + rng.gauss(0, 3)
    waist = bust * rng.uniform(0.72, 1.08)
    hip = max(bust, waist) * rng.uniform(0.92, 1.22)
    back = tall * rng.uniform(0.225, 0.275)
    shoulder = tall * rng.uniform(0.065, 0.092)
    values = {
        "height": tall,
        "bust": bust,
        "high_bust": bust - rng.uniform(0, 12),
        "waist": waist,
        "hip": hip,
        "head": rng.uniform(52, 61),
        "neck": 33 + 12 * full + rng.uniform(-1.5, 1.5),
        "upper_arm": 23 + 20 * full + rng.uniform(-2, 2),
        "wrist": 14 + 4 * full + rng.uniform(-0.7, 0.7),
        "back_waist_length": back,
        "front_waist_length": back + rng.uniform(-1, 8),
        "armscye_depth": back * rng.uniform(0.42, 0.5) + 3 * full,
        "hip_depth": tall * rng.uniform(0.09, 0.14),
        "shoulder_length": shoulder,
        "shoulder_drop": shoulder * rng.uniform(0.15, 0.6),
        "arm_length": tall * rng.uniform(0.31, 0.36),
        "waist_to_knee": tall * rng.uniform(0.33, 0.37),
        "waist_to_floor": tall * rng.uniform(0.59, 0.64),
    }
    for key in ("neck", "front_waist_length", "high_bust", "wrist"):
        if rng.random() < 0.3:
            del values[key]
    return Body(MappingProxyType({k: Value(round(v, 1)) for k, v in values.items()}), NAMES)


CHOICES: dict[str, tuple[str, ...]] = {
    "neckline": ("round", "scoop", "v", "boat"),
    "sleeve": ("cap", "short", "elbow", "three-quarter", "long"),
    "hem": ("straight", "curved", "split"),
    "fit": ("fitted", "straight", "eased"),
    "bust-room": ("auto", "none", "raise", "side-ease", "side-dart", "gathers"),
    "waist-darts": ("auto", "none"),
}
SIZES: dict[str, tuple[float, float]] = {
    "front-hem-drop": (0, 4),
    "waist-shaping": (0, 100),
    "sleeve-length": (3, 50),
    "neck-depth": (6, 20),
    "ease": (-8, 20),
    "hem-allowance": (0, 6),
    "round-back": (-1.5, 1.5),
    "full-seat": (0, 4),
    "full-arm": (0, 5),
}


def styles(rng: random.Random) -> dict[str, str]:
    """Return a few options as a person would type them."""
    asked = {key: rng.choice(values) for key, values in CHOICES.items() if rng.random() < 0.6}
    for key, (low, high) in SIZES.items():
        if rng.random() < 0.2:
            asked[key] = f"{rng.uniform(low, high):.1f}"
    return asked


AVERAGE = {
    "height": 168.0, "bust": 92.0, "high_bust": 87.0, "waist": 76.0, "hip": 99.0, "head": 56.0,
    "neck": 36.0, "upper_arm": 29.0, "wrist": 16.0, "back_waist_length": 41.0,
    "front_waist_length": 44.2, "armscye_depth": 19.0, "hip_depth": 20.0, "shoulder_length": 12.8,
    "shoulder_drop": 5.0, "arm_length": 58.0, "waist_to_knee": 59.0, "waist_to_floor": 104.0,
}  # fmt: skip


def body(without: tuple[str, ...] = (), **changed: float) -> Body:
    """Return a body of average build with some measures changed [cm] or left out."""
    values = {k: v for k, v in {**AVERAGE, **changed}.items() if k not in without}
    return Body(MappingProxyType({k: Value(v) for k, v in values.items()}), NAMES)
