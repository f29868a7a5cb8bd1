"""The cloth while pieces are laid on it by one plan after another."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

import numpy as np

from tapewise_core.lay.lying import Floats
from tapewise_core.lay.profile import STEP
from tapewise_core.lay.sorts import Choice, Side, Sort


class Plan(NamedTuple):
    """In which order pieces are laid, how each is turned, and which of its choices it takes: the
    best one in its turn if that is None."""

    order: tuple[int, ...]
    turns: tuple[int, ...]
    choices: tuple[int | None, ...]


class Place(NamedTuple):
    """A choice where it would lie, and where it would end [mm]."""

    choice: Choice
    column: int
    along: float
    end: float


class _Begun(NamedTuple):
    """Where every column of the cloth is free again [mm], and the places so far."""

    taken: Floats
    places: tuple[Place, ...] = ()


KNOWN = 5000
"""So many beginnings are remembered [10 MB]."""


class Tried:
    """The cloth while plans are tried on it. Most begin as others did, three pieces out of four
    where there are few, so what has been laid once is gone on from."""

    def __init__(self, sorts: Sequence[Sort], wide: float, repeat: float) -> None:
        self.sorts, self.wide, self.repeat = sorts, wide, repeat
        self.known: dict[tuple[object, ...], _Begun | None] = {}

    def laid(self, plan: Plan, most: float) -> tuple[Place, ...] | None:
        """Return places for all in the order of a plan; None if one finds none, or ends beyond the
        most [mm]."""
        if len(self.known) > KNOWN:
            self.known.clear()
        begun = _Begun(np.zeros(math.ceil(self.wide / STEP) + 2))
        steps: tuple[object, ...] = ()
        for i in plan.order:
            steps = (*steps, i, plan.turns[i], plan.choices[i])
            if steps not in self.known:
                self.known[steps] = self._further(begun, plan, i)
            more = self.known[steps]
            if more is None or more.places[-1].end > most:
                return None
            begun = more
        return begun.places

    def _further(self, begun: _Begun, plan: Plan, i: int) -> _Begun | None:
        """With a piece more, where the choice that a plan takes of it ends soonest."""
        turn, picked = self.sorts[i].turns[plan.turns[i]], plan.choices[i]
        choices = turn if picked is None else (turn[picked % len(turn)],)
        found = [_place(one, begun.taken, self.wide, self.repeat) for one in choices]
        best = min(filter(None, found), key=lambda place: place.end, default=None)
        if best is None:
            return None
        shape, taken = best.choice.profile, begun.taken.copy()
        under = taken[best.column : best.column + len(shape.low)]
        np.maximum(under, best.along + shape.high, out=under)
        return _Begun(taken, (*begun.places, best))


def _windows(part: Floats, wide: int) -> Floats:
    """Every run of so many columns, one below another, without copying: numpy's own function for
    it takes longer than what is done with it here, and a lay asks thousands of times."""
    many, (step,) = len(part) - wide + 1, part.strides
    return np.ndarray((wide, many), part.dtype, part, strides=(step, step))


def _place(choice: Choice, taken: Floats, wide: float, repeat: float) -> Place | None:
    """Where a choice lies nearest to the beginning of the cloth."""
    shape = choice.profile
    last = int((wide - shape.wide - shape.phase) / STEP + 1e-9)
    if last < 0 or shape.wide > wide + 1e-6:
        return None
    first = last if choice.side is Side.RIGHT else 0
    last = 0 if choice.side is Side.LEFT else last
    part = taken[first : last + len(shape.low)]
    starts = np.maximum.reduce(_windows(part, len(shape.low)) - shape.low[:, None])
    at = int(starts.argmin())
    along = max(float(starts[at]), 0.0)
    if repeat:
        along = math.ceil((along + choice.matched) / repeat - 1e-9) * repeat - choice.matched
    return Place(choice, first + at, along, along + shape.tall)
