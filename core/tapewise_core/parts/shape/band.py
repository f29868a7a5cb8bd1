"""Bands from their geometry and the cloth's stretch; a close fit; a cuff over the hand."""

from __future__ import annotations

import math
from itertools import pairwise

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Reference
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

NECK_LIES, ARM_LIES = 0.75, 0.5
"""How much of a band's narrowing towards its free edge it is cut short by. Round a neck, which
is a cone, three quarters (exact for a neck that narrows so); an armhole's is flatter, half (our
choice)."""

USABLE = 0.6
"""A band is stretched by no more than this of what the cloth stretches (common practice)."""

ARM_LEAST, ARM_MOST = 0.85, 0.95
"""The ratios of an armhole's band: 0.85 at the least (common practice), 0.95 at the most (our
choice: a band that is hardly short stands off)."""

CLOSE = ((0.25, 0.0), (0.50, -0.04), (0.75, -0.08), (1.00, -0.12))
"""Stretch, and the share of the body taken off for a close fit (common practice)."""

HALF = 0.5
"""No close fit stretches the cloth more than half of what it can (common practice)."""

LENGTHENED = 0.4
"""Cloth stretched across loses length: so much of the share comes back (common practice)."""

HAND = {Reference.WOMEN: (47.0, 0.92, 5.6), Reference.MEN: (55.0, 0.91, 6.1)}
"""Hand over the knuckles, no thumb = a + b × wrist [mm], sd [ansur1]; 58 + 0.83 and 57 + 0.88
in 2012 [ansur2]."""

THUMB = 20.0
"""The thumb laid in adds so much [mm] (our choice; the tables do not hold it)."""


class Band(Frozen):
    """A band's length over its opening's, and what held it back."""

    ratio: float
    held_back: Told


DIGITS = 2
"""A ratio is worked out to so many digits, so that it reads as it is used (our choice)."""


def at_least(ratio: float) -> float:
    """Return a ratio that may be no less, to its last digit, and no more than 1."""
    near = round(ratio, DIGITS)
    return near if near >= ratio else min(round(near + 10**-DIGITS, DIGITS), 1.0)


def as_used(found: Band) -> float:
    """Return a band's ratio to its last digit, and no less where it was held back."""
    return at_least(found.ratio) if found.held_back else round(found.ratio, DIGITS)


def neckband(opening: float, width: float, stretch: float) -> Band:
    """Return the ratio of a neckband [mm]; ``stretch`` is the band's cloth, 0.5 for half again.

    1 − 2π × 0.75 × width / opening, but no shorter than the cloth can be sewn on.
    """
    return _band(opening, width, stretch, NECK_LIES, 0.0, 1.0)


def armband(opening: float, width: float, stretch: float) -> Band:
    """Return the ratio of the band round an armhole without a sleeve [mm]."""
    return _band(opening, width, stretch, ARM_LIES, ARM_LEAST, ARM_MOST)


def _band(
    opening: float, width: float, stretch: float, lies: float, low: float, high: float
) -> Band:
    wanted = 1 - 2 * math.pi * lies * width / opening
    least = max(low, 1 / (1 + USABLE * stretch))
    if wanted >= least:
        return Band(min(wanted, high), ())
    narrower = (1 - least) * opening / (2 * math.pi * lies)
    told = said(
        "A band {} wide would have to be shorter than can be sewn on: it will stand up a "
        "little. It lies flat up to {} wide, or on a wider opening.",
        mm(width),
        mm(math.floor(narrower)),
    )
    return Band(least, told)


class CloseFit(Frozen):
    """Ease of a close fit as a share of the body, not above 0, and of the length, not below."""

    across: float
    along: float


def close_fit(stretch: float) -> CloseFit:
    """Return how much a close fit takes off by the stretch measured, straight in between.

    Never so much that the cloth is stretched beyond half of what it can.
    """
    taken = CLOSE[0][1] if stretch < CLOSE[0][0] else CLOSE[-1][1]
    for (low, a), (high, b) in pairwise(CLOSE):
        if low <= stretch <= high:
            taken = a + (b - a) * (stretch - low) / (high - low)
    across = max(taken, 1 / (1 + HALF * stretch) - 1)
    return CloseFit(across, -LENGTHENED * across)


def hand_girth(
    wrist: float, reference: Reference = Reference.WOMEN, *, thumb: bool = False
) -> float:
    """Return the hand's girth over the knuckles [mm] from the wrist; the wider of both groups
    where it is not said which."""
    groups = [reference] if reference in HAND else list(HAND)
    girth = max(HAND[group][0] + HAND[group][1] * wrist for group in groups)
    return girth + (THUMB if thumb else 0.0)
