"""What fittings taught about a person, kept with her: one more, one less, and how it is listed."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from tapewise_core.errors import OptionError
from tapewise_core.fitting.change import Measured
from tapewise_core.fitting.symptom import MOST_A_FITTING
from tapewise_core.garments.shelf import title_of
from tapewise_core.profiles.fitted import Adjustment
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.adjusting import Applied, adjustment_told, day_words
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm


def kept(profile: Profile, one: Adjustment) -> Profile:
    """Return a person with one more adjustment; more of the same at one fitting is added to it.

    Raises OptionError for more than one fitting should change.
    """
    same = [other for other in profile.adjustments if _alike(other, one)]
    amount = round(one.amount + sum(other.amount for other in same), 2)
    whole = replace(one, amount=amount)
    change = Applied(whole).change
    if same and change is not None and change.measured is Measured.LENGTH:
        _one_fitting(amount)
    rest = tuple(other for other in profile.adjustments if other not in same)
    return profile.having(adjustments=(*rest, whole))


def _one_fitting(amount: float) -> None:
    if amount > MOST_A_FITTING + 1e-6:
        words = (
            "That would be {} at one fitting, and more than {} at one place says that a measure "
            "is wrong: take it again."
        )
        raise OptionError(said(words, mm(amount * 10), mm(MOST_A_FITTING * 10)))


def _alike(one: Adjustment, other: Adjustment) -> bool:
    """Whether two are of one fitting and change the same."""
    return (one.what, one.date, one.garment) == (other.what, other.date, other.garment)


def without(profile: Profile, number: int) -> tuple[Profile, Adjustment]:
    """Return a person without one adjustment, counted from 1, and which it was.

    Raises OptionError for a number there is not.
    """
    adjustments = profile.adjustments
    if not 1 <= number <= len(adjustments):
        many = f"there are {len(adjustments)}" if adjustments else "nothing is kept after fittings"
        raise OptionError(f"There is no adjustment {number}; {many}.")
    gone = adjustments[number - 1]
    rest = (*adjustments[: number - 1], *adjustments[number:])
    return profile.having(adjustments=rest), gone


def line_of(one: Adjustment, today: date) -> Told:
    """Return an adjustment as a list has it."""
    title = title_of(one.garment) if one.garment else ""
    where = f", {title[:1].lower()}{title[1:]}" if title else ""
    return said("{} (after {}{})", adjustment_told(one), day_words(one.date, today), where)


def differing(before: Profile, after: Profile) -> tuple[Told, ...]:
    """Return what fittings changed from one state of a person to another."""
    new = (one for one in after.adjustments if one not in before.adjustments)
    gone = (one for one in before.adjustments if one not in after.adjustments)
    return (
        *(said("after a fitting: {}", adjustment_told(one)) for one in new),
        *(said("no more: {}", adjustment_told(one)) for one in gone),
    )
