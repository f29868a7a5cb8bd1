"""How the numbers that proofs compare a garment with follow a body's estimates.

No garment says so itself: it is drafted once more with estimates one spread away, and what moved
is what follows them.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

import numpy as np

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.errors import TapewiseError
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.proofs.worn import Many, body_side
from tapewise_core.tasks.doubt import Doubt
from tapewise_core.tasks.drafted import Drafted

Logs = Mapping[str, float]
"""The logarithms of a body's numbers, or by how much they move, by name."""

ALONE = frozenset(
    {"waist", "back_waist_length", "armscye_depth", "hip_depth", "upper_arm", "wrist", "arm_length"}
)
"""Measures that several numbers follow, moved one at a time; the others are tried together. Which
they are costs time alone, for it is looked whether those can be told apart."""

BENT = frozenset({"arm_length"})
"""Measures that numbers follow one way and not the other, moved both ways: a sleeve's hem lies
at the wrist, however short the arm, and the higher on it, the longer the arm."""

TRIED = (-1.0, 1.0, -0.5, 0.5)
"""How many spreads from its estimate a measure is drafted, the first that can be: less comes first,
for then a level lies higher, where the garment still reaches it."""

UPWARDS = (1.0, 0.5, -1.0)
"""The same, for what is larger than estimated."""


def drafted_for(drafted: Drafted, body: Body) -> Pattern | None:
    """Return the garment in the same style for another body, or None if it can't be drafted."""
    try:
        return drafted.garment.draft(body, drafted.style)
    except TapewiseError:
        return None


class Following(Frozen):
    """How a body's numbers follow its estimates: their logarithms as drafted, and by how much
    they move with one spread of each estimate, ``up`` and ``down``."""

    start: Mapping[str, float]
    up: Mapping[str, Many]
    down: Mapping[str, Many]

    def of(self, drawn: Many) -> dict[str, Many]:
        """Return the numbers of bodies given in spreads."""
        more, less = np.maximum(drawn, 0.0), np.minimum(drawn, 0.0)
        return {
            name: np.exp(log + more @ self.up[name] + less @ self.down[name])
            for name, log in self.start.items()
        }


def following(drafted: Drafted, doubt: Doubt) -> Following:
    """Draft bodies whose estimates are moved, and see what follows.

    Logarithms, because girths scatter by shares; heights scatter so little that it is the same.
    """
    start = _logs(drafted.pattern)
    moves = _together(drafted, doubt, [key for key in doubt.keys if key not in ALONE], start)
    moves |= {key: _alone(drafted, doubt, key, start) for key in doubt.keys if key in ALONE}
    bent = {key: _alone(drafted, doubt, key, start, UPWARDS) for key in doubt.keys if key in BENT}
    up, down = (
        {name: np.array([way[key][name] for key in doubt.keys]) for name in start}
        for way in (moves | bent, moves)
    )
    return Following(start, up, down)


def _together(drafted: Drafted, doubt: Doubt, keys: Sequence[str], start: Logs) -> dict[str, Logs]:
    """What follows some estimates, from one draft if each number is one of them or moves by none
    of them; else from two drafts of half as many each, and so on."""
    if len(keys) < 2:
        return {key: _alone(drafted, doubt, key, start) for key in keys}
    moved = doubt.moved(drafted.body, dict.fromkeys(keys, 1.0))
    found = _told_apart(_shifts(drafted, moved, start), drafted.body, moved, keys, start)
    if found is not None:
        return found
    half = len(keys) // 2
    return {
        **_together(drafted, doubt, keys[:half], start),
        **_together(drafted, doubt, keys[half:], start),
    }


def _told_apart(
    shifts: Logs, body: Body, moved: Body, keys: Sequence[str], start: Logs
) -> dict[str, Logs] | None:
    """Which estimate each number follows, None where that cannot be told.

    A number follows one alone if it moves by as much, in mm or as a share: no two estimates do.
    """
    found: dict[str, dict[str, float]] = {key: dict.fromkeys(start, 0.0) for key in keys}
    for name, log in start.items():
        shift = shifts.get(name, math.inf)
        far = math.exp(log + shift) - math.exp(log)
        own = [
            key
            for key, old, new in ((key, body.values[key].cm, moved.values[key].cm) for key in keys)
            if _same(shift, math.log(new / old)) or _same(far, (new - old) * 10)
        ]
        if len(own) == 1:
            found[own[0]][name] = shift
        elif not _same(shift, 0.0):
            return None
    return dict(found)


def _same(one: float, other: float) -> bool:
    return abs(one - other) < 1e-9


def _alone(
    drafted: Drafted, doubt: Doubt, key: str, start: Logs, tried: Sequence[float] = TRIED
) -> Logs:
    """By how much each number moves with a spread of one estimate; a level that the garment does
    not reach on the one side is looked for on the other."""
    found: dict[str, float] = {}
    for step in tried:
        shifts = _shifts(drafted, doubt.moved(drafted.body, {key: step}), start)
        found = {name: shift / step for name, shift in shifts.items()} | found
        if len(found) == len(start):
            break
    return dict.fromkeys(start, 0.0) | found


def _shifts(drafted: Drafted, body: Body, start: Logs) -> Logs:
    """How far the numbers of another body are from those drafted for, as far as it has them."""
    pattern = drafted_for(drafted, body)
    there = _logs(pattern) if pattern else {}
    return {name: log - start[name] for name, log in there.items() if name in start}


def _logs(pattern: Pattern) -> Logs:
    return {name: math.log(max(value, LEAST)) for name, value in body_side(pattern).items()}


LEAST = 1e-3
"""A number of a body is taken to be no less [mm]: slips that were kept can put a knee above the
waist, and such a body is drafted for all the same."""
