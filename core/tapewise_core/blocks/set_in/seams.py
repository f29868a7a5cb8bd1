"""The seams of a set-in top, and the lines that run on across them."""

from __future__ import annotations

from tapewise_core.drafting.making import How, Making
from tapewise_core.drafting.piece import EdgeRun, Fullness, Join, Piece, Seam, SeamKind
from tapewise_core.parts.darts import SIDES, dart_seam


def seams(
    front: Piece, ratio: float, neck: tuple[Seam, ...], full: Fullness | None
) -> tuple[Seam, ...]:
    """Return all seams; ``ratio`` is the cap's length as a share of the armhole's."""

    def both(kind: SeamKind, how: How, *edges: str, more: Fullness | None = None) -> Seam:
        first, second = EdgeRun("front", edges), EdgeRun("back", edges)
        return Seam(kind, (first,), (second,), making=Making(how), fullness=more)

    behind = EdgeRun("back", ("armhole",), backwards=True)
    armhole = (behind, EdgeRun("front", ("armhole",)))
    under = (EdgeRun("sleeve", ("underarm",)),), (EdgeRun("sleeve", ("underarm_2",)),)
    cap, hem = (EdgeRun("sleeve", ("cap",)),), (EdgeRun("sleeve", ("sleeve_hem",)),)
    darts = (dart_seam(),) if front.has_edge("dart_upper") else ()
    return (
        *darts,
        both(SeamKind.SHOULDER, How.STAYED, "shoulder"),
        *neck,
        Seam(SeamKind.SLEEVE, cap, armhole, ratio, Making(How.SLEEVE_FLAT)),
        both(SeamKind.SIDE, How.SIDES, *SIDES, more=full),
        Seam(SeamKind.SIDE, *under, making=Making(How.SIDES), where="sleeve"),
        Seam(SeamKind.SLEEVE_HEM, hem, (), making=Making(How.SLEEVE_HEM)),
        both(SeamKind.HEM, How.HEM, "hem"),
    )


def joins(front: Piece) -> tuple[Join, ...]:
    """Return the lines that run on across a seam.

    An armhole must be one true curve [conover, volume 9].
    """
    last = "side_2" if front.has_edge("side_2") else "side"
    return (
        _across("neckline across the shoulder", "neckline", "shoulder"),
        _across("armhole across the shoulder", "armhole", "shoulder"),
        _across("armhole across the side seam", "armhole", "side"),
        _sleeve("cap across the underarm", "cap"),
        _sleeve("sleeve hem across the underarm", "sleeve_hem"),
        Join("hem across the side seam", ("back", "hem", "side"), ("front", "hem", last)),
    )


def _across(name: str, line: str, side: str) -> Join:
    return Join(name, ("back", line, side), ("front", line, side))


def _sleeve(name: str, line: str) -> Join:
    return Join(name, ("sleeve", line, "underarm"), ("sleeve", line, "underarm_2"))
