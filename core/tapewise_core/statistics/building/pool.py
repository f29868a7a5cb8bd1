"""Several surveys as one, and what they disagree about as doubt."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from tapewise_core.frozen import Frozen
from tapewise_core.statistics.building import fields
from tapewise_core.statistics.building.fit import Joint, joint_of, joint_of_people, reweighted
from tapewise_core.statistics.building.fit import mixed as half_and_half
from tapewise_core.statistics.building.tables import People, Soldiers
from tapewise_core.statistics.population import AGES, WEIGHT

GIVEN = (*fields.COMMON, AGES[0])
"""What surveys are compared given: people of the same size and age."""
OWN, SHARED = 2.0, 1.0
"""How much a measure's own disagreement counts, and how much what is usual among measures."""


class Surveys(Frozen):
    """One sex of the three surveys of adults; the second may be left out to be foretold."""

    first: Soldiers
    second: People | None
    civilians: People

    def fitted(self, want: bool = True) -> Surveys:
        """Return the half that the model is worked out from, or the other."""
        second = self.second and self.second.only(self.second.fitted == want)
        return Surveys(
            self.first.only(self.first.fitted == want),
            second,
            self.civilians.only(self.civilians.fitted == want),
        )

    def joints(self) -> list[Joint]:
        """Return each survey's own joint."""
        found = [joint_of(self.first), joint_of_people(self.civilians, fields.SELECTED)]
        if self.second is not None:
            found.append(joint_of_people(self.second, fields.BOTH))
        return found


def pooled(surveys: Surveys) -> Joint:
    """Return one sex's joint: the soldiers' surveys in the middle, then picked like civilians.

    Each survey of soldiers is moved half-way to the other, measure by measure, so that neither
    team's landmarks win; what only the first measured is kept given what both did.
    """
    joint = joint_of(surveys.first)
    if surveys.second is not None:
        second = joint_of_people(surveys.second, fields.BOTH)
        half = {key: by / 2 for key, by in _apart(joint, second).items()}
        joint = joint.moved(half)
        second = second.moved({key: -by for key, by in half.items()})
        both = half_and_half(joint.only(fields.BOTH), second)
        joint = reweighted(joint, both, fields.BOTH)
    others = joint_of_people(surveys.civilians, (*fields.SELECTED, *AGES[1:]))
    return reweighted(joint, others, fields.SELECTED)


def survey_noise(sexes: Sequence[Surveys], seen: int = 2) -> dict[str, float]:
    """Return by how much one more survey may part from the pool, on the model's scale.

    A random effect: surveys' means, given size and age, scatter about the true one. The
    variance of that scatter, from both sexes, is drawn a little towards what is usual among
    measures, and is all there is where one survey alone holds a measure. What is foretold is a
    further survey, hence 1 + 1/n for the mean of the ``seen`` ones.
    """
    joints = [one.joints() for one in sexes]
    found, within = {}, {}
    for key in (*fields.KEYS, WEIGHT):
        means = [_given(key, one) for one in joints]
        within[key] = float(np.mean([spread for _, spread in means]))
        found[key] = [float(np.var(of, ddof=1)) for of, _ in means if len(of) > 1]
    usual = float(np.mean([np.mean(v) / within[key] for key, v in found.items() if v]))
    noise = {}
    for key in fields.KEYS:
        own, shared = found[key], usual * within[key]
        times = 1 + 1 / seen if own else 2.0
        variance = (OWN * float(np.mean(own)) + SHARED * shared) / (OWN + SHARED) if own else shared
        noise[key] = float(np.sqrt(times * variance + fields.CIVIL_NOISE.get(key, 0.0) ** 2))
    return noise | {"height": 0.0}


def _given(key: str, joints: Sequence[Joint]) -> tuple[list[float], float]:
    """Return a measure's mean in each survey for one and the same body, and its variance."""
    given = tuple(name for name in GIVEN if name != key)
    holding = [joint for joint in joints if key in joint.keys]
    body = np.mean([joint.only(given).mean for joint in holding], axis=0)
    means, spreads = [], []
    for joint in holding:
        own = joint.only((*given, key))
        slopes = np.linalg.solve(own.covariance[:-1, :-1], own.covariance[-1, :-1])
        means.append(float(own.mean[-1] + slopes @ (body - own.mean[:-1])))
        spreads.append(float(own.covariance[-1, -1] - slopes @ own.covariance[:-1, -1]))
    return means, float(np.mean(spreads))


def _apart(first: Joint, second: Joint) -> dict[str, float]:
    """Return by how much the second survey lies above the first for the same body."""
    found = {}
    for key in fields.BOTH:
        if key not in GIVEN:
            (one, two), _ = _given(key, (first, second))
            found[key] = two - one
    return found
