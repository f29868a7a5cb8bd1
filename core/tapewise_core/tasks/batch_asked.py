"""What is asked of a whole batch, looked at once before the first row."""

from __future__ import annotations

from collections.abc import Collection

from tapewise_core.errors import OptionError
from tapewise_core.garments.shelf import garment
from tapewise_core.sewing.machines import read_machines
from tapewise_core.style.options import Options
from tapewise_core.style.settle import read, within
from tapewise_core.tasks.batch_row import Order
from tapewise_core.tasks.paper_asked import paper_options, refuse_idle
from tapewise_core.text.near import near_words
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import Unit


def refuse_for_all(usual: Order, units: Collection[Unit]) -> None:
    """Raise OptionError for what is wrong whoever it is for; ``units`` are what people read.

    A value that only some body or other option rules out is for each row to find.
    """
    read_machines(usual.machines)
    options = garment(usual.garment).options
    _refuse_formats(usual)
    readers = [Unit(usual.unit)] if usual.unit else sorted(units)
    for key, text in usual.asked:
        _refuse_value(options, key, text, readers or [Unit.CM])
    for unit in readers:
        paper_options(usual.paper, unit)


def _refuse_formats(usual: Order) -> None:
    from tapewise_core.writers.formats import FORMATS

    for name in usual.formats:
        if name not in FORMATS:
            raise OptionError(f"There is no format “{name}”; {near_words(name, list(FORMATS))}")
    refuse_idle(usual.formats, usual.paper)


def _refuse_value(options: Options, key: str, text: str, readers: Collection[Unit]) -> None:
    """A bare number may be wrong in one unit and right in the other: then it is left to the row."""
    if key not in options:
        hint = near_words(key, list(options.keys))
        raise OptionError(said("This garment has no option {}; {}", OptionKey(key), hint))
    option, faults = options[key], list[OptionError]()
    for unit in readers:
        try:
            fault = within(option, read(option, text, unit))
        except OptionError as error:
            faults.append(error)
        else:
            faults += [OptionError(fault)] if fault else []
    if len(faults) == len(readers):
        raise faults[0]
