"""People and drafts for tests, invented."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
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
