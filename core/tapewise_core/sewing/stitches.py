"""Stitches by their numbers in [iso4915] (from memory), the machine that makes each, what it takes.

How far a seam stretches is common practice: straight lockstitch 10 to 20 %, narrow zigzag 30 to
40 %, four-thread overedge 60 to 100 %; the lower figure is what one may count on. Thread for a
metre of seam, all needles and loopers together, is common practice too, rounded up.
"""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import Frozen


class Machine(StrEnum):
    """A machine at hand; ``HAND`` says that everything may be sewn by hand."""

    OVERLOCKER = "overlocker"
    COVERSTITCH = "coverstitch"
    ZIGZAG = "zigzag"
    STRAIGHT = "straight"
    HAND = "hand"


class Stitch(Frozen):
    """One way to stitch: in words, by its number, and on which machines it can be made.

    ``thread`` is what a metre of seam takes [m]; ``twin`` needs a needle of that kind, and
    ``cuts`` trims the edge, so that it can hold nothing folded.
    """

    words: str
    number: str
    machines: tuple[Machine, ...]
    thread: float
    twin: bool = False
    cuts: bool = False

    @property
    def by_hand(self) -> bool:
        """Say whether no machine is needed."""
        return Machine.HAND in self.machines

    def __str__(self) -> str:
        return self.words


_HAND, _OVERLOCKER = (Machine.HAND,), (Machine.OVERLOCKER,)
_ZIGZAG, _HOUSEHOLD = (Machine.ZIGZAG,), (Machine.ZIGZAG, Machine.STRAIGHT)

OVEREDGE = Stitch("four-thread overedge (stitch type 514)", "514", _OVERLOCKER, 18, cuts=True)
NARROW_ZIGZAG = Stitch(
    "narrow zigzag (304), 0.5 to 1 mm wide and 2.5 mm long on the machine's dials", "304",
    _ZIGZAG, 4,
)  # fmt: skip
STRETCHED = Stitch(
    "straight stitch (301) 2.5 mm long, the cloth stretched a little as you sew, and a second row "
    "beside it in the allowance", "301", _HOUSEHOLD, 6,
)  # fmt: skip
ONE_ROW = Stitch(
    "straight stitch (301) 2.5 mm long, the cloth stretched a little as you sew", "301",
    _HOUSEHOLD, 3,
)  # fmt: skip
LOCKSTITCH = Stitch("straight stitch (301)", "301", _HOUSEHOLD, 3)
SHORT = Stitch("short straight stitches (301)", "301", _HOUSEHOLD, 4)
COVER = Stitch("two-needle cover stitch (406)", "406", (Machine.COVERSTITCH,), 14)
TWIN = Stitch(
    "twin needle 2.5 to 4 mm, stretching the cloth a little; straight stitch alone pops", "301",
    _HOUSEHOLD, 6, twin=True,
)  # fmt: skip
BACKSTITCH = Stitch("small backstitches by hand (202)", "202", _HAND, 4)
CATCH = Stitch("loosely by hand, with a catch stitch (204)", "204", _HAND, 4)
BY_HAND = Stitch(
    "by hand or on a sewing machine with a stretch stitch; an overlocker would cut the fold",
    "204", _HAND, 4,
)  # fmt: skip
NEATENED = Stitch("zigzag over the edge (304)", "304", _ZIGZAG, 5)
ZIGZAGGED = Stitch("zigzagged (304)", "304", _ZIGZAG, 4)
BASTED = Stitch("basted by hand (209)", "209", _HAND, 2)
LAPPED = Stitch("zigzag the lap to and fro", "304", _ZIGZAG, 8)
LAPPED_STRAIGHT = Stitch("sew a square over the lap, and across it", "301", _HOUSEHOLD, 8)
LAPPED_BY_HAND = Stitch("sew the lap firmly by hand", "202", _HAND, 8)
GATHERING = Stitch("two rows of long straight stitches (301)", "301", _HOUSEHOLD, 5)
GATHERING_BY_HAND = Stitch("two rows of running stitches by hand (209)", "209", _HAND, 3)

MILLIMETRES = (NARROW_ZIGZAG.words, STRETCHED.words, ONE_ROW.words, TWIN.words)
"""Words told in millimetres to every reader: machines' dials and twin needles are marked so."""
