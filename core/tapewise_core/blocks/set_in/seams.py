"""The seams of a set-in top, and the lines that run on across them."""

from __future__ import annotations

from tapewise_core.drafting.making import How, Making
from tapewise_core.drafting.piece import EdgeRun, Fullness, Join, Piece, Seam, SeamKind
from tapewise_core.parts.darts import SIDES
from tapewise_core.parts.two_sides import Sewn


def side_seams(sewn: Sewn, ratio: float, full: Fullness | None) -> tuple[Seam, ...]:
    """Return shoulder, sleeve, side and hem of one side of the body, or of both alike.

    ``ratio`` is the cap's length as a share of the armhole's, ``full`` what the front's side has
    more than the back's.
    """

    def both(kind: SeamKind, how: How, *edges: str, more: Fullness | None = None) -> Seam:
        first, second = sewn.run("front", edges), sewn.run("back", edges)
        making = Making(how)
        return Seam(kind, first, second, making=making, fullness=more, where=sewn.where)

    cap = (EdgeRun("sleeve", ("cap",)),)
    armhole = (*sewn.run("back", ("armhole",), up=True), *sewn.run("front", ("armhole",)))
    into = Making(How.SLEEVE_FLAT)
    return (
        both(SeamKind.SHOULDER, How.STAYED, "shoulder"),
        Seam(SeamKind.SLEEVE, cap, armhole, ratio, into, sewn.where),
        both(SeamKind.SIDE, How.SIDES, *SIDES, more=full),
        both(SeamKind.HEM, How.HEM, "hem"),
    )


def dart_seams(front: Piece, sewn: Sewn) -> tuple[Seam, ...]:
    """Return the seam that closes a side's dart, where the front has one."""
    upper, lower = sewn.run("front", ("dart_upper",)), sewn.run("front", ("dart_lower",), up=True)
    if not (upper[0].edges and front.has_edge(upper[0].edges[0])):
        return ()
    return (Seam(SeamKind.DART, upper, lower, making=Making(How.SIDE_DART), where=sewn.where),)


def sleeve_seams() -> tuple[Seam, Seam]:
    """Return the sleeve's own seam under the arm, and its hem."""
    under = (EdgeRun("sleeve", ("underarm",)),), (EdgeRun("sleeve", ("underarm_2",)),)
    hem = (EdgeRun("sleeve", ("sleeve_hem",)),)
    return (
        Seam(SeamKind.SIDE, *under, making=Making(How.SIDES), where="sleeve"),
        Seam(SeamKind.SLEEVE_HEM, hem, (), making=Making(How.SLEEVE_HEM)),
    )


def side_joins(front: Piece, sewn: Sewn) -> tuple[Join, ...]:
    """Return the lines of one side that run on across a seam.

    An armhole must be one true curve [conover, volume 9].
    """
    last = "side_2" if front.has_edge("dart_upper") else "side"
    where = f", {sewn.where}" if sewn.where else ""

    def across(name: str, line: str, beside: str, front_beside: str | None = None) -> Join:
        first, second = (
            (piece, sewn.name(piece, line), sewn.name(piece, edge))
            for piece, edge in (("back", beside), ("front", front_beside or beside))
        )
        return Join(f"{name}{where}", first, second)

    return (
        across("neckline across the shoulder", "neckline", "shoulder"),
        across("armhole across the shoulder", "armhole", "shoulder"),
        across("armhole across the side seam", "armhole", "side"),
        across("hem across the side seam", "hem", "side", last),
    )


def sleeve_joins() -> tuple[Join, Join]:
    """Return the sleeve's lines that run on across its seam."""
    return (
        _sleeve("cap across the underarm", "cap"),
        _sleeve("sleeve hem across the underarm", "sleeve_hem"),
    )


def _sleeve(name: str, line: str) -> Join:
    return Join(name, ("sleeve", line, "underarm"), ("sleeve", line, "underarm_2"))
