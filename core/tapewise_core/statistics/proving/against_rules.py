"""Estimates beside the trade's rules of thumb."""

from __future__ import annotations

import numpy as np

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Reference
from tapewise_core.statistics.proving.coverage import FOUR, Tallies
from tapewise_core.statistics.proving.people import Group
from tapewise_core.statistics.rules import Rule, rules_for


class Compared(Frozen):
    """One measure's mean absolute errors [cm]: the estimate's, and the best rule's.

    ``mended`` is the best rule's error had its constant been right for these people.
    """

    key: str
    estimate: float
    rule: float
    text: str
    bias: float
    mended: float


def compared(group: Group, sex: str, tallies: Tallies) -> list[Compared]:
    """Return each measure that a rule gives from height, bust, waist and hip.

    The waist is midway, as the rules mean it, and what a rule is worked out from is the
    person's own measure.
    """
    rows = []
    for key, tally in tallies.items():
        rules = rules_for(key, dict.fromkeys(FOUR, 100.0), Reference(sex))
        misses = [(rule, _misses(group, rule)) for rule in rules]
        if misses:
            rule, miss = min(misses, key=lambda pair: float(np.mean(np.abs(pair[1]))))
            mended = min(float(np.mean(np.abs(m - np.median(m)))) for _, m in misses)
            told, bias = float(np.mean(np.abs(miss))), float(np.mean(miss))
            rows.append(Compared(key, tally.mean_error(), told, rule.text, bias, mended))
    return rows


def _misses(group: Group, rule: Rule) -> np.ndarray:
    """Return by how much a rule is too large [cm] for everybody."""
    everybody = map(group.true, range(len(group)))
    return np.array([rule.value(true) - true[rule.key] for true in everybody])
