"""Where the body's levels lie below the nape, and how far round the body is at each.

Depths are walked down the back. Where a level is not measured it is estimated, with how far
such estimates lie off; the body between waist and hip follows an S (ANSUR, navel of 2,208
women predicted to 0.2 cm [ansur1]), so halfway there it is midway between the two girths.
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

_Key = tuple[Reference, WaistSite]

LEAST_BELOW_UNDERARM, LEAST_ABOVE_WAIST = 12.0, 90.0
"""The bust level is kept so far below the underarm and above the waist [mm] (our choice)."""

UNDER_BUST_SHARE = 0.45
"""The under-bust lies this share of the way from bust to waist (our choice; no open data)."""

BY_POINT = {
    (Reference.WOMEN, WaistSite.MIDWAY): (-105.0, 0.634, 0.456),
    (Reference.MEN, WaistSite.MIDWAY): (-85.0, 0.474, 0.490),
    (Reference.WOMEN, WaistSite.NARROWEST): (-68.0, 0.695, 0.358),
    (Reference.MEN, WaistSite.NARROWEST): (-75.0, 0.582, 0.437),
    (Reference.WOMEN, WaistSite.NAVEL): (-97.0, 0.612, 0.414),
    (Reference.MEN, WaistSite.NAVEL): (-64.0, 0.443, 0.427),
}
"""Bust level = a + b × neck to bust point + c × back waist length [mm], sd 15 [ansur1]."""

BY_SHARE = {
    (Reference.WOMEN, WaistSite.MIDWAY): 0.29,
    (Reference.MEN, WaistSite.MIDWAY): 0.21,
    (Reference.WOMEN, WaistSite.NARROWEST): 0.35,
    (Reference.MEN, WaistSite.NARROWEST): 0.25,
    (Reference.WOMEN, WaistSite.NAVEL): 0.24,
    (Reference.MEN, WaistSite.NAVEL): 0.17,
}
"""Share of the way from armscye to waist, sd 19 and 15 mm [ansur1]; the navel's is carried on
from the other two (our choice)."""

UNDER_BUST = (82.0, 0.22, 0.32, 0.28)
"""Under-bust = 82 + 0.22 bust + 0.32 high bust + 0.28 waist [mm]; women, sd 21 [ansur1]."""

LESS_THAN_BUST = 20.0
"""A woman's high bust is about so much less than her bust [mm]; mean of 2,208 [ansur1]."""


class Trunk(Frozen):
    """What is known of a trunk [mm]; None where it is not measured."""

    back_waist: float
    armscye: float
    bust: float
    waist: float
    hip: float
    hip_depth: float
    high_bust: float | None = None
    under_bust: float | None = None
    high_hip: float | None = None
    front_waist: float | None = None
    neck_to_bust_point: float | None = None
    reference: Reference = Reference.NOT_SAID
    waist_site: WaistSite = WaistSite.MIDWAY


class Level(Frozen):
    """A level by its name in the record: depth below the nape, girth [mm], and how it was got."""

    name: str
    depth: float
    girth: float
    how: Told


class Levels(Frozen):
    """The trunk's levels, from the armscye down."""

    armscye: Level
    bust: Level
    under_bust: Level
    waist: Level
    high_hip: Level
    hip: Level

    def all(self) -> tuple[Level, ...]:
        """Return the levels from the top down."""
        return (
            self.armscye,
            self.bust,
            self.under_bust,
            self.waist,
            self.high_hip,
            self.hip,
        )

    def girth(self, depth: float) -> float:
        """Return the body's girth at a depth [mm]: an S between waist and hip, straight above."""
        levels = [self.armscye, self.bust, self.under_bust, self.waist, self.hip]
        if depth <= levels[0].depth:
            return levels[0].girth
        for a, b in pairwise(levels):
            if depth <= b.depth:
                t = (depth - a.depth) / max(b.depth - a.depth, 1e-9)
                t = t * t * (3 - 2 * t) if b.name == "hip" else t
                return a.girth + (b.girth - a.girth) * t
        return self.hip.girth


def levels(trunk: Trunk) -> Levels:
    """Return the levels of a trunk."""
    depth, how = bust_depth(trunk)
    waist, hip = trunk.back_waist, trunk.back_waist + trunk.hip_depth
    measured: Told = ("measured",)
    high_bust = _high_bust(trunk)
    under = depth + UNDER_BUST_SHARE * (waist - depth)
    halfway = trunk.high_hip or (trunk.waist + trunk.hip) / 2
    return Levels(
        Level("armscye", trunk.armscye, high_bust, measured if trunk.high_bust else ("estimated",)),
        Level("bust", depth, trunk.bust, how),
        Level("under_bust", under, *_under_bust(trunk, high_bust)),
        Level("waist", waist, trunk.waist, measured),
        Level("high_hip", (waist + hip) / 2, halfway, measured if trunk.high_hip else _between()),
        Level("hip", hip, trunk.hip, measured),
    )


def _between() -> Told:
    return said("midway between waist and hip")


def _high_bust(trunk: Trunk) -> float:
    """Measured, or a woman's by the bust; without a bust it is the chest itself."""
    less = LESS_THAN_BUST if trunk.reference is Reference.WOMEN else 0.0
    return trunk.high_bust or trunk.bust - less


def _under_bust(trunk: Trunk, high_bust: float) -> tuple[float, Told]:
    if trunk.under_bust:
        return trunk.under_bust, ("measured",)
    start, by_bust, by_high, by_waist = UNDER_BUST
    girth = start + by_bust * trunk.bust + by_high * high_bust + by_waist * trunk.waist
    return girth, said("estimated from bust, high bust and waist, ± {}", mm(35))


def bust_depth(trunk: Trunk) -> tuple[float, Told]:
    """Return how far the bust level lies below the nape [mm], and how it was got.

    The ± is what nine people in ten lie within: 1.645 sd.

    Measured to the bust point and on to the waist: exact. To the bust point only, or not at
    all: by regression. Always between armscye and waist, with room on both sides.
    """
    point, back = trunk.neck_to_bust_point, trunk.back_waist
    if point is not None and trunk.front_waist is not None:
        depth = back - (trunk.front_waist - point)
        how: Told = said("measured over the bust point")
    elif point is not None:
        depth = _by_group(lambda key: _by_point(key, point, back), trunk)
        how = said("estimated from neck to bust point, ± {}", mm(25))
    else:
        way = back - trunk.armscye
        depth = _by_group(lambda key: trunk.armscye + BY_SHARE[key] * way, trunk)
        how = said("estimated from armscye and waist, ± {}", mm(31))
    kept = kept_between(depth, trunk.armscye, back)
    if abs(kept - depth) > 1:
        how = said("{}, moved {} to lie between armscye and waist", how, mm(abs(kept - depth)))
    return kept, how


def kept_between(bust: float, underarm: float, waist: float) -> float:
    """Return the bust level kept 1.2 cm below the underarm and 9 cm above the waist [mm].

    Where both cannot be, the underarm decides: its corner has to be square.
    """
    return max(min(bust, waist - LEAST_ABOVE_WAIST), underarm + LEAST_BELOW_UNDERARM)


def _by_point(key: _Key, point: float, back: float) -> float:
    start, by_point, by_back = BY_POINT[key]
    return start + by_point * point + by_back * back


def _by_group(depth: Callable[[_Key], float], trunk: Trunk) -> float:
    """The estimate for a group; where it is not said which, midway between the two [mm]."""
    said_not = trunk.reference is Reference.NOT_SAID
    groups = (Reference.WOMEN, Reference.MEN) if said_not else (trunk.reference,)
    site = WaistSite.MIDWAY if trunk.waist_site is WaistSite.NOT_SAID else trunk.waist_site
    return sum(depth((group, site)) for group in groups) / len(groups)
