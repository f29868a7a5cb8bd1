"""Eases that only drafts can settle: where a girth is measured on a curve that the ease moves.

Under a sleeve that is grown on, the garment is wider than its ease tells, and a cap's width is an
armhole's. The ease is then moved by what the draft is off, as far as that helps.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field

from tapewise_core.errors import TapewiseError
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.liking.fitting import EASES, typed
from tapewise_core.tasks.loved.likeness import NEAR, Want, given_of

ROUNDS = 4
"""So many drafts are tried for each ease at the most (our choice)."""

FARTHEST = 60.0
"""An ease is moved no further at once, while it is not known on which side of it the other lies
[mm] (our choice)."""


@dataclass(slots=True)
class Search:
    """The ease that gives one girth: what was tried on either side of it, and what it was off."""

    tried: list[tuple[float, float]] = field(default_factory=list)

    def learn(self, ease: float, off: float) -> None:
        """Note by how much a girth is off with an ease [mm]."""
        self.tried.append((ease, off))

    @property
    def next(self) -> float:
        """The ease to try [mm]: on the line through the nearest on both sides, or a step towards
        the side that is not known yet."""
        below = max((one for one in self.tried if one[1] < 0), default=None)
        above = min((one for one in self.tried if one[1] >= 0), default=None)
        if below and above and below[0] < above[0]:
            share = -below[1] / (above[1] - below[1])
            return below[0] + (above[0] - below[0]) * min(max(share, EDGE), 1 - EDGE)
        ease, off = self.tried[-1]
        return ease - min(max(off, -FARTHEST), FARTHEST)


EDGE = 0.15
"""The next try lies so far from either of the two it lies between, as a share (our choice): a girth
may stay the same for a while as its ease moves."""


def neared(
    first: Drafted, wants: tuple[Want, ...], drafted: Callable[[Mapping[str, str]], Drafted]
) -> Drafted:
    """Return the draft that comes nearest to the girths that are wanted, the first or one with
    other eases that breaks no more proofs; ``drafted`` drafts with options that are changed.

    The sleeve comes first, since the curve under it is what a bust is measured on.
    """
    aims = {w.row.key: w.here for w in wants if w.row.key in EASES and not w.otherwise}
    best = _less_at_the_bust(first, aims, drafted)
    for key in ("upper_arm", "bust"):
        best = _along(best, key, aims, drafted)
    return _shaped(best, aims, drafted)


def _less_at_the_bust(
    made: Drafted, aims: Mapping[str, float], drafted: Callable[[Mapping[str, str]], Drafted]
) -> Drafted:
    """A bust that comes out too wide begins as close as the closest level."""
    closest = made.style.chosen.get("ease")
    if _off(made, aims).get("bust", 0.0) <= 0 or closest is None:
        return made
    option = made.garment.options["bust-ease"]
    asked = {"bust-ease": typed(option, made.style.length("ease").mm)}
    return _better(made, aims, drafted, asked)[0]


def _shaped(
    best: Drafted, aims: Mapping[str, float], drafted: Callable[[Mapping[str, str]], Drafted]
) -> Drafted:
    """Sides that were left straight, shaped as far as the waist asks: it follows evenly."""
    wide = _off(best, aims).get("waist", 0.0)
    if wide <= 0 or best.asked.get(SHAPING) != "0":
        return best
    _, half = _better(best, aims, drafted, {SHAPING: f"{HALF:g}"})
    went = wide - _off(half, aims).get("waist", 0.0) if half else 0.0
    if went <= 0:
        return best
    share = min(HALF * wide / went, 100.0)
    return _better(best, aims, drafted, {SHAPING: f"{share:.0f}"})[0]


SHAPING, HALF = "waist-shaping", 50.0
"""How far the sides follow the waist, and how far they are let to see what it does [%]."""


def _along(
    best: Drafted,
    key: str,
    aims: Mapping[str, float],
    drafted: Callable[[Mapping[str, str]], Drafted],
) -> Drafted:
    """The best draft while one ease is moved."""
    made: Drafted | None = best
    search = Search()
    for _ in range(ROUNDS):
        off = _off(made, aims) if made else {}
        if made is None or key not in off:
            break
        search.learn(_ease(made, key), off[key])
        asked = {EASES[key]: typed(best.garment.options[EASES[key]], search.next)}
        best, made = _better(best, aims, drafted, asked)
    return best


def _better(
    best: Drafted,
    aims: Mapping[str, float],
    drafted: Callable[[Mapping[str, str]], Drafted],
    asked: Mapping[str, str],
) -> tuple[Drafted, Drafted | None]:
    """The better of a draft and one asked otherwise, and that one if it can be drawn."""
    try:
        made = drafted(asked)
    except TapewiseError:
        return best, None
    nearer = _missed(made, aims) < _missed(best, aims)
    return (made if nearer and len(made.failing) <= len(best.failing) else best), made


def _missed(made: Drafted, aims: Mapping[str, float]) -> float:
    return sum(map(abs, _off(made, aims).values()))


def _ease(made: Drafted, key: str) -> float:
    return made.style.length(EASES[key]).mm


def _off(made: Drafted, aims: Mapping[str, float]) -> dict[str, float]:
    """By how much each girth is off what is wanted [mm], where that is more than a tape tells."""
    found = {}
    for key, aim in aims.items():
        given = given_of(key, made.pattern, made.style)
        option = EASES[key] in made.style.chosen
        if given is not None and option and abs(given - aim) > NEAR:
            found[key] = given - aim
    return found
