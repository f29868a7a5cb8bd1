"""Options of a draft moved towards something, and how that is typed."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from tapewise_core.proofs.ways import Move, Way
from tapewise_core.style.kind import Value, ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.settle import settle
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.units import Length

REACH = 0.5
"""An option is moved no further than half of the way to its limit: beyond, it is another garment
(our choice)."""

FINEST = {ValueKind.LENGTH: 0.1, ValueKind.PERCENT: 0.5, ValueKind.RATIO: 0.01}
"""The steps in which numbers are typed; lengths in cm."""


class Turn(NamedTuple):
    """An option that is moved from a value to another; a word has no way between."""

    option: Option
    start: float | str
    end: float | str

    def at(self, share: float) -> str:
        """Return what is typed so far along the way, rounded onwards."""
        if isinstance(self.start, str) or isinstance(self.end, str):
            return str(self.end)
        step = FINEST.get(self.option.kind, 1.0)
        steps = (self.start + (self.end - self.start) * share) / step
        onwards = math.ceil if self.end > self.start else math.floor
        value = min(max(onwards(round(steps, 6)) * step, self.option.low), self.option.high)
        unit = " cm" if self.option.kind is ValueKind.LENGTH else ""
        return f"{value:.2f}".rstrip("0").rstrip(".") + unit


def at(way: Sequence[Turn], share: float) -> dict[str, str]:
    """Return what is typed so far along a way."""
    return {turn.option.key: turn.at(share) for turn in way}


def turns(drafted: Drafted, way: Way) -> tuple[Turn, ...]:
    """Return the turns of a way; none where the garment lacks an option, it has nothing to do in
    this style, or it cannot go there."""
    found = [_turn(drafted, move) for move in way]
    return tuple(turn for turn in found if turn) if all(found) else ()


def _turn(drafted: Drafted, move: Move) -> Turn | None:
    if move.key not in drafted.garment.options:
        return None
    option, start = drafted.garment.options[move.key], _plain(drafted, move.key)
    if not option.at_work(drafted.style):
        return None
    if isinstance(start, str):
        there = move.word in option.words and move.word != start
        return Turn(option, start, move.word) if there else None
    end = option.high if move.way == "more" else option.low
    return None if move.way is None or start == end else Turn(option, start, _reach(start, end))


def _reach(start: float, end: float) -> float:
    return start + (end - start) * REACH


def taken_back(drafted: Drafted) -> list[Turn]:
    """Return the way back to the usual value of each option that was asked for, the cloth apart."""
    found = []
    for key in drafted.asked:
        option, rest = drafted.garment.options[key], {**drafted.asked}
        del rest[key]
        usual = settle(drafted.garment.options, rest, drafted.body, drafted.unit).chosen[key].value
        if option.group is not Group.CLOTH and _bare(usual) != _plain(drafted, key):
            found.append(Turn(option, _plain(drafted, key), _bare(usual)))
    return found


def _plain(drafted: Drafted, key: str) -> float | str:
    """An option's value as it would be typed: fittings move it once more as it is settled."""
    value, by = drafted.style.chosen[key].value, drafted.moved.get(key, 0.0)
    plain = _bare(value)
    if isinstance(plain, str):
        return plain
    return plain - (by / 10 if isinstance(value, Length) else by)


def _bare(value: Value) -> float | str:
    return value.mm / 10 if isinstance(value, Length) else value
