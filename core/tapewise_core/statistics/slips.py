"""The slips of the hand that can be told from the number they leave."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from enum import StrEnum

from tapewise_core.measures.catalogue import BY_KEY
from tapewise_core.statistics.adults import INCH
from tapewise_core.statistics.doubts import Doubt
from tapewise_core.units import Unit

FITS = 2.5
"""A corrected value has to lie within so many spreads of what the others suggest."""
LIKELIER = math.log(100)
"""And the slip has to explain what was typed so much better than chance does (a logarithm)."""
CLEARLY = math.log(3)
"""The best explanation has to be so much likelier than the next, or neither is named."""
RARER = math.log(20)
"""How much less a swap or a repeat counts, since one of a score of partners fits by chance."""
STEP = 0.5
"""The steps in which a tape is read [cm]."""


class Kind(StrEnum):
    """What the hand did, in a person's words."""

    INCHES = "typed in inches"
    CENTIMETRES = "typed in centimetres"
    HALF = "half the girth"
    DECIMAL = "decimal place slipped"
    DIGITS = "two digits swapped"
    SWAPPED = "two measures swapped"
    TWICE = "entered twice"


@dataclass(frozen=True)
class Slip:
    """One explanation of a doubted value, and the values [cm] that would mend it."""

    kind: Kind
    measures: tuple[str, ...]
    proposed: Mapping[str, float] | None


def explanations(
    doubt: Doubt, known: Mapping[str, float], unit: Unit, fixed: frozenset[str]
) -> tuple[Slip, ...]:
    """Return the slips that explain a doubted reading, none of them clearly less likely.

    Only one that stands alone may be named. ``known`` holds all readings [cm], ``fixed``
    those that are confirmed.
    """
    weighed = [*_single(doubt, known, unit), *_swapped(doubt, known, fixed), *_twice(doubt, known)]
    best = max((gain for gain, _ in weighed), default=-math.inf)
    if best <= LIKELIER:
        return ()
    return tuple(slip for gain, slip in weighed if best - gain < CLEARLY)


Weighed = Iterator[tuple[float, Slip]]
"""Slips, each with the logarithm of how much likelier it is than chance."""


def _single(doubt: Doubt, known: Mapping[str, float], unit: Unit) -> Weighed:
    """Weigh the slips that touch one value only."""
    key = doubt.key
    for kind, cm in _meant(key, known[key], unit):
        yield _gain(doubt, {key: cm}), Slip(kind, (key,), {key: round(cm, 4)})


def _swapped(doubt: Doubt, known: Mapping[str, float], fixed: frozenset[str]) -> Weighed:
    """Weigh an exchange with every other reading of the same kind."""
    key = doubt.key
    for other in _alike(doubt):
        if other not in fixed:
            exchanged = {key: known[other], other: known[key]}
            gain = _gain(doubt, exchanged) - RARER
            yield gain, Slip(Kind.SWAPPED, (key, other), exchanged)


def _twice(doubt: Doubt, known: Mapping[str, float]) -> Weighed:
    """Weigh that a value stands, to the millimetre, at another measure of its kind too.

    Whoever types another measure's value again hits it exactly; by chance a value does so
    only as often as the tape's steps allow.
    """
    alike = _alike(doubt)
    for other in alike:
        if abs(known[other] - known[doubt.key]) < 0.05:
            mean, spread = doubt.body.others(doubt.key)
            people = doubt.body.population
            steps = people.unscaled(doubt.key, mean + spread * doubt.wider)
            steps = (steps - people.unscaled(doubt.key, mean)) / STEP
            gain = doubt.far**2 / 2 + math.log(steps * math.sqrt(2 * math.pi)) - RARER
            yield gain, Slip(Kind.TWICE, (doubt.key, other), None)


def _alike(doubt: Doubt) -> tuple[str, ...]:
    """Return the other readings that are girths where this is one, or lengths."""
    girth = BY_KEY[doubt.key].is_girth
    return tuple(key for key in doubt.rest.keys if BY_KEY[key].is_girth is girth)


def _meant(key: str, cm: float, unit: Unit) -> Iterator[tuple[Kind, float]]:
    """Yield what one value [cm] may have been meant for."""
    yield (Kind.INCHES, cm * INCH) if unit is Unit.CM else (Kind.CENTIMETRES, cm / INCH)
    if BY_KEY[key].is_girth or key == "across_back":
        yield Kind.HALF, cm * 2
    yield Kind.DECIMAL, cm * 10
    yield Kind.DECIMAL, cm / 10
    for swapped in digits_swapped(cm / _size(unit)):
        yield Kind.DIGITS, swapped * _size(unit)


def digits_swapped(number: float) -> Iterator[float]:
    """Yield a number with two neighbours among its whole digits exchanged.

    >>> list(digits_swapped(136.5)), list(digits_swapped(88.0))
    ([316.5, 163.5], [])
    """
    whole = int(number + 1e-6)
    digits = str(whole)
    for i in range(len(digits) - 1):
        swapped = digits[:i] + digits[i + 1] + digits[i] + digits[i + 2 :]
        if swapped != digits and swapped[0] != "0":
            yield int(swapped) + number - whole


def _gain(doubt: Doubt, meant: Mapping[str, float]) -> float:
    """Return the logarithm of how much likelier a body is with other values [cm] in it.

    Minus infinity where one of them would not fit the rest.
    """
    body, people = doubt.body, doubt.body.population
    places = [body.keys.index(key) for key in meant]
    moves = [
        people.scaled(key, cm) - people.mean[key] - body.off[i]
        for i, (key, cm) in zip(places, meant.items(), strict=True)
    ]
    pulls = [
        sum(body.precision[i][j] * move for j, move in zip(places, moves, strict=True))
        for i in places
    ]
    for i, pull in zip(places, pulls, strict=True):
        z = (body.pull[i] + pull) / math.sqrt(body.precision[i][i]) / doubt.wider
        if abs(z) > FITS:
            return -math.inf
    change = sum(
        move * (2 * body.pull[i] + pull) for i, move, pull in zip(places, moves, pulls, strict=True)
    )
    return -change / 2 / doubt.wider**2


def _size(unit: Unit) -> float:
    """Centimetres in one unit."""
    return INCH if unit is Unit.IN else 1.0
