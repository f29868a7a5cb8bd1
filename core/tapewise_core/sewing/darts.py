"""Sewing darts: flat, before any seam that crosses them is closed.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.labels import title
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.sewing.machines import Stitching
from tapewise_core.sewing.operation import Lies, Operation, Sort, Stage
from tapewise_core.sewing.way import Way, Work
from tapewise_core.text.told import joined, said

KNOT = "Knot the threads; they are not sewn back over."
"""How a dart's tip ends, where stitches to and fro would make a lump."""


def side(work: Work) -> tuple[Operation, ...]:
    """Side darts, from the mouth to the tip, pressed down."""
    stitch = work.stitching.ring
    if stitch.cuts:
        run = "running off past the tip, the fold beside the knife and not under it"
    else:
        run = "running off at the fold"
    do = said(
        "Sew the side darts: fold the front right sides together so that the dart's legs lie "
        "on each other, and sew from the side edge to the tip, {}: {}. {}",
        run, stitch.words, KNOT,
    )  # fmt: skip
    return (
        work.do(
            "side-darts", "Sew the side darts", do, Stage.INSIDE, meets=work.joins(),
            lies=Lies.FLAT, stitches=(stitch,), press=("Press the darts downwards.",),
        ),
    )  # fmt: skip


SIDE_DART = Way("side darts", side)

WAIST_DARTS = "waist-darts"


def waist(pattern: Pattern, stitching: Stitching) -> tuple[Operation, ...]:
    """Waist darts, from their middle to both tips, where a pattern has them."""
    pieces = [piece for piece in pattern.pieces if piece.darts]
    if not pieces:
        return ()
    stitch = stitching.small if stitching.ring.cuts else stitching.ring
    names = joined([(title(piece.name).lower(),) for piece in pieces], " and ")
    open_ = any(
        dart.mouth(edge.path) is not None
        for piece in pieces
        for dart in piece.darts
        for edge in piece.edges
    )
    way = (
        "from the edge to the tip"
        if open_
        else "from the waist to one tip and from the waist to the other"
    )
    do = said(
        "Sew the waist darts of {} while each lies flat: fold a dart on its middle, right "
        "sides together, and sew {}, running off at the fold: {}. {}",
        names, way, stitch.words, KNOT,
    )  # fmt: skip
    return (
        Operation(
            WAIST_DARTS, "Sew the waist darts", do, Sort.SEAM, Stage.INSIDE, lies=Lies.FLAT,
            stitches=(stitch,), press=("Press the darts towards the centre.",),
        ),
    )  # fmt: skip
