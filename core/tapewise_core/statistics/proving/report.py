"""The figures, as tables of plain text."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import numpy as np

from tapewise_core.statistics.building.fields import KEYS
from tapewise_core.statistics.building.fit import at_site, joint_of, reweighted
from tapewise_core.statistics.building.tables import (
    SEXES,
    civilians,
    soldiers_1988,
    soldiers_2012,
)
from tapewise_core.statistics.proving.against_rules import compared
from tapewise_core.statistics.proving.coverage import (
    FOUR,
    Tallies,
    Tally,
    body_mass_index,
    tallied,
    weighed,
)
from tapewise_core.statistics.proving.people import (
    Group,
    as_population,
    civilians_held_out,
    held_out,
    shipped,
    shuffled,
)
from tapewise_core.statistics.proving.report_slips import detection

SETS = {"height": ("height",), "height, bust, waist, hip": FOUR, "all others": None}


def figures(folder: Path, people: int) -> Iterator[str]:
    """Yield the lines of the whole report; ``people`` bounds how many of a fold are taken."""
    for sex in SEXES:
        yield from _held_out(folder, sex, people)
        yield from _soldiers_2012(folder, sex, people)
        yield from _civilians(folder, sex)
        yield from _rules(folder, sex, people)
        yield from detection(folder, sex, people)


def _held_out(folder: Path, sex: str, people: int) -> Iterator[str]:
    for civilian, name in ((False, "as surveyed"), (True, "re-weighted, as shipped")):
        for site in ("narrowest", "navel", "not said"):
            title = f"Held-out soldiers of 1988, {sex}, waist {site}; model {name}"
            folds = list(held_out(folder, sex, site, civilian=civilian))
            yield from _coverage(title, folds, people, detail=site == "narrowest")
    title = f"Soldiers of 1988, {sex}; nothing said of whose body, nor of the waist; as shipped"
    yield from _coverage(title, [shipped(folder, sex)], 5 * people, detail=False)


def _soldiers_2012(folder: Path, sex: str, people: int) -> Iterator[str]:
    own = joint_of(soldiers_1988(folder, sex))
    columns = shuffled(soldiers_2012(folder, sex))
    for joint, name in (
        (own, "as surveyed"),
        (reweighted(own, civilians(folder, sex)), "re-weighted, as shipped"),
    ):
        fold = Group(as_population(at_site(joint, "navel")), columns)
        yield from _coverage(f"Soldiers of 2012, {sex}; model {name}", [fold], 5 * people)


def _coverage(title: str, folds: list[Group], people: int, *, detail: bool = True) -> Iterator[str]:
    yield f"\n{title}: covered by the 90 and the 95 % interval, mean error [cm]"
    columns = {name: tallied(folds, known, people) for name, known in SETS.items()}
    yield f"{'from':20}" + "".join(f"{name:>26}" for name in columns)
    for key in KEYS if detail else ():
        if any(key in tallies for tallies in columns.values()):
            yield f"{key:20}" + "".join(_cell(tallies.get(key)) for tallies in columns.values())
    yield f"{'all measures':20}" + "".join(_cell(_pooled(one)) for one in columns.values())


def _cell(tally: Tally | None) -> str:
    if tally is None:
        return " " * 26
    return f"{tally.covered(90):12.1f}{tally.covered(95):7.1f}{tally.mean_error():7.2f}"


def _pooled(tallies: Tallies) -> Tally:
    pooled = Tally()
    for tally in tallies.values():
        for z, error in zip(tally.z, tally.error, strict=True):
            pooled.add(z, error)
    return pooled


def _civilians(folder: Path, sex: str) -> Iterator[str]:
    yield f"\nHeld-out civilians, {sex}, by body mass index: covered by the 95 % interval"
    bands = {"below 25": (0, 25), "25 to 30": (25, 30), "30 to 35": (30, 35),
             "35 to 40": (35, 40), "above 40": (40, 99), "up to 40": (0, 40)}  # fmt: skip
    yield f"{'':52}" + "".join(f"{name:>10}" for name in bands)
    for civilian, name in ((False, "as surveyed"), (True, "as shipped")):
        fold, weights = civilians_held_out(folder, sex, civilian=civilian)
        index = body_mass_index(fold)
        for key, known in (
            ("hip", ("height",)),
            ("hip", ("height", "waist")),
            ("hip", ("height", "waist", "upper_arm")),
            ("waist", ("height", "hip")),
            ("waist", ("height", "hip", "upper_arm")),
            ("upper_arm", ("height", "waist", "hip")),
        ):
            cells = [
                weighed(fold, key, known, weights, (index >= low) & (index < high)).covered(95)
                for low, high in bands.values()
            ]
            title = f"{key} from {', '.join(known)}; {name}"
            yield f"{title:52}" + "".join(f"{cell:10.1f}" for cell in cells)


def _rules(folder: Path, sex: str, people: int) -> Iterator[str]:
    yield f"\nAgainst the best rule of thumb, {sex}, waist midway, from {', '.join(FOUR)}:"
    yield f"{'mean error [cm]':20}{'estimate':>10}{'rule':>8}{'ratio':>8}{'mended':>8}  rule (bias)"
    folds = list(held_out(folder, sex, "midway", civilian=True))
    rows = compared(folds, sex, tallied(folds, FOUR, people))
    for row in rows:
        yield (
            f"{row.key:20}{row.estimate:10.2f}{row.rule:8.2f}{row.estimate / row.rule:8.2f}"
            f"{row.mended:8.2f}  {row.text} ({row.bias:+.1f})"
        )
    told = np.mean([row.estimate / row.rule for row in rows])
    mended = np.mean([row.estimate / row.mended for row in rows])
    yield f"mean ratio {told:.2f}; against rules with their constants put right {mended:.2f}"
