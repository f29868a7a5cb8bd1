"""What is caught, what it is called, and whom it accuses."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from tapewise_core.measures.catalogue import BY_KEY
from tapewise_core.measures.finding import Finding, Severity
from tapewise_core.statistics.judge import findings_in
from tapewise_core.statistics.kinds import Kind
from tapewise_core.statistics.population import Population
from tapewise_core.statistics.proving.mishaps import MISHAPS, Mishap
from tapewise_core.statistics.proving.people import Form
from tapewise_core.units import Unit


@dataclass
class Caught:
    """Counts over many forms with one kind of slip."""

    forms: int = 0
    hinted: int = 0
    warned: int = 0
    by_range: int = 0
    others: int = 0
    right: int = 0
    wrong: int = 0

    def add(self, mishap: Mishap, honest: Form, findings: tuple[Finding, ...]) -> None:
        """Count one form: caught at all, with a warning, by a fixed range; others accused.

        Named right is a name for what happened, with the values that were read; named wrong is
        a form with any other name or number on it. Of a mistyped digit it may be asked, without
        a number, whether one is missing.
        """
        touching = [one for one in findings if set(one.measures) & set(mishap.wrong)]
        self.forms += 1
        self.hinted += bool(touching)
        self.warned += _warns(touching)
        self.by_range += any(_out_of_range(key, mishap.form[key]) for key in mishap.wrong)
        self.others += _warns([one for one in findings if one not in touching])
        named = [one for one in findings if one.slip is not None]
        right = [one for one in named if one in touching and _right(one, mishap, honest)]
        self.right += bool(right)
        self.wrong += any(one not in right and not _only_asks(one, mishap) for one in named)

    def share(self, name: str) -> float:
        """Return one count in 100 forms."""
        return 100 * float(getattr(self, name)) / self.forms if self.forms else float("nan")


@dataclass
class Honest:
    """Counts over many forms with nothing wrong but the scatter of home measuring."""

    forms: int = 0
    hinted: int = 0
    warned: int = 0
    named: int = 0
    inches: int = 0

    def add(self, findings: tuple[Finding, ...], in_inches: tuple[Finding, ...]) -> None:
        """Count one form, and the same form typed in inches throughout."""
        self.forms += 1
        self.hinted += bool(findings)
        self.warned += _warns(findings)
        self.named += any(one.slip for one in findings)
        self.inches += bool(in_inches and str(in_inches[0].slip).startswith("whole form"))

    def share(self, name: str) -> float:
        """Return one count in 100 forms."""
        return 100 * float(getattr(self, name)) / self.forms if self.forms else float("nan")


def judged_honest(people: Population, forms: list[Form]) -> Honest:
    """Judge honest forms, and each again in inches."""
    honest = Honest()
    for form in forms:
        inches = {key: cm / 2.54 for key, cm in form.items()}
        honest.add(judged(people, form), judged(people, inches))
    return honest


def judged_mishaps(
    people: Population, forms: list[Form], names: tuple[str, ...] = tuple(MISHAPS), seed: int = 5
) -> dict[str, Caught]:
    """Judge each form once with each kind of slip in it."""
    rng, counts = np.random.default_rng(seed), {name: Caught() for name in names}
    for form in forms:
        for name in names:
            mishap = MISHAPS[name](form, rng)
            if mishap is not None:
                counts[name].add(mishap, form, judged(people, mishap.form))
    return {name: count for name, count in counts.items() if count.forms}


def judged(people: Population, form: Form) -> tuple[Finding, ...]:
    """Judge one form of a person who types centimetres."""
    return findings_in(people, form, frozenset(), Unit.CM)


def _only_asks(finding: Finding, mishap: Mishap) -> bool:
    return mishap.kind is Kind.MISTYPED and finding.slip == Kind.MISSING.value


def _right(finding: Finding, mishap: Mishap, honest: Form) -> bool:
    """Say whether the slip is called what it was, and mended to what was read."""
    meant = (finding.proposed or {}).items()
    called = mishap.kind is not None and finding.slip == mishap.kind.value
    return called and all(abs(honest[key] - cm) < 0.4 for key, cm in meant)


def _warns(findings: list[Finding] | tuple[Finding, ...]) -> bool:
    return any(one.severity is Severity.WARNING for one in findings)


def _out_of_range(key: str, cm: float) -> bool:
    return not BY_KEY[key].low <= cm <= BY_KEY[key].high
