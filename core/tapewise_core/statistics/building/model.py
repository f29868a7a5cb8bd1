"""The model as it is stored: populations by reference and waist site, and where they come from."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Any

import numpy as np

from tapewise_core.statistics.building import fields
from tapewise_core.statistics.building.fit import Joint, at_site, mixed
from tapewise_core.statistics.building.pool import Surveys, pooled, survey_noise
from tapewise_core.statistics.building.tables import (
    SEXES,
    children_1977,
    civilians,
    soldiers_1988,
    soldiers_2012,
)
from tapewise_core.statistics.building.young import children
from tapewise_core.statistics.population import CHILDREN

SITES = ("narrowest", "midway", "navel", "not said")

CAUTIONS = (
    "Lengths of the trunk and the arm rest on soldiers measured in 1988 and 2012, because no open "
    "survey measured them on civilians; girths are re-weighted to civilians of 2017 to 2020.",
    "The surveys put some landmarks elsewhere; what they disagree about is part of each ±.",
    "Above a body mass index of about 35 the tables hold few bodies, so intervals are widened.",
    "Nobody under 17 is estimated, and nobody pregnant is in the tables: measure instead.",
    "A girth read 5 cm wrong looks like another body and cannot be caught: measure twice.",
)
CHILD_SURVEY_NOISE = 0.03
"""How far two surveys' children may part, as a share of each measure (our choice: what grown
people's surveys do, about)."""


def surveys_of(folder: Path) -> dict[str, Surveys]:
    """Return the three surveys of adults, by sex."""
    return {
        sex: Surveys(soldiers_1988(folder, sex), soldiers_2012(folder, sex), civilians(folder, sex))
        for sex in SEXES
    }


def model_of(folder: Path) -> dict[str, Any]:
    """Return the whole model worked out from the fitted halves of the tables in a folder."""
    halves = {sex: one.fitted() for sex, one in surveys_of(folder).items()}
    joints = {sex: pooled(half) for sex, half in halves.items()}
    young = children_1977(folder)
    model = {
        "format": "tapewise body model",
        "version": 2,
        "sources": _sources(halves, len(young.only(young.fitted))),
        "cautions": list(CAUTIONS),
        **described(_populations(joints), survey_noise(tuple(halves.values()))),
    }
    model["populations"][CHILDREN] = _children(children(folder))
    return model


def described(populations: Mapping[str, Joint], noise: Mapping[str, float]) -> dict[str, Any]:
    """Return populations by name as the model keeps them, with what is common to all."""
    knee = {"hip": 75.0}
    return {
        "keys": list(fields.FIELDS),
        "scales": {
            key: [fields.SHIFTS.get(key, 0.0), knee.get(key, 0.0)] for key in sorted(fields.LOGS)
            if key in fields.FIELDS
        },
        "home_noise": fields.HOME_NOISE,
        "survey_noise": {key: _short(one) for key, one in noise.items()},
        "populations": {name: _plain(joint) for name, joint in populations.items()},
    }  # fmt: skip


def _populations(joints: Mapping[str, Joint]) -> dict[str, Joint]:
    """Return the joint for each reference and each waist site."""
    stored = {}
    for site in SITES:
        women, men = (at_site(joints[sex], site) for sex in SEXES)
        both = {"women": women, "men": men, "not said": mixed(women, men)}
        stored.update({f"{reference}, {site}": joint for reference, joint in both.items()})
    return stored


def _children(joint: Joint) -> dict[str, Any]:
    return {
        "keys": list(joint.keys),
        "scales": {key: [0.0, 0.0] for key in joint.keys},
        "survey_noise": dict.fromkeys(joint.keys, CHILD_SURVEY_NOISE),
        **_plain(joint),
    }


def _plain(joint: Joint) -> dict[str, Any]:
    """Return a joint as plain numbers, the lower triangle of its covariance row by row."""
    rows, columns = np.tril_indices(len(joint.mean))
    return {
        "mean": [_short(number) for number in joint.mean],
        "covariance": [_short(number) for number in joint.covariance[rows, columns]],
    }


def _short(number: float) -> float:
    """Six figures: the covariance must stay positive definite after rounding."""
    return float(f"{number:.6g}")


def _sources(halves: Mapping[str, Surveys], young: int) -> list[dict[str, Any]]:
    women, men = halves["women"], halves["men"]
    seconds = [half.second for half in (women, men) if half.second is not None]
    return [
        _source(
            "US Army anthropometric survey 1988 (ANSUR I), public domain",
            "1988",
            (len(women.first), len(men.first)),
            "all measures given height, weight, waist, hip, upper arm and age",
        ),
        _source(
            "US Army anthropometric survey 2012 (ANSUR II), public domain",
            "2012",
            (len(seconds[0]), len(seconds[1])),
            "the same for what it measured, and how far two surveys part",
        ),
        _source(
            "US National Health and Nutrition Examination Survey (NHANES), public domain",
            "2017 to 2020",
            (len(women.civilians), len(men.civilians)),
            "height, weight, waist, hip, upper arm and age of civilians, by survey weight",
        ),
        {
            "what": "Survey of US children for product safety 1975 to 1977, public domain",
            "year": "1977",
            "people": f"{young} children, half of those measured",
            "gives": "whose forms are a child's, with the stature and girths of children of today",
        },
    ]


def _source(what: str, year: str, numbers: tuple[int, int], gives: str) -> dict[str, Any]:
    women, men = numbers
    people = f"{women} women and {men} men, half of those measured"
    return {"what": what, "year": year, "people": people, "gives": gives}
