"""The machines a person has, the stitches made on them, and how far those stretch."""

from __future__ import annotations

from tapewise_core.errors import OptionError
from tapewise_core.frozen import Frozen
from tapewise_core.sewing.stitches import (
    BACKSTITCH,
    BASTED,
    BY_HAND,
    CATCH,
    COVER,
    GATHERING,
    GATHERING_BY_HAND,
    LAPPED,
    LAPPED_BY_HAND,
    LAPPED_STRAIGHT,
    LOCKSTITCH,
    NARROW_ZIGZAG,
    NEATENED,
    ONE_ROW,
    OVEREDGE,
    SHORT,
    STRETCHED,
    TWIN,
    ZIGZAGGED,
    Stitch,
)
from tapewise_core.sewing.stitches import Machine as Machine


class Stitching(Frozen):
    """How each kind of seam is sewn, on the machines at hand or by hand.

    ``seam`` joins, ``hem`` holds anything folded and ``edge`` an edge that was turned back,
    ``topstitch`` is None where no machine makes one, ``ring`` joins a band's ends, ``light`` is
    a seam to be clipped or turned, None where there is none, ``small`` are stitches for a
    corner; ``neaten`` goes over an edge, None where nothing does; ``basted``, ``lapped`` and
    ``gathering`` say how an elastic is held and how cloth is drawn together. ``seam_stretch`` is
    the least a seam gives, a fraction.
    """

    machines: frozenset[Machine]
    seam: Stitch
    topstitch: Stitch | None
    hem: Stitch
    edge: Stitch
    ring: Stitch
    light: Stitch | None
    small: Stitch
    neaten: Stitch | None
    basted: Stitch
    lapped: Stitch
    gathering: Stitch
    seam_stretch: float


SEAM_STRETCH = {OVEREDGE: 0.6, NARROW_ZIGZAG: 0.3, STRETCHED: 0.1, BACKSTITCH: 0.1}
"""How far each seam may be counted on to stretch, a fraction."""


def stitching(machines: frozenset[Machine]) -> Stitching:
    """Return how everything is sewn on what is there."""
    zigzag, cover = Machine.ZIGZAG in machines, Machine.COVERSTITCH in machines
    household, overlocker = zigzag or Machine.STRAIGHT in machines, Machine.OVERLOCKER in machines
    sewn = NARROW_ZIGZAG if zigzag else STRETCHED if household else None
    light = NARROW_ZIGZAG if zigzag else ONE_ROW if household else None
    seam = OVEREDGE if overlocker else sewn or BACKSTITCH
    topstitch = COVER if cover else NARROW_ZIGZAG if zigzag else None
    by_hand = BY_HAND if overlocker else CATCH
    hem = COVER if cover else TWIN if household else by_hand
    return Stitching(
        machines=machines,
        seam=seam,
        topstitch=topstitch,
        hem=hem,
        edge=topstitch or hem,
        ring=LOCKSTITCH if household else seam,
        light=light or (None if overlocker else BACKSTITCH),
        neaten=OVEREDGE if overlocker else NEATENED if zigzag else None,
        small=SHORT if household else BACKSTITCH,
        basted=ZIGZAGGED if zigzag else BASTED,
        lapped=LAPPED if zigzag else LAPPED_STRAIGHT if household else LAPPED_BY_HAND,
        gathering=GATHERING if household else GATHERING_BY_HAND,
        seam_stretch=SEAM_STRETCH[seam],
    )


_ALSO = {
    **dict.fromkeys(("serger", "overlock", "overlock machine"), Machine.OVERLOCKER.value),
    **dict.fromkeys(("cover stitch", "cover-stitch", "coverlock"), Machine.COVERSTITCH.value),
    **dict.fromkeys(
        ("zig-zag", "stretch stitch", "sewing machine", "household", "domestic"),
        Machine.ZIGZAG.value,
    ),
    **dict.fromkeys(("straight stitch", "lockstitch", "treadle"), Machine.STRAIGHT.value),
    **dict.fromkeys(("by hand", "hands", "needle"), Machine.HAND.value),
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
        raise OptionError(
            "A coverstitch alone can't join seams; add overlocker, zigzag, straight or hand."
        )
    return frozenset(Machine(name) for name in names)
