"""Where both side seams end: as long as each other, and where the hem meets them square."""

from __future__ import annotations

from collections.abc import Callable

from msgspec.structs import replace

from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.errors import DraftError
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.crossings import distance_at_height, point_at_height
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.parts.darts import open_side
from tapewise_core.parts.hem import CURVED_PART
from tapewise_core.parts.shape.curves import warped
from tapewise_core.parts.shape.set_in import SetIn
from tapewise_core.parts.shape.set_in_drawn import SetInWish
from tapewise_core.parts.shape.side_dart import FrontSide, SideDart
from tapewise_core.text.told import OptionKey, said

LEAST_SIDE = 20.0
"""The shortest side seam that is drawn [mm] (our choice); the checks ask for more."""


class Sides(Frozen):
    """Back and front side seam down to the hem."""

    back: Path
    front: FrontSide


def ended(drawn: SetIn, style: SetInStyle) -> Sides:
    """Return both sides cut off at the hem; the same length comes off both.

    A fitting may have found the sides to end higher, or lower.

    Near a leaning side seam the hem rises so that it meets the seam square and hangs level: by
    its last part times the lean (exact).
    """
    rise, length = style.hem.rise.mm if style.hem.curved else 0.0, style.trunk.length
    at = _place(drawn.back_side, length.mm - rise) - style.fitted.sides_higher
    if at < LEAST_SIDE:
        words = "The hem at {} below the nape would lie above the underarm; choose a longer {}."
        raise DraftError(said(words, length, OptionKey("body-length")))
    return _cut(drawn, at)


def levelled_ends(drawn: SetIn, style: SetInStyle) -> Sides:
    """Return both sides cut off where they are as long below the hip line as the fold is: under a
    flare such a hem hangs level (exact)."""
    hip = drawn.seam.at.hip
    assert hip is not None, "what flares has a hip"
    at = distance_at_height(drawn.back_side, hip)
    assert at is not None, "its side passes the hip line"
    return _cut(drawn, at + style.trunk.length.mm - hip - style.fitted.sides_higher)


def _cut(drawn: SetIn, at: float) -> Sides:
    off = drawn.back_side.length() - at
    back = drawn.back_side.split(at)[0] if off > 1e-6 else drawn.back_side
    return Sides(back, _shortened(drawn.front_side, off))


def _place(side: Path, hem: float) -> float:
    """How far along a side its end lies, found by closing in [mm]; 0 above its start."""
    at, whole = distance_at_height(side, hem), side.length()
    at = whole if at is None and hem > side.start.y else at or 0.0
    for _ in range(6):
        point, along = side.at(at)
        found = distance_at_height(side, hem - point.x * CURVED_PART * along.x / along.y)
        at = whole if found is None else found
    return at


def _shortened(front: FrontSide, off: float) -> FrontSide:
    if off <= 1e-6:
        return front
    last = front.lower or front.upper
    kept, _ = last.split(last.length() - off)
    return replace(front, lower=kept) if front.lower else replace(front, upper=kept)


EndsOf = Callable[[SetIn, SetInStyle], Sides]
"""Cuts both sides off where the hem meets them."""


def lean(side: Path) -> float:
    """Return how a side leans at its end, outwards per downwards."""
    along = side.arriving()
    return along.x / along.y


def at_bust(sides: Sides, drawn: SetIn, wish: SetInWish) -> Sides:
    """Return the sides with the front's bust line as wide as asked.

    A dart's mouth and an eased side leave it a millimetre or so off; it is moved by that, nothing
    at the underarm and at the waist (our choice).
    """
    at, lower, front = drawn.seam.at, wish.room.lower, sides.front
    if front.dart is None and not lower and not drawn.swing:
        return sides
    level = at.bust + (
        0.0 if front.dart else smooth(at.bust, front.upper.start.y, at.waist) * lower
    )
    found, back = point_at_height(open_side(front), level), point_at_height(sides.back, at.bust)
    if found is None or back is None:
        return sides
    off = 2 * wish.quarters.bust - back.x - found.x
    top, waist = front.upper.start.y, at.waist + lower
    if front.dart is None:
        path = warped(front.upper, _push(off, top, level, waist), 2)
        return replace(sides, front=replace(front, upper=path))
    return replace(sides, front=_pushed(front, off, waist))


def _push(off: float, top: float, level: float, waist: float) -> Callable[[Point], Point]:
    """Out by ``off`` at a level, nothing at the ends [mm]."""

    def moved(point: Point) -> Point:
        end = top if point.y < level else waist
        return point + Vector(off * smooth(point.y, end, level), 0)

    return moved


def smooth(y: float, start: float, end: float) -> float:
    """Return how far a height is on its way from one to another, as an S from 0 to 1."""
    t = min(max((y - start) / (end - start), 0.0), 1.0) if end != start else 1.0
    return t * t * (3 - 2 * t)


def _pushed(front: FrontSide, off: float, waist: float) -> FrontSide:
    """A side with a dart, the dart moved whole."""
    dart, lower = front.dart, front.lower
    if dart is None or lower is None:
        return front
    top, by = front.upper.start.y, Vector(off, 0)
    upper = warped(front.upper, _push(off, top, dart.upper.y, waist), 2)
    below = warped(lower, _push(off, top, dart.lower.y, waist), 2)
    moved = SideDart(dart.upper + by, dart.lower + by, dart.tip + by, dart.peak + by)
    return FrontSide(upper, below, moved, front.eased)
