"""A draft beside a garment that fits, as the record keeps it: in cm, girths whole."""

from __future__ import annotations

from typing import NamedTuple

from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.loved.likeness import Likeness, Row
from tapewise_core.tasks.record_pieces import in_cm
from tapewise_core.tasks.shapes import NUMBER, TEXT, Key, Shape, listed, maybe
from tapewise_core.text.told import Reader


class Alike(NamedTuple):
    """A likeness with whoever reads it."""

    likeness: Likeness
    reader: Reader


class Beside(NamedTuple):
    """One of its rows with whoever reads its reason."""

    row: Row
    reader: Reader


def _given(one: Beside) -> float | None:
    return None if one.row.given is None else in_cm(one.row.given)


def _why(one: Beside) -> str | None:
    return None if one.row.same or not one.row.why else one.reader.spell(one.row.why)


ROW: Shape[Beside] = Shape(
    "one measure of both, girths whole",
    (
        Key("name", TEXT, lambda one: one.row.row.key),
        Key("there", NUMBER, lambda one: in_cm(one.row.there), "on the garment that fits"),
        Key("wanted", NUMBER, lambda one: in_cm(one.row.wanted), "what wears alike in this cloth"),
        Key("given", maybe(NUMBER), _given, "as drafted"),
        Key("why", maybe(TEXT), _why, "why both differ"),
    ),
)

LIKE: Shape[Alike] = Shape(
    "a draft beside a garment that fits",
    (
        Key("name", TEXT, lambda one: one.likeness.name),
        Key(
            "rows",
            listed(ROW.kind),
            lambda one: [ROW.of(Beside(row, one.reader)) for row in one.likeness.rows],
        ),
    ),
)


def like_json(drafted: Drafted) -> dict[str, object] | None:
    """Return how a draft compares, None if it was not drafted like another garment."""
    return None if drafted.like is None else LIKE.of(Alike(drafted.like, drafted.reader))
