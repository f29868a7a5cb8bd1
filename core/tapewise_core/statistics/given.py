"""What a population says of one measure, given readings of others.

Plain Python on purpose: two dozen measures are conditioned in a quarter of a millisecond, while
importing a numeric library would cost every start a hundred.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from operator import mul

from tapewise_core.frozen import Frozen
from tapewise_core.statistics.population import WEIGHT, Population
from tapewise_core.statistics.symmetric import Row, inverse

WIDENINGS = ((45.0, 1.7), (40.0, 1.3), (35.0, 1.1))
"""Body mass index [kg/m²], and how much wider spreads become above it, where the tables hold few.

With the bent scales so much is enough in the fitted half of NHANES.
"""
RARE_HEIGHT, A_LITTLE = 3.0, 1.15
"""A height so many spreads from the mean is rare, and spreads are widened a little too."""


class Given(Frozen):
    """Readings of one body, and how they lean on each other.

    ``precision`` is the inverse of the readings' covariance, home noise and definition noise
    included; ``pull`` is that times the readings' distances from the mean, ``off``.
    """

    population: Population
    keys: tuple[str, ...]
    off: Row
    precision: list[Row]
    pull: Row

    def z(self, key: str) -> float:
        """Return how far a reading is from what all others suggest, in spreads."""
        i = self.keys.index(key)
        return self.pull[i] / math.sqrt(self.precision[i][i])

    def without(self, key: str) -> Given:
        """Return the same body with one reading left out."""
        i = self.keys.index(key)
        left = [j for j in range(len(self.keys)) if j != i]
        gone, pivot = self.precision[i], self.precision[i][i]
        precision = [[self.precision[j][k] - gone[j] * gone[k] / pivot for k in left] for j in left]
        off = [self.off[j] for j in left]
        return _given(self.population, tuple(self.keys[j] for j in left), off, precision)

    def others(self, key: str) -> tuple[float, float]:
        """Return mean and spread of a reading, on the model's scale, from all other readings."""
        i = self.keys.index(key)
        variance = 1 / self.precision[i][i]
        mean = self.population.mean[key] + self.off[i] - self.pull[i] * variance
        return mean, math.sqrt(variance)

    def of(self, key: str) -> tuple[float, float]:
        """Return mean and spread, on the model's scale, of a measure that was not read."""
        return self._of(key, *self._shares(key))

    def estimated(self, key: str) -> tuple[float, float, tuple[str, ...]]:
        """Return mean and spread as :meth:`of` does, and the readings that they lean on most."""
        share, covariance = self._shares(key)
        return *self._of(key, share, covariance), self._leaned_on(share, covariance)

    def _of(self, key: str, share: Row, covariance: Row) -> tuple[float, float]:
        mean = self.population.mean[key] + sum(map(mul, self.pull, covariance))
        variance = self.population.covariance[key][key] + self.population.definition[key] ** 2
        return mean, math.sqrt(variance - sum(map(mul, share, covariance)))

    def together(self, keys: tuple[str, ...]) -> tuple[Row, list[Row]]:
        """Return means and covariance, on the model's scale, of measures that were not read."""
        people = self.population
        shares = {key: self._shares(key) for key in keys}
        mean = [self._of(key, *shares[key])[0] for key in keys]
        covariance = [
            [
                people.covariance[one][two]
                - sum(map(mul, shares[one][0], shares[two][1]))
                + (people.definition[one] ** 2 if one == two else 0.0)
                for two in keys
            ]
            for one in keys
        ]
        return mean, covariance

    def _leaned_on(self, share: Row, covariance: Row) -> tuple[str, ...]:
        """The readings that narrow an estimate most, the weightiest first.

        A reading's weight is how much the estimate's variance grows without it. Where readings
        stand in for each other so well that none is missed, it is the part of the variance
        that each explains.
        """
        explained = list(map(mul, share, covariance))
        grows = [part * part / self.precision[i][i] for i, part in enumerate(share)]
        return self._weighty(grows, 0.05 * sum(explained)) or self._weighty(
            explained, 0.1 * sum(explained)
        )

    def _weighty(self, weights: Row, least: float) -> tuple[str, ...]:
        ranked = sorted(zip(weights, self.keys, strict=True), reverse=True)
        return tuple(name for weight, name in ranked[:3] if weight > least > 0)

    def widening(self) -> float:
        """Return how much wider spreads are to be for the size of this body."""
        if not self.population.is_weighed:
            return 1.0
        index = self.body_mass_index()
        size = next((wider for above, wider in WIDENINGS if index > above), 1.0)
        return max(size, A_LITTLE) if self._is_rare_height() else size

    def body_mass_index(self) -> float:
        """Return the body mass index [kg/m²] that the readings suggest; nobody is weighed.

        Weight is estimated like any other measure that was not taken, from hip and waist above
        all.
        """
        weight = math.exp(self.of(WEIGHT)[0])
        height = self._height() / 100
        return weight / height**2

    def log_density(self) -> float:
        """Return the logarithm of how likely these readings are, for each cm of each of them."""
        total, body = 0.0, self
        while body.keys:
            key = body.keys[-1]
            total += body.log_density_of(key, body.read(key))
            body = body.without(key)
        return total

    def log_density_of(self, key: str, cm: float) -> float:
        """Return the logarithm of how likely a reading of so many cm is beside all others."""
        mean, spread = self.others(key)
        off = (self.population.scaled(key, cm) - mean) / spread
        slope = self.population.scale(key).slope(cm)
        return math.log(slope / spread / math.sqrt(2 * math.pi)) - off * off / 2

    def read(self, key: str) -> float:
        """Return a reading [cm]."""
        people = self.population
        return people.unscaled(key, people.mean[key] + self.off[self.keys.index(key)])

    def _is_rare_height(self) -> bool:
        spread = math.sqrt(self.population.covariance["height"]["height"])
        return abs(self._height() - self.population.mean["height"]) > RARE_HEIGHT * spread

    def _height(self) -> float:
        """Height [cm] as it was read, or as the others suggest it where it is missing or wild."""
        if "height" not in self.keys:
            return self.of("height")[0]
        mean, spread = self.others("height")
        read = self.population.mean["height"] + self.off[self.keys.index("height")]
        return read if abs(read - mean) < 4 * spread else mean

    def _shares(self, key: str) -> tuple[Row, Row]:
        line = self.population.covariance[key]
        covariance = [line[other] for other in self.keys]
        return [sum(map(mul, row, covariance)) for row in self.precision], covariance


def given(known: Mapping[str, float], population: Population) -> Given:
    """Return readings [cm] as a population sees them; measures it does not hold are left out."""
    keys = tuple(key for key in population.measures if known.get(key, 0) > 0)
    off = [population.scaled(key, known[key]) - population.mean[key] for key in keys]
    lines = (population.covariance[key] for key in keys)
    covariance = [[line[other] for other in keys] for line in lines]
    for i, key in enumerate(keys):
        covariance[i][i] += population.error(key)
    return _given(population, keys, off, inverse(covariance))


def _given(population: Population, keys: tuple[str, ...], off: Row, precision: list[Row]) -> Given:
    pull = [sum(map(mul, row, off)) for row in precision]
    return Given(population, keys, off, precision, pull)
