"""The shape of what machines read: one row for each key, which both writes and describes it.

A key is added by adding its row; the JSON schema follows from the same rows.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Generic, TypeVar

from tapewise_core.frozen import Frozen

JsonType = Mapping[str, object]
"""What a value may be, as a piece of JSON schema."""

TEXT: JsonType = {"type": "string"}
NUMBER: JsonType = {"type": "number"}
WHOLE: JsonType = {"type": "integer"}
YES_OR_NO: JsonType = {"type": "boolean"}
DAY: JsonType = {"type": "string", "format": "date"}


def always(value: str | int) -> JsonType:
    """Return the kind of a key that never changes."""
    return {"const": value}


def one_of(*words: str) -> JsonType:
    """Return the kind of a few words."""
    return {"enum": list(words)}


def maybe(kind: JsonType) -> JsonType:
    """Return a kind or null."""
    return {"anyOf": [kind, {"type": "null"}]}


def listed(kind: JsonType, count: int | None = None) -> JsonType:
    """Return the kind of a list, of so many if a count is given."""
    size = {} if count is None else {"minItems": count, "maxItems": count}
    return {"type": "array", "items": kind, **size}


def by_name(kind: JsonType) -> JsonType:
    """Return the kind of values under names of their own."""
    return {"type": "object", "additionalProperties": kind}


POINT = listed(NUMBER, 2)
"""A point of the drawing: x and y."""

T = TypeVar("T")


class Key(Frozen, Generic[T]):
    """One key: its kind, how its value is found, and what it means.

    An ``optional`` key is left out where its value is None.
    """

    name: str
    kind: JsonType
    find: Callable[[T], object]
    says: str = ""
    optional: bool = False


class Shape(Frozen, Generic[T]):
    """An object of JSON.

    >>> size: Shape[str] = Shape("a word", (Key("letters", WHOLE, len, "how long it is"),))
    >>> size.of("tape"), size.kind["required"]
    ({'letters': 4}, ['letters'])
    """

    says: str
    keys: tuple[Key[T], ...]

    def of(self, found: T) -> dict[str, object]:
        """Return one object as plain values."""
        told = {key.name: key.find(found) for key in self.keys}
        bare = {key.name for key in self.keys if key.optional and told[key.name] is None}
        return {name: value for name, value in told.items() if name not in bare}

    @property
    def kind(self) -> JsonType:
        """What such an object may hold, as JSON schema; no other key is in it."""
        return {
            "type": "object",
            "description": self.says,
            "properties": {key.name: _described(key.kind, key.says) for key in self.keys},
            "required": [key.name for key in self.keys if not key.optional],
            "additionalProperties": False,
        }


def _described(kind: JsonType, says: str) -> JsonType:
    return {**kind, "description": says} if says else kind
