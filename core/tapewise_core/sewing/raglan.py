"""Sewing raglan sleeves: their overarms on a stay, then their seams to the body.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.sewing.joining import MELTS, NARROW, head_through, stayed
from tapewise_core.sewing.operation import Lies, Operation, Sort, Stage, Use
from tapewise_core.sewing.way import Way, Work
from tapewise_core.text.told import said
from tapewise_core.units import mm


def overarms(work: Work) -> tuple[Operation, ...]:
    """The two halves of each sleeve joined over shoulder and arm."""
    stitch = work.stitching.seam
    do = said(
        "Sew each sleeve's halves together along the overarm, right sides together{}, {} from the "
        "edge, from the neck over the shoulder to the sleeve's hem, through the stay: {}.",
        work.matched(), work.at, stitch.words,
    )  # fmt: skip
    return (
        _stay(work),
        work.do(
            "shoulders", "Sew the overarms", do, Stage.JOIN, meets=work.joins(), lies=Lies.FLAT,
            stitches=(stitch,), press=said("Press towards the back, {}.", MELTS),
        ),
    )  # fmt: skip


def _stay(work: Work) -> Operation:
    back = work.seams[0].second[0]
    one = mm(stayed((work.pattern.piece(back.piece), back.edges[0])))
    do = said(
        "Stay the shoulders on the sleeves' back halves, so that shoulders and neck do not sag: "
        "pin clear elastic or woven tape, {} for each, along the stitch line on the wrong side, "
        "from the neck to the shoulder point and not stretched. It is sewn in with the seam.",
        one,
    )
    tape = Use(said("clear elastic or woven tape"), "the shoulders", one * 2, NARROW)
    return work.do(
        "shoulder-stay", "Stay the shoulders", do, Stage.JOIN, sort=Sort.PREPARE, uses=(tape,)
    )


def raglans(work: Work) -> tuple[Operation, ...]:
    """The sleeves sewn to back and front while all lies flat, and the head tried through."""
    stitch = work.stitching.seam
    pin = said(
        "Lay out the sleeves: the edge with two notches belongs to the back, the edge with one to "
        "the front. Pin each to its body piece at the neck, at the notches and at the underarm, "
        "right sides together; below the notch the two edges bend away from each other."
    )
    do = said(
        "Sew the raglan seams {} from the edge, from the neck to the underarm, stretching neither "
        "side: {}.",
        work.at, stitch.words,
    )  # fmt: skip
    return (
        work.do(
            "raglan-pin", "Pin the sleeves to the body", pin, Stage.JOIN, sort=Sort.PREPARE,
            after=("shoulders",),
        ),
        work.do(
            "raglans", "Sew the raglan seams", do, Stage.JOIN, meets=work.joins(), lies=Lies.FLAT,
            after=("shoulders",), stitches=(stitch,), press=("Press towards the sleeve.",),
        ),
        head_through(work),
    )  # fmt: skip


OVERARM = Way("sleeve's halves joined over the arm", overarms)
RAGLAN = Way("raglan sleeve", raglans)
