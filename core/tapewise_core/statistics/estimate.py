"""Estimates for measures that were not taken, each with how far off it may be."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from tapewise_core.measures.body import Origin, Reference, Value, WaistSite
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.statistics.given import Given, given
from tapewise_core.statistics.population import Population, population
from tapewise_core.statistics.rules import rule_for
from tapewise_core.units import Unit

HALF_90 = 1.6449
"""Half a 90 % interval in spreads, of a normal distribution."""
ADULT = 140.0
"""Shorter than this [cm], a body is taken for a child's: below nearly every adult in the tables."""


@dataclass(frozen=True, slots=True)
class Estimate:
    """One estimate [cm]: its 90 % interval, what it leans on, and the trade's rule beside it.

    ``rule`` is the rule of thumb's value [cm] and its words, or None.
    """

    key: str
    cm: float
    spread: float
    low: float
    high: float
    drawn_from: tuple[str, ...]
    rule: tuple[float, str] | None

    @property
    def how(self) -> str:
        """What to print beside the value wherever it appears."""
        names = ", ".join(NAMES[key] for key in self.drawn_from)
        return f"estimated from {names or 'what is usual, for nothing near it is known'}"

    @property
    def says(self) -> str:
        """A sentence for a person who reads centimetres."""
        return self.tell(Unit.CM)

    def tell(self, unit: Unit) -> str:
        """Return a sentence for a person."""
        half, middle = unit.number((self.high - self.low) * 5), unit.spell(self.cm * 10)
        said = f"{middle} ± {half}, {self.how}: nine bodies in ten lie within that."
        if self.rule is not None:
            said += f" The trade's rule, {self.rule[1]}, gives {unit.spell(self.rule[0] * 10)}."
        return said

    def as_value(self) -> Value:
        """Return the estimate as a body's value, marked as what it is."""
        return Value(self.cm, Origin.ESTIMATED, (self.low, self.high), self.how)


def refusal(known: Mapping[str, float]) -> str | None:
    """Return the sentence that says why nothing is estimated for this body, or None."""
    height = known.get("height")
    if height is None or height >= ADULT:
        return None
    return (
        f"A height of {height:g} cm is a child's, and nothing here is estimated for children: "
        "measure instead (or, if the height was typed in inches, put that right)."
    )


def estimate(
    known: Mapping[str, float], reference: Reference, waist_site: WaistSite
) -> Mapping[str, Estimate]:
    """Return an estimate for every measure not known [cm], from whatever is known.

    Empty where :func:`refusal` has something to say.
    """
    if refusal(known) is not None:
        return {}
    return estimates_in(population(reference, waist_site), known, waist_site)


def estimates_in(
    people: Population, known: Mapping[str, float], site: WaistSite
) -> dict[str, Estimate]:
    """Return estimates from one population, which need not be a stored one."""
    body = given(known, people)
    wider = body.widening()
    missing = (key for key in people.measures if key not in known)
    return {key: _estimate(body, key, wider, known, site) for key in missing}


def _estimate(
    body: Given, key: str, wider: float, known: Mapping[str, float], site: WaistSite
) -> Estimate:
    mean, spread = body.of(key)
    value, low, high = (
        body.population.unscaled(key, mean + times * spread * wider)
        for times in (0.0, -HALF_90, HALF_90)
    )
    spread = (high - low) / 2 / HALF_90
    rule = rule_for(key, known, site)
    return Estimate(key, value, spread, low, high, body.leaned_on(key), rule)
