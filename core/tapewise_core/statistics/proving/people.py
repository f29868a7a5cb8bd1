"""People the model has not seen, and what they would read off the tape at home."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

import numpy as np

from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.measures.catalogue import BY_KEY
from tapewise_core.statistics.building.fields import HOME_NOISE, KEYS
from tapewise_core.statistics.building.fit import SHARES, Joint, at_site, joint_of, reweighted
from tapewise_core.statistics.building.model import described
from tapewise_core.statistics.building.tables import (
    Civilians,
    Floats,
    civilians,
    soldiers_1988,
)
from tapewise_core.statistics.population import Population, population, population_of

FOLDS = 5
TAPE = 0.5
"""A person reads the tape to this [cm]."""
Form = dict[str, float]


@dataclass(frozen=True)
class Group:
    """People, as columns [cm], beside a population worked out without them."""

    population: Population
    columns: Mapping[str, Floats]

    def __len__(self) -> int:
        return len(self.columns["height"])

    def true(self, row: int) -> Form:
        """Return one person's own measures [cm]."""
        return {key: float(self.columns[key][row]) for key in KEYS if key in self.columns}


def held_out(
    folder: Path, sex: str, site: str, *, civilian: bool, seed: int = 1
) -> Iterator[Group]:
    """Yield each fifth of the 1988 soldiers beside a population from the other four.

    ``civilian`` says whether that is re-weighted, as it is shipped, or left as it was surveyed.
    With the site not said, each person's waist lies anywhere between the two places.
    """
    people, others = soldiers_1988(folder, sex), civilians(folder, sex)
    rng = np.random.default_rng(seed)
    fold, share = rng.integers(0, FOLDS, len(people)), rng.random(len(people))
    for number in range(FOLDS):
        joint = joint_of(people.only(fold != number))
        joint = reweighted(joint, others) if civilian else joint
        tested = people.only(fold == number)
        columns = shuffled(tested.at(SHARES.get(site, share[fold == number])))
        yield Group(as_population(at_site(joint, site)), columns)


def civilians_held_out(folder: Path, sex: str, *, civilian: bool = True) -> tuple[Group, Floats]:
    """Return half of the civilians with their survey weights, the other half in the population."""
    people, others = soldiers_1988(folder, sex), civilians(folder, sex)
    half = np.random.default_rng(2).random(len(others)) < 0.5
    joint = joint_of(people)
    joint = reweighted(joint, others.only(~half)) if civilian else joint
    tested: Civilians = others.only(half)
    return Group(as_population(at_site(joint, "navel")), tested.columns), tested.weights


def shipped(folder: Path, sex: str) -> Group:
    """Return the 1988 soldiers beside the shipped population of which nothing is said.

    It has seen them, so this shows what saying nothing costs, not how well it foretells.
    """
    people = soldiers_1988(folder, sex)
    share = np.random.default_rng(8).random(len(people))
    nothing_said = population(Reference.NOT_SAID, WaistSite.NOT_SAID)
    return Group(nothing_said, shuffled(people.at(share)))


def shuffled(columns: Mapping[str, Floats]) -> dict[str, Floats]:
    """Return people in no order, since the tables are in the order of the teams and days."""
    order = np.random.default_rng(7).permutation(len(columns["height"]))
    return {key: column[order] for key, column in columns.items()}


def as_population(joint: Joint) -> Population:
    """Return a joint as the program would read it from its model."""
    return population_of(described({"tested": joint}), "tested")


def at_home(true: Form, rng: np.random.Generator) -> Form:
    """Return what a person would read at home, to the tape's half centimetre."""
    return {
        key: float(max(TAPE, round((cm + rng.normal(0, HOME_NOISE[key])) / TAPE) * TAPE))
        for key, cm in true.items()
    }


def is_girth(key: str) -> bool:
    """Say whether a measure goes round."""
    return BY_KEY[key].is_girth
