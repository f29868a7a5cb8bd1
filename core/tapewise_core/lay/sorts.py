"""What is to be laid on a cloth: each place a piece takes, and the ways it may lie there."""

from __future__ import annotations

from collections.abc import Iterator
from enum import Enum
from typing import NamedTuple

import numpy as np

from tapewise_core.drafting.cloth import Cloth, Spread
from tapewise_core.drafting.extent import least_across, lies_across_paper
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.unfolding import opens
from tapewise_core.lay.lying import Floats, Way, lines_of
from tapewise_core.lay.profile import STEP, Profile, profile

LEVELS = ("waist", "bust", "hip")
"""By which level a cloth's pattern is matched, the first that a piece has (common practice)."""


class Side(Enum):
    """Where on the cloth's width a way of lying is tied to."""

    ANY = "any"
    LEFT = "left"
    RIGHT = "right"


class Choice(NamedTuple):
    """One way a piece may lie: its profile, which side it is tied to, and how far down its place
    the line is by which the cloth's pattern is matched [mm]."""

    way: Way
    profile: Profile
    side: Side
    matched: float


class Sort(NamedTuple):
    """One place to be found for a piece, whole or as a ``half`` on the cloth's fold; ``turns``
    are its choices with the grain along the cloth, then those across it if it may lie so."""

    piece: Piece
    half: bool
    turns: tuple[tuple[Choice, ...], ...]

    @property
    def tall(self) -> float:
        """The least it takes of the length [mm]."""
        return min((one.profile.tall for turn in self.turns for one in turn), default=0.0)

    @property
    def wide(self) -> float:
        """The least it takes of the width [mm]."""
        return min((one.profile.wide for turn in self.turns for one in turn), default=0.0)


def sorts(pattern: Pattern, cloth: Cloth) -> list[Sort]:
    """Return every place that the pieces take on a cloth."""
    return [sort for piece in pattern.pieces for sort in _places(piece, cloth)]


def least_wide(piece: Piece, cloth: Cloth) -> float:
    """Return how much of a cloth's whole width a piece takes at least [mm]: in two layers twice
    what it takes of one."""
    if cloth.layers == 1:
        return least_across(piece)
    return max(sort.wide for sort in _places(piece, cloth)) * cloth.layers


def _places(piece: Piece, cloth: Cloth) -> Iterator[Sort]:
    if cloth.layers == 1:
        made = {image: _sort(piece, cloth, (image,)) for image in {False, piece.mirrored}}
        for number in range(piece.count):
            yield made[piece.mirrored and number % 2 == 1]
    else:
        on_fold = opens(piece)
        pairs = not on_fold and (piece.mirrored or _even(piece))
        one = _sort(piece, cloth, (False, True), half=on_fold)
        yield from [one] * ((piece.count + 1) // 2 if pairs else piece.count)


def _even(piece: Piece) -> bool:
    """Whether a piece is its own image, so that two layers give the same piece twice."""
    (line,) = lines_of(piece, half=True)
    image = line * (1, -1) if lies_across_paper(piece) else line * (-1, 1)
    a, b = profile(line), profile(image)
    return a.low.shape == b.low.shape and bool(
        np.allclose(a.low, b.low, atol=STEP) and np.allclose(a.high, b.high, atol=STEP)
    )


def _sort(piece: Piece, cloth: Cloth, images: tuple[bool, ...], *, half: bool = False) -> Sort:
    """One place, with the ways that grain, nap and fold allow."""
    base = 1 if lies_across_paper(piece) else 0
    tries, outer = (base, base + 1) if piece.turnable else (base,), _outer(piece, half=half)
    turns = tuple(
        tuple(
            choice
            for quarters in ((turn,) if cloth.nap else (turn, turn + 2))
            for image in images
            for choice in _choices(piece, outer, cloth, Way(image, quarters), half=half)
        )
        for turn in tries
    )
    return Sort(piece, half, tuple(map(_told_apart, filter(None, turns))))


def _outer(piece: Piece, *, half: bool) -> Floats:
    """The outermost of a piece's lines, one row of x and y for each point."""
    return max(lines_of(piece, half=half), key=lambda line: float(np.prod(np.ptp(line, 0))))


def _told_apart(choices: tuple[Choice, ...]) -> tuple[Choice, ...]:
    """The choices without those that look like one before."""
    kept: list[Choice] = []
    for one in choices:
        if not any(_alike(one, other) for other in kept):
            kept.append(one)
    return tuple(kept)


def _alike(one: Choice, other: Choice) -> bool:
    return (
        one.side is other.side
        and one.matched == other.matched
        and np.array_equal(one.profile.low, other.profile.low)
        and np.array_equal(one.profile.high, other.profile.high)
    )


def _choices(
    piece: Piece, outer: Floats, cloth: Cloth, way: Way, *, half: bool
) -> Iterator[Choice]:
    """The way if it can be; a half only with its fold on a fold of the cloth."""
    points = way.laid(outer)
    side = _side(piece, way, points[:, 0]) if half else Side.ANY
    if side is None or (side is Side.RIGHT and cloth.spread is not Spread.TUBE):
        return
    phase = 0.0
    if side is Side.RIGHT:
        phase = (room(cloth) - float(np.ptp(points[:, 0]))) % STEP
    yield Choice(way, profile(points, phase), side, _matched(piece, way, points[:, 1]))


def _side(piece: Piece, way: Way, across: Floats) -> Side | None:
    """On which side of a half its fold lies when it is laid a way; None where it lies across."""
    fold = next(edge.path for edge in piece.edges if edge.fold)
    ends = np.array([(point.x, point.y) for point in (fold.start, fold.end)])
    (x, y), (other_x, other_y) = way.laid(ends)
    if abs(x - other_x) > abs(y - other_y):
        return None
    return Side.LEFT if x - across.min() < across.max() - x else Side.RIGHT


def _matched(piece: Piece, way: Way, along: Floats) -> float:
    """How far down its place a piece's line for matching lies: a body level, or its lower end."""
    level = next((piece.levels[name] for name in LEVELS if name in piece.levels), None)
    if level is None or way.quarters % 2:
        return float(np.ptp(along))
    return float((level if way.quarters % 4 == 0 else -level) - along.min())


def room(cloth: Cloth) -> float:
    """Return how much of the laid cloth's width pieces may take [mm]."""
    return (cloth.laid_width - cloth.selvedges) / cloth.layers
