"""The levels of a draft as the record keeps them: asked and given, in cm."""

from __future__ import annotations

from typing import NamedTuple

from tapewise_core.drafting.facts import Level
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.record_pieces import in_cm
from tapewise_core.tasks.shapes import NUMBER, TEXT, Key, Shape, maybe
from tapewise_core.text.told import Reader


class Stood(NamedTuple):
    """A level with whoever reads its reason."""

    level: Level
    reader: Reader


def _cm(mm: float | None) -> float | None:
    return None if mm is None else in_cm(mm)


def _why(stood: Stood) -> str | None:
    told = stood.level.held_back
    return stood.reader.spell(told) if told else None


LEVEL: Shape[Stood] = Shape(
    "one level of the body that the garment covers",
    (
        Key("name", TEXT, lambda one: one.level.name),
        Key("below_nape", maybe(NUMBER), lambda one: _cm(one.level.below_nape), "on the back"),
        Key("body", maybe(NUMBER), lambda one: _cm(one.level.body), "the body's girth"),
        Key("ease", maybe(NUMBER), lambda one: _cm(one.level.ease), "asked there"),
        Key("asked", maybe(NUMBER), lambda one: _cm(one.level.asked)),
        Key("given", maybe(NUMBER), lambda one: _cm(one.level.given), "darts closed"),
        Key("held_back", maybe(TEXT), _why, "why given and asked differ"),
    ),
)


def levels_json(drafted: Drafted) -> list[dict[str, object]]:
    """Return the levels from the top down, reasons in the reader's unit."""
    return [LEVEL.of(Stood(level, drafted.reader)) for level in drafted.pattern.facts.levels]
