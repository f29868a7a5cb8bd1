"""People of the open tables (ANSUR I, 1988; NHANES 2017 to 2020).

Half are soldiers with every measure taken, half civilians known by height, weight, upper arm,
waist and hip, whose other measures are estimated; both sexes, spread evenly over the body mass
index so that the thin and the very full count as much as the many in between.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from pathlib import Path

import numpy as np

from tapewise_core.profiles.profile import Profile
from tapewise_core.statistics.building.fields import KEYS
from tapewise_core.statistics.building.tables import SEXES, civilians, soldiers_1988

KNOWN = ("height", "waist", "hip", "upper_arm")
"""What the civilian survey measured that a profile holds."""

FULLEST = 45.0
"""The greatest body mass index drafted for [kg/m²]."""


def people(folder: Path, count: int) -> Iterator[Profile]:
    """Yield people, alternately from both tables and both sexes."""
    each = count // (2 * len(SEXES))
    for sex in SEXES:
        soldiers = soldiers_1988(folder, sex)
        yield from _chosen(soldiers.at(0.0), sex, "narrowest", KEYS, each, "soldier")
        yield from _chosen(civilians(folder, sex).columns, sex, "navel", KNOWN, each, "civilian")


def _chosen(
    columns: Mapping[str, np.ndarray],
    sex: str,
    site: str,
    keys: tuple[str, ...],
    count: int,
    kind: str,
) -> Iterator[Profile]:
    """Yield some people spread evenly over the body mass index."""
    index = columns["weight"] / (columns["height"] / 100) ** 2
    order = [i for i in np.argsort(index) if index[i] <= FULLEST]
    aims = np.linspace(index[order[0]], index[order[-1]], count)
    rng = np.random.default_rng(4)
    for number, aim in enumerate(aims):
        near = sorted(order, key=lambda i: abs(index[i] - aim))[:5]
        row = int(rng.choice(near))
        order.remove(row)
        yield _profile(columns, row, sex, site, keys, f"{kind} {sex} {number}")


def _profile(
    columns: Mapping[str, np.ndarray],
    row: int,
    sex: str,
    site: str,
    keys: tuple[str, ...],
    name: str,
) -> Profile:
    taken = {key: {"value": round(float(columns[key][row]), 1)} for key in keys if key in columns}
    kept = {"name": name, "reference": sex, "waist_site": site, "measures": taken}
    return Profile.from_text(json.dumps({"format": "tapewise profile", "version": 1, **kept}))
