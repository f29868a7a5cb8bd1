"""Which readings an estimate may lean on."""

from __future__ import annotations

from collections.abc import Collection, Mapping

from tapewise_core.frozen import Frozen
from tapewise_core.statistics.doubts import WARNING, worst
from tapewise_core.statistics.given import Given, given
from tapewise_core.statistics.population import Population
from tapewise_core.statistics.whole import whole_form
from tapewise_core.units import Unit


class Trusted(Frozen):
    """Readings [cm] that an estimate may lean on, and the body as they show it."""

    readings: Mapping[str, float]
    body: Given


def trusted(known: Mapping[str, float], confirmed: frozenset[str], people: Population) -> Trusted:
    """Return the readings [cm] that fit each other, so that estimates lean on no wild value.

    A confirmed reading is kept whatever it is. Of what was typed in the wrong unit as a whole
    nothing else is.
    """
    for unit in Unit:
        whole = whole_form(people, known, confirmed, unit)
        if whole is not None:
            return _without(frozenset(whole.keys), known, people)
    all_of_it = body = given(known, people)
    wild = set[str]()
    while doubt := worst(body, WARNING):
        wild.add(doubt.key)
        body = doubt.rest
    left_out = wild - confirmed
    return _without(left_out, known, people) if left_out else Trusted(known, all_of_it)


def _without(left_out: Collection[str], known: Mapping[str, float], people: Population) -> Trusted:
    kept = {key: cm for key, cm in known.items() if key not in left_out}
    return Trusted(kept, given(kept, people))
