"""The machines a person has, the stitches they make, and how far those stretch.

Stitch numbers are those of ISO 4915. How far a seam stretches is common
practice: straight lockstitch 10 to 20 %, narrow zigzag 30 to 40 %, four-thread
overedge 60 to 100 %; the lower figure is what one may count on.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from tapewise_core.errors import OptionError


class Machine(StrEnum):
    """A machine at hand."""

    OVERLOCKER = "overlocker"
    COVERSTITCH = "coverstitch"
    ZIGZAG = "zigzag"


@dataclass(frozen=True, slots=True)
class Stitching:
    """How each kind of seam is sewn; ``seam_stretch`` is the least a seam gives, a fraction."""

    machines: frozenset[Machine]
    seam: str
    topstitch: str
    hem: str
    stay: str
    seam_stretch: float


OVEREDGE = "four-thread overedge (stitch type 514)"
NARROW_ZIGZAG = "narrow zigzag (304), 0.5 to 1 mm wide, 2.5 mm long"
COVER = "two-needle cover stitch (406)"
TWIN = "twin needle 2.5 to 4 mm, stretching the cloth a little; straight stitch alone pops"


def stitching(machines: frozenset[Machine]) -> Stitching:
    """Return how the seams are sewn on what is there."""
    overlocker = Machine.OVERLOCKER in machines
    cover = Machine.COVERSTITCH in machines
    return Stitching(
        machines=machines,
        seam=OVEREDGE if overlocker else NARROW_ZIGZAG,
        topstitch=COVER if cover else NARROW_ZIGZAG,
        hem=COVER if cover else (TWIN if Machine.ZIGZAG in machines else OVEREDGE),
        stay=OVEREDGE if overlocker else "straight lockstitch (301) through tape and both layers",
        seam_stretch=0.6 if overlocker else 0.3,
    )


def read_machines(text: str) -> frozenset[Machine]:
    """Return the machines named in a comma-separated list; raises OptionError for others."""
    names = [word.strip().lower() for word in text.split(",") if word.strip()]
    known = [machine.value for machine in Machine]
    wrong = [name for name in names if name not in known]
    if wrong or not names:
        shown = ", ".join(wrong) or "none"
        raise OptionError(f"Machines are any of {', '.join(known)}, joined by commas, not {shown}.")
    if names == ["coverstitch"]:
        raise OptionError("A coverstitch alone can't join seams; add overlocker or zigzag.")
    return frozenset(Machine(name) for name in names)
