"""The open tables as arrays of people: lengths and girths in cm, weight in kg, age in years."""

from __future__ import annotations

import csv
from collections.abc import Callable
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from tapewise_core.errors import FilesError
from tapewise_core.frozen import Frozen
from tapewise_core.statistics.building import fields
from tapewise_core.statistics.population import AGES, age_values

Floats = NDArray[np.float64]
Chosen = NDArray[np.bool_]
Row = dict[str, str]
SEXES = ("women", "men")
GROWN = 18
"""From this age on [years] the civilian survey's people count as adults."""
CHILD_FROM, CHILD_TO = 2.0, 17.0
"""The ages [years] of those who count as children; the second is the first that does not."""


class Soldiers(Frozen):
    """One sex of the 1988 survey: a column per measure, the waist at two places.

    ``fitted`` says who belongs to the half that the model is worked out from.
    """

    narrowest: dict[str, Floats]
    navel: dict[str, Floats]
    fitted: Chosen

    def __len__(self) -> int:
        return len(self.fitted)

    def only(self, chosen: Chosen) -> Soldiers:
        """Return some of the people."""
        first, second = (
            {key: column[chosen] for key, column in place.items()}
            for place in (self.narrowest, self.navel)
        )
        return Soldiers(first, second, self.fitted[chosen])

    def at(self, share: float | Floats) -> dict[str, Floats]:
        """Return the people with the waist a share of the way from the narrowest to the navel."""
        return {
            key: column + share * (self.navel[key] - column)
            for key, column in self.narrowest.items()
        }


class People(Frozen):
    """One sex of another survey, with survey weights; ``fitted`` as for the soldiers."""

    columns: dict[str, Floats]
    weights: Floats
    fitted: Chosen

    def __len__(self) -> int:
        return len(self.weights)

    def only(self, chosen: Chosen) -> People:
        """Return some of the people."""
        columns = {key: column[chosen] for key, column in self.columns.items()}
        return People(columns, self.weights[chosen], self.fitted[chosen])


def soldiers_1988(folder: Path, sex: str) -> Soldiers:
    """Return one sex of the soldiers of 1988 [ansur1]."""
    rows = rows_of(folder / "ansur1_1988.csv", 1988, lambda row: row["GENDER"] == _number(sex))
    plain = {key: _column(rows, name) / 10 for key, name in fields.ANSUR1_PLAIN.items()}
    plain |= _ages(_column(rows, "AGE"))
    return Soldiers(_at(rows, plain, "narrowest"), _at(rows, plain, "navel"), _fitted(rows))


def soldiers_2012(folder: Path, sex: str) -> People:
    """Return one sex of the soldiers of 2012 [ansur2]; the waist is at the navel."""
    rows = rows_of(folder / f"ansur2_2012_{sex}.csv", 2012)
    columns = {key: _column(rows, name) / 10 for key, name in fields.ANSUR2.items()}
    return People(columns | _ages(_column(rows, "Age")), np.ones(len(rows)), _fitted(rows))


def civilians(folder: Path, sex: str) -> People:
    """Return one sex of the civilians [nhanes], sites translated to the soldiers' ones."""
    return _nhanes(folder, sex, tuple(fields.NHANES), lambda age: age >= GROWN)


def children_today(folder: Path, sex: str) -> People:
    """Return one sex of today's children [nhanes]: height, waist and upper arm."""
    keys = ("height", "waist", "upper_arm")
    return _nhanes(folder, sex, keys, lambda age: CHILD_FROM <= age < CHILD_TO)


def children_1977(folder: Path, to: float = CHILD_TO) -> People:
    """Return the children [snyder] below an age [years], NaN where one was not measured."""
    rows = rows_of(
        folder / "children_1977.csv",
        1977,
        lambda row: CHILD_FROM <= float(row["age_years"]) < to and row["height"] != "",
    )
    columns = {
        key: np.array([float(row[name]) if row[name] else np.nan for row in rows])
        for key, name in fields.CHILDREN.items()
    }
    columns |= {"age": _column(rows, "age_years"), "is_man": _column(rows, "sex") == 1}
    return People(columns, np.ones(len(rows)), _fitted(rows))


def transformed(columns: dict[str, Floats], keys: tuple[str, ...]) -> Floats:
    """Return people as rows, on the scale of the model."""
    return np.column_stack([scaled(key, columns[key]) for key in keys])


def scaled(key: str, column: Floats) -> Floats:
    """Return a column [cm] on the scale of the model."""
    if key not in fields.LOGS:
        return column
    return np.asarray(np.log(column - fields.SHIFTS.get(key, 0.0)))


def _nhanes(
    folder: Path, sex: str, keys: tuple[str, ...], is_aged: Callable[[float], bool]
) -> People:
    names = [fields.NHANES[key] for key in keys]

    def counts(row: Row) -> bool:
        measured = all(row[name] not in ("", "NA") for name in names)
        is_one = row["RIAGENDR"] == _number(sex) and row["RIDEXPRG"] != "1"
        return measured and is_one and is_aged(float(row["RIDAGEYR"]))

    rows = rows_of(folder / "nhanes_2017_2020.csv", 2017, counts)
    columns = {key: _column(rows, fields.NHANES[key]) for key in keys}
    columns["waist"] /= fields.HIP_BONE_OVER_NAVEL[sex]
    columns["upper_arm"] /= fields.MID_OVER_AXILLARY[sex]
    columns |= _ages(_column(rows, "RIDAGEYR"))
    return People(columns, _column(rows, "WTMECPRP"), _fitted(rows))


def _ages(years: Floats) -> dict[str, Floats]:
    table = np.array([list(age_values(float(age)).values()) for age in years])
    return {key: table[:, number] for number, key in enumerate(AGES)}


def _number(sex: str) -> str:
    return "1" if sex == "men" else "2"


def _at(rows: list[Row], plain: dict[str, Floats], site: str) -> dict[str, Floats]:
    sited = {k: _column(rows, name) / 10 for k, name in fields.ANSUR1_SITED[site].items()}
    sited["front_waist_length"] = plain["neck_to_bust_point"] + sited.pop("bust_to_waist")
    return plain | sited


def _column(rows: list[Row], name: fields.Column) -> Floats:
    if isinstance(name, tuple):
        return _column(rows, name[0]) - _column(rows, name[1])
    return np.array([float(row[name]) for row in rows])


def _fitted(rows: list[Row]) -> Chosen:
    return np.array([row["fitted"] == "yes" for row in rows], dtype=bool)


def rows_of(path: Path, seed: int, keeps: Callable[[Row], bool] = lambda _: True) -> list[Row]:
    """Read a table; each of its rows is drawn into the fitted half or not, once and for all.

    The draw is by the row's place in the whole file, seeded by the survey's year.
    """
    try:
        with path.open(newline="", encoding="utf-8") as file:
            rows = list(csv.DictReader(file))
    except OSError as fault:
        raise FilesError(f"The table {path} cannot be read: {fault.strerror}.") from fault
    drawn = np.random.default_rng(seed).random(len(rows)) < 0.5
    told = [row | {"fitted": "yes" if one else "no"} for row, one in zip(rows, drawn, strict=True)]
    return [row for row in told if keeps(row)]
