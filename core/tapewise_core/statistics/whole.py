"""Whether a whole form, or all its girths, were typed in another unit or halved."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping

from tapewise_core.frozen import Frozen
from tapewise_core.measures.catalogue import BY_KEY
from tapewise_core.statistics.doubts import WARNING
from tapewise_core.statistics.given import given
from tapewise_core.statistics.kinds import Kind
from tapewise_core.statistics.population import Population
from tapewise_core.statistics.slips import INCH, believable
from tapewise_core.units import Unit

LIKELIER = math.log(20)
"""So much likelier than the next one (a logarithm) a whole form's slip must be to be taken."""
MOST = 0.75
"""Of the values it touches it must explain so many, or it is no matter of the whole form."""
FEWEST = 2
"""And touch so many, at least."""


class Whole(Frozen):
    """Slips that explain a form at once: the values [cm] that mend it, if one stands alone."""

    kinds: tuple[Kind, ...]
    keys: tuple[str, ...]
    is_all: bool
    proposed: Mapping[str, float] | None


def whole_form(
    people: Population, known: Mapping[str, float], confirmed: frozenset[str], unit: Unit
) -> Whole | None:
    """Return what explains the form as a whole, or None where it is to be judged by values."""
    form = {key: known[key] for key in people.measures if key in known}
    free = tuple(key for key in form if key not in confirmed)
    far = {key: abs(_distance(people, key, cm)) for key, cm in form.items()}
    ways = [way for way in _ways(free, unit) if _explains(people, form, far, way)]
    if not ways:
        return None
    ranked = sorted(ways, key=lambda way: -_likely(people, form, way))
    best = ranked[0]
    top = _likely(people, form, best)
    rivals = [way for way in ranked[1:] if top - _likely(people, form, way) < LIKELIER]
    mended = {key: round(form[key] * best.factor, 4) for key in best.keys}
    if not all(map(believable, mended, mended.values())):
        return None
    if {way.kind for way in rivals} - {best.kind}:
        kinds = tuple(dict.fromkeys(way.kind for way in (best, *rivals)))
        return Whole(kinds, best.keys, False, None)
    return Whole((best.kind,), best.keys, set(best.keys) == set(free), mended)


class _Way(Frozen):
    """One slip of a whole form: what was meant is the typed value times a factor."""

    kind: Kind
    keys: tuple[str, ...]
    factor: float


def _ways(free: tuple[str, ...], unit: Unit) -> Iterator[_Way]:
    kind, factor = (Kind.INCHES, INCH) if unit is Unit.CM else (Kind.CENTIMETRES, 1 / INCH)
    girths = tuple(key for key in free if BY_KEY[key].is_girth)
    no_head = tuple(key for key in girths if key != "head")
    for keys in dict.fromkeys((free, tuple(key for key in free if key != "height"), girths)):
        yield _Way(kind, keys, factor)
    for keys in dict.fromkeys((girths, no_head)):
        yield _Way(Kind.HALF, keys, 2.0)


def _explains(
    people: Population, form: Mapping[str, float], far: Mapping[str, float], way: _Way
) -> bool:
    """Say whether nearly all values become believable, and the form much likelier; ``far`` is how
    far each is from the mean as it was typed."""
    if len(way.keys) < FEWEST:
        return False
    least = max(MOST * len(way.keys), FEWEST)
    off = [key for key in way.keys if far[key] > 1]  # nearer, nothing could be much likelier
    if len(off) < least:
        return False
    better = [key for key in off if _better(people, key, far[key], form[key] * way.factor)]
    if len(better) < least:
        return False
    as_typed = given(form, people).log_density()
    return _likely(people, form, way) - as_typed > LIKELIER


def _likely(people: Population, form: Mapping[str, float], way: _Way) -> float:
    """The logarithm of how likely a form is, had it been typed in this way."""
    meant = dict(form) | {key: form[key] * way.factor for key in way.keys}
    return given(meant, people).log_density() + len(way.keys) * math.log(way.factor)


def _better(people: Population, key: str, far: float, meant: float) -> bool:
    """Say whether one value [cm] is believable as meant, and much less so as typed: there it lies
    ``far`` spreads from the mean."""
    near = abs(_distance(people, key, meant))
    return near < WARNING and far > near + 1


def _distance(people: Population, key: str, cm: float) -> float:
    """Return how far a reading is from the population's mean, in spreads."""
    spread = math.sqrt(people.covariance[key][key] + people.error(key))
    return (people.scaled(key, cm) - people.mean[key]) / spread
