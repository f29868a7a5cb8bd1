"""Eases that only drafts can settle: where a girth is measured on a curve that the ease moves.

Under a sleeve that is grown on, the garment is wider than its ease tells, and a cap's width is an
armhole's. The ease is then moved by what the draft is off, as far as that helps.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from tapewise_core.errors import TapewiseError
from tapewise_core.tasks.drafting import Drafted
from tapewise_core.tasks.liking.fitting import EASES, typed
from tapewise_core.tasks.loved.likeness import NEAR, Want, given_of

ROUNDS = 5
"""So many more drafts are tried at the most (our choice)."""

FLATTEST, STEEPEST = 0.4, 1.2
"""How much a girth follows its ease at the least and the most, as far as drafts tell (our
choice)."""


def neared(
    first: Drafted, wants: tuple[Want, ...], drafted: Callable[[Mapping[str, str]], Drafted]
) -> Drafted:
    """Return the draft that comes nearest to the girths that are wanted, the first or one with
    other eases; ``drafted`` drafts with options that are changed."""
    aims = {w.row.key: w.here for w in wants if w.row.key in EASES and not w.otherwise}
    best, off = first, _off(first, aims)
    slopes = dict.fromkeys(off, 1.0)
    for _ in range(ROUNDS):
        if not off:
            break
        moved = {EASES[key]: _ease(best, key) - miss / slopes[key] for key, miss in off.items()}
        options = best.garment.options
        try:
            trial = drafted({key: typed(options[key], ease) for key, ease in moved.items()})
        except TapewiseError:
            break
        left = _off(trial, aims)
        if sum(map(abs, left.values())) > sum(map(abs, off.values())) - NEAR:
            slopes = {key: slope * 2 for key, slope in slopes.items()}  # too far: half the way
            continue
        for key in left.keys() & off.keys():
            went = _ease(trial, key) - _ease(best, key)
            slope = (left[key] - off[key]) / went if went else 1.0
            slopes[key] = min(max(slope, FLATTEST), STEEPEST)
        slopes.update({key: 1.0 for key in left if key not in off})
        best, off = trial, left
    return best


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
