"""What is said of a value that looks odd.

Each remark says what is odd, the range others of this build have, one question, and what
happens if the value is right; none says anything of the person.
"""

from __future__ import annotations

import math
from collections.abc import Mapping

from tapewise_core.measures.catalogue import NAMES
from tapewise_core.statistics.doubts import Doubt
from tapewise_core.statistics.given import Given
from tapewise_core.statistics.kinds import Kind
from tapewise_core.statistics.slips import Explained, Slip
from tapewise_core.statistics.whole import Whole
from tapewise_core.text.amounts import About
from tapewise_core.text.told import Told, joined, said
from tapewise_core.units import mm

HALF_90 = 1.6449
"""Half a 90 % interval in spreads, of a normal distribution."""
IF_RIGHT = said("If it is right, keep it: the pattern follows it.")
IF_THEY_ARE = said("If they are right, keep them: the pattern follows them.")

ASKED = {
    Kind.INCHES: "Was it typed in inches?",
    Kind.CENTIMETRES: "Was it typed in centimetres?",
    Kind.HALF: "Is it half of the way round?",
    Kind.DECIMAL: "Did the decimal place slip?",
    Kind.DIGITS: "Were two digits swapped?",
}
"""What a person is asked of a slip in one value that is mended by another value."""
MAY_BE = {
    Kind.INCHES: "was it typed in inches",
    Kind.CENTIMETRES: "was it typed in centimetres",
    Kind.HALF: "is it half of the way round",
    Kind.DECIMAL: "did the decimal place slip",
    Kind.DIGITS: "were two digits swapped",
    Kind.MISTYPED: "was a digit mistyped",
    Kind.MISSING: "is a digit missing",
    Kind.SWAPPED: "was it swapped with another measure",
    Kind.TWICE: "was another measure's value entered here",
}
"""What may be behind a value where nothing can be proposed."""
WHOLE = {
    Kind.INCHES: "typed in inches",
    Kind.CENTIMETRES: "typed in centimetres",
    Kind.HALF: "half of the way round",
}
"""What may be behind a whole form."""


def remark(doubt: Doubt, cm: float, found: Explained) -> Told:
    """Return the sentences on one doubted value [cm]."""
    slip = found.slip
    if slip is not None and slip.kind is Kind.SWAPPED:
        return joined((_odd(doubt, cm), _swapped(slip), IF_THEY_ARE))
    asked = _asked(slip) if slip else _perhaps(found.perhaps)
    return joined((_odd(doubt, cm), asked, IF_RIGHT))


def remark_on_pair(
    slip: Slip | None, keys: tuple[str, str], known: Mapping[str, float], rest: Given
) -> Told:
    """Return the sentences on two values [cm] that fit better in each other's place.

    ``rest`` is the body without both.
    """
    first, second = keys
    odd = said(
        "{} {} and {} {}: {} {} and {}.",
        NAMES[first].capitalize(), mm(known[first] * 10), NAMES[second], mm(known[second] * 10),
        _grounds(rest), _range(rest, first), _range(rest, second),
    )  # fmt: skip
    asked = _swapped(slip) if slip else said("Were the two swapped?")
    return joined((odd, asked, IF_THEY_ARE))


def remark_on_form(whole: Whole) -> Told:
    """Return the sentences on a form that is wrong as a whole, or nearly."""
    what = said("All values look") if whole.is_all else said("{} look", _named(whole.keys))
    kinds = " or ".join(WHOLE[kind] for kind in whole.kinds)
    odd = joined((what, said("as if they were {}.", kinds)))
    if whole.proposed is None:
        return joined((odd, said("Which is it? Type them again as the whole girth or length."),
                       IF_THEY_ARE))  # fmt: skip
    return joined((odd, said("Taken so, they make a likely body. Take them all so?"), IF_THEY_ARE))


def _named(keys: tuple[str, ...]) -> str:
    """Name a few measures, the first as a sentence begins."""
    names = [NAMES[key] for key in keys]
    return (f"{', '.join(names[:-1])} and {names[-1]}" if names[1:] else names[0]).capitalize()


def _odd(doubt: Doubt, cm: float) -> Told:
    name, usual = NAMES[doubt.key].capitalize(), _range(doubt.rest, doubt.key)
    return said("{} {}: {} {}.", name, mm(cm * 10), _grounds(doubt.rest), usual)


def _grounds(rest: Given) -> str:
    if rest.keys:
        return "the other measures suggest"
    return "most people have" if rest.population.is_weighed else "most children have"


def _range(rest: Given, key: str) -> About:
    """Return where nine readings in ten of a measure lie beside some others."""
    people, (mean, spread) = rest.population, rest.of(key)
    half = HALF_90 * math.hypot(spread, people.home[key]) * rest.widening()
    low, high = (people.unscaled(key, mean + side * half) for side in (-1, 1))
    return About(_round(low), _round(high))


def _round(cm: float) -> float:
    """To the half centimetre, in mm: a range is never sharper."""
    return round(cm * 2) * 5


def _swapped(slip: Slip) -> Told:
    """Ask whether two values change places."""
    first, second = (NAMES[key] for key in slip.measures)
    meant = [mm(cm * 10) for cm in (slip.proposed or {}).values()]
    return said("Were {} and {} swapped? Then they are {} and {}.", first, second, *meant)


def _asked(slip: Slip) -> Told:
    """Return the question that names a slip."""
    if slip.kind is Kind.TWICE:
        other = NAMES[slip.measures[1]]
        return said("The same stands at {}: was one entered twice? Then measure it again.", other)
    if slip.kind is Kind.MISSING:
        return said("Is a digit missing? Then type it again.")
    meant = [mm(cm * 10) for cm in (slip.proposed or {}).values()]
    return said("{} Then it is {}.", ASKED[slip.kind], meant[0])


def _perhaps(kinds: tuple[Kind, ...]) -> Told:
    """Return the question where no slip, or more than one, explains a value."""
    asked = ", or ".join(MAY_BE[kind] for kind in kinds)
    if not asked:
        return said("Does it read the same again?")
    return said("{}? Measure it again.", asked[0].upper() + asked[1:])
