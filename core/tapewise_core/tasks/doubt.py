"""What the estimates of a draft leave open: the bodies that may be, in spreads of each estimate."""

from __future__ import annotations

import math
from collections.abc import Mapping
from types import MappingProxyType

import numpy as np
from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.proofs.worn import Many
from tapewise_core.statistics.joint import unmeasured
from tapewise_core.statistics.population import Population
from tapewise_core.tasks.drafted import Drafted


class Doubt(Frozen):
    """The estimates a draft uses: how far each may be off (``spreads``), on the scale of the
    ``people`` it was drawn from, and how they hang together, a correlation."""

    people: Population
    keys: tuple[str, ...]
    spreads: tuple[float, ...]
    together: Many

    def draw(self, number: int) -> Many:
        """Return so many bodies, a row each: every estimate in spreads from the one drafted for."""
        chance = np.random.default_rng(0)  # the same bodies for the same draft
        sizes, ways = np.linalg.eigh(self.together)
        root = ways * np.sqrt(np.clip(sizes, 0.0, None))  # one may follow from the others
        return np.asarray(chance.standard_normal((number, len(self.keys))) @ root.T, np.float64)

    def knowing(self, key: str, drawn: Many) -> Many:
        """Return the same bodies, had one measure been taken and found where it is likeliest."""
        place = self.keys.index(key)
        follow = self.together[place] / self.together[place, place]
        known = drawn - np.outer(drawn[:, place], follow)
        return np.asarray(known, np.float64)

    def moved(self, body: Body, steps: Mapping[str, float]) -> Body:
        """Return a body with some estimates so many spreads from where they are."""
        values = dict(body.values)
        for key, step in steps.items():
            scaled = self.people.scaled(key, values[key].cm)
            scaled += step * self.spreads[self.keys.index(key)]
            values[key] = replace(values[key], cm=self.people.unscaled(key, scaled))
        return replace(body, values=MappingProxyType(values))


def doubt_of(drafted: Drafted) -> Doubt:
    """Return what the estimates of a draft leave open."""
    who = drafted.profile
    joint = unmeasured(who.read_off(), who.reference, who.waist_site, who.confirmed(), who.age)
    keys = tuple(key for key in drafted.estimated_keys if key in joint.keys)
    at = [joint.keys.index(key) for key in keys]
    spreads = [math.sqrt(joint.covariance[i][i]) for i in at]
    together = np.array([[joint.covariance[i][j] for j in at] for i in at])
    correlation = together / np.outer(spreads, spreads)
    return Doubt(joint.population, keys, tuple(spreads), correlation)
