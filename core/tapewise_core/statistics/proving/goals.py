"""The figures that matter, each beside its goal."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import numpy as np

from tapewise_core.measures.body import WaistSite
from tapewise_core.statistics.building.fields import ANSUR2, KEYS
from tapewise_core.statistics.building.tables import SEXES
from tapewise_core.statistics.population import AGES
from tapewise_core.statistics.proving.against_rules import compared
from tapewise_core.statistics.proving.coverage import (
    FEW,
    body_mass_index,
    pooled,
    tallied,
    weighed,
    youths,
)
from tapewise_core.statistics.proving.detection import Caught, judged_honest, judged_mishaps
from tapewise_core.statistics.proving.goals_whole import Row, of_children, of_forms
from tapewise_core.statistics.proving.people import (
    group_1988,
    group_2012,
    group_civilians,
    group_foretold,
)

FIFTEEN = tuple(key for key in KEYS if key in ANSUR2 and key != "over_shoulder_girth")
"""What the survey of 2012 measured and most people take."""
BANDS = {"40 to 50": (40.0, 50.0), "above 50": (50.0, 99.0)}


def goals(folder: Path, people: int) -> Iterator[Row]:
    """Yield every row; ``people`` bounds how many of a group are judged."""
    for sex in SEXES:
        yield from _covered(folder, sex, people)
        yield from _detected(folder, sex, people)
        yield from _civilians(folder, sex)
        yield from _rules(folder, sex, people)
    yield from _wrist(folder)
    yield from of_forms(folder, people)
    yield from of_children(folder)


def _covered(folder: Path, sex: str, people: int) -> Iterator[Row]:
    """How often intervals hold, on people left out and on a survey left out."""
    for name, group in (
        ("people left out", group_2012(folder, sex)),
        ("survey left out", group_foretold(folder, sex)),
    ):
        tallies = tallied(group, FEW, people)
        for percent, goal in ((90, "88, no measure below 85"), (95, "93, no measure below 90")):
            worst = min(tallies, key=lambda key: tallies[key].covered(percent))
            yield Row(
                f"{sex} of 2012, {name}: {percent} % intervals hold, from four",
                f">= {goal}",
                f"{pooled(tallies).covered(percent):.1f}; least {worst} "
                f"{tallies[worst].covered(percent):.1f}",
            )


def _detected(folder: Path, sex: str, people: int) -> Iterator[Row]:
    group = group_2012(folder, sex)
    for keys, name, right, wrong in ((FIFTEEN, "15 measures", 85, 4), (FEW, "four", 65, 2)):
        forms = group.forms(keys, people)
        honest = judged_honest(group.population, forms)
        yield Row(
            f"{sex} of 2012, {name}: honest forms warned (any remark)",
            "<= 3 (<= 20)",
            f"{honest.share('warned'):.1f} ({honest.share('hinted'):.1f})",
        )
        caught = judged_mishaps(group.population, forms)
        near = caught["neighbours swapped"]
        yield Row(f"{sex}, {name}: neighbours swapped, named rightly / wrongly",
                  f">= {right} / <= {wrong}", _names(near))  # fmt: skip
        yield Row(f"{sex}, {name}: waist and hip swapped, warned", ">= 65",
                  f"{caught['waist and hip swapped'].share('warned'):.0f}")  # fmt: skip
        for slip in ("a digit mistyped", "a digit lost"):
            yield Row(f"{sex}, {name}: {slip}, named as something else", "<= 5",
                      f"{caught[slip].share('wrong'):.1f}")  # fmt: skip


def _names(caught: Caught) -> str:
    return f"{caught.share('right'):.0f} / {caught.share('wrong'):.1f}"


def _civilians(folder: Path, sex: str) -> Iterator[Row]:
    """Very full bodies, old arms, and what an age is worth."""
    group, weights = group_civilians(folder, sex)
    index = body_mass_index(group)
    for known in (("height", "waist"), ("height", "waist", "upper_arm")):
        for name, (low, high) in BANDS.items():
            tally = weighed(group, "hip", known, weights, (index >= low) & (index < high))
            yield Row(
                f"{sex}, body mass index {name}: hip from {', '.join(known)}, in 95 % (bias)",
                ">= 90",
                f"{tally.covered(95):.0f} ({tally.bias():+.1f} cm) of {len(tally.z)}",
            )
    old = group.columns[AGES[1]] >= 20
    for aged in (False, True):
        tally = weighed(group, "upper_arm", ("height", "waist", "hip"), weights, old, aged=aged)
        said = "age said" if aged else "age not said"
        yield Row(f"{sex} of 70 and more, {said}: upper arm in 95 % (bias)", ">= 93",
                  f"{tally.covered(95):.0f} ({tally.bias():+.1f} cm)")  # fmt: skip
    everybody = np.ones(len(group), dtype=bool)
    errors = [
        weighed(group, "waist", ("height", "hip"), weights, everybody, aged=aged).mean_error()
        for aged in (False, True)
    ]
    yield Row(f"{sex}: error of the waist from height and hip, without and with the age",
              "less with it", f"{errors[0]:.1f}, {errors[1]:.1f} cm")  # fmt: skip


def _rules(folder: Path, sex: str, people: int) -> Iterator[Row]:
    """Errors from four measures, against the best rule for each of the rest."""
    for name, group in (
        ("1988", group_1988(folder, sex, WaistSite.MIDWAY)),
        ("2012", group_2012(folder, sex)),
    ):
        rows = compared(group, sex, tallied(group, FEW, people))
        worst = max(rows, key=lambda row: row.estimate / row.rule)
        yield Row(
            f"{sex} of {name}: error over the best rule's, from four",
            "<= 0.70, none above 1.0",
            f"{np.mean([row.estimate / row.rule for row in rows]):.2f}; "
            f"most {worst.key} {worst.estimate / worst.rule:.2f}",
        )


def _wrist(folder: Path) -> Iterator[Row]:
    for sex in SEXES:
        tally = youths(folder, sex, "wrist")
        yield Row(f"{sex} of 16 1/2 to 20, civilians of 1977: wrist in 95 %", ">= 92",
                  f"{tally.covered(95):.0f} of {len(tally.z)}")  # fmt: skip
