"""What is marked on a finished piece and measured on it, for its last steps' pictures."""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.units import Length


class NotchMark(Frozen):
    """A notch across a stitching line: where, which way is out, one stroke or two, its name."""

    at: Point
    out: Vector
    strokes: int
    name: str


class Across(Frozen):
    """A size of the finished piece from one point straight to another; ``outside`` the piece or
    through it."""

    start: Point
    end: Point
    by: Length
    outside: bool = False


class EdgeLength(Frozen):
    """How long an edge is, and where its middle lies and which way it runs there."""

    at: Point
    along: Vector
    by: Length


class MirroredCorner(Frozen):
    """How the corner of a hem is found: ``above`` lies on the cutting line of the edge beside,
    ``below`` is its image in the hem's fold line, which runs ``along`` from the ``corner``."""

    corner: Point
    along: Vector
    above: Point
    below: Point


class Finished(Frozen):
    """What the picture of a finished piece shows besides its lines."""

    sizes: tuple[Across, ...] = ()
    edges: tuple[EdgeLength, ...] = ()
    corner: MirroredCorner | None = None
