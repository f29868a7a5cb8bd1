"""From people to means and covariances: soldiers re-weighted, the waist at its site."""

from __future__ import annotations

import numpy as np

from tapewise_core.frozen import Frozen
from tapewise_core.statistics.building import fields
from tapewise_core.statistics.building.tables import Floats, People, Soldiers, transformed
from tapewise_core.statistics.population import AGES, SITED

SHARES = {"narrowest": 0.0, "midway": 0.5, "navel": 1.0}
"""Where the waist is, as a share of the way from the narrowest place down to the navel."""
SURVEYED = tuple(key for key in fields.FIELDS if key not in AGES[1:])
"""What the soldiers of 1988 hold."""
WAYS = tuple(f"{key}, from the narrowest to the navel" for key in SITED)


class Joint(Frozen):
    """A mean and a covariance over named fields, each on its scale."""

    keys: tuple[str, ...]
    mean: Floats
    covariance: Floats

    def places(self, keys: tuple[str, ...]) -> list[int]:
        """Return where some fields stand."""
        return [self.keys.index(key) for key in keys]

    def only(self, keys: tuple[str, ...]) -> Joint:
        """Return the joint of some fields, in that order."""
        places = self.places(keys)
        return Joint(keys, self.mean[places], self.covariance[np.ix_(places, places)])

    def moved(self, by: dict[str, float]) -> Joint:
        """Return the joint with some means moved."""
        shift = np.array([by.get(key, 0.0) for key in self.keys])
        return Joint(self.keys, self.mean + shift, self.covariance)


def joint_of(people: Soldiers) -> Joint:
    """Return the joint of everything at the navel, and of the way from there to the narrowest."""
    navel = transformed(people.navel, SURVEYED)
    sited = transformed(people.navel, SITED) - transformed(people.narrowest, SITED)
    table = np.column_stack([navel, sited])
    return Joint((*SURVEYED, *WAYS), table.mean(axis=0), np.cov(table.T))


def joint_of_people(people: People, keys: tuple[str, ...]) -> Joint:
    """Return the joint of another survey's people, by their weights."""
    table = transformed(people.columns, keys)
    mean = np.average(table, axis=0, weights=people.weights)
    return Joint(keys, mean, np.cov(table.T, aweights=people.weights))


def reweighted(joint: Joint, others: Joint, by: tuple[str, ...]) -> Joint:
    """Return the joint as it would be had its people been picked like others.

    Pearson-Lawley correction for selection: what is selected ``by`` is taken from the others,
    everything else given that from the joint. What only the others hold joins it, leaning on
    the rest only by way of what is selected by.
    """
    chosen, extra = joint.places(by), tuple(key for key in others.keys if key not in joint.keys)
    theirs = others.only((*by, *extra))
    size = len(by)
    slopes = np.linalg.solve(joint.covariance[np.ix_(chosen, chosen)], joint.covariance[chosen]).T
    left = joint.covariance - slopes @ joint.covariance[chosen]
    turn = np.zeros((len(joint.keys) + len(extra), size + len(extra)))
    turn[: len(joint.keys), :size] = slopes
    turn[len(joint.keys) :, size:] = np.eye(len(extra))
    mean = np.concatenate([joint.mean - slopes @ joint.mean[chosen], np.zeros(len(extra))])
    covariance = turn @ theirs.covariance @ turn.T
    covariance[: len(joint.keys), : len(joint.keys)] += left
    return Joint((*joint.keys, *extra), mean + turn @ theirs.mean, covariance)


def at_site(joint: Joint, site: str) -> Joint:
    """Return the joint with the waist at one site, or anywhere evenly between if not said."""
    share = SHARES.get(site, 0.5)
    turn = np.zeros((len(fields.FIELDS), len(joint.keys)))
    turn[np.arange(len(fields.FIELDS)), joint.places(fields.FIELDS)] = 1
    for key, way in zip(SITED, joint.places(WAYS), strict=True):
        turn[fields.FIELDS.index(key), way] = share - 1
    mean, covariance = turn @ joint.mean, turn @ joint.covariance @ turn.T
    if site not in SHARES:
        covariance = covariance + _blur(joint)
    return Joint(fields.FIELDS, mean, covariance)


def mixed(first: Joint, second: Joint) -> Joint:
    """Return both populations in equal parts as one, as wide as both together."""
    apart = (first.mean - second.mean) / 2
    covariance = (first.covariance + second.covariance) / 2 + np.outer(apart, apart)
    return Joint(first.keys, (first.mean + second.mean) / 2, covariance)


def _blur(joint: Joint) -> Floats:
    """What an even spread of the site between the two places adds: all of them move together."""
    ways = joint.only(WAYS)
    apart = ways.covariance + np.outer(ways.mean, ways.mean)
    places = [fields.FIELDS.index(key) for key in SITED]
    blur = np.zeros((len(fields.FIELDS), len(fields.FIELDS)))
    blur[np.ix_(places, places)] = apart / 12
    return blur
