"""Reads JSON that is plainly well, without pydantic; of all else, pydantic says what is wrong.

To import pydantic takes as long as all else that a small command does. A value is read by its type
and by the rules that it has to pass (``Passed``), the same that pydantic asks; whatever is not
exactly as it should be raises ValueError.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import MISSING, Field, fields, is_dataclass
from datetime import date
from enum import Enum
from functools import cache
from types import NoneType, UnionType
from typing import (
    Annotated,
    Any,
    Literal,
    TypeVar,
    Union,
    cast,
    get_args,
    get_origin,
    get_type_hints,
)

from tapewise_core.profiles.form import Passed

Kind = TypeVar("Kind")
_Reader = Callable[[Any], Any]

EXACT = 2**53
"""Up to here a float holds every whole number."""


def read_plainly(kind: type[Kind], content: object) -> Kind:
    """Return the value that content of JSON holds; raises ValueError if it needs a closer look."""
    found: Kind = _reader(cast(Any, kind))(content)
    return found


def as_plain(value: Any) -> Any:
    """Return a value in terms of JSON, without what is None."""
    if isinstance(value, Mapping):
        return {key: as_plain(one) for key, one in value.items()}
    if isinstance(value, tuple):
        return [as_plain(one) for one in value]
    if is_dataclass(value):
        held = {row.name: getattr(value, row.name) for row in fields(value)}
        return {name: as_plain(one) for name, one in held.items() if one is not None}
    if isinstance(value, date):
        return value.isoformat()
    return value.value if isinstance(value, Enum) else value


@cache
def _reader(kind: Any) -> _Reader:
    """What reads the values of a type."""
    if kind in _SIMPLE:
        return _SIMPLE[kind]
    if is_dataclass(kind):
        return _object(kind)
    if (made := get_origin(kind)) in _MADE:
        return _MADE[made](get_args(kind))
    return _one_of([(word.value, word) for word in kind])


def _exactly(kind: type[Any]) -> _Reader:
    def read(content: Any) -> Any:
        if not isinstance(content, kind):
            raise ValueError(f"no {kind.__name__}")
        return content

    return read


def _number(content: Any) -> float:
    """A number, whole ones too where a float can be as large."""
    if type(content) is int and abs(content) <= EXACT:
        return float(content)
    return float(_exactly(float)(content))


def _text(content: Any) -> str:
    """Text that can be written again, so without half characters."""
    text: str = _exactly(str)(content)
    text.encode()
    return text


def _object(kind: Any) -> _Reader:
    hints = get_type_hints(kind, include_extras=True)
    readers = {row.name: _reader(hints[row.name]) for row in fields(kind)}
    needed = {row.name for row in fields(kind) if _is_needed(row)}

    def read(content: Any) -> Any:
        named = _exactly(dict)(content)
        if not needed <= named.keys() <= readers.keys():
            raise ValueError("something is missing, or not known")
        return kind(**{name: readers[name](value) for name, value in named.items()})

    return read


def _is_needed(row: Field[Any]) -> bool:
    return row.default is MISSING and row.default_factory is MISSING


def _passing(parts: tuple[Any, ...]) -> _Reader:
    kind, *passed = parts
    reader: _Reader = _reader(kind)
    assert all(isinstance(one, Passed) for one in passed), "what only pydantic knows is not read"
    steps = [
        *(one.rule for one in passed if one.first),
        reader,
        *(one.rule for one in passed if not one.first),
    ]

    def read(content: Any) -> Any:
        for step in steps:
            content = step(content)
        return content

    return read


def _or_none(parts: tuple[Any, ...]) -> _Reader:
    (kind,) = (part for part in parts if part is not NoneType)
    reader = _reader(kind)
    return lambda content: None if content is None else reader(content)


def _one_of(pairs: list[tuple[object, object]]) -> _Reader:
    """One of some words or numbers; what only equals one, such as true, is none."""

    def read(content: Any) -> Any:
        for plain, value in pairs:
            if type(plain) is type(content) and plain == content:
                return value
        raise ValueError("none of these")

    return read


def _list(parts: tuple[Any, ...]) -> _Reader:
    reader, listed = _reader(parts[0]), _exactly(list)
    return lambda content: tuple(map(reader, listed(content)))


def _table(parts: tuple[Any, ...]) -> _Reader:
    key, value, table = _reader(parts[0]), _reader(parts[1]), _exactly(dict)
    return lambda content: {key(name): value(one) for name, one in table(content).items()}


_SIMPLE: dict[object, _Reader] = {float: _number, str: _text, date: _exactly(date)}

_MADE: dict[object, Callable[[tuple[Any, ...]], _Reader]] = {
    Annotated: _passing,
    UnionType: _or_none,
    Union: _or_none,
    tuple: _list,
    Mapping: _table,
    Literal: lambda words: _one_of([(word, word) for word in words]),
}
