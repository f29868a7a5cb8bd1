"""What fittings taught, as the record keeps it: each with whether the draft uses it."""

from __future__ import annotations

from typing import NamedTuple

from tapewise_core.fitting.change import Measured
from tapewise_core.tasks.adjusting import Applied, measured_in
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.shapes import DAY, NUMBER, TEXT, YES_OR_NO, Key, Shape, maybe, one_of


class Known(NamedTuple):
    """An adjustment and the draft that knows of it."""

    applied: Applied
    drafted: Drafted


def _day(known: Known) -> str | None:
    day = known.applied.adjustment.date
    return None if day is None else day.isoformat()


ADJUSTMENT: Shape[Known] = Shape(
    "a change after a fitting",
    (
        Key("what", TEXT, lambda known: known.applied.adjustment.what),
        Key("says", TEXT, lambda known: known.drafted.reader.spell(known.applied.says)),
        Key("amount", NUMBER, lambda known: known.applied.adjustment.amount),
        Key(
            "unit",
            one_of(*Measured),
            lambda known: measured_in(known.applied.adjustment),
            "of the amount",
        ),
        Key("date", maybe(DAY), _day, "of the fitting"),
        Key("garment", maybe(TEXT), lambda known: known.applied.adjustment.garment, "tried on"),
        Key(
            "symptom", maybe(TEXT), lambda known: known.applied.adjustment.symptom, "what was seen"
        ),
        Key("used", YES_OR_NO, lambda known: known.applied.used, "whether this draft has it"),
        Key(
            "why",
            maybe(TEXT),
            lambda known: known.drafted.reader.spell(known.applied.why) or None,
            "why it has not",
        ),
    ),
)


def adjustments_json(drafted: Drafted) -> list[dict[str, object]]:
    """Return what fittings taught, words in the reader's unit."""
    return [ADJUSTMENT.of(Known(one, drafted)) for one in drafted.applied]
