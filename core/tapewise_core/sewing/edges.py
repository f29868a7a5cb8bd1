"""Sewing edges that are turned up or back: hems and slits, never with an overlocker.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.sewing.work import Work
from tapewise_core.text.told import Told, said

TESTED = "Stretch it once by hand: no thread may pop."


def sleeve_hems(work: Work) -> tuple[Told, ...]:
    """The sleeves' hems."""
    return (
        said(
            "Turn up the sleeves' hems by {}, their mirrored corners matching the seams, press, "
            "and sew them {}.",
            work.at,
            work.stitching.hem,
        ),
    )


def hem(work: Work) -> tuple[Told, ...]:
    """A hem that hangs straight."""
    return (
        said(
            "Turn up the hem by {}, press, and sew it {}. {}", work.at, work.stitching.hem, TESTED
        ),
    )


def hung_hem(work: Work) -> tuple[Told, ...]:
    """The hem of a circle, which drops where the cloth hangs askew."""
    return (
        said(
            "Hang the skirt by its waist for 24 hours before hemming it: jersey drops most where "
            "its ribs run askew. Then level the hem from the floor with someone's help, and trim "
            "it."
        ),
        said(
            "Turn up the hem by {}, easing in the surplus of the curve, press, and sew it {}. {}",
            work.at,
            work.stitching.hem,
            TESTED,
        ),
    )


def slit(work: Work) -> tuple[Told, ...]:
    """The slits at the sides, finished before the hem and left open."""
    return (
        said(
            "The slits stay open: at the top of each, secure the end of the side seam with a few "
            "stitches across. Turn the slit's two edges back by {}, press, and sew each down, "
            "across the top as well: {}.",
            work.at,
            work.stitching.edge,
        ),
    )


def vent(work: Work) -> tuple[Told, ...]:
    """A vent whose underlaps both lie to one side, held down by a row of stitches."""
    return (
        said(
            "Neaten the vent's two long edges and turn them in by {}. Press both underlaps to the "
            "same side, and sew their slanted upper edges down together, from outside and through "
            "all layers: {}.",
            work.at,
            work.stitching.edge,
        ),
    )
