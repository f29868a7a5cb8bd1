"""A cut line drawn as a hand would: along each allowance, and on at the corner into the next."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from tapewise_core.geometry.cut_corners import LEVEL, Corner, corners, outer_lines
from tapewise_core.geometry.outline import Margin
from tapewise_core.geometry.point import Point

NEAR = 8
"""Two lines that meet inside a corner do so within so many points of it (our choice)."""

SHORT = 2.0
"""A square end reaches so far along its neighbour as its allowance times the sine of their turn;
beyond an edge shorter than two of that it might come out again (our choice)."""

APART = 1e-6
"""Lines that meet within so much of the corner itself only touch there [mm]."""

Line = list[Point]


def drawn_round(margins: Sequence[Margin]) -> Line | None:
    """Return the closed line round all allowances, clockwise; None where an edge is shorter than
    its allowance, or a corner is none that a hand would draw.

    It may cross itself, where an edge bends in more than its allowance can follow.
    """
    if len(margins) < 2 or any(edge.path.length() < edge.width for edge in margins):
        return None
    turns = corners(margins)
    lines = outer_lines(turns)
    for at, corner in enumerate(turns):
        on = (at + 1) % len(lines)
        met = _met(corner, lines[at], lines[on])
        if met is None:
            return None
        lines[at], lines[on] = met
    last = lines[-1].pop()
    whole = [last, *(point for line in lines for point in line)]
    for edge in margins:
        if edge.fold:
            whole = _kept_off(edge, whole)
    return whole


def _met(corner: Corner, line: Line, onward: Line) -> tuple[Line, Line] | None:
    """The lines outside two neighbours, joined at the corner between them."""
    edge, after, turn, folded = corner.edge, corner.after, corner.turn, corner.mirrored
    if edge.width <= 0 and after.width <= 0:
        return line, onward
    if turn <= -LEVEL:
        return None if folded else _crossed(corner, line, onward)
    if edge.width <= 0 or after.width <= 0:
        return [*line, corner.at], onward
    if folded or turn < LEVEL:
        return line, onward
    met = corner.tip
    return ([*line, met] if met else line), onward


def _crossed(corner: Corner, line: Line, onward: Line) -> tuple[Line, Line] | None:
    """Two lines up to and from where they cross inside a corner that points inwards; what an
    allowance ends with there, square to its edge, is part of its line."""
    edge, after = corner.edge, corner.after
    reach = max(edge.width, after.width) * -corner.turn
    if SHORT * reach > min(edge.path.length(), after.path.length()):
        return None
    back = [corner.at, *reversed(line)] if edge.width > 0 else line[::-1]
    ahead = [corner.at, *onward] if after.width > 0 else onward
    for i, j in _nearest_first(len(back) - 1, len(ahead) - 1):
        met = _meeting(back[i], back[i + 1], ahead[j], ahead[j + 1])
        if met and (met - corner.at).length() > APART:
            return [*back[:i:-1], met], [met, *ahead[j + 1 :]]
    return None


def _nearest_first(one: int, other: int) -> Iterator[tuple[int, int]]:
    """Pairs of stretches of two lines, those nearest to where both begin first."""
    for far in range(NEAR):
        pairs = (*((i, far) for i in range(far)), *((far, j) for j in range(far + 1)))
        yield from ((i, j) for i, j in pairs if i < one and j < other)


def _meeting(a: Point, b: Point, c: Point, d: Point) -> Point | None:
    """Where two stretches of straight line cross, or None."""
    x, y, u, v = b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y
    spanned = x * v - y * u
    if spanned == 0:
        return None
    t = ((c.x - a.x) * v - (c.y - a.y) * u) / spanned
    s = ((c.x - a.x) * y - (c.y - a.y) * x) / spanned
    return a.toward(b, t) if 0 <= t <= 1 and 0 <= s <= 1 else None


def _kept_off(fold: Margin, line: Line) -> Line:
    """A closed line without what lies beyond a fold's straight line."""
    start, inward = fold.path.start, (fold.path.end - fold.path.start).unit().square()
    x, y, least = inward.x, inward.y, start.x * inward.x + start.y * inward.y
    inside = [p.x * x + p.y * y - least for p in line]
    if min(inside) >= -APART:
        return line
    kept = []
    for at, (point, far) in enumerate(zip(line, inside, strict=True)):
        before = inside[at - 1]
        if (far < 0) != (before < 0):
            kept.append(line[at - 1].toward(point, before / (before - far)))
        if far >= 0:
            kept.append(point)
    return kept
