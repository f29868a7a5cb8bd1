"""On which side of a line something lies, in a word that a glance at the paper settles."""

from __future__ import annotations

from tapewise_core.geometry.point import Vector


def side_word(way: Vector) -> str:
    """Return the word for a way square to a line: left or right of one that runs down, above or
    below one that runs across.

    >>> side_word(Vector(1, 0.2)), side_word(Vector(0.1, -1))
    ('to the right', 'upwards')
    """
    if abs(way.x) >= abs(way.y):
        return "to the right" if way.x > 0 else "to the left"
    return "downwards" if way.y > 0 else "upwards"


def beside_word(line: Vector, way: Vector) -> str:
    """Return the word for the side of a line on which a way leads off."""
    square = line.square()
    return side_word(square if way.dot(square) > 0 else -square)
