"""The children's population: measured in 1977 [snyder], as large as those of today [nhanes]."""

from __future__ import annotations

from pathlib import Path

import numpy as np

from tapewise_core.statistics.building import fields
from tapewise_core.statistics.building.fit import Joint, mixed, reweighted
from tapewise_core.statistics.building.tables import (
    SEXES,
    Floats,
    People,
    children_1977,
    children_today,
)

KEYS = tuple(fields.CHILDREN)
TODAY = ("height", "waist", "upper_arm")
"""What the children of today were measured for."""
ROUNDS = 60
"""Rounds of filling in what a child was not measured for; the joint then stands still."""


def children(folder: Path) -> Joint:
    """Return the joint of children's measures, all by their logarithms."""
    people = children_1977(folder)
    people = people.only(people.fitted)
    then = filled(np.log(np.column_stack([people.columns[key] for key in KEYS])))
    return reweighted(then, _today(folder), TODAY)


def filled(table: Floats) -> Joint:
    """Return the joint of a table with gaps, by expectation and maximisation."""
    mean, covariance = np.nanmean(table, axis=0), np.diag(np.nanvar(table, axis=0))
    patterns, which = np.unique(~np.isnan(table), axis=0, return_inverse=True)
    for _ in range(ROUNDS):
        whole, spare = table.copy(), np.zeros_like(covariance)
        for number, has in enumerate(patterns):
            rows = which == number
            slopes = np.linalg.solve(covariance[np.ix_(has, has)], covariance[has]).T
            guess = mean + (table[np.ix_(rows, has)] - mean[has]) @ slopes.T
            whole[rows] = np.where(has, table[rows], guess)
            spare += rows.sum() * (covariance - slopes @ covariance[has])
        mean = whole.mean(axis=0)
        covariance = np.cov(whole.T, bias=True) + spare / len(table)
    return Joint(KEYS, mean, covariance)


def _today(folder: Path) -> Joint:
    joints = []
    for sex in SEXES:
        people = children_today(folder, sex)
        joints.append(_joint(people.only(people.fitted)))
    return mixed(*joints)


def _joint(people: People) -> Joint:
    """Every year of age counts alike, whatever the survey's weights."""
    table = np.log(np.column_stack([people.columns[key] for key in TODAY]))
    return Joint(TODAY, table.mean(axis=0), np.cov(table.T))
