"""Estimates for measures that were not taken, each with how far off it may be."""

from __future__ import annotations

from collections.abc import Collection, Mapping

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Origin, Reference, Value, WaistSite
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.statistics.given import Given, given
from tapewise_core.statistics.population import SITED, children, population
from tapewise_core.statistics.remarks import HALF_90
from tapewise_core.statistics.rules import rule_of_thumb
from tapewise_core.statistics.trust import trusted
from tapewise_core.statistics.whose import Whose, refusal, whose
from tapewise_core.text.told import Told, joined, said
from tapewise_core.units import mm

CHILD_WIDER = 1.5
"""Where a form may be a child's, what children were not measured for is so much wider (our
choice)."""


class Estimate(Frozen):
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
    remark: Told = ()

    @property
    def how(self) -> str:
        """What to print beside the value wherever it appears."""
        names = ", ".join(NAMES[key] for key in self.drawn_from)
        return f"estimated from {names or 'what is usual, for nothing near it is known'}"

    @property
    def says(self) -> Told:
        """The sentences for a person."""
        half, middle = mm((self.high - self.low) * 5), mm(self.cm * 10)
        told = said("{} ± {}, {}: nine bodies in ten lie within that.", middle, half, self.how)
        rule: Told = ()
        if self.rule is not None:
            rule = said("The trade's rule, {}, gives {}.", self.rule[1], mm(self.rule[0] * 10))
        return joined((told, rule, self.remark))

    def as_value(self) -> Value:
        """Return the estimate as a body's value, marked as what it is."""
        return Value(self.cm, Origin.ESTIMATED, (self.low, self.high), self.how)


def estimate(
    known: Mapping[str, float],
    reference: Reference,
    waist_site: WaistSite,
    confirmed: frozenset[str] = frozenset(),
    age: float | None = None,
    keys: Collection[str] | None = None,
) -> Mapping[str, Estimate]:
    """Return an estimate for every measure that the surveys hold and that is not known [cm], or
    for those alone that are among some ``keys``.

    Drawn from whatever is known, in any combination, nothing included, and from an age
    [years]; a reading that the others contradict so much that it would be warned of is left
    out unless confirmed. Empty where :func:`tapewise_core.statistics.whose.refusal` has
    something to say.
    """
    if refusal(known, confirmed, age):
        return {}
    who = whose(known, confirmed, age)
    people = population(reference, waist_site, age)
    unknown = [key for key in people.measures if key not in known]
    missing = [key for key in unknown if keys is None or key in keys]
    if not missing:
        return {}
    believed = trusted(known, confirmed, people)
    body = believed.body
    wider = body.widening() * (CHILD_WIDER if who is Whose.PERHAPS else 1.0)
    found = {
        key: replace(
            _estimate(body, key, wider),
            rule=rule_of_thumb(key, believed.readings, reference, waist_site),
            remark=_remark(key, wider, waist_site),
        )
        for key in missing
    }
    return found if who is Whose.GROWN else _down_to_children(found, believed.readings)


def _down_to_children(
    found: Mapping[str, Estimate], known: Mapping[str, float]
) -> dict[str, Estimate]:
    """Let intervals reach down to where a child's of these readings would begin."""
    young = given(known, children())
    lower = {}
    for key, one in found.items():
        low = one.low
        if key in young.population.keys:
            mean, spread = young.of(key)
            low = min(low, young.population.unscaled(key, mean - HALF_90 * spread))
        lower[key] = replace(one, low=low, spread=(one.high - low) / 2 / HALF_90)
    return lower


def _estimate(body: Given, key: str, wider: float) -> Estimate:
    mean, spread, leaned_on = body.estimated(key)
    value, low, high = (
        body.population.unscaled(key, mean + times * spread * wider)
        for times in (0.0, -HALF_90, HALF_90)
    )
    spread = (high - low) / 2 / HALF_90
    return Estimate(key, value, spread, low, high, leaned_on, None)


def _remark(key: str, wider: float, site: WaistSite) -> Told:
    """Say what makes an estimate wider than it need be, or had to be."""
    told = []
    if key in SITED and site is WaistSite.NOT_SAID:
        told.append(said("Say how you found the waist, and it comes nearer."))
    if wider > 1:
        told.append(said("The range is widened, because the data hold few bodies of this size."))
    return joined(told)
