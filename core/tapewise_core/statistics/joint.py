"""What was not measured, all at once: plausible bodies rather than one ± after another.

Estimates of one body hang together: whose back is longer than thought has a lower hip too.
Whoever asks how sure a pattern is draws bodies from here and looks at each.
"""

from __future__ import annotations

import random
from collections.abc import Mapping

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.statistics.population import Population, population
from tapewise_core.statistics.symmetric import Row, root
from tapewise_core.statistics.trust import trusted
from tapewise_core.statistics.whose import refusal


class Joint(Frozen):
    """The measures that were not taken: their means and covariance, each on the model's scale.

    ``population`` tells the scales. Empty where nothing is missing or nothing can be estimated.
    """

    population: Population
    keys: tuple[str, ...]
    mean: Row
    covariance: list[Row]

    def draw(self, number: int, seed: int = 0) -> tuple[Mapping[str, float], ...]:
        """Return so many plausible bodies, each the unmeasured values [cm] by key.

        The same seed gives the same bodies.
        """
        chance, lower = random.Random(seed), root(self.covariance)
        return tuple(self._body([chance.gauss(0, 1) for _ in self.keys], lower)
                     for _ in range(number))  # fmt: skip

    def _body(self, steps: Row, lower: list[Row]) -> dict[str, float]:
        return {
            key: self.population.unscaled(
                key, mean + sum(a * b for a, b in zip(row, steps, strict=False))
            )
            for key, mean, row in zip(self.keys, self.mean, lower, strict=True)
        }


def unmeasured(
    known: Mapping[str, float],
    reference: Reference,
    waist_site: WaistSite,
    confirmed: frozenset[str] = frozenset(),
    age: float | None = None,
) -> Joint:
    """Return how the measures that are not among the readings [cm] scatter together."""
    people = population(reference, waist_site, age)
    missing = tuple(key for key in people.measures if key not in known)
    if refusal(known, confirmed, age) or not missing:
        return Joint(people, (), [], [])
    body = trusted(known, confirmed, people).body
    mean, covariance = body.together(missing)
    wider = body.widening() ** 2
    return Joint(people, missing, mean, [[one * wider for one in row] for row in covariance])
