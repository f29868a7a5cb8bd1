"""The garments there are, told to a person or a machine."""

from __future__ import annotations

from tapewise_core.garments.shelf import garment, listing
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.paper.sizes import MARGIN, OVERLAP, ROLL
from tapewise_core.sources import SOURCES, citations
from tapewise_core.style.kind import value_told
from tapewise_core.style.option import Option
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

USUAL_OVERLAP, USUAL_MARGIN, USUAL_ROLL = OVERLAP, MARGIN, ROLL
"""What paper formats take where nothing else is asked for [mm]."""


def garment_list() -> list[dict[str, object]]:
    """Return name, title and a sentence for every garment."""
    return [{"name": name, "title": title, "says": says} for name, title, says in listing()]


def formats() -> tuple[tuple[str, str], ...]:
    """Return name and a sentence for every further format a draft can be written in."""
    from tapewise_core.writers.formats import FORMATS

    return tuple((name, form.says) for name, form in FORMATS.items())


def format_list() -> list[dict[str, object]]:
    """Return the same for a machine."""
    return [{"name": name, "says": says} for name, says in formats()]


def garment_sheet(name: str) -> dict[str, object]:
    """Return all there is to say about one garment; lengths in cm.

    Raises OptionError if there is no such garment.
    """
    page = garment(name)
    return {
        "name": page.name,
        "title": page.title,
        "says": page.says,
        "needs": list(page.needs),
        "helps": list(page.helps),
        "options": [_option(option) for option in page.options],
    }


def garment_sources(name: str) -> list[dict[str, object]]:
    """Return the publications a garment rests on, by key, for a machine.

    Raises OptionError if there is no such garment.
    """
    keys = sorted(key for key in garment(name).cited if key in SOURCES)
    return [{"key": key, "says": str(SOURCES[key])} for key in keys]


def source_lines(name: str) -> list[str]:
    """Return the same for a person."""
    from tapewise_core.drafting.instructions import REST

    told = citations(garment(name).cited)
    return [*(f"  {line}" for line in told), REST]


def _option(option: Option) -> dict[str, object]:
    worked_out = callable(option.default)
    bounded, reader = option.bounded, Reader(Unit.CM)
    return {
        "key": option.key,
        "group": option.group.value,
        "says": reader.spell(option.says),
        "kind": option.kind.value,
        "default": None if worked_out else option.default,
        "default_says": reader.spell(option.default_says),
        "low": option.low if bounded else None,
        "high": option.high if bounded else None,
        "choices": list(option.words),
        "source": option.source,
    }


def garment_lines(name: str, unit: Unit) -> list[str]:
    """Return the same as lines for a person, lengths in her unit."""
    page = garment(name)
    return [
        f"{page.name}: {page.title}. {page.says}",
        "",
        f"Needs: {_named(page.needs)}.",
        f"Fits better with: {_named(page.helps)}.",
        "",
        "Options, with defaults and limits:",
        *(line for option in page.options for line in _option_lines(option, Reader(unit))),
        "",
        f"Example: tapewise draft NAME {page.name} --out my-pattern --set stretch=60",
    ]


def _named(keys: tuple[str, ...]) -> str:
    return ", ".join(NAMES[key] for key in keys) or "nothing more"


def _option_lines(option: Option, reader: Reader) -> tuple[str, str]:
    first = f"  {option.key}: {_default(option, reader)}; {_range(option, reader)}"
    return first, f"      {reader.spell(option.says)}"


def _default(option: Option, reader: Reader) -> str:
    fixed = option.fixed
    if fixed is None:
        return reader.spell(option.default_says) or "worked out from the measures"
    return reader.spell(value_told(option.kind, fixed))


def _range(option: Option, reader: Reader) -> str:
    if option.words:
        return "one of " + ", ".join(option.words)
    low, high = map(reader.spell, option.limits)
    return f"from {low} to {high}"
