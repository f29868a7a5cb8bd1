"""How often intervals hold what they should, and how far estimates are off."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

import numpy as np

from tapewise_core.statistics.given import Given, given
from tapewise_core.statistics.population import WEIGHT
from tapewise_core.statistics.proving.people import Form, Group, at_home

HALF = {90: 1.6449, 95: 1.96}
"""Half an interval in spreads, by its percentage."""
FOUR = ("height", "bust", "waist", "hip")


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


Tallies = dict[str, Tally]


def tallied(
    folds: Iterable[Group], known: tuple[str, ...] | None, people: int, seed: int = 3
) -> Tallies:
    """Estimate measures from readings of some others, or from all others if ``known`` is None.

    What is known was read at home; what is estimated is held against the person's own measure.
    """
    rng, tallies = np.random.default_rng(seed), Tallies()
    for fold in folds:
        for row in range(min(len(fold), people)):
            _tally(tallies, fold, fold.true(row), known, rng)
    return tallies


def weighed(
    fold: Group, key: str, known: tuple[str, ...], weights: np.ndarray, chosen: np.ndarray
) -> Tally:
    """Estimate one measure of chosen people from readings of others, by survey weight."""
    rng, tally = np.random.default_rng(4), Tally()
    for row in np.flatnonzero(chosen):
        true = fold.true(int(row))
        read = at_home(true, rng)
        body = given({name: read[name] for name in known}, fold.population)
        tally.add(*_miss(body, key, true[key]), weight=float(weights[row]))
    return tally


def body_mass_index(fold: Group) -> np.ndarray:
    """Return everybody's true body mass index [kg/m²]."""
    return np.asarray(fold.columns[WEIGHT] / (fold.columns["height"] / 100) ** 2)


def _tally(
    tallies: Tallies,
    fold: Group,
    true: Form,
    known: tuple[str, ...] | None,
    rng: np.random.Generator,
) -> None:
    read = at_home(true, rng)
    body = given(read if known is None else {key: read[key] for key in known}, fold.population)
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
