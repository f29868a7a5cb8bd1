"""The overarm seam of a grown-on sleeve where front or back are raised or the shoulder is forward.

The neck point and the shoulder's end move; further down the sleeve lies as it did, so that it
stays as wide as asked. Every such seam is made as long as the plain one, at its hem.
"""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.parts.shape.curves import warped
from tapewise_core.parts.shape.grown_drawn import Arm
from tapewise_core.parts.shape.grown_lines import ROUNDED, overarm
from tapewise_core.parts.shape.shoulder_line import ShoulderLine

MOVED = 0.05
"""Nobody draws less [mm]."""

OF_SLEEVE = 0.9
"""What was moved runs out where the upper arm lies, and within this share of a shorter sleeve
(our choice)."""


class Overarm(Frozen):
    """The seam, and by how much its hem end lies nearer to the neck than the plain one [mm].

    ``runs_out`` is where it has come back to the plain line, None where it never left it.
    """

    path: Path
    shortened: float = 0.0
    runs_out: Point | None = None

    def hem(self, plain: Path, along: Vector) -> Path:
        """Return the hem that leaves the seam's own end as the plain one leaves its."""
        if abs(self.shortened) < 1e-9:
            return plain
        top, way = plain.start, plain.end - plain.start
        long = way.dot(way)

        def laid(point: Point) -> Point:
            t = min(max((point - top).dot(way) / long, 0.0), 1.0)
            return point + along * -(self.shortened * (1 - t * t * (3 - 2 * t)))

        return warped(plain, laid, 2)


def overarm_of(line: ShoulderLine, arm: Arm, along: Vector, hem_top: Point) -> Overarm:
    """Return the seam over a shoulder line, as long as the plain one."""
    plain = overarm(arm, along, hem_top)
    if (line.neck - arm.neck).length() + (line.end - arm.shoulder).length() < MOVED:
        return Overarm(plain)
    coming = (line.end - line.neck).unit()
    before = line.neck + coming * (line.length - min(ROUNDED, 0.8 * line.length))
    after = arm.shoulder + along * min(arm.place, OF_SLEEVE * (hem_top - arm.shoulder).length())
    turned = (coming + (after - line.end).unit()).unit()
    upper = ruled(line.neck, before).then(_bent(before, coming, line.end, turned))
    upper = upper.then(_bent(line.end, turned, after, along))
    rest = plain.length() - upper.length()
    end = after + along * rest
    return Overarm(upper.then(ruled(after, end)), (hem_top - end).dot(along), after)


def _bent(start: Point, leaving: Vector, end: Point, arriving: Vector) -> Path:
    """A gentle curve with the directions of both its ends."""
    third = (end - start).length() / 3
    return curved(start, start + leaving * third, end + arriving * -third, end)
