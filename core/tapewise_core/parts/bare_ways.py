"""Sewing an armhole without a sleeve: an edge turned in, a facing. Common practice."""

from __future__ import annotations

from tapewise_core.sewing.bare_edge import clipping, edge_tape, facing_meets
from tapewise_core.sewing.edges import sewn_down
from tapewise_core.sewing.joining import MELTS
from tapewise_core.sewing.operation import Lies, Meeting, Operation, Sort, Stage
from tapewise_core.sewing.stitches import BACKSTITCH
from tapewise_core.sewing.way import Way, Work
from tapewise_core.text.told import said


def turned(work: Work) -> tuple[Operation, ...]:
    """An armhole's own edge turned in, stayed so that it keeps its length."""
    stitch = work.stitching.edge
    stay = said(
        "Lay a narrow strip of clear elastic or fusible knit tape along both armholes' wrong side, "
        "inside the allowance and not stretched, so that the edges keep their length."
    )
    do = said(
        "Turn the armholes' edges in by {}, pin them, press ({}), and sew them {}.",
        work.at, MELTS, sewn_down(stitch),
    )  # fmt: skip
    return (
        work.do(
            "armhole-stay", "Stay the armholes", stay, Stage.ROUND, sort=Sort.PREPARE,
            after=("shoulders",), uses=(edge_tape(work, "the armholes"),),
        ),
        work.do(
            "armhole-edge", "Turn the armholes in", do, Stage.ROUND, sort=Sort.FINISH,
            meets=work.turned(), stitches=(stitch,), after=("sides", "armhole-stay"),
            check=("Put it on: the edge lies on the body all round.",),
        ),
    )  # fmt: skip


def facing_ring(work: Work) -> tuple[Operation, ...]:
    """Each facing's own shoulder and side, and its outer edge, which has no allowance."""
    stitch, neaten = work.stitching.light or work.stitching.seam, work.stitching.neaten
    edge = (
        f"Neaten the outer edges: {neaten.words}."
        if neaten
        else "Leave the outer edges as they are cut: jersey does not fray."
    )
    do = said(
        "Join each armhole facing at the shoulder and under the arm, right sides together, {} from "
        "the edge: {}. {}",
        work.at, stitch.words, edge,
    )  # fmt: skip
    press = () if stitch.cuts else ("Press the seams open.",)
    return (
        work.do(
            "arm-facing-ring", "Join the armhole facings", do, Stage.CLOSE,
            meets=facing_meets(work), lies=Lies.FLAT,
            stitches=(stitch, *((neaten,) if neaten else ())), press=press,
        ),
    )  # fmt: skip


def facing(work: Work) -> tuple[Operation, ...]:
    """A facing sewn round each armhole and turned to the inside."""
    return (_faced(work), _inside(work))


def _faced(work: Work) -> Operation:
    stitch = work.stitching.light or work.stitching.seam
    do = said(
        "Sew each facing round its armhole, right sides together, shoulder and side seams matched, "
        "{} from the edge, with a stitch that stretches: {}. {}",
        work.at, stitch.words, clipping(stitch),
    )  # fmt: skip
    first = tuple(run for seam in work.seams[:1] for run in seam.first)
    second = tuple(run for seam in work.seams for run in seam.second)
    return work.do(
        "arm-facing", "Sew the armhole facings on", do, Stage.ROUND,
        meets=(Meeting(work.whole(first), work.whole(second)),), stitches=(stitch,),
        after=("shoulders", "sides", "arm-facing-ring"),
    )  # fmt: skip


def _inside(work: Work) -> Operation:
    stitch = work.stitching.light or BACKSTITCH
    do = said(
        "Turn the facings to the inside; stitch them to the allowances close to the seam, so that "
        "they do not roll out: {}. Catch them down at shoulder and side seams by hand.",
        stitch.words,
    )
    return work.do(
        "arm-facing-inside", "Turn the armhole facings inside", do, Stage.ROUND, sort=Sort.FINISH,
        stitches=(stitch,), press=said("Press the armholes' edges, {}.", MELTS),
        after=("arm-facing",),
    )  # fmt: skip


TURNED_ARMHOLE = Way("armhole's edge turned in", turned)
ARM_FACING_RING = Way("armhole's facing joined into a ring", facing_ring)
ARM_FACING = Way("armhole faced", facing)
