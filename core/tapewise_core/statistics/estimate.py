"""Estimates for measures that were not taken, each with how far off it may be."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from tapewise_core.measures.body import Origin, Reference, Value, WaistSite
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.statistics.adults import refusal
from tapewise_core.statistics.given import Given, given
from tapewise_core.statistics.population import SITED, population
from tapewise_core.statistics.rules import rule_of_thumb
from tapewise_core.statistics.trust import trusted
from tapewise_core.units import Unit

HALF_90 = 1.6449
"""Half a 90 % interval in spreads, of a normal distribution."""


@dataclass(frozen=True, slots=True)
class Estimate:
    """One estimate [cm]: its 90 % interval, what it leans on, and the trade's rule beside it.

    ``rule`` is the rule of thumb's value [cm] and its words, or None; ``remark`` holds what
    else is to be said of it, in sentences.
    """

    key: str
    cm: float
    spread: float
    low: float
    high: float
    drawn_from: tuple[str, ...]
    rule: tuple[float, str] | None
    remark: str = ""

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
        return f"{said} {self.remark}".rstrip()

    def as_value(self) -> Value:
        """Return the estimate as a body's value, marked as what it is."""
        return Value(self.cm, Origin.ESTIMATED, (self.low, self.high), self.how)


def estimate(
    known: Mapping[str, float],
    reference: Reference,
    waist_site: WaistSite,
    confirmed: frozenset[str] = frozenset(),
) -> Mapping[str, Estimate]:
    """Return an estimate for every measure of the table that is not known [cm].

    Drawn from whatever is known, in any combination, nothing included; a reading that the
    others contradict so much that it would be warned of is left out unless confirmed. Empty
    where :func:`tapewise_core.statistics.adults.refusal` has something to say.
    """
    if refusal(known, confirmed) is not None:
        return {}
    people = population(reference, waist_site)
    believed = trusted(known, confirmed, people)
    missing = tuple(key for key in people.measures if key not in known)
    body = given(believed, people)
    wider = body.widening()
    return {
        key: replace(
            _estimate(body, key, wider),
            rule=rule_of_thumb(key, believed, reference, waist_site),
            remark=_remark(key, wider, waist_site),
        )
        for key in missing
    }


def _estimate(body: Given, key: str, wider: float) -> Estimate:
    mean, spread = body.of(key)
    value, low, high = (
        body.population.unscaled(key, mean + times * spread * wider)
        for times in (0.0, -HALF_90, HALF_90)
    )
    spread = (high - low) / 2 / HALF_90
    return Estimate(key, value, spread, low, high, body.leaned_on(key), None)


def _remark(key: str, wider: float, site: WaistSite) -> str:
    """Say what makes an estimate wider than it need be, or had to be."""
    said = []
    if key in SITED and site is WaistSite.NOT_SAID:
        said.append("Say how you found the waist, and it comes nearer.")
    if wider > 1:
        said.append("The range is widened, because the data hold few bodies of this size.")
    return " ".join(said)
