"""A path: segments joined end to end, walked from its start."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.segments import Cubic, Line, Pen, Segment

FLAT = 0.05
"""How far a flattened path may be from the true curve [mm]; half of what the record promises."""


class Path(Frozen):
    """Segments joined end to end, at least one."""

    segments: tuple[Segment, ...]

    @property
    def start(self) -> Point:
        """Where the path begins."""
        return self.segments[0].start

    @property
    def end(self) -> Point:
        """Where the path ends."""
        return self.segments[-1].end

    def draw(self, pen: Pen) -> None:
        """Draw the path with any pen."""
        pen.move_to(self.start)
        for segment in self.segments:
            segment.continue_with(pen)

    def length(self) -> float:
        """Return the walked length [mm]."""
        return sum(segment.length() for segment in self.segments)

    def leaving(self) -> Vector:
        """Return the direction in which the path leaves its start, one millimetre long."""
        return self.segments[0].direction(0.0)

    def arriving(self) -> Vector:
        """Return the direction of travel in which the path reaches its end."""
        return self.segments[-1].direction(1.0)

    def reversed(self) -> Path:
        """Return the same path walked the other way."""
        return Path(tuple(segment.reversed() for segment in reversed(self.segments)))

    def then(self, other: Path) -> Path:
        """Return this path followed by another that starts where it ends."""
        return Path(self.segments + other.segments)

    def moved(self, by: Vector) -> Path:
        """Return the path shifted."""
        return Path(tuple(segment.moved(by) for segment in self.segments))

    def placed(self, where: Callable[[Point], Point]) -> Path:
        """Return the path with its ends and handles where a rule puts them."""
        return Path(tuple(segment.placed(where) for segment in self.segments))

    def mirrored(self, a: Point, b: Point) -> Path:
        """Return the path's image in the line through two points."""
        return Path(tuple(segment.mirrored(a, b) for segment in self.segments))

    def at(self, distance: float) -> tuple[Point, Vector]:
        """Return the point at a walked distance [mm], and the direction of travel there."""
        for segment in self.segments[:-1]:
            length = segment.length()
            if distance <= length:
                break
            distance -= length
        else:
            segment = self.segments[-1]
        t = segment.parameter_at(distance)
        return segment.at(t), segment.direction(t)

    def split(self, distance: float) -> tuple[Path, Path]:
        """Return the two paths before and after a walked distance [mm] inside the path."""
        for index, segment in enumerate(self.segments):
            length = segment.length()
            if distance < length or index == len(self.segments) - 1:
                break
            distance -= length
        before, after = segment.split(segment.parameter_at(distance))
        head, tail = self.segments[:index], self.segments[index + 1 :]
        if distance <= 1e-9 and head:
            return Path(head), Path((segment, *tail))
        return Path((*head, before)), Path((after, *tail))

    def flattened(self, tolerance: float = FLAT) -> list[Point]:
        """Return points whose chords follow the path within a tolerance [mm]."""
        points = [self.start]
        for segment in self.segments:
            points += segment.flattened(tolerance)[1:]
        return points

    def beside(self, distance: float, tolerance: float) -> list[Point]:
        """Return the points of :meth:`flattened`, each a distance [mm] to the left of the walker;
        two where segments join."""
        return [p for part in self.segments for p in part.beside(distance, tolerance)]


def ruled(*points: Point) -> Path:
    """Return straight lines through two points or more."""
    return Path(tuple(map(Line, points, points[1:])))


def curved(start: Point, leave: Point, arrive: Point, end: Point) -> Path:
    """Return one cubic curve as a path."""
    return Path((Cubic(start, leave, arrive, end),))


def joined(paths: Iterable[Path]) -> Path:
    """Return several paths, each starting where the one before ends, as one."""
    return Path(tuple(segment for path in paths for segment in path.segments))
