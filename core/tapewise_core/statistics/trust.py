"""Which readings an estimate may lean on."""

from __future__ import annotations

from collections.abc import Mapping

from tapewise_core.statistics.doubts import WARNING, worst
from tapewise_core.statistics.given import given
from tapewise_core.statistics.population import Population
from tapewise_core.statistics.whole import whole_form
from tapewise_core.units import Unit


def trusted(
    known: Mapping[str, float], confirmed: frozenset[str], people: Population
) -> dict[str, float]:
    """Return the readings [cm] that fit each other, so that estimates lean on no wild value.

    A confirmed reading is kept whatever it is. Of what was typed in the wrong unit as a whole
    nothing else is.
    """
    for unit in Unit:
        whole = whole_form(people, known, confirmed, unit)
        if whole is not None:
            return {key: cm for key, cm in known.items() if key not in whole.keys}
    body, wild = given(known, people), set[str]()
    while doubt := worst(body, WARNING):
        wild.add(doubt.key)
        body = doubt.rest
    return {key: cm for key, cm in known.items() if key not in wild - confirmed}
