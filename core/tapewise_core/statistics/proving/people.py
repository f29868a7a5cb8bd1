"""People the model has not seen, and what they would read off the tape at home.

Each table is drawn into two halves once (see ``building.tables``): the model is worked out from
the one and judged here on the other.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from pathlib import Path

import numpy as np
from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.measures.catalogue import BY_KEY
from tapewise_core.statistics.building.fields import HOME_NOISE, KEYS
from tapewise_core.statistics.building.fit import SHARES, Joint, at_site
from tapewise_core.statistics.building.model import described, surveys_of
from tapewise_core.statistics.building.pool import pooled, survey_noise
from tapewise_core.statistics.building.tables import (
    CHILD_TO,
    SEXES,
    Floats,
    People,
    children_1977,
    civilians,
    soldiers_1988,
    soldiers_2012,
)
from tapewise_core.statistics.population import Population, population, population_of

TAPE = 0.5
"""A person reads the tape to this [cm]."""
Form = dict[str, float]


class Group(Frozen):
    """People, as columns [cm], beside a population worked out without them."""

    population: Population
    columns: Mapping[str, Floats]

    def __len__(self) -> int:
        return len(self.columns["height"])

    def true(self, row: int) -> Form:
        """Return one person's own measures [cm]."""
        return {key: float(self.columns[key][row]) for key in KEYS if key in self.columns}

    def forms(self, keys: tuple[str, ...], people: int, seed: int = 6) -> list[Form]:
        """Return what some of them would read at home of some measures."""
        rng = np.random.default_rng(seed)
        true = (self.true(row) for row in range(min(len(self), people)))
        return [at_home({key: one[key] for key in keys}, rng) for one in true]


def group_1988(folder: Path, sex: str, site: WaistSite) -> Group:
    """Return the soldiers of 1988 that are left, the waist at one site or anywhere between."""
    people = soldiers_1988(folder, sex)
    people = people.only(~people.fitted)
    share = np.random.default_rng(8).random(len(people))
    columns = people.at(SHARES.get(site.value, share))
    return Group(population(Reference(sex), site), shuffled(columns))


def group_2012(folder: Path, sex: str) -> Group:
    """Return the soldiers of 2012 that are left; their waist is at the navel."""
    people = soldiers_2012(folder, sex)
    columns = people.only(~people.fitted).columns
    return Group(population(Reference(sex), WaistSite.NAVEL), shuffled(columns))


def group_foretold(folder: Path, sex: str) -> Group:
    """Return all soldiers of 2012 beside a model that knows their survey not at all.

    It is worked out from the other two surveys of this sex; how far surveys part is learnt
    from the other sex.
    """
    own, other = (surveys_of(folder)[one].fitted() for one in (sex, *({*SEXES} - {sex})))
    joint = pooled(replace(own, second=None))
    noise = survey_noise((other,), seen=1)
    everybody = soldiers_2012(folder, sex)
    return Group(as_population(at_site(joint, "navel"), noise), shuffled(everybody.columns))


def group_civilians(folder: Path, sex: str) -> tuple[Group, Floats]:
    """Return the civilians that are left, and their survey weights."""
    people = civilians(folder, sex)
    people = people.only(~people.fitted)
    return Group(population(Reference(sex), WaistSite.NAVEL), people.columns), people.weights


def young_people(folder: Path, to: float = CHILD_TO) -> People:
    """Return the children of 1977 that are left, below an age [years]."""
    people = children_1977(folder, to)
    return people.only(~people.fitted)


def child_forms(folder: Path, keys: tuple[str, ...]) -> Iterator[tuple[float, Form]]:
    """Yield age [years] and home readings of each child that has all of some measures."""
    people, rng = young_people(folder), np.random.default_rng(9)
    for row in range(len(people)):
        true = {key: float(people.columns[key][row]) for key in keys}
        if not any(np.isnan(cm) for cm in true.values()):
            yield float(people.columns["age"][row]), at_home(true, rng)


def shuffled(columns: Mapping[str, Floats]) -> dict[str, Floats]:
    """Return people in no order, since the tables are in the order of the teams and days."""
    order = np.random.default_rng(7).permutation(len(columns["height"]))
    return {key: column[order] for key, column in columns.items()}


def as_population(joint: Joint, noise: Mapping[str, float]) -> Population:
    """Return a joint as the program would read it from its model."""
    return population_of(described({"tested": joint}, noise), "tested")


def at_home(true: Form, rng: np.random.Generator) -> Form:
    """Return what a person would read at home, to the tape's half centimetre."""
    return {
        key: float(max(TAPE, round((cm + rng.normal(0, HOME_NOISE[key])) / TAPE) * TAPE))
        for key, cm in true.items()
    }


def is_girth(key: str) -> bool:
    """Say whether a measure goes round."""
    return BY_KEY[key].is_girth
