"""The model as it is stored: populations by reference and waist site, and where they come from."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import numpy as np

from tapewise_core.statistics.building import fields
from tapewise_core.statistics.building.fit import Joint, at_site, joint_of, mixed, reweighted
from tapewise_core.statistics.building.tables import SEXES, civilians, soldiers_1988

SITES = ("narrowest", "midway", "navel", "not said")

CAUTIONS = (
    "Lengths of the trunk and the arm rest on soldiers measured in 1988, because no open survey "
    "measured them on civilians; girths are re-weighted to civilians of 2017 to 2020.",
    "Above a body mass index of about 35 the tables hold few bodies, so intervals are widened.",
    "Nobody under 17, and nobody pregnant, is in the tables: measure instead.",
    "Another survey of soldiers (2012) placed some landmarks elsewhere: of its measures about 90 "
    "in 100 lie in intervals that should hold 95, so where it matters, measure.",
    "A girth read 5 cm wrong looks like another body and cannot be caught: measure twice.",
)


def model_of(folder: Path) -> dict[str, Any]:
    """Return the whole model worked out from the tables in a folder."""
    people = {sex: (soldiers_1988(folder, sex), civilians(folder, sex)) for sex in SEXES}
    joints = {sex: reweighted(joint_of(own), others) for sex, (own, others) in people.items()}
    sizes = {sex: (len(own), len(others)) for sex, (own, others) in people.items()}
    return {
        "format": "tapewise body model",
        "version": 1,
        "sources": _sources(sizes),
        "cautions": list(CAUTIONS),
        **described(_populations(joints)),
    }


def described(populations: dict[str, Joint]) -> dict[str, Any]:
    """Return populations by name as the model keeps them, with what is common to all."""
    return {
        "keys": list(fields.FIELDS),
        "logs": sorted(fields.LOGS),
        "home_noise": [fields.HOME_NOISE.get(key, 0.0) for key in fields.FIELDS],
        "definition_noise": [fields.DEFINITION_NOISE.get(key, 0.0) for key in fields.FIELDS],
        "populations": {name: _plain(joint) for name, joint in populations.items()},
    }


def _populations(joints: dict[str, Joint]) -> dict[str, Joint]:
    """Return the joint for each reference and each waist site."""
    stored = {}
    for site in SITES:
        women, men = (at_site(joints[sex], site) for sex in SEXES)
        both = {"women": women, "men": men, "not said": mixed(women, men)}
        stored.update({f"{reference}, {site}": joint for reference, joint in both.items()})
    return stored


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


def _sources(sizes: dict[str, tuple[int, int]]) -> list[dict[str, Any]]:
    women, men = sizes["women"], sizes["men"]
    return [
        {
            "what": "US Army anthropometric survey 1988 (ANSUR I), public domain",
            "year": "1988",
            "women": women[0],
            "men": men[0],
            "gives": "all measures given height, weight, waist, hip and upper arm",
        },
        {
            "what": "US National Health and Nutrition Examination Survey (NHANES), public domain",
            "year": "2017 to 2020",
            "women": women[1],
            "men": men[1],
            "gives": "height, weight, waist, hip and upper arm of civilians, by survey weight",
        },
    ]
