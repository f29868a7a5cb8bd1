"""What each entry of a person's file may be; a breach is a ValueError that says so."""

from __future__ import annotations

import json
import math
import unicodedata
from collections.abc import Mapping
from datetime import date

from tapewise_core.errors import ProfileError
from tapewise_core.measures.catalogue import BY_KEY, near_measures
from tapewise_core.measures.reading import LARGEST

CENTIMETRES = {"type": "number", "exclusiveMinimum": 0, "maximum": LARGEST}
"""What :func:`centimetres` passes, as JSON schema."""

LONGEST_NAME = 80
"""Characters of a person's name; what still fits beside the title of a printed sheet."""

OLDEST = 120.0
"""No person is older [years] (our choice)."""

MOST_READINGS = 5
"""Readings kept of one measure; three settle it."""

AGE = {"exclusiveMinimum": 0, "maximum": OLDEST}
"""What :func:`years` passes, as JSON schema."""

LINE = {"type": "string", "minLength": 1, "maxLength": LONGEST_NAME}
"""What :func:`line` passes once it is tidy, as JSON schema."""

ID = {"type": "string", "pattern": "^[a-z0-9]{8,32}$"}
"""What :func:`identity` passes, as JSON schema."""

MEASURES = {"propertyNames": {"enum": [*BY_KEY]}}
"""Keys that :func:`known` passes, as JSON schema."""

READINGS = {"maxItems": MOST_READINGS}
"""As many as :func:`few` passes, as JSON schema."""

PERSON = {"type": "string", "minLength": 1, "maxLength": LONGEST_NAME}
"""What :func:`person` passes once it is tidy, as JSON schema."""

_ID_SIGNS = frozenset("abcdefghijklmnopqrstuvwxyz0123456789")

_TURNING = frozenset("\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")
"""Characters that turn the direction of what follows and so can hide a name."""


def whole(version: object) -> object:
    """Pass a whole number; true and 1.0 equal 1 and still are none."""
    if type(version) is not int:
        raise ValueError("must be a whole number")
    return version


def centimetres(value: float) -> float:
    """Pass a length [cm] that a body can have; infinity and NaN are none."""
    if not (math.isfinite(value) and 0 < value <= LARGEST):
        raise ValueError(f"must be more than 0 and at most {LARGEST:g} cm")
    return value


def years(age: float | None) -> float | None:
    """Pass an age [years] that a person can have, or none."""
    if age is not None and not (math.isfinite(age) and 0 < age <= OLDEST):
        raise ValueError(f"must be more than 0 and at most {OLDEST:g} years")
    return age


def amount(value: float) -> float:
    """Pass a change of length [cm], longer or shorter."""
    if not (math.isfinite(value) and abs(value) <= LARGEST):
        raise ValueError(f"must be at most {LARGEST:g} cm, longer or shorter")
    return value


def stretch(value: float | None) -> float | None:
    """Pass how far a cloth stretches [%], or none."""
    if value is not None and not (math.isfinite(value) and 0 <= value <= 400):
        raise ValueError("must be from 0 to 400 %")
    return value


def identity(text: str) -> str:
    """Pass what tells one person's file from another's: 8 to 32 small letters and digits."""
    if not (8 <= len(text) <= 32 and set(text) <= _ID_SIGNS):
        raise ValueError("must be 8 to 32 small letters and digits")
    return text


def each_once(names: tuple[str, ...]) -> tuple[str, ...]:
    """Pass the names of groups, each kept once, in their order."""
    return tuple(dict.fromkeys(names))


def few(readings: tuple[float, ...]) -> tuple[float, ...]:
    """Pass as many readings as a person takes of one measure."""
    if len(readings) > MOST_READINGS:
        raise ValueError(f"must hold at most {MOST_READINGS} readings")
    return readings


def known(key: str) -> str:
    """Pass the key of a measure."""
    if key not in BY_KEY:
        raise ValueError(f"is not a measure; {near_measures(key)}")
    return key


def day(value: object) -> object:
    """Pass a date, or its text as YYYY-MM-DD, of this century or the last."""
    if value is None:
        return None
    found = _date(value)
    if found is None or not 1900 <= found.year < 2100:
        raise ValueError("must be a date such as 2026-11-02")
    return found


def _date(value: object) -> date | None:
    if type(value) is date:
        return value
    if not isinstance(value, str) or len(value) != 10:
        return None
    try:
        return date.fromisoformat(value)
    except ValueError:
        return None


def person(name: str) -> str:
    """Pass a person's name, in any script, its blanks tidied."""
    return line(name)


def line(text: str) -> str:
    """Pass one line of plain characters, in any script, its blanks tidied."""
    tidy = unicodedata.normalize("NFC", text.strip())
    if not tidy or all(unicodedata.category(sign) in ("Zs", "Cf") for sign in tidy):
        raise ValueError("must not be empty")
    if len(tidy) > LONGEST_NAME:
        raise ValueError(f"must be at most {LONGEST_NAME} characters long")
    if any(unicodedata.category(s) in ("Cc", "Cs", "Zl", "Zp") or s in _TURNING for s in tidy):
        raise ValueError("must be one line of plain characters")
    return " ".join(tidy.split())


def plain_object(text: str) -> Mapping[str, object]:
    """Return the JSON object a text holds, or raise ProfileError.

    Refuses what JSON readers let pass in silence: an entry named twice, of which
    all but the last would be lost.
    """
    try:
        content = json.loads(text, object_pairs_hook=_once)
    except json.JSONDecodeError as error:
        raise ProfileError(
            f"This is not a JSON file: line {error.lineno}, column {error.colno} cannot be read."
        ) from None
    except RecursionError:
        raise ProfileError("This is no person's file: it is nested far too deeply.") from None
    except ValueError:
        raise ProfileError("This is no person's file: a number in it is far too long.") from None
    if not isinstance(content, dict):
        raise ProfileError(
            "This is no person's file: it must hold one JSON object, { … }, with a name."
        )
    return content


def _once(pairs: list[tuple[str, object]]) -> dict[str, object]:
    content = dict(pairs)
    if len(content) < len(pairs):
        keys = [key for key, _ in pairs]
        twice = next(key for key in keys if keys.count(key) > 1)
        raise ProfileError(f"“{twice}” stands twice in the same place; keep one of them.")
    return content
