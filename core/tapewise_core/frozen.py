"""Frozen dataclasses that cost little before they are used.

The standard library spells up to seven methods of each class as text and compiles every one, which
took a quarter of the time until a command had drafted: two hundred classes, most of which it never
makes anything of. Here methods are shared, and the one that fills a new value is compiled when the
first is made. All else is the standard library's: ``fields``, ``replace`` and ``asdict`` know the
classes, and a type checker sees its own decorator.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from dataclasses import MISSING, Field, FrozenInstanceError, fields
from operator import attrgetter
from typing import TYPE_CHECKING, Any, NoReturn


def _frozen(
    *, frozen: bool, slots: bool = False, eq: bool = True, kw_only: bool = False
) -> Callable[[type], type]:
    """Make dataclasses; ``frozen`` is there for whoever reads, and must be true."""
    assert frozen, "what changes is made by the standard library's own decorator"

    def make(kind: type) -> type:
        stands = any(hasattr(base, "__dataclass_fields__") for base in kind.__mro__[1:])
        way = dataclasses.dataclass(
            init=False, repr=False, eq=False, frozen=stands, slots=slots, kw_only=kw_only
        )
        bare: Any = way(kind)
        bare.__dataclass_params__.frozen = True  # for whoever stands on it
        for name, method in _methods(bare, slots=slots, eq=eq).items():
            setattr(bare, name, method)
        return bare  # type: ignore[no-any-return]

    return make


def _methods(kind: type, *, slots: bool, eq: bool) -> dict[str, Any]:
    """What a kind of value can do, by name."""
    found: dict[str, Any] = {
        "__setattr__": _refuse,
        "__delattr__": _refuse,
        "__init__": _first_init(kind),
    }
    if slots:  # pickle sets slots, which refuse it
        found |= {"__getstate__": _kept, "__setstate__": _taken_up}
    told = {"__repr__": _spelt, **(_comparing(kind) if eq else {})}
    return found | {name: method for name, method in told.items() if not vars(kind).get(name)}


def _refuse(self: object, name: str, *value: object) -> NoReturn:
    raise FrozenInstanceError(f"cannot assign to field {name!r}")


def _spelt(self: Any) -> str:
    told = (f"{row.name}={getattr(self, row.name)!r}" for row in fields(self) if row.repr)
    return f"{type(self).__qualname__}({', '.join(told)})"


def _kept(self: Any) -> list[object]:
    return [getattr(self, row.name) for row in fields(self)]


def _taken_up(self: Any, state: list[object]) -> None:
    for row, value in zip(fields(self), state, strict=True):
        object.__setattr__(self, row.name, value)


def _comparing(kind: Any) -> dict[str, Any]:
    """Equality of all fields that count, and a hash that goes with it."""
    names = [row.name for row in fields(kind) if row.compare]
    if len(names) > 1:
        parts: Callable[[object], object] = attrgetter(*names)
    else:
        parts = lambda value: tuple(getattr(value, name) for name in names)  # noqa: E731

    def same(self: object, other: object) -> bool:
        return parts(self) == parts(other) if type(other) is type(self) else NotImplemented

    def digest(self: object) -> int:
        return hash(parts(self))

    return {"__eq__": same, "__hash__": digest}


def _first_init(kind: type) -> Callable[..., None]:
    """What makes the first value of a kind: it puts the true way of making them in its place."""

    def init(self: object, *given: object, **named: object) -> None:
        kind.__init__ = made = _init(kind)  # type: ignore[misc]
        made(self, *given, **named)

    return init


def _init(kind: Any) -> Callable[..., None]:
    """Compile the function that fills a new value, by its slots where it has some."""
    names: dict[str, Any] = {"_set": object.__setattr__, "_missing": MISSING}
    rows = [(row, _asked(row, names)) for row in fields(kind)]
    asked = [told for row, told in rows if not row.kw_only]
    named = [told for row, told in rows if row.kw_only]
    lines = [_filled(kind, row, names) for row, _ in rows]
    if hasattr(kind, "__post_init__"):
        lines.append("self.__post_init__()")
    head = ", ".join(("self", *asked, *(("*", *named) if named else ())))
    exec(f"def __init__({head}):\n " + "\n ".join(lines or ["pass"]), names)
    made: Callable[..., None] = names["__init__"]
    made.__qualname__ = f"{kind.__qualname__}.__init__"
    return made


def _filled(kind: Any, row: Field[Any], names: dict[str, Any]) -> str:
    """The line that fills a field: a slot by its own setter, which is quickest."""
    name = value = row.name
    if row.default_factory is not MISSING:
        value = f"_new_{name}() if {name} is _missing else {name}"
    setter = getattr(getattr(kind, name, None), "__set__", None)
    if setter is None:
        return f"_set(self, {name!r}, {value})"
    names[f"_set_{name}"] = setter
    return f"_set_{name}(self, {value})"


def _asked(row: Field[Any], names: dict[str, Any]) -> str:
    """A field as it is asked for, with what stands in for it."""
    if row.default_factory is not MISSING:
        names[f"_new_{row.name}"] = row.default_factory
        return f"{row.name}=_missing"
    if row.default is MISSING:
        return row.name
    names[f"_usual_{row.name}"] = row.default
    return f"{row.name}=_usual_{row.name}"


if TYPE_CHECKING:
    from dataclasses import dataclass as dataclass
else:
    dataclass = _frozen
