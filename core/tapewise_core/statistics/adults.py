"""Whom the model is for: grown people, measured in one unit."""

from __future__ import annotations

import math
from collections.abc import Mapping

from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.statistics.doubts import WARNING
from tapewise_core.statistics.population import Population, population

ADULT = 140.0
"""Shorter than this [cm] a body is taken for a child's: 2 in 1,000 women of the survey are."""
TALLEST_INCHES = 84.0
"""A height up to this number may be a grown person's in inches; from 55 on, which is 140 cm."""
SMALL = -2.0
"""Beside a small height, other measures so many spreads below the mean are a child's too."""
INCH = 2.54
"""Centimetres."""
MOST = 0.75
"""A whole form is taken to be in the wrong unit if that explains so much of it."""


def refusal(known: Mapping[str, float], confirmed: frozenset[str] = frozenset()) -> str | None:
    """Return the sentence that says why nothing is estimated for these readings [cm], or None.

    A small height among a grown person's other measures is a slip, unless it was confirmed.
    """
    height = known.get("height", ADULT)
    people = population(Reference.NOT_SAID, WaistSite.NOT_SAID)
    if height >= ADULT or not ("height" in confirmed or _child(known, people)):
        return None
    return (
        f"A height of {height:g} cm is a child's or shorter than nearly all adults in the data; "
        "bodies of that height are built otherwise, so nothing is estimated: measure instead."
    )


def in_other_unit(people: Population, known: Mapping[str, float], factor: float) -> bool:
    """Say whether nearly all readings [cm] become believable once multiplied by a factor."""
    keys = [key for key in people.measures if key in known]
    explained = [key for key in keys if _better(people, key, known[key], known[key] * factor)]
    return len(keys) > 1 and len(explained) >= MOST * len(keys)


def _child(known: Mapping[str, float], people: Population) -> bool:
    keys = [key for key in people.measures if key in known and key != "height"]
    if not keys:
        return not ADULT / INCH <= known["height"] <= TALLEST_INCHES
    mean = sum(_distance(people, key, known[key]) for key in keys) / len(keys)
    return mean < SMALL and not in_other_unit(people, known, INCH)


def _better(people: Population, key: str, typed: float, meant: float) -> bool:
    """Say whether one value [cm] is believable as meant, and much less so as typed."""
    far, near = (abs(_distance(people, key, cm)) for cm in (typed, meant))
    return near < WARNING and far > near + 1


def _distance(people: Population, key: str, cm: float) -> float:
    """Return how far a reading is from the population's mean, in spreads."""
    spread = math.sqrt(people.covariance[key][key] + people.error(key))
    return (people.scaled(key, cm) - people.mean[key]) / spread
