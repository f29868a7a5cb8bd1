"""What is needed besides cloth: needles, thread, tapes and elastic, by what the order uses."""

from __future__ import annotations

import math
from collections.abc import Iterator

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.sewing.amounts import sewn_length
from tapewise_core.sewing.operation import Operation, Use
from tapewise_core.sewing.stitches import Machine, Stitch
from tapewise_core.text.amounts import Spool
from tapewise_core.text.told import Told, joined, said

Chain = tuple[Operation, ...]

CALLED = {
    Machine.OVERLOCKER: "overlocker",
    Machine.COVERSTITCH: "coverstitch",
    Machine.ZIGZAG: "sewing machine",
    Machine.STRAIGHT: "sewing machine",
    Machine.HAND: "by hand",
}
"""Who does the sewing, as the list of needs names it."""

SPARE, THREADING = 1.15, 3.0
"""What thread is wasted besides, a share, and what threading and trying takes a machine [m]
(common practice: 10 to 15 %)."""

TO_THE = 10.0
"""Thread is told to the next so many metres (our choice)."""


def maker(stitch: Stitch, machines: frozenset[Machine]) -> Machine:
    """Return which of the machines at hand makes a stitch; a hand is always there.

    Raises ValueError where none does.
    """
    found = [machine for machine in stitch.machines if machine in machines]
    if not found and not stitch.by_hand:
        raise ValueError(f"no machine at hand makes {stitch.words!r}")
    return found[0] if found else Machine.HAND


def used(chain: Chain) -> tuple[Stitch, ...]:
    """Return every stitch that the order uses, once."""
    return tuple(dict.fromkeys(stitch for operation in chain for stitch in operation.stitches))


def machines_used(chain: Chain, machines: frozenset[Machine]) -> tuple[Machine, ...]:
    """Return who sews what the order asks for, machines first."""
    makers = {maker(stitch, machines) for stitch in used(chain)}
    return tuple(machine for machine in Machine if machine in makers)


def notions(pattern: Pattern, chain: Chain, machines: frozenset[Machine]) -> tuple[Told, ...]:
    """Return everything that is needed to sew but cloth, each in a line."""
    makers = machines_used(chain, machines)
    named = dict.fromkeys(CALLED[one] for one in makers if one is not Machine.HAND)
    line = [(f"machines: {', '.join(named)}",)] if named else []
    return (
        *line,
        (needles(chain, machines),),
        thread(pattern, chain, machines),
        *stays(chain),
    )


def needles(chain: Chain, machines: frozenset[Machine]) -> str:
    """Say which needles, by the numbers they are sold under everywhere."""
    makers = machines_used(chain, machines)
    found = []
    if any(machine is not Machine.HAND for machine in makers):
        found.append("ballpoint or stretch needles 70/10 to 90/14")
    if any(stitch.twin for stitch in used(chain)):
        found.append("a stretch twin needle for hems")
    if Machine.HAND in makers or _hand_work(chain):
        found.append("a fine sewing needle for what is sewn by hand")
    return ", ".join(found)


def _hand_work(chain: Chain) -> bool:
    """Say whether anything is sewn by hand though no stitch of it runs along a seam."""
    return any("by hand" in str(part) for op in chain for part in op.do)


def thread(pattern: Pattern, chain: Chain, machines: frozenset[Machine]) -> Told:
    """Say how much thread each machine and the hand take, by seam length and stitch."""
    metres = dict.fromkeys(machines_used(chain, machines), 0.0)
    for operation in chain:
        length = _sewn(pattern, operation) / 1000
        for stitch in operation.stitches:
            metres[maker(stitch, machines)] += length * stitch.thread
    parts = [said("{} {}", CALLED[one], _spool(m)) for one, m in metres.items()]
    return said("polyester thread, about: {}", joined(parts, ", "))


SHORT_SEAM = 500.0
"""What is sewn of a seam with no edges of its own: a point, a stay, a lap [mm] (our choice)."""


def _sewn(pattern: Pattern, operation: Operation) -> float:
    return sewn_length(pattern, operation) if operation.meets else SHORT_SEAM


def _spool(metres: float) -> Spool:
    whole = metres * SPARE + THREADING
    return Spool(math.ceil(whole / TO_THE) * TO_THE)


def stays(chain: Chain) -> tuple[Told, ...]:
    """Say which tapes and elastics the order takes, with what they measure."""
    return tuple(_told(use) for use in _uses(chain))


def _uses(chain: Chain) -> Iterator[Use]:
    for operation in chain:
        yield from operation.uses


def _told(use: Use) -> Told:
    measured = said(", {} long", use.length) if use.length else ()
    wide = (", ", *use.width) if use.width else ()
    return said("{}{}{}, for {}", use.what, wide, measured, use.why)
