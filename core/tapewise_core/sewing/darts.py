"""Sewing darts: flat, before any seam that crosses them is closed.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.labels import title
from tapewise_core.drafting.piece import Pattern
from tapewise_core.sewing.work import Work
from tapewise_core.text.told import Told, joined, said


def side(work: Work) -> tuple[Told, ...]:
    """Side darts, from the mouth to the tip, pressed down."""
    return (
        said(
            "Sew the side darts: fold the front right sides together so that the dart's legs lie "
            "on each other, and sew from the side edge to the tip, running off at the fold, "
            "without going back over it: {}. Knot the threads, and press the dart downwards.",
            work.stitching.seam,
        ),
    )


def waist(pattern: Pattern) -> tuple[Told, ...]:
    """Waist darts, from their middle to both tips, where a pattern has them."""
    pieces = [piece for piece in pattern.pieces if piece.darts]
    if not pieces:
        return ()
    names = joined([(title(piece.name).lower(),) for piece in pieces], " and ")
    return (
        said(
            "Sew the waist darts of {} while each lies flat: fold a dart on its middle, right "
            "sides together, and sew from the waist to one tip and from the waist to the other, "
            "running off at the fold. Knot the threads, and press the darts towards the centre.",
            names,
        ),
    )
