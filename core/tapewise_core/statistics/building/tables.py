"""The open tables as arrays of people: lengths and girths in cm, weight in kg."""

from __future__ import annotations

import csv
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from tapewise_core.errors import FilesError
from tapewise_core.statistics.building import fields

Floats = NDArray[np.float64]
Column = str | tuple[str, str]
SEXES = ("women", "men")


@dataclass(frozen=True)
class Soldiers:
    """One sex of the 1988 survey: a column per measure, the waist at two places."""

    narrowest: dict[str, Floats]
    navel: dict[str, Floats]

    def __len__(self) -> int:
        return len(self.navel["height"])

    def only(self, chosen: NDArray[np.bool_]) -> Soldiers:
        """Return some of the people."""
        return Soldiers(
            {key: column[chosen] for key, column in self.narrowest.items()},
            {key: column[chosen] for key, column in self.navel.items()},
        )

    def at(self, share: float | Floats) -> dict[str, Floats]:
        """Return the people with the waist a share of the way from the narrowest to the navel."""
        return {
            key: column + share * (self.navel[key] - column)
            for key, column in self.narrowest.items()
        }


@dataclass(frozen=True)
class Civilians:
    """One sex of the civilian survey: adults, nobody pregnant, with their survey weights."""

    columns: dict[str, Floats]
    weights: Floats

    def __len__(self) -> int:
        return len(self.weights)

    def only(self, chosen: NDArray[np.bool_]) -> Civilians:
        """Return some of the people."""
        columns = {key: column[chosen] for key, column in self.columns.items()}
        return Civilians(columns, self.weights[chosen])


def soldiers_1988(folder: Path, sex: str) -> Soldiers:
    """Return one sex of ANSUR I, 1988."""
    rows = _rows(folder / "ansur1_1988.csv")
    rows = [row for row in rows if row["GENDER"] == ("1" if sex == "men" else "2")]
    plain = {key: _column(rows, name) / 10 for key, name in fields.ANSUR1_PLAIN.items()}
    return Soldiers(_at(rows, plain, "narrowest"), _at(rows, plain, "navel"))


def soldiers_2012(folder: Path, sex: str) -> dict[str, Floats]:
    """Return one sex of ANSUR II, 2012; the waist is at the navel."""
    rows = _rows(folder / f"ansur2_2012_{sex}.csv")
    return {key: _column(rows, name) / 10 for key, name in fields.ANSUR2.items()}


def civilians(folder: Path, sex: str) -> Civilians:
    """Return one sex of the civilians [nhanes], sites translated to the soldiers' ones."""
    rows = [row for row in _rows(folder / "nhanes_2017_2020.csv") if _counts(row, sex)]
    columns = {key: _column(rows, name) for key, name in fields.NHANES.items()}
    columns["waist"] /= fields.HIP_BONE_OVER_NAVEL[sex]
    columns["upper_arm"] /= fields.MID_OVER_AXILLARY[sex]
    return Civilians(columns, _column(rows, "WTMECPRP"))


def transformed(columns: dict[str, Floats], keys: tuple[str, ...]) -> Floats:
    """Return people as rows, on the scale of the model."""
    return np.column_stack([np.log(columns[k]) if k in fields.LOGS else columns[k] for k in keys])


def _at(rows: list[dict[str, str]], plain: dict[str, Floats], site: str) -> dict[str, Floats]:
    sited = {k: _column(rows, name) / 10 for k, name in fields.ANSUR1_SITED[site].items()}
    sited["front_waist_length"] = plain["neck_to_bust_point"] + sited.pop("bust_to_waist")
    return plain | sited


def _counts(row: dict[str, str], sex: str) -> bool:
    """Say whether a row is an adult of one sex, not pregnant, with everything measured."""
    measured = all(row[name] not in ("", "NA") for name in fields.NHANES.values())
    is_sex = row["RIAGENDR"] == ("1" if sex == "men" else "2")
    return measured and is_sex and float(row["RIDAGEYR"]) >= 18 and row["RIDEXPRG"] != "1"


def _column(rows: list[dict[str, str]], name: Column) -> Floats:
    if isinstance(name, tuple):
        return _column(rows, name[0]) - _column(rows, name[1])
    return np.array([float(row[name]) for row in rows])


def _rows(path: Path) -> list[dict[str, str]]:
    try:
        with path.open(newline="", encoding="utf-8") as file:
            return list(csv.DictReader(file))
    except OSError as fault:
        raise FilesError(f"The table {path} cannot be read: {fault.strerror}.") from fault
