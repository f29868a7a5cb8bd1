"""Style options: what the wearer chooses, within limits, each with its default."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from enum import StrEnum
from types import MappingProxyType

from tapewise_core.errors import OptionError, ReadingError
from tapewise_core.measures.body import Body
from tapewise_core.units import Length, Unit, parse_length, parse_number
from tapewise_core.units import mm as millimetres


class Kind(StrEnum):
    """What an option's value is."""

    LENGTH = "length"
    PERCENT = "percent"
    RATIO = "ratio"
    WEIGHT = "weight"
    CHOICE = "choice"
    SWITCH = "switch"


MARKS = {Kind.PERCENT: " %", Kind.WEIGHT: " g/m²"}
"""What follows a number of a kind when it is told."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Option:
    """One option. Lengths and limits in cm, percentages as people say them (50 is half),
    weights of cloth in grams for a square metre.

    ``default`` is a value, or is worked out from the body and the options
    above it (a length, a number or a choice); ``default_says`` tells how.
    ``source`` is a key of :mod:`tapewise_core.sources`.
    """

    key: str
    says: str
    kind: Kind = Kind.LENGTH
    default: float | str | Callable[[Body, Style], Length | float | str]
    default_says: str = ""
    low: float = 0.0
    high: float = 0.0
    choices: tuple[str, ...] = ()
    source: str = "practice"

    @property
    def words(self) -> tuple[str, ...]:
        """The words to choose from; none for what is a length or a number."""
        return ("yes", "no") if self.kind is Kind.SWITCH else self.choices


@dataclass(frozen=True, slots=True)
class Chosen:
    """One option's value for one draft; ``asked`` if the wearer chose it herself."""

    option: Option
    value: float | str | Length
    asked: bool

    def tell(self, unit: Unit) -> str:
        """Spell the value for a person."""
        if isinstance(self.value, Length):
            return unit.spell(self.value.mm)
        if isinstance(self.value, str):
            return self.value
        return f"{self.value:g}{MARKS.get(self.option.kind, '')}"


@dataclass(frozen=True, slots=True)
class Style:
    """Every option of a garment with its value."""

    chosen: Mapping[str, Chosen]

    def length(self, key: str) -> Length:
        """Return a length option."""
        value = self.chosen[key].value
        if not isinstance(value, Length):
            raise TypeError(f"{key} is not a length")
        return value

    def number(self, key: str) -> float:
        """Return a ratio, a weight, or a percentage as people say it."""
        value = self.chosen[key].value
        if not isinstance(value, float):
            raise TypeError(f"{key} is not a number")
        return value

    def choice(self, key: str) -> str:
        """Return a choice, or ``yes``/``no`` for a switch."""
        value = self.chosen[key].value
        if not isinstance(value, str):
            raise TypeError(f"{key} is not a choice")
        return value

    def with_length(self, key: str, length: Length) -> Style:
        """Return the style with one length replaced, as for one side of a body alone."""
        changed = replace(self.chosen[key], value=length)
        return Style(MappingProxyType({**self.chosen, key: changed}))

    def asked(self, key: str) -> bool:
        """Say whether the wearer chose this option herself."""
        return self.chosen[key].asked

    def replaced(self, option: Option, value: Length | str) -> Style:
        """Return the style with one value set by the garment itself."""
        return Style(MappingProxyType({**self.chosen, option.key: Chosen(option, value, False)}))

    def as_json(self) -> dict[str, float | str]:
        """Return plain values, lengths in cm, as the record keeps them."""
        return {key: _plain(chosen.value) for key, chosen in self.chosen.items()}


def _plain(value: float | str | Length) -> float | str:
    return round(value.mm / 10, 3) if isinstance(value, Length) else value


def read(option: Option, text: str, unit: Unit) -> float | str | Length:
    """Return a typed value for an option; raises OptionError saying what would be right."""
    try:
        if option.kind is Kind.LENGTH:
            return millimetres(parse_length(text, unit, signed=option.low < 0))
        if option.kind is Kind.WEIGHT:
            return parse_number(text.strip().removesuffix("g/m²").removesuffix("g"))
        if option.kind in (Kind.PERCENT, Kind.RATIO):
            return parse_number(text)
    except ReadingError as error:
        raise OptionError(f"{option.key}: {error}") from None
    word = text.strip().lower()
    if word not in option.words:
        raise OptionError(
            f"{option.key} is one of {', '.join(option.words)}, not “{text.strip()}”."
        )
    return word


def within(option: Option, value: float | str | Length, unit: Unit) -> str | None:
    """Return a sentence if a value is outside its option's own limits, else None."""
    if isinstance(value, str):
        return None
    number = value.mm / 10 if isinstance(value, Length) else value
    if option.low - 1e-6 <= number <= option.high + 1e-6:
        return None
    low, high = limits(option, unit)
    mark = " %" if option.kind is Kind.PERCENT else ""
    shown = unit.spell(value.mm) if isinstance(value, Length) else f"{number:g}{mark}"
    return f"{option.key} must be from {low} to {high}, and is {shown}."


def limits(option: Option, unit: Unit) -> tuple[str, str]:
    """Spell an option's lower and upper limit."""
    if option.kind is Kind.LENGTH:
        return unit.spell(option.low * 10), unit.spell(option.high * 10)
    mark = MARKS.get(option.kind, "")
    return f"{option.low:g}{mark}", f"{option.high:g}{mark}"


def settle(options: tuple[Option, ...], asked: Mapping[str, str], body: Body, unit: Unit) -> Style:
    """Return a style from what was asked, defaults filling the rest.

    Raises OptionError naming every unknown option and every value out of its limits.
    """
    known = {option.key: option for option in options}
    faults = [_unknown(key, known) for key in asked if key not in known]
    chosen: dict[str, Chosen] = {}
    for option in options:
        try:
            value = _value(option, asked, body, Style(chosen), unit)
        except OptionError as error:
            faults.append(str(error))
            asked = {k: text for k, text in asked.items() if k != option.key}
            value = _value(option, asked, body, Style(chosen), unit)
        fault = within(option, value, unit)
        if fault and option.key in asked:
            faults.append(fault)
        chosen[option.key] = Chosen(option, value, option.key in asked)
    if faults:
        raise OptionError(" ".join(faults))
    return Style(MappingProxyType(chosen))


def _value(
    option: Option, asked: Mapping[str, str], body: Body, so_far: Style, unit: Unit
) -> float | str | Length:
    if option.key in asked:
        return read(option, asked[option.key], unit)
    if callable(option.default):
        return _clamped(option, option.default(body, so_far))
    if option.kind is Kind.LENGTH:
        return millimetres(float(option.default) * 10)
    return option.default


def _clamped(option: Option, value: Length | float | str) -> Length | float | str:
    """Keep a default length worked out from a body within the option's limits."""
    if not isinstance(value, Length):
        return value
    if option.low * 10 <= value.mm <= option.high * 10:
        return value
    return millimetres(min(max(value.mm, option.low * 10), option.high * 10))


def _unknown(key: str, known: Mapping[str, Option]) -> str:
    import difflib

    near = difflib.get_close_matches(key, known, n=1)
    hint = f"did you mean {near[0]}?" if near else f"it has {', '.join(known)}."
    return f"This garment has no option “{key}”; {hint}"
