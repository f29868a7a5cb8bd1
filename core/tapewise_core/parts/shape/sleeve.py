"""A set-in sleeve below its cap: seams of one length, and a hem bent to meet them square."""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.segments import Cubic
from tapewise_core.parts.shape.cap import Cap
from tapewise_core.parts.shape.least import HAIR

STRAIGHT_HEM, DROPPED, ROUND = 0.4, 0.3, 2 / 3
"""A hem is straight for 0.4 of its half width; on a sleeve that narrows its corner moves on by
0.3 × half width × tan taper; handles two thirds long, a parabola's (our choice)."""


class Sleeve(Frozen):
    """A set-in sleeve below its cap: under-seams of one length, and the hem bent square to them.

    The seams run from the cap's corners; the hem from the back seam's end to the front's.
    """

    cap: Cap
    back_seam: Path
    front_seam: Path
    hem: Path


def sleeve(solved: Cap, length: float, hem: float) -> Sleeve:
    """Return a sleeve so long from its crown, with a hem so wide [mm].

    Both seams are narrowed by the same, so that they are equally long (exact).
    """
    corners, bent = _corners(solved), sleeve_hem(solved, length, hem)
    return Sleeve(solved, ruled(corners[0], bent.start), ruled(corners[1], bent.end), bent)


def sleeve_hem(solved: Cap, length: float, width: float) -> Path:
    """Return the hem alone, so far from the crown and so wide before it is bent [mm]."""
    inset = (solved.width - width) / 2
    middle = Point(solved.width / 2, length)
    at_back, at_front = _corners(solved)
    back = bent_hem(middle, Point(inset, length), at_back)
    front = bent_hem(middle, Point(solved.width - inset, length), at_front)
    return back.reversed().then(front)


def _corners(solved: Cap) -> tuple[Point, Point]:
    """The cap's corners at the back and at the front, from which the seams run down."""
    return Point(0, solved.height), Point(solved.width, solved.height)


def bent_hem(middle: Point, corner: Point, seam_start: Point, wide: float | None = None) -> Path:
    """Return half a hem from the sleeve's middle: straight, then bent to meet the seam square.

    ``corner`` is where the straight hem would end, ``seam_start`` the under-seam's other end.
    The hem's end lies on the under-seam or on its continuation, moved on as for a half so ``wide``
    [mm], its own width if none is given.
    """
    out = corner - middle
    half, across = out.length(), out.unit()
    seam = (corner - seam_start).unit()
    down = across.square() if across.square().dot(seam) > 0 else -across.square()
    taper = -seam.dot(across) / max(seam.dot(down), 0.2)
    moved = DROPPED * (half if wide is None else wide) * taper / max(seam.dot(down), 0.2)
    if abs(moved) < HAIR:
        return ruled(middle, corner)
    end = corner + seam * moved
    first = middle + across * (STRAIGHT_HEM * half)
    return ruled(middle, first).then(Path((_bent(first, across, end, seam),)))


def _bent(first: Point, across: Vector, end: Point, seam: Vector) -> Cubic:
    """From the straight part to the seam, square to it."""
    square = seam.square()
    square = square if square.dot(across) > 0 else -square
    away = across.square()
    reach = (end - first).dot(away) / square.dot(away)
    corner = end + square * -reach
    return Cubic(first, first.toward(corner, ROUND), end.toward(corner, ROUND), end)
