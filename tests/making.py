"""People and drafts for tests, invented."""

from __future__ import annotations

import random
from collections.abc import Iterator, Mapping
from datetime import date

from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.drafting import Drafted, draft
from tapewise_core.units import Unit

DAY = date(2026, 1, 31)
"""The day every test draft is made on."""

MIDDLE = {
    "height": 167.0,
    "bust": 92.0,
    "waist": 74.0,
    "hip": 99.0,
    "head": 55.5,
    "neck": 36.5,
    "upper_arm": 28.5,
    "wrist": 15.6,
    "arm_length": 56.0,
    "armscye_depth": 18.8,
    "back_waist_length": 40.5,
    "hip_depth": 20.5,
    "shoulder_length": 13.2,
    "shoulder_drop": 5.4,
}
"""A woman of middle build, all measures of a top."""


def person(measures: Mapping[str, float] = MIDDLE, name: str = "Ada Test") -> Profile:
    """Return an invented person with some measures [cm]."""
    profile = Profile.of(name)
    for key, value in measures.items():
        profile = profile.with_value(key, value)
    return profile


def top(asked: Mapping[str, str] | None = None, unit: Unit = Unit.CM, **measures: float) -> Drafted:
    """Return a jersey top for the middle woman, some measures [cm] changed."""
    return draft(person({**MIDDLE, **measures}), "jersey-top", asked or {}, unit=unit, made=DAY)


def people(count: int, seed: int = 7) -> Iterator[dict[str, float]]:
    """Yield measures [cm] of invented people from thin to very full, short to tall.

    Girths go together loosely, as bodies do; lengths follow the height.
    """
    rng = random.Random(seed)
    for _ in range(count):
        height, size = rng.uniform(148, 196), rng.uniform(0.8, 1.55)
        vary = {key: rng.gauss(1, 0.04) for key in MIDDLE}
        girths = {k: MIDDLE[k] * size * vary[k] for k in ("bust", "waist", "hip")}
        small = {k: MIDDLE[k] * (0.5 + size / 2) * vary[k] for k in ("upper_arm", "wrist", "neck")}
        scale = height / MIDDLE["height"]
        lengths = {
            k: MIDDLE[k] * scale * vary[k]
            for k in ("arm_length", "armscye_depth", "back_waist_length", "hip_depth")
        }
        shoulder = {
            "shoulder_length": MIDDLE["shoulder_length"] * scale * vary["shoulder_length"],
            "shoulder_drop": MIDDLE["shoulder_drop"] * vary["shoulder_drop"],
        }
        head = {"head": MIDDLE["head"] * (1 + vary["head"]) / 2}
        yield {"height": height, **girths, **small, **lengths, **shoulder, **head}
