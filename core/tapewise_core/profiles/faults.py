"""What is wrong with a person's file, each fault with its place, in words."""

from __future__ import annotations

import json
from collections.abc import Sequence

from pydantic import ValidationError
from pydantic_core import ErrorDetails

_MUST = {
    "missing": "is missing",
    "unexpected_keyword_argument": "is not part of the format; take it out",
    "float_type": "must be a number",
    "string_type": "must be text",
    "tuple_type": "must be a list of numbers",
    "dataclass_type": 'must be an object such as {"value": 92}',
    "dataclass_exact_type": 'must be an object such as {"value": 92}',
    "dict_type": "must be an object",
    "mapping_type": "must be an object",
}
_SHOWN = frozenset({"value_error", "literal_error", "enum", "float_type", "string_type"})
"""Kinds of fault after which the value itself is worth repeating."""


def faults_of(error: ValidationError) -> tuple[str, ...]:
    """Return one line for each fault, its place first.

    >>> from tapewise_core.errors import ProfileError
    >>> from tapewise_core.profiles.profile import Profile
    >>> try:
    ...     Profile.of("Ada").with_value("hip", -3)
    ... except ProfileError as error:
    ...     print(error)
    measures.hip.value: must be more than 0 and at most 300 cm, is -3.
    """
    return tuple(map(_line, error.errors()))


def _line(fault: ErrorDetails) -> str:
    shown = f", is {_value(fault['input'])}" if _worth_showing(fault) else ""
    return f"{_place(fault['loc'])}: {_must(fault)}{shown}"


def _must(fault: ErrorDetails) -> str:
    cause = fault.get("ctx", {})
    if fault["type"] == "value_error":
        return str(cause["error"])
    if fault["type"] == "json_invalid":
        return f"cannot be read as JSON: {cause['error']}"
    if "expected" in cause:
        return f"must be {cause['expected']}".replace("'", '"')
    return _MUST.get(fault["type"], fault["msg"][:1].lower() + fault["msg"][1:])


def _worth_showing(fault: ErrorDetails) -> bool:
    return fault["type"] in _SHOWN and fault["loc"][-1:] != ("[key]",)


def _place(loc: Sequence[str | int]) -> str:
    """Spell a place such as ``measures.bust.readings[1]``."""
    place = ""
    for part in loc:
        if isinstance(part, int):
            place += f"[{part + 1}]"
        elif part != "[key]":
            place += f".{part}" if place else part
    return place or "the file"


def _value(value: object) -> str:
    """Spell a value as JSON, short enough for one line."""
    try:
        spelt = json.dumps(value, ensure_ascii=False)
    except (TypeError, ValueError):
        spelt = str(value)
    return spelt if len(spelt) <= 40 else spelt[:39] + "…"
