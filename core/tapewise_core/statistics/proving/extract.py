"""``python -m tapewise_core.statistics.proving.extract FOLDER OUT`` writes invented people.

For tests that must not need the tables: each is a person of a held-out half, moved by chance
within that half's own spread, so that none is a real one and the tables' shape stays.
"""

from __future__ import annotations

import argparse
import csv
from collections.abc import Sequence
from pathlib import Path

import numpy as np

from tapewise_core.statistics.building import fields
from tapewise_core.statistics.building.tables import Floats, rows_of

MOVED = 0.3
"""How far each is moved, as a share of the spread: correlations stay, no one is recognisable."""
PEOPLE = 60
Row = dict[str, str]


def main() -> None:
    """Write the extract of every table."""
    parser = argparse.ArgumentParser(prog="tapewise_core.statistics.proving.extract",
                                     description=__doc__)  # fmt: skip
    parser.add_argument("folder", type=Path, help="the folder with the open tables")
    parser.add_argument("out", type=Path, help="the folder for the extracts")
    options = parser.parse_args()
    for name, seed, plain, kept, groups in _tables():
        rows = [row for row in rows_of(options.folder / name, seed) if row["fitted"] == "no"]
        made: list[Row] = []
        for number, (column, value) in enumerate(groups):
            own = [row for row in rows if _is_in(row, column, value) and _full(row, plain)]
            made += moved(own, plain, kept, np.random.default_rng(seed + number))
        _write(options.out / name, (*plain, *kept), made)


def moved(
    rows: Sequence[Row], plain: Sequence[str], kept: Sequence[str], rng: np.random.Generator
) -> list[Row]:
    """Return invented people: ``plain`` columns moved by chance, ``kept`` ones as they are."""
    table: Floats = np.array([[float(row[name]) for name in plain] for row in rows])
    mean, root = table.mean(axis=0), np.linalg.cholesky(np.cov(table.T) + 1e-9 * np.eye(len(plain)))
    chosen = rng.permutation(len(rows))[:PEOPLE]
    made = []
    for number in chosen:
        away = np.sqrt(1 - MOVED**2) * (table[number] - mean)
        values = mean + away + MOVED * root @ rng.normal(size=len(plain))
        spelt = {name: f"{value:.1f}" for name, value in zip(plain, values, strict=True)}
        made.append(spelt | {name: rows[number][name] for name in kept})
    return made


def _tables() -> list[tuple[str, int, tuple[str, ...], tuple[str, ...], list[tuple[str, str]]]]:
    first = _columns(fields.ANSUR1_PLAIN) | _columns(fields.ANSUR1_SITED["narrowest"])
    first |= _columns(fields.ANSUR1_SITED["navel"])
    second = tuple(_columns(fields.ANSUR2))
    civil = (*fields.NHANES.values(), "RIDAGEYR")
    kept = ("RIAGENDR", "RIDEXPRG", "WTMECPRP")
    young = ("age_years", *dict.fromkeys(fields.CHILDREN.values()))
    return [
        ("ansur1_1988.csv", 1988, (*first, "AGE"), ("GENDER",), [("GENDER", "2"), ("GENDER", "1")]),
        ("ansur2_2012_women.csv", 2012, (*second, "Age"), (), [("", "")]),
        ("ansur2_2012_men.csv", 2012, (*second, "Age"), (), [("", "")]),
        ("nhanes_2017_2020.csv", 2017, civil, kept, [("RIAGENDR", "2"), ("RIAGENDR", "1")]),
        ("children_1977.csv", 1977, young, ("sex",), [("sex", "2"), ("sex", "1")]),
    ]  # fmt: skip


def _columns(names: dict[str, fields.Column]) -> dict[str, None]:
    flat = (one if isinstance(one, tuple) else (one,) for one in names.values())
    return dict.fromkeys(name for pair in flat for name in pair)


def _is_in(row: Row, column: str, value: str) -> bool:
    if column == "RIAGENDR" and (float(row["RIDAGEYR"]) < 20 or row["RIDEXPRG"] == "1"):
        return False
    return not column or row[column] == value


def _full(row: Row, names: Sequence[str]) -> bool:
    return all(row[name] not in ("", "NA") for name in names)


def _write(path: Path, names: Sequence[str], rows: Sequence[Row]) -> None:
    with path.open("w", newline="", encoding="utf-8") as file:
        writer = csv.DictWriter(file, names, lineterminator="\n")
        writer.writeheader()
        writer.writerows(rows)


if __name__ == "__main__":
    main()
