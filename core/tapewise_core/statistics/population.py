"""A reference population: how measures hang together, as ``model.json`` keeps it."""

from __future__ import annotations

import json
import math
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from tapewise_core.measures.body import Reference, WaistSite

WEIGHT = "weight"
"""In the model but no measure of the table: the large bodies are known by it [kg].

Nobody is asked for it.
"""
SITED = (
    "waist",
    "back_waist_length",
    "front_waist_length",
    "hip_depth",
    "waist_to_knee",
    "waist_to_floor",
)
"""Measures that move when the waist is found elsewhere."""


@dataclass(frozen=True)
class Population:
    """Means and covariances of all measures, girths and weight as logarithms, lengths in cm.

    ``home`` and ``definition`` are the spreads, on the same scale, of a reading taken
    at home and of the tables' definitions against ours. Source: ``model.json``, where its
    surveys are named.
    """

    keys: tuple[str, ...]
    logs: frozenset[str]
    mean: Mapping[str, float]
    covariance: Mapping[str, Mapping[str, float]]
    home: Mapping[str, float]
    definition: Mapping[str, float]

    @property
    def measures(self) -> tuple[str, ...]:
        """The measures of the table, in its order."""
        return tuple(key for key in self.keys if key != WEIGHT)

    def scaled(self, key: str, cm: float) -> float:
        """Return a value [cm] on the scale of the model."""
        return math.log(cm) if key in self.logs else cm

    def unscaled(self, key: str, value: float) -> float:
        """Return a value of the model in cm (kg for weight)."""
        return math.exp(value) if key in self.logs else value

    def error(self, key: str) -> float:
        """Return the variance between a reading of a measure and the tables' own measure."""
        return self.home[key] ** 2 + self.definition[key] ** 2


def population(reference: Reference, site: WaistSite) -> Population:
    """Return the population a person is compared with."""
    return _population(f"{reference.value}, {site.value}")


def cautions() -> tuple[str, ...]:
    """Return what the model can't do, in sentences for the help."""
    return tuple(_model()["cautions"])


def sources() -> tuple[str, ...]:
    """Return the surveys behind the model, with years and numbers of people."""
    return tuple(
        f"{row['what']}: {row['women']} women and {row['men']} men" for row in _model()["sources"]
    )


def population_of(model: Mapping[str, Any], name: str) -> Population:
    """Return one population of a model read from its file."""
    keys, stored = tuple(model["keys"]), model["populations"][name]
    logs, mean = frozenset(model["logs"]), dict(zip(keys, stored["mean"], strict=True))
    relative = {key: math.exp(-mean[key]) if key in logs else 1.0 for key in keys}
    home, definition = (
        {key: cm * relative[key] for key, cm in zip(keys, model[noise], strict=True)}
        for noise in ("home_noise", "definition_noise")
    )
    covariance = _square(keys, stored["covariance"])
    return Population(keys, logs, mean, covariance, home, definition)


@cache
def _population(name: str) -> Population:
    return population_of(_model(), name)


@cache
def _model() -> Mapping[str, Any]:
    text = Path(__file__).with_name("model.json").read_text(encoding="utf-8")
    model: Mapping[str, Any] = json.loads(text)
    return model


def _square(keys: tuple[str, ...], triangle: list[float]) -> dict[str, dict[str, float]]:
    """Return the full matrix by keys from its lower triangle, row by row."""
    full: dict[str, dict[str, float]] = {key: {} for key in keys}
    numbers = iter(triangle)
    for row, key in enumerate(keys):
        for other in keys[: row + 1]:
            full[key][other] = full[other][key] = next(numbers)
    return full
