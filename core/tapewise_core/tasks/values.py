"""Measures as the record and a check keep them: cm, origin, interval and grounds."""

from __future__ import annotations

from collections.abc import Mapping

from tapewise_core.measures.body import Origin, Value
from tapewise_core.tasks.shapes import NUMBER, TEXT, JsonType, Key, Shape, by_name, listed, one_of


def _interval(value: Value) -> list[float] | None:
    return None if value.interval is None else [round(end, 2) for end in value.interval]


VALUE: Shape[Value] = Shape(
    "one measure",
    (
        Key("value", NUMBER, lambda value: round(value.cm, 2), "in cm"),
        Key("origin", one_of(*Origin), lambda value: value.origin.value),
        Key("interval", listed(NUMBER, 2), _interval, "90 % of an estimate, in cm", optional=True),
        Key("how", TEXT, lambda value: value.how or value.origin.value, "what it was drawn from"),
    ),
)

VALUES: JsonType = by_name(VALUE.kind)
"""Measures by their keys."""


def values_json(values: Mapping[str, Value]) -> dict[str, dict[str, object]]:
    """Return measures as plain values."""
    return {key: VALUE.of(value) for key, value in values.items()}
