"""What one proof is: a number against a limit, and a sentence for a person."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.piece import Pattern
from tapewise_core.units import Unit


@dataclass(frozen=True, slots=True)
class Proof:
    """One proof's outcome.

    ``value`` and ``limit`` are in ``unit``: cm, %, degrees or a bare number
    (1). ``mend`` maps options to typed values [cm or plain] that make it hold,
    where a change is safe to offer.
    """

    name: str
    value: float
    limit: float
    unit: str
    holds: bool
    says: str
    mend: Mapping[str, str] | None = None


Prover = Callable[[Pattern, Cloth, Unit], tuple[Proof, ...]]
"""A proof of one kind; it returns nothing where it does not apply."""

HAIR = 1e-6
"""What rounding alone may be off by [mm]."""


def in_cm(value: float, holds: bool, limit: float, name: str, says: str) -> Proof:
    """Return a proof whose value and limit are lengths [mm], recorded in cm."""
    return Proof(name, round(value / 10, 3) + 0.0, round(limit / 10, 3), "cm", holds, says)
