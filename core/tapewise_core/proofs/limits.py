"""How a number is held against its limit, and how both are told so that they agree."""

from __future__ import annotations

import math
from collections.abc import Mapping

from tapewise_core.proofs.proof import Proof, ProofId
from tapewise_core.text.amounts import Bound
from tapewise_core.text.told import Told
from tapewise_core.units import Length, mm

HAIR = 1e-6
"""What rounding alone may be off by, in whatever unit is compared."""


def reaches(value: float, least: float) -> bool:
    """Say whether a value is no less than a limit, rounding apart."""
    return value >= least - HAIR


def keeps_to(value: float, most: float) -> bool:
    """Say whether a value is no more than a limit, rounding apart."""
    return value <= most + HAIR


def rounded(value: float, digits: int) -> float:
    """Return a value as it is recorded, never minus nothing."""
    return round(value, digits) + 0.0


def in_cm(
    about: ProofId,
    of: str,
    value: float,
    limit: float,
    holds: bool,
    says: Told,
    offer: Mapping[str, Length | str] | None = None,
) -> Proof:
    """Return a proof whose value and limit are lengths [mm], recorded in cm."""
    shown = rounded(value / 10, 3), rounded(limit / 10, 3)
    return Proof(about, of, *shown, "cm", holds, says, offer)


def off_by(length: float) -> Length | Bound:
    """Return by how much something fails [mm], never told as nothing."""
    return Bound(length, "up") if length < 1.0 else mm(length)


def enough(percent: float) -> str:
    """Spell the whole percents that are enough.

    >>> enough(30.2), enough(30.0)
    ('31', '30')
    """
    return f"{math.ceil(round(percent, 6))}"


def beyond(number: float, limit: float, digits: int = 0) -> str:
    """Spell a number that is more than a limit, never as that limit.

    >>> beyond(2.34, 2.0, 1), beyond(2.01, 2.0, 1), beyond(0.2, 0.0)
    ('2.3', '2.1', '1')
    """
    spelt = f"{number:.{digits}f}"
    return spelt if float(spelt) > limit else f"{limit + 10**-digits:.{digits}f}"


def at_least(length: float) -> Length:
    """Return the next whole millimetre above a length [mm], for a mend."""
    return mm(round(length / 10 + 0.05, 1) * 10)


def at_most(length: float) -> Length:
    """Return the next whole millimetre below a length [mm], for a mend."""
    return mm(round(length / 10 - 0.05, 1) * 10)
