"""Whose body it may be: a grown one, which is what estimates are for, or a child's."""

from __future__ import annotations

import math
from collections.abc import Mapping
from enum import StrEnum
from functools import lru_cache

from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.statistics.doubts import HINT
from tapewise_core.statistics.given import Given, given
from tapewise_core.statistics.population import Population, children, population
from tapewise_core.text.told import Told, joined, said
from tapewise_core.units import mm

GROWN_AGE = 17.0
"""From this age on [years] a body counts as grown: the surveys' adults begin there."""
SHORT = 140.0
"""Below this [cm] a body is taken for a child's until more is said: of grown women in the
civilian survey 2 in 1,000 are as short."""
SHORTEST = 124.0
"""The surveys hold no grown body below this [cm], so none is estimated there."""
GROWN_TO_ONE = math.log(20)
"""So many grown people use the program for each child, before anything is known (our choice;
a logarithm)."""
SURELY, SURELY_SHORT, PERHAPS = 0.95, 0.5, 0.1
"""From these chances on a form is a child's, also if it is that of a short body, or may be."""
GIRTHS_FOR_IT = 3
"""So many readings, at least, make a child of a form that has no height."""


class Whose(StrEnum):
    """What is known of whose body it is."""

    GROWN = "grown"
    PERHAPS = "perhaps a child's"
    CHILD = "a child's"


def whose(
    known: Mapping[str, float],
    confirmed: frozenset[str] = frozenset(),
    age: float | None = None,
) -> Whose:
    """Return whose body readings [cm] are; an age [years] decides, else how likely they are.

    A height under 140 cm is a child's unless the other readings are a grown person's, or it
    was confirmed and stands alone.
    """
    if age is not None:
        return Whose.CHILD if age < GROWN_AGE else Whose.GROWN
    chance, shared = chance_of_child(known), len(_shared(known))
    if chance < PERHAPS or ("height" not in known and shared < GIRTHS_FOR_IT):
        return Whose.GROWN
    if known.get("height", 0.0) >= SHORT or "height" not in known:
        return Whose.CHILD if chance >= SURELY else Whose.PERHAPS
    stands_alone = "height" in confirmed and shared == 1 and known["height"] >= SHORTEST
    return Whose.PERHAPS if stands_alone or chance < SURELY_SHORT else Whose.CHILD


def chance_of_child(known: Mapping[str, float]) -> float:
    """Return the chance that readings [cm] are a child's; 0 where no child is so built.

    No single reading makes a child of a form: of many, any one may be left out.

    >>> 0.3 < chance_of_child({"height": 142.0}) < 0.6, chance_of_child({"height": 172.0}) < 0.05
    (True, True)
    """
    shared = _shared(known)
    whole = _chance(tuple(shared.items()))
    if whole < PERHAPS or len(shared) <= GIRTHS_FOR_IT:
        return whole
    without = ({name: cm for name, cm in shared.items() if name != key} for key in shared)
    least = min(_chance(tuple(less.items())) for less in without)
    return whole if least >= PERHAPS else least


@lru_cache(maxsize=256)
def _chance(readings: tuple[tuple[str, float], ...]) -> float:
    shared = dict(readings)
    young = given(shared, children())
    if not shared or not _fits(young):
        return 0.0
    odds = young.log_density() - _grown(shared) - GROWN_TO_ONE
    return 1 / (1 + math.exp(-max(min(odds, 50.0), -50.0)))


def refusal(
    known: Mapping[str, float],
    confirmed: frozenset[str] = frozenset(),
    age: float | None = None,
) -> Told:
    """Return the sentences that say why nothing is estimated for these readings [cm], or ()."""
    height = known.get("height", SHORT)
    if "height" in confirmed and height < SHORTEST and age is not None and age >= GROWN_AGE:
        return said(
            "The surveys hold no grown body of {}, so nothing is estimated: take every measure.",
            mm(height * 10),
        )
    if whose(known, confirmed, age) is not Whose.CHILD:
        return ()
    if age is not None:
        why, end = said("At {} years a body is still growing", f"{age:g}"), ""
    elif height < SHORT:
        why, end = said("A height of {} is most often a child's", mm(height * 10)), GROWN_SAYS
    else:
        why, end = said("Together these measures are most often a child's"), GROWN_SAYS
    told = said("{}, and there are no estimates for children: take every measure.", why)
    return joined((told, said("{}", end) if end else ()))


GROWN_SAYS = "For a grown person give the age, and what is missing is estimated."
MAYBE_CHILD = (
    "A child may have these measures too, so the ranges reach down to a child's. For a grown "
    "person give the age, and they come nearer; for a child take every measure.",
)
"""What is said where a form may be a child's."""


def _shared(known: Mapping[str, float]) -> dict[str, float]:
    """Return the readings that the children's population holds too."""
    return {key: known[key] for key in children().measures if known.get(key, 0) > 0}


def _fits(body: Given) -> bool:
    """Say whether no reading is odd in this population, alone or beside the others."""
    return all(
        abs(body.z(key)) < HINT and abs(_alone(body.population, key, body.read(key))) < HINT
        for key in body.keys
    )


def _alone(people: Population, key: str, cm: float) -> float:
    """Return how far a reading [cm] is from the population's mean, in spreads."""
    spread = math.sqrt(people.covariance[key][key] + people.error(key))
    return (people.scaled(key, cm) - people.mean[key]) / spread


def _grown(shared: Mapping[str, float]) -> float:
    """The log density among grown people, half of them women, half men."""
    both = [
        given(shared, population(who, WaistSite.NOT_SAID)).log_density()
        for who in (Reference.WOMEN, Reference.MEN)
    ]
    top = max(both)
    return top + math.log(sum(math.exp(one - top) for one in both) / 2)
