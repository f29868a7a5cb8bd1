"""The seams of a set-in top, and the lines that run on across them."""

from __future__ import annotations

from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import EdgeRun, Fullness, Join, Seam, SeamKind
from tapewise_core.parts.cowl_way import shoulders_of
from tapewise_core.parts.darts import SIDES
from tapewise_core.parts.hem import EDGE_OF
from tapewise_core.parts.neck_style import NeckStyle
from tapewise_core.parts.two_sides import Sewn
from tapewise_core.sewing.closing import SIDES_CLOSED
from tapewise_core.sewing.edges import SLEEVE_HEM, SLIT, TURNED_UP
from tapewise_core.sewing.sleeves import SLEEVE_FLAT, SLEEVE_ROUND, SLEEVE_SEAM


def cap_seam(sewn: Sewn, ratio: float, begins: float = 0.0, *, flat: bool) -> Seam:
    """Return the sleeve's seam into one armhole, or into both alike.

    ``ratio`` is the cap's length as a share of the armhole's, ``begins`` how far up the back
    armhole the sleeve's seam meets it [mm]; ``flat`` sleeves go in before the sides are closed.
    """
    cap = (EdgeRun("sleeve", ("cap",)),)
    armhole = (*sewn.run("back", ("armhole",), up=True), *sewn.run("front", ("armhole",)))
    into = SLEEVE_FLAT if flat else SLEEVE_ROUND
    return Seam(SeamKind.SLEEVE, cap, armhole, ratio, into, sewn.where, begins=begins)


def side_seams(
    sewn: Sewn, neck: NeckStyle, full: Fullness | None, *, slit: bool
) -> tuple[Seam, Seam, tuple[Seam, ...]]:
    """Return shoulder, side, and what is turned at the hem, of one side of the body, or of both
    alike; ``full`` is what the front's side has more than the back's, ``neck`` decides how
    shoulders are sewn."""
    slits = (sewn.seam(SeamKind.SLIT, SLIT, "split"),) if slit else ()
    return (
        sewn.seam(SeamKind.SHOULDER, shoulders_of(neck), "shoulder"),
        sewn.seam(SeamKind.SIDE, SIDES_CLOSED, *SIDES, full=full),
        (*slits, sewn.seam(SeamKind.HEM, TURNED_UP, "hem")),
    )


def sleeve_seams(*, flat: bool) -> tuple[Seam, Seam]:
    """Return the sleeve's own seam under the arm, and its hem."""
    under = (EdgeRun("sleeve", ("underarm",)),), (EdgeRun("sleeve", ("underarm_2",)),)
    hem = (EdgeRun("sleeve", ("sleeve_hem",)),)
    closed = SIDES_CLOSED if flat else SLEEVE_SEAM
    return (
        Seam(SeamKind.SIDE, *under, making=closed, where="sleeve"),
        Seam(SeamKind.SLEEVE_HEM, hem, (), making=SLEEVE_HEM),
    )


def side_joins(front: Piece, sewn: Sewn, lower: str) -> tuple[Join, ...]:
    """Return the lines of one side that run on across a seam, its ``lower`` edge among them.

    An armhole must be one true curve [conover, volume 9].
    """
    last, edge = "side_2" if front.has_edge("dart_upper") else "side", EDGE_OF[lower]
    below = ("split", "split") if front.has_edge("split") else ("side", last)
    return (
        sewn.join("neckline across the shoulder", "neckline", "shoulder"),
        sewn.join("armhole across the shoulder", "armhole", "shoulder"),
        sewn.join("armhole across the side seam", "armhole", "side"),
        sewn.join(f"{edge} across the side seam", edge, *below),
    )


def sleeve_joins() -> tuple[Join, Join]:
    """Return the sleeve's lines that run on across its seam."""
    return (
        _sleeve("cap across the underarm", "cap"),
        _sleeve("sleeve hem across the underarm", "sleeve_hem"),
    )


def _sleeve(name: str, line: str) -> Join:
    return Join(name, ("sleeve", line, "underarm"), ("sleeve", line, "underarm_2"))
