"""One operation of the sewing order: a node of the graph, as data for paper and app."""

from __future__ import annotations

from enum import IntEnum, StrEnum

from tapewise_core.drafting.seam import EdgeRun
from tapewise_core.frozen import Frozen
from tapewise_core.sewing.stitches import Stitch
from tapewise_core.text.told import Told
from tapewise_core.units import Length


class Sort(StrEnum):
    """What an operation is."""

    PREPARE = "prepare"
    SEAM = "seam"
    FINISH = "finish"
    TEST = "test"


class Stage(IntEnum):
    """When an operation is done if nothing else decides; ties keep the order of the seams.

    Common practice: what lies inside one piece, shoulders, neck, whatever is easier while the
    body lies flat, closing, what goes round, the waist, hems, and what is sewn by itself.
    """

    INSIDE = 10
    JOIN = 20
    NECK = 30
    FLAT = 40
    CLOSE = 50
    ROUND = 60
    WAIST = 70
    HEM = 80
    APART = 90


class Lies(StrEnum):
    """How the cloth lies while it is sewn: ``FLAT``, before what closes it beside; ``ROUND``,
    across the seams that meet its edges, which are sewn first."""

    FLAT = "flat"
    ROUND = "in the round"


class Half(StrEnum):
    """Which halves of the body are sewn at once; the second of two is the one that closes."""

    BOTH = "both"
    FIRST = "the first"
    SECOND = "the second"


class Laid(StrEnum):
    """How two edges lie on each other, or how one is turned."""

    TOGETHER = "right sides together"
    FOLDED = "folded lengthwise, wrong sides together, on the right side"
    TURNED = "turned to the wrong side"
    NEATENED = "neatened by itself"


class Meeting(Frozen):
    """The edges that meet: ``first`` onto ``second``, which is empty where an edge is turned.

    Both are the same where a piece is sewn to its own copy. ``partly``: only a part of the second
    is sewn here, and the edge is finished by another operation. Where one ``half`` is sewn before
    the other, the edges count as finished with the first.
    """

    first: tuple[EdgeRun, ...]
    second: tuple[EdgeRun, ...] = ()
    laid: Laid = Laid.TOGETHER
    partly: bool = False
    half: Half = Half.BOTH

    @property
    def finished(self) -> tuple[EdgeRun, ...]:
        """The runs that need no other operation afterwards."""
        if self.half is Half.SECOND:
            return ()
        alone = self.partly or self.first == self.second
        return self.first if alone else (*self.first, *self.second)


class Use(Frozen):
    """A tape, elastic or other thing that an operation takes: ``what`` and ``why`` in a few words.

    ``length`` and ``width`` in mm, None where there is nothing to measure.
    """

    what: Told
    why: str
    length: Length | None = None
    width: Told = ()


class Operation(Frozen):
    """One thing to do, and what must come before it.

    ``key`` stays the same whatever is drafted, so that ticks can be kept by it; ``title`` names
    it in a few words and ``do`` says it whole; ``press`` and ``check`` are what follows.
    ``after`` and ``before`` name other operations by their keys; one that a garment has not
    counts nothing. ``ease`` says what is eased, gathered or stretched, and where. ``closes`` a
    tube, so that whatever lies flat beside it goes first. ``other`` names another way to do it
    and how to choose it.
    """

    key: str
    title: str
    do: Told
    sort: Sort
    stage: Stage
    meets: tuple[Meeting, ...] = ()
    lies: Lies = Lies.ROUND
    closes: bool = False
    after: tuple[str, ...] = ()
    before: tuple[str, ...] = ()
    stitches: tuple[Stitch, ...] = ()
    allowance: Length | None = None
    ease: Told = ()
    press: Told = ()
    check: Told = ()
    uses: tuple[Use, ...] = ()
    other: Told = ()

    @property
    def turns(self) -> bool:
        """Say whether a folded edge is sewn down, which an overlocker would cut."""
        return any(meeting.laid is Laid.TURNED for meeting in self.meets)

    @property
    def finished(self) -> tuple[EdgeRun, ...]:
        """The runs that are finished once it is done."""
        return tuple(run for meeting in self.meets for run in meeting.finished)
