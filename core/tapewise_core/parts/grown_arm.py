"""A grown-on sleeve for a body and what was asked of it: found, or a cap, or neither."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from functools import lru_cache

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.measures.body import Body
from tapewise_core.parts.arm import arm_at, arm_length
from tapewise_core.parts.figure_style import FigureStyle
from tapewise_core.parts.grown_body import BodyShoulder, SideOf, below, leans
from tapewise_core.parts.shape.grown_cap import Cap, grown_cap
from tapewise_core.parts.shape.grown_drawn import LONG, PLACE_ROOM, Arm, Sleeve
from tapewise_core.parts.shape.grown_lines import Lines, lines
from tapewise_core.parts.shape.grown_sleeve import grown_sleeve
from tapewise_core.parts.shape.levels import LEAST_BELOW_UNDERARM
from tapewise_core.parts.shape.reach import reach
from tapewise_core.parts.shape.side_seam import SideSeam
from tapewise_core.units import Length, mm

PLACE = 0.25
"""Where along the arm, from the shoulder's end, its fullest part is looked after (our choice)."""

OFF = 0.3
"""A bent hem comes out shorter than its chord, and a softened bend moves the seam; a sleeve that
is off by more is looked for again [mm]."""


MOST_FLARE = 0.5
"""How much a sleeve widens on each side for each length of its seam, at the most (our choice): its
hem could not be bent square to seams that slant more."""

LEAST_WAY = 0.2
"""The share of a sleeve's taper that a correction at its upper end is worked out over, at the
least (our choice): a shorter one would swing the seam too far."""


class SleeveWish(Frozen):
    """What is asked of a sleeve [mm]: its length, and its ease at the arm and at the hem."""

    length: float
    ease: float
    hem_ease: float


def arm_of(
    body: Body,
    figure: FigureStyle,
    shoulder: BodyShoulder,
    wish: SleeveWish,
    flatter: float = 0.0,
) -> Arm:
    """Return the arm: a sleeve that ends near its fullest part is as wide at the hem.

    ``flatter`` is how much nearer to level a fitting laid it [degrees].
    """
    upper = body["upper_arm"].mm + wish.ease + figure.full_arm.mm
    place = place_of(body)
    hem = upper
    if wish.length > place + LONG:
        hem = hem_girth(body, wish).mm
    fall = shoulder.fall
    return Arm(shoulder.neck, shoulder.end, fall, wish.length, upper, hem, place, flatter)


def place_of(body: Body) -> float:
    """Return how far past the shoulder's end the upper arm's place lies [mm]."""
    return arm_length(body).mm * PLACE


def hem_girth(body: Body, wish: SleeveWish) -> Length:
    """Return the arm's girth at the sleeve's hem with its ease, or what its seams may slant to."""
    asked = arm_at(body, wish.length) + mm(wish.hem_ease).called("ease at the hem")
    way = wish.length - place_of(body) - PLACE_ROOM
    most = body["upper_arm"].mm + wish.ease + 2 * MOST_FLARE * max(way, 0.0)
    if asked.mm <= most:
        return asked
    return mm(most).called("as wide as its seams may slant to")


class Grown(Frozen):
    """A grown-on sleeve on its body.

    Either ``sleeve`` with its ``lines`` or ``cap`` is there. ``seam`` is the whole side seam
    from the underarm: the sleeve's rounding first. ``line`` is the seam as it was drawn before
    the underarm's curve took its upper end.
    """

    arm: Arm
    line: SideSeam
    seam: SideSeam
    sleeve: Sleeve | None = None
    lines: Lines | None = None
    cap: Cap | None = None

    @property
    def refused(self) -> bool:
        """Whether no sleeve of this length can be had."""
        return self.cap is not None and (self.cap.refused or self.arm.is_long)

    @property
    def hem(self) -> Path:
        """Half the sleeve's hem, from the overarm."""
        drawn = self.lines or self.cap
        assert drawn is not None, "a grown-on sleeve is either a sleeve or a cap"
        return drawn.hem


def grown(arm: Arm, side: SideOf, ease: float) -> Grown:
    """Return the sleeve for an arm; ``ease`` is the body's [mm]. It may be refused."""
    line, sleeve = _tried(arm, side, ease)
    if sleeve is None:
        return _capped(arm, side, ease)
    drawn = lines(arm, sleeve)
    if arm.is_long:
        closer = _as_wide(arm, sleeve, drawn)
        line, again = (line, None) if closer == arm else _tried(closer, side, ease)
        if again:
            arm, sleeve, drawn = closer, again, lines(closer, again)
    if not leans(line) and sleeve.ends.y > side.levels.bust.depth:
        line = side.seam(side.levels.armscye.depth, sleeve.ends.y)
    whole = drawn.rounding.then(below(line, sleeve.ends.y))
    return Grown(arm, line, replace(line, path=whole), sleeve, drawn)


def _as_wide(arm: Arm, sleeve: Sleeve, drawn: Lines) -> Arm:
    """The arm for which a long sleeve, its hem bent and its seam softened, is as wide as asked."""
    hem = arm.hem + 2 * (sleeve.wider - drawn.hem.length())
    first = arm.place + PLACE_ROOM
    at = max(first, (sleeve.begins - arm.shoulder).dot(sleeve.along))
    found = reach(arm.shoulder + sleeve.along * at, sleeve.square, drawn.under)
    past = (at - first) / (arm.length - first)
    asked = arm.upper + (arm.hem - arm.upper) * past
    upper = 0.0 if found is None else asked - 2 * found - hem * past
    upper /= max(1 - past, LEAST_WAY)
    if max(abs(hem), abs(upper)) < OFF:
        return arm
    return replace(arm, hem=arm.hem + hem, upper=arm.upper + upper)


@lru_cache(maxsize=64)
def _tried(arm: Arm, side: SideOf, ease: float) -> tuple[SideSeam, Sleeve | None]:
    """The side's line and the sleeve with an underarm seam, if there is one.

    Kept, because the options' own values and the draft ask for the same one.
    """
    line = side.seam(side.levels.armscye.depth)
    return line, grown_sleeve(arm, side.trunk(line, ease))


def _capped(arm: Arm, side: SideOf, ease: float) -> Grown:
    cap = grown_cap(arm, side.plain_trunk(ease))
    level = cap.underarm.y
    bust = max(side.levels.bust.depth, level + LEAST_BELOW_UNDERARM)
    seam = side.seam(level, bust, cap=True)
    return Grown(arm, seam, seam, cap=cap)


class Had(Frozen):
    """What a sleeve gets on its body: its length [mm], and whether its hem is wider than asked."""

    length: float
    widened: bool = False


def had(arm: Arm, side: SideOf, ease: float) -> Had | None:
    """Return what a sleeve gets, or None where it is refused; ``ease`` is the body's [mm]."""
    sleeve = _tried(arm, side, ease)[1]
    if sleeve:
        return Had(arm.length, bool(sleeve.wider))
    if arm.is_long:
        return None
    cap = grown_cap(arm, side.plain_trunk(ease))
    return None if cap.refused else Had(arm.length + cap.longer)


def shortest(
    arm: Callable[[float], Arm], side: SideOf, ease: float, lengths: Iterable[float]
) -> float | None:
    """Return the first length that works as long as it is, by trying [mm]."""
    for length in lengths:
        found = had(arm(length), side, ease)
        if found and found.length == length:
            return length
    return None
