"""Every value judged given the others: quietly, loudly, never blocking."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.measures.finding import Finding, Severity
from tapewise_core.measures.plausible import contradictions, out_of_range
from tapewise_core.statistics.adults import INCH, in_other_unit, refusal
from tapewise_core.statistics.doubts import HINT, WARNING, Doubt, again, worst
from tapewise_core.statistics.given import Given, given
from tapewise_core.statistics.population import Population, population
from tapewise_core.statistics.slips import Kind, Slip, explanations
from tapewise_core.units import Unit

Slips = tuple[Slip, ...]

ASKED = {
    Kind.INCHES: "Was it typed in inches?",
    Kind.CENTIMETRES: "Was it typed in centimetres?",
    Kind.HALF: "Is it half of the way round?",
    Kind.DECIMAL: "Did the decimal place slip?",
    Kind.DIGITS: "Were two digits swapped?",
}
"""What a person is asked of a slip in one value."""

USUAL = 1.4
"""Nearer than so many spreads to what the others suggest, a value is usual (practice)."""


def judge(
    known: Mapping[str, float],
    confirmed: frozenset[str],
    reference: Reference,
    waist_site: WaistSite,
    unit: Unit,
) -> tuple[Finding, ...]:
    """Return what a person should look at among the readings [cm].

    A confirmed reading stays quiet. ``unit`` is what the person types in, and so what a
    slip of the hand is looked for in. A body that is too small for the model is not judged;
    one hint says so.
    """
    refused = refusal(known, confirmed)
    if refused is not None:
        return (Finding(("height",), Severity.HINT, refused),)
    return findings_in(population(reference, waist_site), known, confirmed, unit)


def findings_in(
    people: Population, known: Mapping[str, float], confirmed: frozenset[str], unit: Unit
) -> tuple[Finding, ...]:
    """Judge readings [cm] by one population, which need not be a stored one."""
    whole = _whole_form(people, known, confirmed, unit)
    if whole is not None:
        return (whole,)
    body = given(known, people)
    doubted = tuple(_one_by_one(body, known, confirmed, unit))
    silent = confirmed.union(*(finding.measures for finding in doubted))
    return (*doubted, *_contradicting(body, known, silent, unit))


def _one_by_one(
    body: Given, known: Mapping[str, float], confirmed: frozenset[str], unit: Unit
) -> Iterator[Finding]:
    """Set aside the worst reading until the rest agree, then judge each of those by the rest."""
    doubted: list[tuple[Doubt, Slips]] = []
    while doubt := worst(body, HINT):
        body = doubt.rest
        if doubt.key not in confirmed:
            slips = explanations(doubt, known, unit, confirmed)
            for partner in _partners(slips, body):
                body = body.without(partner)
            doubted.append((doubt, slips))
    for doubt, slips in doubted:
        if len(doubted) > 1 and not _partners(slips, doubt.rest):
            doubt = again(doubt.key, known, body)
            slips = explanations(doubt, known, unit, confirmed)
        if abs(doubt.z) >= HINT:
            yield _finding(doubt, known[doubt.key], slips, unit)


def _partners(slips: Slips, body: Given) -> tuple[str, ...]:
    """Return the other readings of a body that the only explanation says are wrong too."""
    proposed = slips[0].proposed or {} if len(slips) == 1 else {}
    return tuple(key for key in proposed if key in body.keys)


def _finding(doubt: Doubt, cm: float, slips: Slips, unit: Unit) -> Finding:
    """Name the slip if one explanation stands alone; otherwise only mention what it may be."""
    slip = slips[0] if len(slips) == 1 else None
    asked = _explains(slip, unit) if slip else _mentions(slips)
    return Finding(
        measures=slip.measures if slip else (doubt.key,),
        severity=Severity.WARNING if abs(doubt.z) >= WARNING else Severity.HINT,
        says=_says(doubt, cm, unit) + asked,
        z=round(doubt.z, 2),
        slip=slip.kind.value if slip else None,
        proposed=slip.proposed if slip else None,
    )


def _says(doubt: Doubt, cm: float, unit: Unit) -> str:
    mean, spread = doubt.body.others(doubt.key)
    half = 1.6449 * spread * doubt.wider
    low, high = (
        doubt.body.population.unscaled(doubt.key, mean + side * half) * 10 for side in (-1, 1)
    )
    name, grounds = NAMES[doubt.key], "the other measures suggest"
    if not doubt.rest.keys:
        grounds = "most people have"
    return (
        f"{name.capitalize()} {unit.spell(cm * 10)}: {grounds} "
        f"{unit.number(low)} to {unit.spell(high)}."
    )


def _explains(slip: Slip, unit: Unit) -> str:
    """Return the question that names a slip."""
    meant = [unit.spell(cm * 10) for cm in (slip.proposed or {}).values()]
    names = [NAMES[key] for key in slip.measures]
    if slip.kind is Kind.SWAPPED:
        return f" Were {names[0]} and {names[1]} swapped? Then they are {meant[0]} and {meant[1]}."
    if slip.kind is Kind.TWICE:
        return f" The same stands at {names[1]}: was one entered twice? Measure it again."
    return f" {ASKED[slip.kind]} Then it is {meant[0]}."


def _mentions(slips: Slips) -> str:
    """Return the advice where no slip, or more than one, explains a value."""
    kinds = " or ".join(dict.fromkeys(slip.kind.value for slip in slips))
    return f" It may be {kinds}; measure it again." if kinds else " Measure it again."


def _whole_form(
    people: Population, known: Mapping[str, float], confirmed: frozenset[str], unit: Unit
) -> Finding | None:
    """Return the finding that a whole form is in the other unit, or None."""
    form = {key: cm for key, cm in known.items() if key not in confirmed}
    kind, factor = (Kind.INCHES, INCH) if unit is Unit.CM else (Kind.CENTIMETRES, 1 / INCH)
    if not in_other_unit(people, form, factor):
        return None
    return Finding(
        measures=tuple(form),
        severity=Severity.WARNING,
        says=(
            f"All values look as if they had been {kind.value}: taken so, they make a "
            f"likely body, and as {unit.value} they do not. Take them all so?"
        ),
        slip=f"whole form {kind.value}",
        proposed={key: round(cm * factor, 4) for key, cm in form.items()},
    )


def _contradicting(
    body: Given, known: Mapping[str, float], silent: frozenset[str], unit: Unit
) -> Iterator[Finding]:
    """Yield what no adult has and what can't go together, once for each measure.

    A confirmed value stays quiet, and so does what it is compared with. So does a mere hint
    when the model finds all of its measures usual beside the others, as a waist larger than
    the hip is on a full man.
    """
    said = set(silent)
    for finding in (*out_of_range(known), *contradictions(known)):
        is_usual = all(abs(body.z(key)) < USUAL for key in finding.measures if key in body.keys)
        if said.isdisjoint(finding.measures) and not (
            finding.severity is Severity.HINT and is_usual
        ):
            said.update(finding.measures)
            yield finding
