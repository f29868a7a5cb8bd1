"""Options settled: what was typed is read and bounded, defaults fill the rest."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from tapewise_core.errors import OptionError, ReadingError
from tapewise_core.measures.body import Body
from tapewise_core.style.kind import Value, ValueKind, value_told
from tapewise_core.style.option import Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Chosen, Style
from tapewise_core.text.told import OptionKey, Told, joined, said
from tapewise_core.text.typed import parse_length, parse_number
from tapewise_core.units import Length, Unit, mm


def read(option: Option, text: str, unit: Unit) -> Value:
    """Return a typed value for an option, a bare length being in ``unit``.

    Raises OptionError saying what would be right.
    """
    try:
        if option.kind is ValueKind.LENGTH:
            return mm(parse_length(text, unit, signed=option.low < 0))
        if option.kind is ValueKind.WEIGHT:
            return parse_number(text.strip().removesuffix("g/m²").removesuffix("g"))
        if option.bounded:
            return parse_number(text, like="50" if option.kind is ValueKind.PERCENT else "0.83")
    except ReadingError as error:
        raise OptionError((OptionKey(option.key), ": ", *error.told)) from None
    word = text.strip().lower()
    if word not in option.words:
        one_of, typed = ", ".join(option.words), text.strip()
        raise OptionError(said("{} is one of {}, not “{}”.", OptionKey(option.key), one_of, typed))
    return word


def within(option: Option, value: Value) -> Told:
    """Return a sentence if a value is outside its option's own limits, else nothing."""
    number = value.mm / 10 if isinstance(value, Length) else value
    if isinstance(number, str) or option.allows(number):
        return ()
    low, high = option.limits
    shown, key = value_told(option.kind, value), OptionKey(option.key)
    return said("{} must be from {} to {}, and is {}.", key, low, high, shown)


NOT_MOVED: Mapping[str, float] = MappingProxyType({})
"""Where no fitting changed anything."""


def settle(
    options: Options,
    asked: Mapping[str, str],
    body: Body,
    unit: Unit,
    moved: Mapping[str, float] = NOT_MOVED,
) -> Style:
    """Return a style from what was asked, defaults filling the rest.

    ``moved`` is what is added to some options, asked or not, before those below follow from them
    [mm for lengths]. Raises OptionError naming every unknown option and every value out of its
    limits.
    """
    faults = [_unknown(key, options) for key in asked if key not in options]
    chosen: dict[str, Chosen] = {}
    so_far = Style(chosen)
    for option in options:
        try:
            value = _value(option, asked, body, so_far, unit)
        except OptionError as error:
            faults.append(_parts(error))
            value = _value(option, {}, body, so_far, unit)
        value = _moved(value, moved.get(option.key, 0.0))
        if option.key in asked or option.key in moved:
            fault = within(option, value)
            if fault:
                faults.append(fault)
                value = _value(option, {}, body, so_far, unit)  # what follows is usual from it
        chosen[option.key] = Chosen(option.kind, value, option.key in asked)
    if faults:
        raise OptionError(joined(faults))
    return Style(MappingProxyType(chosen))


def _moved(value: Value, by: float) -> Value:
    """A length or a number so much larger; a word cannot be moved."""
    if not by or isinstance(value, str):
        return value
    return value + mm(by).called("after fittings") if isinstance(value, Length) else value + by


def _parts(error: OptionError) -> Told:
    return error.told  # type: ignore[return-value]


def _value(
    option: Option, asked: Mapping[str, str], body: Body, so_far: Style, unit: Unit
) -> Value:
    if option.key in asked:
        return read(option, asked[option.key], unit)
    if callable(option.default):
        return _clamped(option, option.default(body, so_far))
    fixed = option.fixed
    assert fixed is not None
    return fixed


def _clamped(option: Option, value: Value) -> Value:
    """Keep a default length worked out from a body within the option's limits."""
    if not isinstance(value, Length):
        return value
    if option.low * 10 <= value.mm <= option.high * 10:
        return value
    return mm(min(max(value.mm, option.low * 10), option.high * 10))


MEASURED_NOW = {"round-shoulders": "over-shoulder girth"}
"""Options of earlier versions that are measures now, by the measure's name."""


def measured_now(key: str) -> str:
    """Say where an option went that is a measure now, else nothing.

    >>> measured_now("round-shoulders")
    'the over-shoulder girth is a measure now'
    """
    return f"the {MEASURED_NOW[key]} is a measure now" if key in MEASURED_NOW else ""


def _unknown(key: str, known: Options) -> Told:
    import difflib

    if key in MEASURED_NOW:
        return said("There is no option “{}” any more; {}.", key, measured_now(key))
    near = difflib.get_close_matches(key, known.keys, n=1)
    if near:
        return said("This garment has no option “{}”; did you mean {}?", key, OptionKey(near[0]))
    keys = joined([(OptionKey(each),) for each in known.keys], ", ")
    return said("This garment has no option “{}”; it has {}.", key, keys)
