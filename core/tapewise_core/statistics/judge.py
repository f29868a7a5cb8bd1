"""Every value judged given the others: quietly, loudly, never blocking."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping

from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.measures.finding import Finding, Severity
from tapewise_core.measures.plausible import contradictions, out_of_range
from tapewise_core.statistics.doubts import HINT, WARNING, Doubt, again, doubt_of, worst
from tapewise_core.statistics.exchange import best_exchange
from tapewise_core.statistics.given import Given, given
from tapewise_core.statistics.kinds import Kind
from tapewise_core.statistics.population import Population, children, population
from tapewise_core.statistics.remarks import remark, remark_on_form, remark_on_pair
from tapewise_core.statistics.slips import FITS, Explained, Slip, explained
from tapewise_core.statistics.whole import Whole, whole_form
from tapewise_core.statistics.whose import MAYBE_CHILD, Whose, refusal, whose
from tapewise_core.text.told import Told
from tapewise_core.units import Unit

USUAL = 1.4
"""Nearer than so many spreads to what the others suggest, a value is usual (practice)."""
PAIR_HINT, PAIR_WARNING = 1.5, 3.2
"""From how many times likelier in each other's place, the price of partners paid, two readings
are remarked on, and warned of (tried on the fitted halves)."""


def judge(
    known: Mapping[str, float],
    confirmed: frozenset[str],
    reference: Reference,
    waist_site: WaistSite,
    unit: Unit,
    age: float | None = None,
) -> tuple[Finding, ...]:
    """Return what a person should look at among the readings [cm].

    A confirmed reading stays quiet. ``unit`` is what the person types in, and so what a
    slip of the hand is looked for in. A child is judged by children, in what these were
    measured for, and unless an age [years] says that it is one, a hint does; where a form may
    be a child's a hint says that too, and only slips with a name are told.
    """
    who, refused = whose(known, confirmed, age), refusal(known, confirmed, age)
    found = _of_child(known, confirmed, unit) if who is Whose.CHILD else ()
    if refused:
        told = () if who is Whose.CHILD and age is not None else refused
        return (*found, *_hint(next(iter(known), "height"), confirmed, told))
    found = findings_in(population(reference, waist_site, age), known, confirmed, unit)
    if who is not Whose.PERHAPS:
        return found
    first = "height" if "height" in known else next(iter(known))
    named = tuple(one for one in found if one.slip)
    return (*named, *_hint(first, confirmed, MAYBE_CHILD))


def _hint(key: str, confirmed: frozenset[str], says: Told) -> tuple[Finding, ...]:
    """What is said of the whole person, beside one reading; with that confirmed it was read."""
    return () if key in confirmed or not says else (Finding((key,), Severity.HINT, says),)


def _of_child(
    known: Mapping[str, float], confirmed: frozenset[str], unit: Unit
) -> tuple[Finding, ...]:
    """Judge a child's readings [cm] by those of children.

    Of honest forms of five measures one in forty has a remark, of eight one in thirty, and
    every tenth or tenfold value is found (children of [snyder] that were not fitted).
    """
    people = children()
    held = {key: known[key] for key in people.measures if key in known}
    return tuple(_one_by_one(given(held, people), held, confirmed, unit))


def findings_in(
    people: Population, known: Mapping[str, float], confirmed: frozenset[str], unit: Unit
) -> tuple[Finding, ...]:
    """Judge readings [cm] by one population, which need not be a stored one."""
    whole = whole_form(people, known, confirmed, unit)
    found = () if whole is None else (_of_form(whole),)
    left = {key: cm for key, cm in known.items() if whole is None or key not in whole.keys}
    body = given(left, people)
    doubted = tuple(_one_by_one(body, left, confirmed, unit))
    silent = confirmed.union(*(finding.measures for finding in doubted))
    return (*found, *doubted, *_contradicting(body, left, silent))


def _of_form(whole: Whole) -> Finding:
    kind = whole.kinds[0].value if len(whole.kinds) == 1 else None
    slip = kind and (f"whole form {kind}" if whole.is_all else f"several values {kind}")
    return Finding(whole.keys, Severity.WARNING, remark_on_form(whole), slip=slip,
                   proposed=whole.proposed)  # fmt: skip


def _one_by_one(
    body: Given, known: Mapping[str, float], confirmed: frozenset[str], unit: Unit
) -> Iterator[Finding]:
    """Set aside the worst reading until the rest agree, then judge each of those by the rest.

    Two readings that fit each other's place are set aside together first.
    """
    doubted: list[tuple[Doubt, Explained]] = []
    while True:
        doubt = worst(body, HINT)
        pair = _exchange(body, doubt, known, confirmed, unit)
        if pair is not None:
            yield pair
            for key in pair.measures:
                body = body.without(key)
            continue
        if doubt is None:
            break
        body = doubt.rest
        if doubt.key not in confirmed:
            doubted.append((doubt, explained(doubt, known, unit, confirmed)))
    for doubt, found in doubted:
        if len(doubted) > 1:
            doubt = again(doubt.key, known, body)
            found = explained(doubt, known, unit, confirmed)
        if abs(doubt.z) >= HINT:
            yield _finding(doubt, known[doubt.key], found)


def _exchange(
    body: Given,
    worst_one: Doubt | None,
    known: Mapping[str, float],
    confirmed: frozenset[str],
    unit: Unit,
) -> Finding | None:
    """Return the finding that two readings fit each other's place, if they do clearly.

    Where one reading is odd, it is one of the two, and nothing else explains it as well.
    """
    gain, keys = best_exchange(body, confirmed, FITS)
    if keys is None or gain < math.log(PAIR_HINT):
        return None
    if worst_one and worst_one.key not in keys:
        return None
    doubt = worst_one or doubt_of(body, max(keys, key=lambda key: abs(body.z(key))))
    found = explained(doubt, known, unit, confirmed)
    slip = found.slip if found.slip and set(found.slip.measures) == set(keys) else None
    if slip is None and worst_one and found.perhaps != (Kind.SWAPPED,):
        return None
    loud = gain >= math.log(PAIR_WARNING) or abs(doubt.z) >= WARNING
    return Finding(
        measures=keys,
        severity=Severity.WARNING if loud else Severity.HINT,
        says=remark_on_pair(slip, keys, known, body.without(keys[0]).without(keys[1])),
        z=round(doubt.z, 2),
        slip=slip.kind.value if slip else None,
        proposed=slip.proposed if slip else None,
    )


def _finding(doubt: Doubt, cm: float, found: Explained) -> Finding:
    """Name the slip if one explanation stands alone; otherwise only ask what it may be."""
    slip: Slip | None = found.slip
    return Finding(
        measures=slip.measures if slip else (doubt.key,),
        severity=Severity.WARNING if abs(doubt.z) >= WARNING else Severity.HINT,
        says=remark(doubt, cm, found),
        z=round(doubt.z, 2),
        slip=slip.kind.value if slip else None,
        proposed=slip.proposed if slip else None,
    )


def _contradicting(
    body: Given, known: Mapping[str, float], silent: frozenset[str]
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
