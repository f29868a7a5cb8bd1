"""Sewing sleeves into armholes, flat or in the round.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.sewing.operation import Lies, Operation, Sort, Stage
from tapewise_core.sewing.way import Way, Work, apart
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import mm

SLIGHTLY = 1.0
"""What a sleeve is shorter than its armhole, below which nobody need stretch it [mm]."""

STRETCHED_IN = " and stretched by the {} it is shorter"


def sleeves(work: Work) -> tuple[Operation, ...]:
    """Sleeves set in while the body still lies flat."""
    where = said("at crown and shoulder seam, at the notches and at both ends")
    return (
        _pinned(work, where, Stage.FLAT, ("shoulders",)),
        _set_in(work, Stage.FLAT, Lies.FLAT, ("shoulders",), OTHER_ROUND),
    )


def round_sleeves(work: Work) -> tuple[Operation, ...]:
    """Sleeves closed first and set into a closed armhole."""
    begins = max(seam.begins for seam in work.seams)
    where = said("at crown and shoulder seam, at the notches and at the underarm seams")
    if begins:
        where = said(TURNED, mm(begins))
    return (
        _pinned(work, where, Stage.ROUND, ()),
        _set_in(work, Stage.ROUND, Lies.ROUND, (), () if begins else OTHER_FLAT),
    )


TURNED = (
    "at crown and shoulder seam and at the notches, the sleeve's own seam {} up the back armhole "
    "from the side seam"
)
"""Where a sleeve is pinned that a fitting turned forwards."""

OTHER_ROUND = said("Or in the round, after the sides: set {} to round.", OptionKey("sleeve-sewn"))
OTHER_FLAT = said("Or flat, before the sides: set {} to flat.", OptionKey("sleeve-sewn"))


def _pinned(work: Work, where: Told, stage: Stage, after: tuple[str, ...]) -> Operation:
    do = said(
        "Lay out the sleeves: the side with two notches belongs to the back, the side with one "
        "to the front. Pin each into its armhole {}, right sides together.",
        where,
    )
    return work.do("sleeve-pin", "Pin the sleeves in", do, stage, sort=Sort.PREPARE, after=after)


def _set_in(work: Work, stage: Stage, lies: Lies, after: tuple[str, ...], other: Told) -> Operation:
    stitch, ease = work.stitching.seam, _stretched(work)
    do = said(
        "Sew the sleeves in {} from the edge, the sleeve uppermost{}: {}.",
        work.at, ease, stitch.words,
    )  # fmt: skip
    return work.do(
        "sleeves", "Sew the sleeves in", do, stage, meets=work.joins(), lies=lies, after=after,
        stitches=(stitch,), ease=ease, press=("Press towards the sleeve.",), other=other,
    )  # fmt: skip


def _stretched(work: Work) -> Told:
    shorter = max(-apart(work.pattern, seam) for seam in work.seams)
    if shorter < SLIGHTLY:
        return ()
    return said(STRETCHED_IN, mm(shorter))


def sleeve_seams(work: Work) -> tuple[Operation, ...]:
    """Sleeves closed by themselves, to be set in afterwards."""
    stitch = work.stitching.seam
    do = said(
        "Sew each sleeve's underarm seam, right sides together, {} from the edge: {}.",
        work.at, stitch.words,
    )  # fmt: skip
    return (
        work.do(
            "sleeve-seams", "Close the sleeves", do, Stage.CLOSE, meets=work.joins(),
            lies=Lies.FLAT, closes=True, stitches=(stitch,), press=("Press towards the back.",),
        ),
    )  # fmt: skip


SLEEVE_FLAT = Way("sleeve set in flat", sleeves)
SLEEVE_ROUND = Way("sleeve set in in the round", round_sleeves)
SLEEVE_SEAM = Way("sleeve closed by itself", sleeve_seams)
