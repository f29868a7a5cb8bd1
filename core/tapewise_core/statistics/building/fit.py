"""From people to means and covariances: soldiers re-weighted, the waist at its site."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from tapewise_core.statistics.building import fields
from tapewise_core.statistics.building.tables import Civilians, Floats, Soldiers, transformed
from tapewise_core.statistics.population import SITED

SHARES = {"narrowest": 0.0, "midway": 0.5, "navel": 1.0}
"""Where the waist is, as a share of the way from the narrowest place down to the navel."""


@dataclass(frozen=True)
class Joint:
    """A mean and a covariance over ``fields.FIELDS``, in logarithms and cm."""

    mean: Floats
    covariance: Floats


def joint_of(people: Soldiers) -> Joint:
    """Return the joint of everything at the navel, and of the way from there to the narrowest."""
    navel = transformed(people.navel, fields.FIELDS)
    sited = transformed(people.navel, SITED) - transformed(people.narrowest, SITED)
    table = np.column_stack([navel, sited])
    return Joint(table.mean(axis=0), np.cov(table.T))


def reweighted(joint: Joint, civilians: Civilians) -> Joint:
    """Return the joint as it would be had the soldiers been picked like the civilians.

    Pearson-Lawley correction for selection: what both surveys measured is taken from the
    civilians, everything else given that from the soldiers.
    """
    chosen = [fields.FIELDS.index(key) for key in fields.SELECTED]
    table = transformed(civilians.columns, fields.SELECTED)
    mean = np.average(table, axis=0, weights=civilians.weights)
    covariance = np.cov(table.T, aweights=civilians.weights)
    own = joint.covariance[np.ix_(chosen, chosen)]
    slopes = np.linalg.solve(own, joint.covariance[chosen]).T
    return Joint(
        joint.mean + slopes @ (mean - joint.mean[chosen]),
        joint.covariance + slopes @ (covariance - own) @ slopes.T,
    )


def at_site(joint: Joint, site: str) -> Joint:
    """Return the joint with the waist at one site, or anywhere evenly between if not said."""
    share = SHARES.get(site, 0.5)
    size = len(fields.FIELDS)
    turn = np.eye(size, len(joint.mean))
    for number, key in enumerate(SITED):
        turn[fields.FIELDS.index(key), size + number] = share - 1
    mean, covariance = turn @ joint.mean, turn @ joint.covariance @ turn.T
    if site not in SHARES:
        covariance = covariance + _blur(joint)
    return Joint(mean, covariance)


def mixed(first: Joint, second: Joint) -> Joint:
    """Return both populations in equal parts as one, as wide as both together."""
    apart = (first.mean - second.mean) / 2
    covariance = (first.covariance + second.covariance) / 2 + np.outer(apart, apart)
    return Joint((first.mean + second.mean) / 2, covariance)


def _blur(joint: Joint) -> Floats:
    """What an even spread of the site between the two places adds: all of them move together."""
    size = len(fields.FIELDS)
    apart = joint.covariance[size:, size:] + np.outer(joint.mean[size:], joint.mean[size:])
    places = [fields.FIELDS.index(key) for key in SITED]
    blur = np.zeros((size, size))
    blur[np.ix_(places, places)] = apart / 12
    return blur
