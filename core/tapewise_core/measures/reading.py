"""What a person reads off the tape: from the text typed to one settled value."""

from __future__ import annotations

import math
from collections.abc import Sequence
from enum import StrEnum
from itertools import pairwise

from tapewise_core.errors import ReadingError
from tapewise_core.measures.measure import Measure
from tapewise_core.text.amounts import Span
from tapewise_core.text.told import said
from tapewise_core.text.typed import parse_length
from tapewise_core.units import Unit, mm

LARGEST = 300.0
"""The largest length taken for a body's [cm]; whatever is above is a slip, not a person."""

SMALLEST = 0.1
"""A value below this share of the least that is believable is no reading of that measure."""

_GRAIN = 1e-6
"""Below what any tape shows [cm], so that 93.5 and 92.0 differ by 1.5 and no more."""


class Agreement(StrEnum):
    """What to do after the readings so far."""

    ONE = "one reading only"
    AGREE = "the readings agree"
    AGAIN = "read it once more"
    THIRD = "a third reading is due"


def read(text: str, measure: Measure, unit: Unit) -> float:
    """Return what was typed for a measure [cm]; a bare number is in ``unit``.

    Raises ReadingError with one sentence that names the measure, for what is
    no length, less than a tenth of what is believable, or above 300 cm. An unlikely value passes.

    >>> from tapewise_core.measures.catalogue import measure
    >>> read("36 1/4", measure("bust"), Unit.IN)
    92.075
    """
    name = measure.name.capitalize()
    cm = parse_length(text, unit, of=name) / 10
    if not (math.isfinite(cm) and measure.low * SMALLEST < cm <= LARGEST):
        usual = Span(measure.low * 10, measure.high * 10)
        template = "{}: {} cannot be; it is usually {}."
        raise ReadingError(said(template, name, mm(cm * 10), usual))
    return round(cm, 6)


def compare_readings(measure: Measure, readings: Sequence[float]) -> Agreement:
    """Say whether readings [cm] of one measure settle it.

    The two that lie nearest each other count, so that a third reading can
    overrule one that was a slip.

    >>> from tapewise_core.measures.catalogue import measure
    >>> [compare_readings(measure("hip"), pair).name for pair in ((98, 99.5), (98, 100), (98, 104))]
    ['AGREE', 'AGAIN', 'THIRD']
    """
    if len(readings) < 2:
        return Agreement.ONE
    gap = min(high - low for low, high in pairwise(sorted(readings)))
    if gap <= measure.agree + _GRAIN:
        return Agreement.AGREE
    return Agreement.AGAIN if gap <= measure.third + _GRAIN else Agreement.THIRD


def settled(readings: Sequence[float]) -> float:
    """Return the value [cm] that stands: the mean of two readings, the median of three.

    Raises ReadingError if there is none.

    >>> settled([98.0, 99.0]), settled([98.0, 104.0, 98.4])
    (98.5, 98.4)
    """
    if not readings:
        raise ReadingError("There is no reading yet; measure once and type what the tape shows.")
    from statistics import median  # only where something is measured

    return median(readings)
