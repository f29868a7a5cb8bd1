"""The seams of a raglan top, and the lines that run on across them."""

from __future__ import annotations

from tapewise_core.blocks.set_in.seams import side_seams
from tapewise_core.drafting.making import Making
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import EdgeRun, Fullness, Join, Seam, SeamKind
from tapewise_core.garments.raglan_top.sleeve import BACK, FRONT
from tapewise_core.parts.neck_style import NeckStyle
from tapewise_core.parts.two_sides import ALIKE
from tapewise_core.sewing.closing import SIDES_CLOSED
from tapewise_core.sewing.edges import SLEEVE_HEM
from tapewise_core.sewing.raglan import OVERARM, RAGLAN


def seams(
    neck: NeckStyle, necks: tuple[Seam, ...], darts: tuple[Seam, ...], full: Fullness | None
) -> tuple[Seam, ...]:
    """Return the seams in the order in which they are told: overarms and raglan seams before the
    ``necks``, the neckline's own."""
    _, side, hems = side_seams(ALIKE, neck, full, slit=False)
    ends = tuple(EdgeRun(name, ("sleeve_hem",)) for name in (BACK, FRONT))
    return (
        *darts,
        _halves(SeamKind.OVERARM, "overarm", OVERARM),
        _raglan("back", BACK, up=True),
        _raglan("front", FRONT),
        *necks,
        side,
        _halves(SeamKind.SIDE, "underarm", SIDES_CLOSED, "sleeve"),
        Seam(SeamKind.SLEEVE_HEM, ends[:1], ends[1:], making=SLEEVE_HEM),
        *hems,
    )


def _halves(kind: SeamKind, edge: str, how: Making, where: str = "") -> Seam:
    """A seam of the sleeve's front half and its back half, which run the other way round."""
    first, second = EdgeRun(FRONT, (edge,), 1, True), EdgeRun(BACK, (edge,))
    return Seam(kind, (first,), (second,), making=how, where=where)


def _raglan(piece: str, sleeve: str, *, up: bool = False) -> Seam:
    """A sleeve's half and the body's; the back half's edge is walked ``up`` to the neck."""
    first, second = EdgeRun(sleeve, ("raglan_line",), 1, up), EdgeRun(piece, ("raglan_line",))
    return Seam(SeamKind.RAGLAN, (first,), (second,), making=RAGLAN, where=piece)


def joins(front: Piece) -> tuple[Join, ...]:
    """Return the lines that run on across a seam: the neckline over three on each side."""
    last = "side_2" if front.has_edge("dart_upper") else "side"
    return (
        _neck("back raglan seam", ("back", "raglan_line"), (BACK, "raglan_line")),
        _neck("overarm", (BACK, "overarm"), (FRONT, "overarm")),
        _neck("front raglan seam", ("front", "raglan_line"), (FRONT, "raglan_line")),
        ALIKE.join("raglan seam across the side seam", "raglan_line", "side"),
        ALIKE.join("hem across the side seam", "hem", "side", last),
        _sleeve("raglan seam across the underarm", "raglan_line", "underarm"),
        _sleeve("sleeve hem across the underarm", "sleeve_hem", "underarm"),
        _sleeve("sleeve hem across the overarm", "sleeve_hem", "overarm"),
    )


def _neck(where: str, one: tuple[str, str], other: tuple[str, str]) -> Join:
    first, second = ((piece, "neckline", beside) for piece, beside in (one, other))
    return Join(f"neckline across the {where}", first, second)


def _sleeve(name: str, line: str, beside: str) -> Join:
    return Join(name, (BACK, line, beside), (FRONT, line, beside))
