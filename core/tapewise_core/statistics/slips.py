"""The slips of the hand that can be told from the number they leave."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping

from tapewise_core.frozen import Frozen
from tapewise_core.measures.catalogue import BY_KEY
from tapewise_core.statistics.digits import mistyped_from, short_of_a_digit, swapped
from tapewise_core.statistics.doubts import Doubt, normal
from tapewise_core.statistics.exchange import alike, gain, share_of
from tapewise_core.statistics.kinds import PRIOR, UNNAMED, Kind
from tapewise_core.units import Unit

INCH = 2.54
"""Centimetres."""
FITS = 2.5
"""A corrected value has to lie within so many spreads of what the others suggest."""
LIKELIER = 20.0
"""A slip is named only if it is so many times likelier than everything else together."""
MENTIONED = 0.1
"""What has at least this share of the likelihood is mentioned where nothing is named."""
STEP = 0.5
"""The steps in which a tape is read [cm]."""
INCH_STEP = INCH / 4
"""The same where it shows inches."""
WIDE = math.log(1000)
"""Anything may have been typed, over so many powers of e."""
LARGEST_EXPONENT = 100.0
"""More is no likelier for any purpose, and would overflow."""


class Slip(Frozen):
    """One explanation of a doubted value, and the values [cm] that would mend it."""

    kind: Kind
    measures: tuple[str, ...]
    proposed: Mapping[str, float] | None


class Explained(Frozen):
    """What is behind a doubted value: the slip that stands alone, or the kinds that may be."""

    slip: Slip | None = None
    perhaps: tuple[Kind, ...] = ()


def explained(
    doubt: Doubt, known: Mapping[str, float], unit: Unit, fixed: frozenset[str]
) -> Explained:
    """Weigh every slip against all others, chance and honesty included.

    ``known`` holds all readings [cm], ``fixed`` those that are confirmed.
    """
    weighed = [*_single(doubt, known, unit), *_exchanged(doubt, known, fixed),
               *_twice(doubt, known), *_else(doubt, known)]  # fmt: skip
    total = sum(weight for weight, _ in weighed)
    if not total:
        return Explained()
    best, slip = max(weighed, key=lambda pair: pair[0])
    if best > LIKELIER * (total - best) and slip.kind not in UNNAMED:
        return Explained(slip)
    shares: dict[Kind, float] = {}
    for weight, one in weighed:
        shares[one.kind] = shares.get(one.kind, 0.0) + weight / total
    ranked = sorted(shares, key=lambda kind: -shares[kind])
    if ranked[0] is Kind.MISSING and shares[Kind.MISSING] > 0.9:
        return Explained(Slip(Kind.MISSING, (doubt.key,), None))
    return Explained(None, tuple(
        kind for kind in ranked if kind is not Kind.NONE and shares[kind] > MENTIONED
    ))  # fmt: skip


Weighed = Iterator[tuple[float, Slip]]
"""Slips, each with how likely it makes what was typed, to one common factor."""


def _single(doubt: Doubt, known: Mapping[str, float], unit: Unit) -> Weighed:
    """Weigh the slips that touch one value only."""
    key = doubt.key
    for kind, cm, share in _meant(key, known[key], unit):
        if believable(key, cm) and _distance(doubt, cm) < FITS:
            weight = PRIOR[kind] * share * _likely(doubt, cm)
            named = kind not in (Kind.MISTYPED, Kind.MISSING)
            yield weight, Slip(kind, (key,), {key: round(cm, 4)} if named else None)


def _exchanged(doubt: Doubt, known: Mapping[str, float], fixed: frozenset[str]) -> Weighed:
    """Weigh an exchange with every other reading."""
    key = doubt.key
    partners = [other for other in doubt.body.keys if other != key and other not in fixed]
    for other in partners:
        exchanged = {key: known[other], other: known[key]}
        if known[other] != known[key] and all(map(believable, exchanged, exchanged.values())):
            more = gain(doubt.body, exchanged, FITS, doubt.wider)
            weight = (
                share_of(doubt.body.keys, key, other, fixed) * PRIOR[Kind.SWAPPED] / _spread(doubt)
            )
            weight *= math.exp(min(more - doubt.far**2 / 2, LARGEST_EXPONENT)) / math.sqrt(
                2 * math.pi
            )
            yield weight, Slip(Kind.SWAPPED, (key, other), exchanged)


def _twice(doubt: Doubt, known: Mapping[str, float]) -> Weighed:
    """Weigh that a value stands, to the millimetre, at another measure of its kind too.

    Whoever types another measure's value again hits it exactly; by chance a value does so
    only as often as the tape's steps allow.
    """
    partners = alike(doubt.rest.keys, doubt.key)
    for other in partners:
        if abs(known[other] - known[doubt.key]) < 0.05:
            weight = PRIOR[Kind.TWICE] / len(partners) / STEP
            yield weight, Slip(Kind.TWICE, (doubt.key, other), None)


def _else(doubt: Doubt, known: Mapping[str, float]) -> Weighed:
    """Weigh that the value is right, and that something else went wrong with it."""
    nothing = Slip(Kind.NONE, (doubt.key,), None)
    yield _normal(normal(doubt.far)) / _spread(doubt), nothing
    yield PRIOR[Kind.NONE] / known[doubt.key] / WIDE, nothing


def _meant(key: str, cm: float, unit: Unit) -> Iterator[tuple[Kind, float, float]]:
    """Yield what one value [cm] may have been meant for, and how often it is then typed so."""
    number, size = cm / _size(unit), _size(unit)
    if unit is Unit.CM:
        yield Kind.INCHES, cm * INCH, INCH_STEP / STEP
    else:
        yield Kind.CENTIMETRES, cm / INCH, STEP / INCH_STEP
    if BY_KEY[key].is_girth or key in ("across_back", "across_front"):
        yield Kind.HALF, cm * 2, 2.0
    for times in (10.0, 0.1, 100.0):
        yield Kind.DECIMAL, cm * times, _written(number * times, unit) / 3
    for meant, ways in swapped(number):
        yield Kind.DIGITS, meant * size, 1 / ways
    for meant, ways in mistyped_from(number):
        yield Kind.MISTYPED, meant * size, 1 / ways
    for meant, ways in short_of_a_digit(number):
        yield Kind.MISSING, meant * size, _written(meant, unit) / ways


def _written(number: float, unit: Unit) -> float:
    """How readily a number is written down: to the tenth of a cm or the eighth of an inch."""
    parts = 10 if unit is Unit.CM else 8
    return 1.0 if abs(number * parts - round(number * parts)) < 1e-6 else 0.05


def believable(key: str, cm: float) -> bool:
    """Say whether a value [cm] lies in a measure's believable range."""
    return BY_KEY[key].low <= cm <= BY_KEY[key].high


def _distance(doubt: Doubt, cm: float) -> float:
    mean, spread = doubt.body.others(doubt.key)
    return abs(doubt.body.population.scaled(doubt.key, cm) - mean) / spread / doubt.wider


def _likely(doubt: Doubt, cm: float) -> float:
    """How likely a value [cm] is beside the others, on the model's scale."""
    return _normal(_distance(doubt, cm)) / _spread(doubt, cm)


def _spread(doubt: Doubt, cm: float | None = None) -> float:
    """The spread [cm] of what the others suggest, where a value [cm] lies."""
    _, spread = doubt.body.others(doubt.key)
    scale = doubt.body.population.scale(doubt.key)
    return spread * doubt.wider / scale.slope(doubt.body.read(doubt.key) if cm is None else cm)


def _normal(z: float) -> float:
    return math.exp(-z * z / 2) / math.sqrt(2 * math.pi)


def _size(unit: Unit) -> float:
    """Centimetres in one unit."""
    return INCH if unit is Unit.IN else 1.0
