"""The lines of a grown-on sleeve: its overarm, its hem square to both seams, its underarm."""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import Point, Vector, crossing
from tapewise_core.parts.shape.grown_drawn import CORNER_DOWN, Arm, Sleeve

ROUNDED = 50.0
"""A lifted overarm is rounded so far to each side of the shoulder's end [mm] (our choice)."""

STRAIGHT_HEM = 0.4
"""The share of half a hem that is straight and square to the overarm (our choice)."""

SOFTENED = 30.0
"""A long sleeve's under-seam is bent over so far on either side of its bend [mm] (our choice)."""


class Lines(Frozen):
    """The sleeve's lines: ``overarm`` from the neck to the hem, ``hem`` from there to its corner,
    ``under`` from the corner to the middle of the underarm's curve, ``rounding`` from there to
    where the curve ends on the side seam's line; ``upper`` is the sleeve's girth at the arm [mm].
    """

    overarm: Path
    hem: Path
    under: Path
    rounding: Path
    upper: float


def lines(arm: Arm, sleeve: Sleeve) -> Lines:
    """Return the lines of a sleeve that was found."""
    hem = square_hem(sleeve.hem_top, sleeve.corner, _leaving(sleeve))
    straight = _under(hem.end, sleeve)
    first, last = arc(sleeve.begins, sleeve.line, sleeve.ends, sleeve.radius, sleeve.angle)
    under = straight.then(first) if straight else first
    return Lines(overarm(arm, sleeve.along, sleeve.hem_top), hem, under, last, _upper(arm, sleeve))


def overarm(arm: Arm, along: Vector, hem_top: Point) -> Path:
    """From the neck straight to the shoulder's end, over the bend of the lift, to the hem."""
    coming = (arm.shoulder - arm.neck).unit()
    if coming.angle_to(along) < 0.05:
        return ruled(arm.neck, hem_top)
    reach = min(ROUNDED, 0.8 * (arm.shoulder - arm.neck).length(), 0.8 * arm.length)
    before, after = arm.shoulder + coming * -reach, arm.shoulder + along * reach
    turn = curved(
        before, before.toward(arm.shoulder, 0.65), after.toward(arm.shoulder, 0.65), after
    )
    return ruled(arm.neck, before).then(turn).then(ruled(after, hem_top))


def square_hem(top: Point, corner: Point, leaving: Vector) -> Path:
    """Return half a hem from the overarm, square to it, to the under-seam, square to that.

    ``leaving`` is the way of the under-seam from the corner towards the body. The corner moves
    along the seam where the sleeve narrows; the hem ends at the moved corner.
    """
    across = (corner - top).unit()
    half = (corner - top).length()
    back = across.square() if across.square().dot(leaving) > 0 else -across.square()
    rise = max(leaving.dot(back), 0.2)
    taper = leaving.dot(across) / rise
    if abs(taper) < 1e-6:
        return ruled(top, corner)
    moved = corner + leaving * -(CORNER_DOWN * half * taper / rise)
    bends = top + across * (half * STRAIGHT_HEM)
    square = leaving.square() if leaving.square().dot(across) > 0 else -leaving.square()
    knee = crossing(bends, across, moved, square)
    assert knee is not None, "a hem square to both seams bends"
    bent = curved(bends, bends.toward(knee, 2 / 3), moved.toward(knee, 2 / 3), moved)
    return ruled(top, bends).then(bent)


def _leaving(sleeve: Sleeve) -> Vector:
    """The way of the under-seam from the hem's corner."""
    if (sleeve.bend - sleeve.corner).length() > 1e-6:
        return (sleeve.bend - sleeve.corner).unit()
    return sleeve.line


def _under(corner: Point, sleeve: Sleeve) -> Path | None:
    """The under-seam's straight part, softened at a long sleeve's bend; None if none."""
    bend, begins = sleeve.bend, sleeve.begins
    to_curve = (begins - bend).dot(sleeve.line)
    bends = (bend - sleeve.corner).length() > 1e-6 and sleeve.deeper > 0.05
    if not bends or to_curve <= 1:
        return ruled(corner, begins) if (begins - corner).dot(sleeve.line) > 1e-7 else None
    reach = min(SOFTENED, 0.9 * to_curve, 0.9 * (bend - corner).length())
    before = bend + (corner - bend).unit() * reach
    after = bend + sleeve.line * reach
    soft = curved(before, before.toward(bend, 0.65), after.toward(bend, 0.65), after)
    path = ruled(corner, before).then(soft)
    return path.then(ruled(after, begins)) if (begins - after).length() > 1e-7 else path


def arc(start: Point, way: Vector, end: Point, radius: float, angle: float) -> tuple[Path, Path]:
    """Return an arc in two halves, from a start in a direction to an end [mm, degrees].

    Each half's handles are 4/3 tan(angle / 8) radii long (exact at both ends and in the middle;
    off by less than 1e-4 radii over 80 degrees).
    """
    turn = math.radians(angle)
    grip = 4 / 3 * math.tan(turn / 4) * radius
    corner = start + way * (radius * math.tan(turn / 2))
    whole = curved(start, start + way * grip, end + (corner - end).unit() * grip, end)
    return whole.split(whole.length() / 2)


def _upper(arm: Arm, sleeve: Sleeve) -> float:
    """The sleeve's girth where the upper arm is measured, square to the overarm [mm]."""
    if not arm.is_long:
        return 2 * (sleeve.corner - sleeve.hem_top).length()
    if (sleeve.begins - sleeve.bend).dot(sleeve.line) >= 0:
        return arm.upper
    return max(arm.upper, 2 * (sleeve.begins - arm.shoulder).dot(sleeve.square))
