"""A person's garments that fit: kept with her, changed and taken off."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from tapewise_core.errors import OptionError, ReadingError
from tapewise_core.profiles import rules
from tapewise_core.profiles.fitted import Loved
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.loved.flat import BY_KEY
from tapewise_core.text.near import near_words
from tapewise_core.text.told import said
from tapewise_core.text.typed import parse_length, parse_number
from tapewise_core.units import Unit, mm

LARGEST = 300.0
"""The largest that a garment is taken to measure [cm]; above it is a slip (our choice)."""


def loved_of(profile: Profile, name: str) -> Loved:
    """Return a person's garment by its name, small and large letters alike.

    Raises OptionError with the names that there are.
    """
    for one in profile.loved:
        if one.name.casefold() == name.strip().casefold():
            return one
    there = tuple(one.name for one in profile.loved)
    if not there:
        how = f"keep one by “tapewise loved {profile.name!r} NAME bust=46 …”".replace("'", '"')
        raise OptionError(f"{profile.name} has no garment that fits on file; {how}.")
    raise OptionError(f"{profile.name} has no garment “{name}”; {near_words(name, there)}")


def called(name: str) -> str:
    """Return what a garment is called, tidy; raises OptionError for what is no name."""
    try:
        return rules.line(name)
    except ValueError as error:
        raise OptionError(f"The garment's name {error}.") from error


def with_loved(profile: Profile, name: str, settings: Sequence[str], unit: Unit) -> Profile:
    """Return a profile with KEY=VALUE settings of a garment, new or known; nothing after the =
    takes one off. ``stretch`` is its cloth's [%], all else is measured flat.

    Raises OptionError for an unknown key or what is no name, ReadingError for what is no length.
    """
    known = {one.name.casefold(): one for one in profile.loved}
    name = called(name)
    one = known.get(name.casefold()) or Loved(name=name)
    for setting in settings:
        one = _set(one, setting, unit)
    if not one.flat:
        raise OptionError(f"Nothing is known of {one.name} yet; say a measure, such as bust=46.")
    return profile.having(loved=tuple({**known, one.name.casefold(): one}.values()))


def without_loved(profile: Profile, name: str) -> Profile:
    """Return a profile without one garment; raises OptionError if there is none so called."""
    gone = loved_of(profile, name)
    return profile.having(loved=tuple(one for one in profile.loved if one != gone))


def _set(one: Loved, setting: str, unit: Unit) -> Loved:
    key, equals, text = (part.strip() for part in setting.partition("="))
    if not equals:
        raise OptionError(f"“{setting}” is not MEASURE=LENGTH, such as bust=46.")
    if key == "stretch":
        return replace(one, stretch=_stretch(text))
    if key not in BY_KEY:
        near = near_words(key, (*BY_KEY, "stretch"))
        raise OptionError(f"{key or 'That'} is not measured on a garment; {near}")
    rest = {known: cm for known, cm in one.flat.items() if known != key}
    flat = {**rest, key: _read(key, text, unit)} if text else rest
    return replace(one, flat=flat)


def _read(key: str, text: str, unit: Unit) -> float:
    name = BY_KEY[key].name.capitalize()
    cm = parse_length(text, unit, of=name) / 10
    if not 0 < cm <= LARGEST:
        says = "{}: {} cannot be; a garment laid flat measures more than zero and up to {}."
        raise ReadingError(said(says, name, mm(cm * 10), mm(LARGEST * 10)))
    return round(cm, 6)


def _stretch(text: str) -> float | None:
    if not text:
        return None
    found = parse_number(text)
    if 0 < found < 1:
        says = f"Stretch: “{text}” would be less than one percent; half again is 50, type it so."
        raise ReadingError(says)
    if not 0 <= found <= 400:
        raise ReadingError(f"Stretch: “{text}” cannot be; type a percentage such as 40.")
    return found
