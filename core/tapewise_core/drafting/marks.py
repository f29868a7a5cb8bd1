"""What is marked on a finished piece and measured on it, for its last steps' pictures."""

from __future__ import annotations

from tapewise_core.frozen import dataclass
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.units import Length


@dataclass(frozen=True, slots=True)
class NotchMark:
    """A notch across a stitching line: where, which way is out, one stroke or two, its name."""

    at: Point
    out: Vector
    strokes: int
    name: str


@dataclass(frozen=True, slots=True)
class Across:
    """A size of the finished piece from one point straight to another; ``outside`` the piece or
    through it."""

    start: Point
    end: Point
    by: Length
    outside: bool = False


@dataclass(frozen=True, slots=True)
class EdgeLength:
    """How long an edge is, and where its middle lies and which way it runs there."""

    at: Point
    along: Vector
    by: Length


@dataclass(frozen=True, slots=True)
class MirroredCorner:
    """How the corner of a hem is found: ``above`` lies on the cutting line of the edge beside,
    ``below`` is its image in the hem's fold line, which runs ``along`` from the ``corner``."""

    corner: Point
    along: Vector
    above: Point
    below: Point


@dataclass(frozen=True, slots=True)
class Finished:
    """What the picture of a finished piece shows besides its lines."""

    sizes: tuple[Across, ...] = ()
    edges: tuple[EdgeLength, ...] = ()
    corner: MirroredCorner | None = None
