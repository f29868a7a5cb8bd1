"""Darts on pieces: a side dart that interrupts the side, waist darts inside it, what is eased."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.drafting.piece import Dart, Edge, Notch, Piece
from tapewise_core.drafting.seam import Fullness, Seam, SeamKind
from tapewise_core.geometry.outline import Margin
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.shape.bust_room import GATHERED_ON
from tapewise_core.parts.shape.side_dart import FrontSide
from tapewise_core.parts.shape.waist_darts import WaistDart
from tapewise_core.parts.two_sides import ALIKE, Sewn
from tapewise_core.sewing.darts import SIDE_DART

SIDES = ("side", "side_2")
"""The edges that a side seam walks: a dart lies between them."""

SEWN_FLAT = 2.0
"""A front longer than the back by no more is sewn as it is [mm] (common practice)."""

FROM, TO = 0.15, 0.75
"""Length is eased in between these shares of the way from the underarm to the waist (our
choice)."""

FULL = "start of the fullness", "end of the fullness"
"""The notches between which length is eased in or gathered."""


def side_edges(front: FrontSide, allowance: float) -> tuple[Edge, ...]:
    """Return a front's side from the underarm down, with the dart's legs where it has one.

    The cut line follows the mouth as it lies when the dart is folded, with its peak.
    """
    dart, lower = front.dart, front.lower
    if dart is None or lower is None:
        return (Edge("side", front.upper, allowance),)

    def leg(name: str, a: Point, b: Point, first: Point, last: Point) -> Edge:
        return Edge(name, ruled(a, b), 0.0, mouth=Margin(ruled(first, last), allowance))

    return (
        Edge("side", front.upper, allowance),
        leg("dart_upper", dart.upper, dart.tip, dart.upper, dart.peak),
        leg("dart_lower", dart.tip, dart.lower, dart.peak, dart.lower),
        Edge("side_2", lower, allowance),
    )


def open_side(front: FrontSide) -> Path:
    """Return a front's side with the dart's mouth ruled across: what a level is measured to."""
    if front.dart is None or front.lower is None:
        return front.upper
    return front.upper.then(ruled(front.dart.upper, front.dart.lower)).then(front.lower)


def fullness(front: FrontSide, back: float, waist: float, *, gathered: bool) -> Fullness | None:
    """Return what the front has more than the back, and where it is taken in.

    ``back`` is the back's length and ``waist`` the walked way to the waist on it [mm].
    """
    more = front.length - back
    if abs(more) <= SEWN_FLAT:
        return None
    if not gathered:
        return Fullness(more, FROM * waist, TO * waist)
    start = max((FROM + TO) / 2 * waist - GATHERED_ON / 2, FROM * waist)
    return Fullness(more, start, start + GATHERED_ON, gathered=True)


def full_notches(full: Fullness | None) -> tuple[Notch, ...]:
    """Return the back's marks for what the front has more."""
    if full is None:
        return ()
    return tuple(
        Notch("side", at, pair, 1) for at, pair in zip((full.start, full.end), FULL, strict=True)
    )


def beside(
    notches: tuple[Notch, ...], front: FrontSide, full: Fullness | None
) -> tuple[Notch, ...]:
    """Return the front's partners of the back's notches on the side, at the same walked places.

    A notch that would fall into a dart's mouth lies on the seam above or below it all the same:
    the dart is closed before the seam is walked.
    """
    upper, found = front.upper.length(), []
    for notch in notches:
        at = full.beside(notch.distance) if full else notch.distance
        below = front.lower is not None and at > upper
        edge, distance = ("side_2", at - upper) if below else ("side", at)
        found.append(replace(notch, edge=edge, distance=distance))
    return tuple(found)


def dart_seams(front: Piece, sewn: Sewn = ALIKE) -> tuple[Seam, ...]:
    """Return the seam that closes a side's dart, where the front has one."""
    upper, lower = sewn.run("front", ("dart_upper",)), sewn.run("front", ("dart_lower",), up=True)
    if not (upper[0].edges and front.has_edge(upper[0].edges[0])):
        return ()
    return (Seam(SeamKind.DART, upper, lower, making=SIDE_DART, where=sewn.where),)


def waist_dart(dart: WaistDart, name: str = "waist dart") -> Dart:
    """Return a waist dart as the piece keeps it."""
    return Dart(name, dart.path(), dart.intake)
