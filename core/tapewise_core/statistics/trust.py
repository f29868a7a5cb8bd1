"""Which readings an estimate may lean on."""

from __future__ import annotations

from collections.abc import Mapping

from tapewise_core.statistics.adults import INCH, in_other_unit
from tapewise_core.statistics.doubts import WARNING, worst
from tapewise_core.statistics.given import given
from tapewise_core.statistics.population import Population


def trusted(
    known: Mapping[str, float], confirmed: frozenset[str], people: Population
) -> dict[str, float]:
    """Return the readings [cm] that fit each other, so that estimates lean on no wild value.

    A confirmed reading is kept whatever it is. Of a form in the wrong unit nothing else is.
    """
    form = {key: cm for key, cm in known.items() if key not in confirmed}
    if any(in_other_unit(people, form, factor) for factor in (INCH, 1 / INCH)):
        return {key: cm for key, cm in known.items() if key in confirmed}
    body, wild = given(known, people), set[str]()
    while doubt := worst(body, WARNING):
        wild.add(doubt.key)
        body = doubt.rest
    return {key: cm for key, cm in known.items() if key not in wild - confirmed}
