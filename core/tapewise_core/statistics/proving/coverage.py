"""How often intervals hold what they should, and how far estimates are off."""

from __future__ import annotations

from dataclasses import dataclass, field
from pathlib import Path

import numpy as np

from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.statistics.building.fields import KEYS
from tapewise_core.statistics.building.tables import Chosen, Floats
from tapewise_core.statistics.given import Given, given
from tapewise_core.statistics.population import AGES, WEIGHT, narrowed, population
from tapewise_core.statistics.proving.people import Form, Group, at_home, young_people

HALF = {90: 1.6449, 95: 1.96}
"""Half an interval in spreads, by its percentage."""
FOUR = ("height", "bust", "waist", "hip")
FEW = tuple(key for key in KEYS if key in FOUR)
"""The same in the order of the form."""
YOUTH = 16.5
"""From this age on [years] the children's survey's people are held against grown ones."""


@dataclass
class Tally:
    """Distances in spreads and errors in cm of one measure's estimates, and people's weights."""

    z: list[float] = field(default_factory=list)
    error: list[float] = field(default_factory=list)
    weight: list[float] = field(default_factory=list)

    def add(self, z: float, error: float, weight: float = 1.0) -> None:
        """Note one estimate."""
        self.z.append(z)
        self.error.append(error)
        self.weight.append(weight)

    def covered(self, percent: int) -> float:
        """Return how many in a hundred lay within an interval."""
        return 100 * float(np.average(np.abs(self.z) < HALF[percent], weights=self.weight))

    def mean_error(self) -> float:
        """Return the mean absolute error [cm]."""
        return float(np.average(np.abs(self.error), weights=self.weight))

    def bias(self) -> float:
        """Return by how much the people are larger than their estimates [cm]."""
        return float(np.average(self.error, weights=self.weight))


Tallies = dict[str, Tally]


def tallied(group: Group, known: tuple[str, ...] | None, people: int, seed: int = 3) -> Tallies:
    """Estimate measures from readings of some others, or from all others if ``known`` is None.

    What is known was read at home; what is estimated is held against the person's own measure.
    """
    rng, tallies = np.random.default_rng(seed), Tallies()
    for row in range(min(len(group), people)):
        _tally(tallies, group, group.true(row), known, rng)
    return tallies


def pooled(tallies: Tallies) -> Tally:
    """Return all measures together."""
    whole = Tally()
    for tally in tallies.values():
        for z, error in zip(tally.z, tally.error, strict=True):
            whole.add(z, error)
    return whole


def weighed(
    group: Group,
    key: str,
    known: tuple[str, ...],
    weights: Floats,
    chosen: Chosen,
    *,
    aged: bool = False,
) -> Tally:
    """Estimate one measure of chosen people from readings of others, by survey weight.

    ``aged`` says whether their ages are known too.
    """
    rng, tally = np.random.default_rng(4), Tally()
    for row in np.flatnonzero(chosen):
        true = group.true(int(row))
        read = at_home(true, rng)
        people = group.population
        if aged:
            people = narrowed(people, {name: float(group.columns[name][row]) for name in AGES})
        body = given({name: read[name] for name in known}, people)
        tally.add(*_miss(body, key, true[key]), weight=float(weights[row]))
    return tally


def youths(folder: Path, sex: str, key: str) -> Tally:
    """Estimate one measure of civilian youths from what else they were measured for."""
    people, tally = young_people(folder, 99.0), Tally()
    chosen = (people.columns["age"] >= YOUTH) & (people.columns["is_man"] == (sex == "men"))
    for row in np.flatnonzero(chosen):
        form = {name: float(column[row]) for name, column in people.columns.items()}
        known = {name: form[name] for name in FOUR if not np.isnan(form[name])}
        if not np.isnan(form[key]):
            body = given(known, population(Reference(sex), WaistSite.NAVEL))
            tally.add(*_miss(body, key, form[key]))
    return tally


def body_mass_index(group: Group) -> Floats:
    """Return everybody's true body mass index [kg/m²]."""
    return np.asarray(group.columns[WEIGHT] / (group.columns["height"] / 100) ** 2)


def _tally(
    tallies: Tallies,
    group: Group,
    true: Form,
    known: tuple[str, ...] | None,
    rng: np.random.Generator,
) -> None:
    read = at_home(true, rng)
    body = given(read if known is None else {key: read[key] for key in known}, group.population)
    for key, cm in true.items():
        if known is None or key not in known:
            others = body.without(key) if known is None else body
            tallies.setdefault(key, Tally()).add(*_miss(others, key, cm))


def _miss(body: Given, key: str, true: float) -> tuple[float, float]:
    """Return by how many spreads and by how many cm an estimate misses."""
    mean, spread = body.of(key)
    people = body.population
    z = (people.scaled(key, true) - mean) / (spread * body.widening())
    return z, true - people.unscaled(key, mean)
