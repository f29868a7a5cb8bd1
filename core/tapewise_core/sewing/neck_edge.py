"""Finishing a neckline without a band: an edge turned in, or a facing. All common practice."""

from __future__ import annotations

from tapewise_core.sewing.bare_edge import clipping, edge_tape, facing_meets
from tapewise_core.sewing.edges import sewn_down
from tapewise_core.sewing.joining import MELTS
from tapewise_core.sewing.neck import point_stayed
from tapewise_core.sewing.operation import Lies, Meeting, Operation, Sort, Stage
from tapewise_core.sewing.stitches import BACKSTITCH
from tapewise_core.sewing.way import Way, Work
from tapewise_core.text.amounts import About
from tapewise_core.text.told import said


def turned(work: Work) -> tuple[Operation, ...]:
    """A neckline's own edge turned to the inside."""
    stay = said(
        "Lay a narrow strip of clear elastic or fusible knit tape along the neckline's wrong "
        "side, inside the allowance and not stretched, so that the edge keeps its length."
    )
    stitch = work.stitching.hem
    do = said(
        "Turn the neckline's edge in by {}, pin it in quarters, press ({}), and sew it {}.",
        work.at, MELTS, sewn_down(stitch),
    )  # fmt: skip
    return (
        work.do(
            "neckline-stay", "Stay the neckline", stay, Stage.NECK, sort=Sort.PREPARE,
            after=("head",), uses=(edge_tape(work, "the neckline"),),
        ),
        work.do(
            "neckline", "Turn the neckline in", do, Stage.NECK, sort=Sort.FINISH,
            meets=work.turned(), stitches=(stitch,),
            check=("Pull it over the head: no thread may pop.",),
        ),
    )  # fmt: skip


def turned_v(work: Work) -> tuple[Operation, ...]:
    """The same round a V, whose point has to be snipped to be turned."""
    return (point_stayed(work), *turned(work))


def facing_ring(work: Work) -> tuple[Operation, ...]:
    """A facing's own shoulders, and its outer edge, which has no allowance."""
    stitch, neaten = work.stitching.light or work.stitching.seam, work.stitching.neaten
    edge = (
        f"Neaten the facing's outer edge: {neaten.words}."
        if neaten
        else "Leave the facing's outer edge as it is cut: jersey does not fray."
    )
    do = said(
        "Join the facing's shoulders, right sides together, {} from the edge: {}. {}",
        work.at, stitch.words, edge,
    )  # fmt: skip
    press = () if stitch.cuts else ("Press the shoulder seams open.",)
    return (
        work.do(
            "facing-ring", "Join the facing", do, Stage.NECK, meets=facing_meets(work),
            lies=Lies.FLAT, stitches=(stitch, *((neaten,) if neaten else ())), press=press,
        ),
    )  # fmt: skip


def facing(work: Work) -> tuple[Operation, ...]:
    """A facing sewn to a neckline and turned to the inside."""
    return (_faced(work), _faced_inside(work))


def v_facing(work: Work) -> tuple[Operation, ...]:
    """The same round a V, whose point is sewn and snipped before the rest."""
    small = work.stitching.small
    do = said(
        "Pin the facing to the neckline, right sides together, and sew the point of the V "
        "first, {} from the edge, for {} to either side, turning sharply at the point: {}. "
        "Snip both allowances at the point as far as these stitches, not through them.",
        work.at, About(30), small.words,
    )  # fmt: skip
    point = work.do(
        "neck-point", "Sew the point of the V", do, Stage.NECK, sort=Sort.PREPARE,
        after=("head", "facing-ring"), stitches=(small,),
    )  # fmt: skip
    return (point, _faced(work), _faced_inside(work))


def _faced(work: Work) -> Operation:
    stitch = work.stitching.light or work.stitching.seam
    do = said(
        "Sew the facing to the neckline, right sides together, shoulder seams matched, {} from "
        "the edge, with a stitch that stretches: {}. {}",
        work.at, stitch.words, clipping(stitch),
    )  # fmt: skip
    first = tuple(run for seam in work.seams for run in seam.first)
    second = tuple(run for seam in work.seams for run in seam.second)
    meets = (Meeting(work.whole(first), work.whole(second)),)
    return work.do("facing", "Sew the facing on", do, Stage.NECK, meets=meets, stitches=(stitch,))


def _faced_inside(work: Work) -> Operation:
    stitch = work.stitching.light or BACKSTITCH
    do = said(
        "Turn the facing to the inside; stitch it to the allowances close to the seam, so that it "
        "does not roll out: {}. Catch it down at the shoulder seams by hand.",
        stitch.words,
    )
    return work.do(
        "facing-inside", "Turn the facing inside", do, Stage.NECK, sort=Sort.FINISH,
        stitches=(stitch,), press=said("Press the neckline's edge, {}.", MELTS),
        check=("Pull it over the head: no thread may pop.",),
    )  # fmt: skip


TURNED_NECK = Way("neckline's edge turned in", turned)
TURNED_V = Way("edge of a V turned in", turned_v)
FACING_RING = Way("facing joined into a ring", facing_ring)
FACING = Way("neckline faced", facing)
V_FACING = Way("V faced", v_facing)
