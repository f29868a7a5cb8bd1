"""The figures, as tables of plain text."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from tapewise_core.measures.body import WaistSite
from tapewise_core.statistics.building.fields import KEYS
from tapewise_core.statistics.building.tables import SEXES
from tapewise_core.statistics.proving.against_rules import compared
from tapewise_core.statistics.proving.coverage import FEW, Tally, pooled, tallied
from tapewise_core.statistics.proving.detection import Caught, judged_honest, judged_mishaps
from tapewise_core.statistics.proving.goals import FIFTEEN, goals
from tapewise_core.statistics.proving.people import (
    Group,
    group_1988,
    group_2012,
    group_civilians,
    group_foretold,
)

SETS = {"height": ("height",), "height, bust, waist, hip": FEW, "all others": None}


def figures(folder: Path, people: int) -> Iterator[str]:
    """Yield the lines of the whole report; ``people`` bounds how many of a group are taken."""
    yield f"{'figure':88}{'goal':26}found"
    for row in goals(folder, people):
        yield f"{row.what:88}{row.goal:26}{row.found}"
    for sex in SEXES:
        yield from _coverage(f"Soldiers of 1988, {sex}, waist narrowest",
                             group_1988(folder, sex, WaistSite.NARROWEST), people)  # fmt: skip
        yield from _coverage(f"Soldiers of 1988, {sex}, waist not said",
                             group_1988(folder, sex, WaistSite.NOT_SAID), people)  # fmt: skip
        yield from _coverage(f"Soldiers of 2012, {sex}", group_2012(folder, sex), people)
        yield from _coverage(f"Soldiers of 2012, {sex}, their survey unknown to the model",
                             group_foretold(folder, sex), people)  # fmt: skip
        yield from _rules(folder, sex, people)
        yield from _detection(folder, sex, people)


def _coverage(title: str, group: Group, people: int) -> Iterator[str]:
    yield f"\n{title}: covered by the 90 and the 95 % interval, mean error [cm]"
    columns = {}
    for name, known in SETS.items():
        columns[name] = tallied(group, known, people)
    yield f"{'from':20}" + "".join(f"{name:>26}" for name in columns)
    for key in KEYS:
        if any(key in tallies for tallies in columns.values()):
            yield f"{key:20}" + "".join(_cell(tallies.get(key)) for tallies in columns.values())
    yield f"{'all measures':20}" + "".join(_cell(pooled(one)) for one in columns.values())


def _cell(tally: Tally | None) -> str:
    if tally is None:
        return " " * 26
    return f"{tally.covered(90):12.1f}{tally.covered(95):7.1f}{tally.mean_error():7.2f}"


def _rules(folder: Path, sex: str, people: int) -> Iterator[str]:
    for name, group in (
        ("1988, waist midway", group_1988(folder, sex, WaistSite.MIDWAY)),
        ("2012", group_2012(folder, sex)),
    ):
        yield f"\nAgainst the best rule of thumb, {sex} of {name}, from {', '.join(FEW)}:"
        yield f"{'mean error [cm]':20}{'estimate':>10}{'rule':>8}{'ratio':>8}  rule (bias)"
        for row in compared(group, sex, tallied(group, FEW, people)):
            yield (
                f"{row.key:20}{row.estimate:10.2f}{row.rule:8.2f}{row.estimate / row.rule:8.2f}"
                f"  {row.text} ({row.bias:+.1f})"
            )


def _detection(folder: Path, sex: str, people: int) -> Iterator[str]:
    """Yield what is caught among soldiers, with many measures or four, and among civilians."""
    narrow = group_1988(folder, sex, WaistSite.NARROWEST)
    later, (civil, _) = group_2012(folder, sex), group_civilians(folder, sex)
    own = tuple(key for key in KEYS if key in ("height", "waist", "hip", "upper_arm"))
    yield from _caught(f"Soldiers of 1988, {sex}, all measures", narrow, KEYS, people // 2)
    yield from _caught(f"Soldiers of 1988, {sex}, four", narrow, FEW, people)
    yield from _caught(f"Soldiers of 2012, {sex}, fifteen", later, FIFTEEN, people)
    yield from _caught(f"Soldiers of 2012, {sex}, four", later, FEW, people)
    yield from _caught(f"Civilians, {sex}, {', '.join(own)}", civil, own, people)


def _caught(title: str, group: Group, keys: tuple[str, ...], people: int) -> Iterator[str]:
    forms = group.forms(keys, people)
    honest = judged_honest(group.population, forms)
    yield (
        f"\n{title}: {len(forms)} honest forms, of 100: {honest.share('hinted'):.1f} with any "
        f"remark, {honest.share('warned'):.1f} with a warning, {honest.share('named'):.1f} given a "
        f"slip's name; in inches throughout and recognised {honest.share('inches'):.1f}"
    )
    yield f"{'of 100':26}{'remarked':>10}{'warned':>8}{'range':>8}{'others warned':>15}" \
          f"{'named right':>13}{'wrong':>8}"  # fmt: skip
    for name, caught in judged_mishaps(group.population, forms).items():
        yield f"{name:26}" + _row(caught)


def _row(caught: Caught) -> str:
    share = caught.share
    return (
        f"{share('hinted'):10.1f}{share('warned'):8.1f}{share('by_range'):8.1f}"
        f"{share('others'):15.1f}{share('right'):13.1f}{share('wrong'):8.1f}"
    )
