"""A reference population: how measures hang together, as ``model.json`` keeps it."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache, cached_property
from pathlib import Path
from typing import Any

import msgspec

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.statistics.scale import Scale

WEIGHT = "weight"
"""In the model but no measure of the table: the large bodies are known by it [kg].

Nobody is asked for it.
"""
AGES = ("age", "age_over_50", "age_over_65")
"""In the model for those who say their age: years up to 50, years above 50, years above 65."""
YOUNGEST, OLDEST = 18.0, 80.0
"""The ages [years] between which the surveys' adults lie; beyond them the nearer one counts."""
SITED = (
    "waist",
    "back_waist_length",
    "front_waist_length",
    "hip_depth",
    "waist_to_knee",
    "waist_to_floor",
)
"""Measures that move when the waist is found elsewhere."""
CHILDREN = "children"
"""The population of those under 17, which tells whose body a form may be."""
PLAIN = Scale()


class Population(Frozen, dict=True):
    """Means and covariances of all measures, each on its scale, lengths in cm.

    ``home`` and ``definition`` are the spreads, on the same scale, of a reading taken
    at home and of one survey's definition against another's. Source: ``model.json``, where
    its surveys are named.
    """

    keys: tuple[str, ...]
    scales: Mapping[str, Scale]
    mean: Mapping[str, float]
    covariance: Mapping[str, Mapping[str, float]]
    home: Mapping[str, float]
    definition: Mapping[str, float]

    @cached_property
    def measures(self) -> tuple[str, ...]:
        """The measures of the table, in its order."""
        return tuple(key for key in self.keys if key != WEIGHT and key not in AGES)

    @property
    def is_weighed(self) -> bool:
        """Whether weight is part of the model, as it is for all but children."""
        return WEIGHT in self.keys

    def scale(self, key: str) -> Scale:
        """Return a measure's scale."""
        return self.scales.get(key, PLAIN)

    def scaled(self, key: str, cm: float) -> float:
        """Return a value [cm] on the scale of the model."""
        return self.scale(key).of(cm)

    def unscaled(self, key: str, value: float) -> float:
        """Return a value of the model in cm (kg for weight)."""
        return self.scale(key).back(value)

    def error(self, key: str) -> float:
        """Return the variance between a reading of a measure and the surveys' own measure."""
        return self.home[key] ** 2 + self.definition[key] ** 2


def age_values(age: float) -> dict[str, float]:
    """Return an age [years] as the model keeps it, a line with two bends.

    >>> age_values(72)
    {'age': 50, 'age_over_50': 22, 'age_over_65': 7}
    """
    return dict(zip(AGES, (min(age, 50), max(age - 50, 0), max(age - 65, 0)), strict=True))


def population(reference: Reference, site: WaistSite, age: float | None = None) -> Population:
    """Return the population a person is compared with; ``age`` [years] narrows it."""
    return _population(f"{reference.value}, {site.value}", age)


def children() -> Population:
    """Return the population of those under 17."""
    return _population(CHILDREN, None)


def cautions() -> tuple[str, ...]:
    """Return what the model can't do, in sentences for the help."""
    return tuple(_model()["cautions"])


def sources() -> tuple[str, ...]:
    """Return the surveys behind the model, with years and numbers of people."""
    return tuple(f"{row['what']}: {row['people']}" for row in _model()["sources"])


def population_of(model: Mapping[str, Any], name: str) -> Population:
    """Return one population of a model read from its file."""
    stored = model["populations"][name]
    keys = tuple(stored.get("keys", model["keys"]))
    mean = dict(zip(keys, stored["mean"], strict=True))
    scales = {key: Scale(*pair) for key, pair in stored.get("scales", model["scales"]).items()}
    home = {
        key: model["home_noise"].get(key, 0.0) * scale.slope(scale.back(mean[key]))
        for key in keys
        for scale in (scales.get(key, PLAIN),)
    }
    noise = stored.get("survey_noise", model["survey_noise"])
    definition = {key: noise.get(key, 0.0) for key in keys}
    return Population(keys, scales, mean, _square(keys, stored["covariance"]), home, definition)


def narrowed(people: Population, values: Mapping[str, float]) -> Population:
    """Return the population of those who have exactly some values of the model's own."""
    keys = people.keys
    mean = dict(people.mean)
    covariance = {key: dict(people.covariance[key]) for key in keys}
    for name, value in values.items():
        spread, off = covariance[name][name], value - mean[name]
        share = {key: covariance[key][name] / spread if spread > 1e-9 else 0.0 for key in keys}
        line = dict(covariance[name])
        for key in keys:
            mean[key] += share[key] * off
            for other in keys:
                covariance[key][other] -= share[key] * line[other]
    return Population(keys, people.scales, mean, covariance, people.home, people.definition)


@cache
def _population(name: str, age: float | None) -> Population:
    if age is None:
        return population_of(_model(), name)
    return narrowed(_population(name, None), age_values(min(max(age, YOUNGEST), OLDEST)))


@cache
def _model() -> Mapping[str, Any]:
    model: Mapping[str, Any] = msgspec.json.decode(
        Path(__file__).with_name("model.json").read_bytes()
    )
    return model


def _square(keys: tuple[str, ...], triangle: list[float]) -> dict[str, dict[str, float]]:
    """Return the full matrix by keys from its lower triangle, row by row."""
    full: dict[str, dict[str, float]] = {key: {} for key in keys}
    numbers = iter(triangle)
    for row, key in enumerate(keys):
        for other in keys[: row + 1]:
            full[key][other] = full[other][key] = next(numbers)
    return full
