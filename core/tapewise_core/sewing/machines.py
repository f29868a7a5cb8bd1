"""The machines a person has, the stitches they make, and how far those stretch.

Stitch numbers are those of [iso4915]. How far a seam stretches is common
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
    """How each kind of seam is sewn, on the machines at hand or by hand.

    ``hem`` holds anything folded, ``topstitch`` is empty where no machine makes one, ``ring``
    joins a band's ends, ``light`` is a seam to be clipped or turned, empty where there is none,
    ``small`` are stitches for a corner; ``basted`` and ``lapped`` say how an elastic is held.
    ``seam_stretch`` is the least a seam gives, a fraction.
    """

    machines: frozenset[Machine]
    seam: str
    topstitch: str
    hem: str
    stay: str
    ring: str
    light: str
    small: str
    basted: str
    lapped: str
    seam_stretch: float

    @property
    def edge(self) -> str:
        """How an edge that has been turned back is sewn."""
        return self.topstitch or BY_HAND


OVEREDGE = "four-thread overedge (stitch type 514)"
NARROW_ZIGZAG = "narrow zigzag (304), 0.5 to 1 mm wide and 2.5 mm long on the machine's dials"
COVER = "two-needle cover stitch (406)"
TWIN = "twin needle 2.5 to 4 mm, stretching the cloth a little; straight stitch alone pops"
BY_HAND = "by hand or on a sewing machine with a stretch stitch; an overlocker would cut the fold"

MILLIMETRES = (NARROW_ZIGZAG, TWIN)
"""Words told in millimetres to every reader: machines' dials and twin needles are marked so."""


def stitching(machines: frozenset[Machine]) -> Stitching:
    """Return how the seams are sewn on what is there."""
    overlocker, household = Machine.OVERLOCKER in machines, Machine.ZIGZAG in machines
    cover = Machine.COVERSTITCH in machines
    light = NARROW_ZIGZAG if household else ""
    return Stitching(
        machines=machines,
        seam=OVEREDGE if overlocker else NARROW_ZIGZAG,
        topstitch=COVER if cover else light,
        hem=f"from the right side: {COVER if cover else TWIN}" if cover or household else BY_HAND,
        stay=OVEREDGE if overlocker else "straight lockstitch (301) through tape and both layers",
        ring="narrow zigzag or lockstitch, pressed open" if household else OVEREDGE,
        light=light,
        small="short straight stitches" if household else "small backstitches by hand",
        basted="zigzagged" if household else "basted by hand",
        lapped="zigzag the lap to and fro" if household else "sew the lap firmly by hand",
        seam_stretch=0.6 if overlocker else 0.3,
    )


_ALSO = {
    **dict.fromkeys(("serger", "overlock", "overlock machine"), Machine.OVERLOCKER.value),
    **dict.fromkeys(("cover stitch", "cover-stitch", "coverlock"), Machine.COVERSTITCH.value),
    **dict.fromkeys(("zig-zag", "sewing machine", "household", "domestic"), Machine.ZIGZAG.value),
}
"""Other words people have for a machine (common practice)."""


def read_machines(text: str) -> frozenset[Machine]:
    """Return the machines named in a comma-separated list; raises OptionError for others."""
    words = [" ".join(word.lower().split()) for word in text.split(",") if word.strip()]
    names = [_ALSO.get(word, word) for word in words]
    known = [machine.value for machine in Machine]
    wrong = [name for name in names if name not in known]
    if wrong or not names:
        shown = ", ".join(wrong) or "none"
        raise OptionError(f"Machines are any of {', '.join(known)}, joined by commas, not {shown}.")
    if set(names) == {Machine.COVERSTITCH}:
        raise OptionError("A coverstitch alone can't join seams; add overlocker or zigzag.")
    return frozenset(Machine(name) for name in names)
