"""Room for the bust from measured lengths: raise, eased length, side dart or gathers.

The surplus is how much longer the front is than the back over the body. It can not be guessed
from the girths (its correlation with bust less high bust is 0.12 in 2,208 women [ansur1]):
where it is not measured nothing is made longer.
"""

from __future__ import annotations

from enum import StrEnum

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.parts.shape.least import HAIR
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

RISE = 22.0
"""How far the side neck lies above the nape on the body; women's surplus then has a mean of −4
and a sd of 18.5 [ansur1] [mm]."""

RAISE_MOST, LOWER_MOST, BACK_MOST = 15.0, 20.0, 15.0
"""The front's neck point goes up or down, then the back's up, so far [mm] (common practice)."""

EASED = ((25.0, 5.0), (50.0, 15.0))
EASED_MOST = 25.0
"""Length eased in: 5 under 25 % of stretch, 15 up to 50 %, 25 over it [mm] (common practice)."""

DART_MOST = 60.0
"""A length dart takes up so much at most [mm] (common practice)."""

GATHERED_ON, GATHERED_MOST = 80.0, 1.6
"""Gathers lie on so much of the front's side seam [mm], up to this ratio (common practice)."""

SWING_MOST, SWING_LEAST, ONE_DART = 40.0, 5.0, 70.0
"""A half front is swung by so much, at most and at least (our choice); one side dart takes up
no more than 70 in all (common practice) [mm]."""

ASK_FROM = 60.0
"""From this bust less high bust the front waist length is worth measuring [mm] (our choice)."""


class Wish(StrEnum):
    """How room for the bust is made."""

    AUTO = "auto"
    NONE = "none"
    RAISE = "raise"
    SIDE_EASE = "side-ease"
    SIDE_DART = "side-dart"
    GATHERS = "gathers"


class Room(Frozen):
    """How a front's surplus [mm] is shared out; ``left`` is what is drawn nowhere.

    ``raised`` is the front neck point's (negative: lowered), ``back_raised`` the back's.
    """

    surplus: float
    raised: float = 0.0
    back_raised: float = 0.0
    eased: float = 0.0
    dart: float = 0.0
    gathered: float = 0.0
    left: float = 0.0
    told: tuple[Told, ...] = ()

    @property
    def lower(self) -> float:
        """How far the front below the bust is let down [mm]."""
        return self.eased + self.dart + self.gathered


def surplus(front_waist: float, back_waist: float) -> float:
    """Return how much longer the front is than the back with the body's own rise [mm]."""
    return front_waist - back_waist - RISE


def easable(stretch: float) -> float:
    """Return how much length can be eased in [mm] for a stretch [%]."""
    if stretch < EASED[0][0]:
        return EASED[0][1]
    return EASED[1][1] if stretch <= EASED[1][0] else EASED_MOST


def bust_room(front_longer: float | None, stretch: float, wish: Wish = Wish.AUTO) -> Room:
    """Share out a front's surplus [mm]; None where it is not measured.

    First the neck point is raised, then length is eased in, then comes a side dart, and gathers
    for what a dart does not take; a wish for one of them puts the rest there.
    """
    if front_longer is None or wish is Wish.NONE:
        return _undrawn(front_longer)
    if abs(front_longer) < HAIR:
        return Room(front_longer)
    if front_longer < 0:
        return _round(front_longer)
    raised = min(front_longer, RAISE_MOST)
    rest = front_longer - raised
    if rest < HAIR:
        return Room(front_longer, raised)
    if wish is Wish.RAISE:
        return Room(front_longer, raised, left=rest, told=(_left(rest),))
    return _rest(front_longer, raised, rest, stretch, wish)


def fitted_room(
    front_longer: float | None, found: float, stretch: float, wish: Wish = Wish.AUTO
) -> Room:
    """Share out a surplus and what fittings ``found`` besides [mm].

    What was found at a fitting is drawn even where nothing else of a surplus is wanted.
    """
    if not found:
        return bust_room(front_longer, stretch, wish)
    if wish is Wish.NONE:
        return bust_room(found, stretch)
    return bust_room((front_longer or 0.0) + found, stretch, wish)


def _rest(whole: float, raised: float, rest: float, stretch: float, wish: Wish) -> Room:
    """What is beyond the raise."""
    eases = easable(stretch)
    if wish is Wish.GATHERS:
        held = min(rest, (GATHERED_MOST - 1) * GATHERED_ON)
        return _with_left(Room(whole, raised, gathered=held), rest - held)
    if wish is Wish.SIDE_EASE or (wish is Wish.AUTO and rest <= eases):
        held = min(rest, eases)
        return _with_left(Room(whole, raised, eased=held), rest - held)
    held = min(rest, DART_MOST)
    return _with_left(Room(whole, raised, dart=held), rest - held)


def _with_left(room: Room, left: float) -> Room:
    if left <= 0.5:
        return room
    return replace(room, left=left, told=(_left(left),))


def _undrawn(front_longer: float | None) -> Room:
    """Nothing is drawn; what was measured is left and told."""
    if front_longer is None or abs(front_longer) < 5:
        return Room(front_longer or 0.0)
    if front_longer < 0:
        words = "The front is {} shorter than the back; that is not drawn."
        return Room(front_longer, left=front_longer, told=(said(words, mm(-front_longer)),))
    return Room(front_longer, left=front_longer, told=(_left(front_longer),))


def _left(left: float) -> Told:
    words = "The front stays {} shorter than measured: gathers or a second dart would take it up."
    return said(words, mm(left))


def _round(front_longer: float) -> Room:
    """A front shorter than the back: its neck point down, then the back's up."""
    short = -front_longer
    lowered = min(short, LOWER_MOST)
    up = min(short - lowered, BACK_MOST)
    up = up if up >= HAIR else 0.0
    left = short - lowered - up
    told = said("The front stays {} longer than measured: measure it again.", mm(left))
    return Room(front_longer, -lowered, up, left=-left, told=(told,) if left > 0.5 else ())


def worth_measuring(bust: float, high_bust: float, front_longer: float | None) -> Told:
    """Say that the front waist length is worth measuring, where a full bust has none."""
    if front_longer is not None or bust - high_bust < ASK_FROM:
        return ()
    words = (
        "The bust is {} more than the high bust. Measure the front waist length over the bust "
        "point: without it the front gets no length for the bust."
    )
    return said(words, mm(bust - high_bust))


def swing_wanted(cup: float, *, sleeveless: bool = False) -> float:
    """Return how far a half front is swung out of the armhole for a cup's width [mm].

    Nothing under half of ``SWING_LEAST``, then gradually, so that no step shows; an armhole without
    a sleeve, which nothing hides, is swung by all of it.
    """
    if sleeveless:
        return min(cup, SWING_MOST)
    return min(max(2 * cup - SWING_LEAST, 0.0), cup, SWING_MOST)


def swing_told(cup: float, swung: float, *, sleeveless: bool) -> Told:
    """Say how much of the cup stays in the armhole's width, where it is worth a word.

    A sleeve lets a looser fit hide it; an armhole without one lies closer on a closer bust.
    """
    if cup < SWING_LEAST or cup - swung <= SWING_LEAST:
        return ()
    fit = "less ease at the bust" if sleeveless else "a looser fit"
    words = "The front's armhole is still {} wide of the body: a second dart, gathers or {} would "
    return said(words + "take it up.", mm(cup - swung), fit)
