"""What an estimate does to a garment, and which missing measure is worth taking first."""

from __future__ import annotations

import math
from collections.abc import Mapping

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.statistics.given import Given, given
from tapewise_core.statistics.population import population
from tapewise_core.statistics.remarks import HALF_90
from tapewise_core.statistics.trust import trusted
from tapewise_core.statistics.whose import refusal
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm


class Worth(Frozen):
    """What taking one missing measure would do for a garment.

    Without it the garment's line that follows it is uncertain by ± ``now`` [cm, 90 %]; once it
    has been taken, by ± ``then``, which is what measuring at home leaves. ``gain`` [cm] is how
    much nearer all lines of the garment come together (root of the sum of squares).
    """

    key: str
    gain: float
    now: float
    then: float

    @property
    def says(self) -> Told:
        """The sentence for a person."""
        return said(
            "Measuring the {} brings the line that follows it from ± {} to ± {}.",
            NAMES[self.key], mm(self.now * 10), mm(self.then * 10),
        )  # fmt: skip


def worth(
    known: Mapping[str, float],
    needs: Mapping[str, float],
    reference: Reference,
    waist_site: WaistSite,
    confirmed: frozenset[str] = frozenset(),
    age: float | None = None,
) -> tuple[Worth, ...]:
    """Return the missing measures of a garment, the one most worth taking first.

    ``known`` holds what was measured [cm]; ``needs`` says by how many cm a garment moves for
    each cm of a measure. Empty if nothing is missing or nothing can be estimated.
    """
    if refusal(known, confirmed, age):
        return ()
    people = population(reference, waist_site, age)
    body = trusted(known, confirmed, people).body
    missing = {
        key: moves
        for key, moves in needs.items()
        if key in people.measures and key not in known and moves
    }
    now = _spreads(body, missing)
    ranked = (_worth(body, key, missing, now) for key in missing)
    return tuple(sorted(ranked, key=lambda one: -one.gain))


def moves(halves: Mapping[str, float], needs: Mapping[str, float]) -> dict[str, float]:
    """Return by how many cm either way a garment may be off for each measure estimated.

    ``halves`` holds each estimate's half interval [cm], such as ``Value.plus_minus``.

    >>> moves({"hip_depth": 3.0, "wrist": 1.0}, {"hip_depth": 1.0})
    {'hip_depth': 3.0}
    """
    return {key: half * abs(needs[key]) for key, half in halves.items() if needs.get(key)}


def _worth(body: Given, key: str, needs: Mapping[str, float], now: Mapping[str, float]) -> Worth:
    """Take the measure as its own estimate has it: only the spreads matter."""
    taken = _with(body, key)
    after = _spreads(taken, {other: cm for other, cm in needs.items() if other != key})
    after[key] = _home(body, key) * abs(needs[key])
    return Worth(key, _together(now) - _together(after), now[key], after[key])


def _with(body: Given, key: str) -> Given:
    people = body.population
    values = {
        name: people.unscaled(name, people.mean[name] + off)
        for name, off in zip(body.keys, body.off, strict=True)
    }
    return given(values | {key: people.unscaled(key, body.of(key)[0])}, people)


def _spreads(body: Given, needs: Mapping[str, float]) -> dict[str, float]:
    """Return how uncertain a garment's lines are [± cm, 90 %], by the measure each follows."""
    wider = body.widening()
    return {key: _half(body, key, wider) * abs(times) for key, times in needs.items()}


def _half(body: Given, key: str, wider: float) -> float:
    mean, spread = body.of(key)
    low, high = (
        body.population.unscaled(key, mean + side * HALF_90 * spread * wider) for side in (-1, 1)
    )
    return (high - low) / 2


def _home(body: Given, key: str) -> float:
    """Half the 90 % interval [cm] that one reading at home leaves."""
    people = body.population
    slope = people.scale(key).slope(people.unscaled(key, body.of(key)[0]))
    return HALF_90 * people.home[key] / slope


def _together(spreads: Mapping[str, float]) -> float:
    return math.sqrt(sum(spread**2 for spread in spreads.values()))
