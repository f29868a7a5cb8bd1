"""Made-up people in plain millimetres, far wider than people are, for tests of pure shapes."""

from __future__ import annotations

import math
import random
from collections.abc import Iterator

import numpy as np
from msgspec.structs import replace
from shapely.geometry import LineString

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.measures.body import Reference
from tapewise_core.parts.shape.across_point import carried_out
from tapewise_core.parts.shape.bust_room import Wish, bust_room, surplus
from tapewise_core.parts.shape.levels import Trunk, levels
from tapewise_core.parts.shape.set_in import SetInWish
from tapewise_core.parts.shape.shares import across
from tapewise_core.parts.shape.shoulder_line import shoulder_lines
from tapewise_core.parts.shape.side_dart import apex_from_fold, stop_before
from tapewise_core.parts.shape.side_slopes import SideQuarters, SideWish
from tapewise_core.parts.shape.underarm import by_fit


class Person(Frozen):
    """One body [mm]."""

    trunk: Trunk
    shoulder: float
    drop: float
    across_back: float
    arm: float
    neck: float


AVERAGE = Person(
    Trunk(
        410, 186, 920, 740, 980, 200, 890, None, None, 436, 276, reference=Reference.WOMEN
    ),
    122, 53, 350, 290, 360,
)  # fmt: skip
BUSTY = Person(
    Trunk(
        410, 192, 1120, 800, 1040, 200, 960, None, None, 490, 325, reference=Reference.WOMEN
    ),
    122, 53, 350, 310, 365,
)  # fmt: skip


def people(count: int, seed: int = 20) -> Iterator[Person]:
    """Yield bodies: high bust 72 to 128, bust 0 to 18 more, waist 0.7 to 1.1 of it."""
    rng = random.Random(seed)
    for _ in range(count):
        yield one(rng)


def one(rng: random.Random) -> Person:
    """Return one body."""
    high = rng.uniform(720, 1280)
    cup = rng.uniform(0, 180) if rng.random() < 0.5 else rng.uniform(0, 60)
    full, tall, bust = (high - 720) / 560, rng.uniform(1480, 1950), high + cup
    waist = bust * rng.uniform(0.7, 1.1)
    hip = max(bust, waist) * rng.uniform(0.9, 1.2)
    back = tall * rng.uniform(0.23, 0.265)
    armscye = back * rng.uniform(0.42, 0.48) + 25 * full
    front = back + 22 + rng.uniform(-30, 20) + 0.28 * cup
    point = armscye + rng.uniform(55, 110) + 0.2 * cup
    trunk = Trunk(
        back, armscye, bust, waist, hip, tall * rng.uniform(0.1, 0.125), high,
        front_waist=front, neck_to_bust_point=point, reference=Reference.WOMEN,
    )  # fmt: skip
    shoulder = tall * rng.uniform(0.068, 0.082)
    wide = high * 0.33 + 60 + rng.uniform(-15, 20)
    arm = 230 + 200 * full + rng.uniform(-20, 20)
    drop = shoulder * rng.uniform(0.25, 0.55)
    return Person(trunk, shoulder, drop, wide, arm, 330 + 110 * full)


def wish(
    person: Person,
    ease: float = 0.0,
    side: SideWish | None = None,
    *,
    stretch: float = 50,
    sleeveless: bool = False,
    bodice: bool = False,
    forward: float = 0.0,
    lower: float = 0.0,
    sleeve_ease: float | None = None,
    room: Wish = Wish.AUTO,
) -> SetInWish:
    """Return what a set-in body is drawn from, for one ease all round."""
    side = side or SideWish()
    trunk = person.trunk
    high = trunk.high_bust or trunk.bust
    cup = trunk.bust - high
    longer = None
    if trunk.front_waist is not None:
        longer = surplus(trunk.front_waist, trunk.back_waist)
    made = bust_room(longer, stretch, room)
    wide = across(person.across_back, cup, surplus=longer or 0.0)
    side_neck = person.neck / 5 - 2
    reach = math.sqrt(person.shoulder**2 - person.drop**2)
    fall = person.drop / reach
    neck = Point(side_neck + 15, -22 + 15 * fall)
    end = Point(side_neck + reach, -22 + person.drop)
    out = carried_out(max(wide.back, wide.front), end.x) - (10 if sleeveless else 0)
    end = end + (end - neck).unit() * out
    if sleeveless:
        wide = replace(wide, back=wide.back - 6, front=wide.front - 6)
    back, front = shoulder_lines(
        neck, end, front_raised=made.raised, back_raised=made.back_raised, forward=forward,
        lower=lower,
    )  # fmt: skip
    quarters = SideQuarters(*((g + ease) / 4 for g in (trunk.bust, trunk.waist, trunk.hip)))
    tip = apex_from_fold(trunk.bust) + stop_before(trunk.bust, high)
    hem = None if bodice else trunk.back_waist + trunk.hip_depth + 40
    return SetInWish(
        levels(trunk), quarters, side, back, front, wide, person.arm,
        by_fit(ease, sleeveless=sleeveless), cup, made, stretch, tip, hem, sleeveless,
        sleeve_ease, lower=lower,
    )  # fmt: skip


def line(path: Path) -> LineString:
    """Return a path for shapely, flattened far finer than it is asked about."""
    return LineString([(p.x, p.y) for p in path.flattened(2e-3)])


def width_at(path: Path, y: float) -> float:
    """Return where a path is at a height, measured with shapely from its points."""
    level = LineString([(-10, y), (2000, y)])
    return float(line(path).intersection(level).bounds[0])


def bends_of(path: Path) -> tuple[np.ndarray, np.ndarray]:
    """Return signed bends [1/mm] and leans [x per y] along a path, from points alone."""
    points = np.array([(p.x, p.y) for p in _sampled(path)])
    steps = np.diff(points, axis=0)
    long = np.hypot(*steps.T)
    angles = np.unwrap(np.arctan2(steps[:, 1], steps[:, 0]))
    return np.diff(angles) / ((long[1:] + long[:-1]) / 2), steps[:, 0] / steps[:, 1]


def _sampled(path: Path) -> list[Point]:
    """Points about 2 mm apart."""
    found = [path.start]
    for segment in path.segments:
        count = max(2, round(segment.length() / 2))
        found += [segment.at(i / count) for i in range(1, count + 1)]
    return found


def turns(path: Path) -> int:
    """Return how often a path changes its bend, from points alone; wider than 3 m is straight."""
    bends, _ = bends_of(path)
    signs = np.sign(bends[np.abs(bends) > 1 / 3000])
    return int((signs[1:] != signs[:-1]).sum())
