"""What changed about a person from one state to another, and changes asked for by key."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from tapewise_core.errors import OptionError, ProfileError, ReadingError
from tapewise_core.frozen import Frozen
from tapewise_core.measures.catalogue import CATALOGUE, NAMES, measure, near_measures
from tapewise_core.measures.finding import Finding, Severity
from tapewise_core.measures.reading import read
from tapewise_core.profiles import rules
from tapewise_core.profiles.history import State
from tapewise_core.profiles.history import chosen as state_of
from tapewise_core.profiles.profile import Profile
from tapewise_core.text.typed import parse_number
from tapewise_core.units import Unit

__all__ = [
    "Change",
    "LastTime",
    "changes",
    "in_groups",
    "last_time",
    "state_of",
    "to_come",
    "with_setting",
]


class Change(Frozen):
    """One measure in two states of a person [cm]; None where it was open."""

    key: str
    before: float | None
    after: float | None


def changes(first: Profile, second: Profile) -> tuple[Change, ...]:
    """Return the measures that differ between two states, in the order of the catalogue."""
    keys = (row.key for row in CATALOGUE)
    rows = ((key, first.measures.get(key), second.measures.get(key)) for key in keys)
    return tuple(
        Change(key, a.value if a else None, b.value if b else None)
        for key, a, b in rows
        if (a and a.value) != (b and b.value)
    )


class LastTime(Frozen):
    """How a person was at the end of the last day she was measured before, and is now."""

    before: State
    now: State

    @property
    def changes(self) -> tuple[Change, ...]:
        """What differs, in the order of the catalogue."""
        return changes(self.before.profile, self.now.profile)


def last_time(states: Sequence[State]) -> LastTime | None:
    """Return what to compare a person with: her last state of an earlier day than the newest.

    ``states`` are hers, the newest first; None where all are of one day.
    """
    earlier = (one for one in states if one.when.date() < states[0].when.date())
    before = next(earlier, None)
    return LastTime(before, states[0]) if before is not None else None


def _group(name: str) -> None:
    try:
        rules.line(name)
    except ValueError as error:
        raise ProfileError(f"The group's name {error}.") from error


def in_groups(profile: Profile, names: Sequence[str], *, leave: bool = False) -> Profile:
    """Return a profile put into groups, or taken out of them; raises ProfileError for no name."""
    for name in names:
        _group(name)
    left = tuple(name for name in profile.groups if name not in names)
    return profile.having(groups=left if leave else (*left, *names))


def with_setting(profile: Profile, setting: str, unit: Unit) -> Profile:
    """Return a profile with one KEY=LENGTH set, or the measure taken off where LENGTH is empty.

    ``age`` is in years, and no measure.

    Raises OptionError for an unknown key and ReadingError for what is no length.
    """
    key, equals, text = (part.strip() for part in setting.partition("="))
    if not equals:
        raise OptionError(f"“{setting}” is not MEASURE=LENGTH, such as hip=98.")
    if key == "age":
        return aged(profile, text)
    try:
        row = measure(key)
    except ReadingError:
        raise OptionError(f"{key or 'That'} is not a measure; {near_measures(key)}.") from None
    if not text:
        return profile.without(row.key)
    cm = read(text, row, unit)
    return profile.with_value(row.key, cm, readings=(cm,), taken=date.today())


def aged(profile: Profile, text: str) -> Profile:
    """Return a profile with an age as it is typed [years]; nothing typed says none.

    Raises ReadingError for what is no number, ProfileError for what is no age.
    """
    return profile.with_age(parse_number(text, "Age", "8 or 43") if text.strip() else None)


def to_come(profile: Profile, today: date) -> tuple[Finding, ...]:
    """Return a hint about measures that are said to be taken on a day still to come."""
    taken = {key: row.taken for key, row in profile.measures.items() if row.taken}
    late = {key: day for key, day in taken.items() if day > today}
    if not late:
        return ()
    names = ", ".join(NAMES[key] for key in late)
    says = (
        f"{names}: taken on {max(late.values()).isoformat()}, a day still to come; mend the date."
    )
    return (Finding(tuple(late), Severity.HINT, (says[0].upper() + says[1:],)),)
