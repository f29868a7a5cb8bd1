"""A style: every option of a garment with the value it has in one draft."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cached_property
from types import MappingProxyType
from typing import Any, TypeVar

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.style.kind import Value, ValueKind, value_told
from tapewise_core.text.told import Told
from tapewise_core.units import Length

Shared = TypeVar("Shared")


class Chosen(Frozen):
    """One option's value for one draft; ``asked`` if the wearer chose it herself."""

    kind: ValueKind
    value: Value
    asked: bool

    @property
    def told(self) -> Told:
        """The value as a sentence's part."""
        return value_told(self.kind, self.value)


class Style(Frozen, dict=True):
    """Every option of a garment with its value.

    Blocks and parts do not read it: each has a view (such as ``NeckStyle.of(style)``) that knows
    the keys. ``absent`` is for the options that not every garment has, and says what a garment
    without one does; an option asked for without it must be there, or KeyError is raised.
    """

    chosen: Mapping[str, Chosen]

    def once(self, name: str, work: Callable[[], Shared]) -> Shared:
        """Return what follows from the options so far, worked out for the first default that asks.

        For defaults while a style is settled, which is for one body: whoever asks next under the
        same name gets the same, whatever was settled since.
        """
        if name not in self._shared:
            self._shared[name] = work()
        found: Shared = self._shared[name]
        return found

    @cached_property
    def _shared(self) -> dict[str, Any]:
        """What one option's default has worked out, for the next."""
        return {}

    def length(self, key: str, absent: Length | None = None) -> Length:
        """Return a length option."""
        value = self._value(key, absent)
        if not isinstance(value, Length):
            raise TypeError(f"{key} is not a length")
        return value

    def number(self, key: str, absent: float | None = None) -> float:
        """Return a ratio, a weight, or a percentage as people say it."""
        value = self._value(key, absent)
        if not isinstance(value, float):
            raise TypeError(f"{key} is not a number")
        return value

    def choice(self, key: str, absent: str | None = None) -> str:
        """Return a choice, or ``yes``/``no`` for a switch."""
        value = self._value(key, absent)
        if not isinstance(value, str):
            raise TypeError(f"{key} is not a choice")
        return value

    def switch(self, key: str) -> bool:
        """Return whether a switch is on."""
        return self.choice(key) == "yes"

    def asked(self, key: str) -> bool:
        """Say whether the wearer chose this option herself; never, where there is no such one."""
        return key in self.chosen and self.chosen[key].asked

    def drawn(self, values: Mapping[str, Value]) -> Style:
        """Return the style with options that the draft itself settled; what was asked stays."""
        settled = {
            key: replace(self.chosen[key], value=value)
            for key, value in values.items()
            if key in self.chosen and not self.chosen[key].asked
        }
        return Style(MappingProxyType({**self.chosen, **settled}))

    def as_json(self) -> dict[str, float | str]:
        """Return plain values, lengths in cm, as the record keeps them."""
        return {key: _plain(chosen.value) for key, chosen in self.chosen.items()}

    def _value(self, key: str, absent: Value | None) -> Value:
        if key not in self.chosen and absent is not None:
            return absent
        return self.chosen[key].value


def _plain(value: Value) -> float | str:
    return round(value.mm / 10, 3) if isinstance(value, Length) else value
