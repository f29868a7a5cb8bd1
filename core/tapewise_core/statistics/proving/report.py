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
from tapewise_core.statistics.proving.detection import judged_honest, judged_mishaps
from tapewise_core.statistics.proving.people import (
    Form,
    Unseen,
    as_population,
    at_home,
    civilians_held_out,
    held_out,
    shuffled,
)

SETS = {"height": ("height",), "height, bust, waist, hip": FOUR, "all others": None}
SHORT_FORM = (
    *FOUR,
    *("upper_arm", "back_waist_length", "hip_depth", "armscye_depth", "head", "neck"),
)


def figures(folder: Path, people: int) -> Iterator[str]:
    """Yield the lines of the whole report; ``people`` bounds how many of a fold are taken."""
    for sex in SEXES:
        yield from _held_out(folder, sex, people)
        yield from _soldiers_2012(folder, sex, people)
        yield from _civilians(folder, sex)
        yield from _rules(folder, sex, people)
        yield from _detection(folder, sex, people)


def _held_out(folder: Path, sex: str, people: int) -> Iterator[str]:
    for civilian, name in ((False, "as surveyed"), (True, "re-weighted, as shipped")):
        for site in ("narrowest", "navel", "not said"):
            title = f"Held-out soldiers of 1988, {sex}, waist {site}; model {name}"
            folds = list(held_out(folder, sex, site, civilian=civilian))
            yield from _coverage(title, folds, people, detail=site == "narrowest")


def _soldiers_2012(folder: Path, sex: str, people: int) -> Iterator[str]:
    own = joint_of(soldiers_1988(folder, sex))
    columns = shuffled(soldiers_2012(folder, sex))
    for joint, name in (
        (own, "as surveyed"),
        (reweighted(own, civilians(folder, sex)), "re-weighted, as shipped"),
    ):
        fold = Unseen(as_population(at_site(joint, "navel")), columns)
        yield from _coverage(f"Soldiers of 2012, {sex}; model {name}", [fold], 5 * people)


def _coverage(
    title: str, folds: list[Unseen], people: int, *, detail: bool = True
) -> Iterator[str]:
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


def _detection(folder: Path, sex: str, people: int) -> Iterator[str]:
    folds = list(held_out(folder, sex, "narrowest", civilian=True))
    rng = np.random.default_rng(6)
    for keys, name in ((KEYS, "all measures"), (SHORT_FORM, "ten measures")):
        pairs = [(fold, _forms(fold, keys, people, rng)) for fold in folds]
        yield from _caught(f"Held-out soldiers, {sex}, {name}", pairs)
    fold, _weights = civilians_held_out(folder, sex)
    keys = ("height", "waist", "hip", "upper_arm")
    yield from _caught(f"Held-out civilians, {sex}, {', '.join(keys)}",
                       [(fold, _forms(fold, keys, 3 * people, rng))])  # fmt: skip


def _forms(
    fold: Unseen, keys: tuple[str, ...], people: int, rng: np.random.Generator
) -> list[Form]:
    rows = range(min(len(fold), people))
    true = [{key: fold.true(row)[key] for key in keys} for row in rows]
    return [at_home(form, rng) for form in true]


def _caught(title: str, pairs: list[tuple[Unseen, list[Form]]]) -> Iterator[str]:
    honest = [judged_honest(fold.population, forms) for fold, forms in pairs]
    forms = sum(one.forms for one in honest)
    counts = {name: 100 * sum(getattr(one, name) for one in honest) / forms
              for name in ("hinted", "warned", "named", "inches")}  # fmt: skip
    yield f"\n{title}: {forms} honest forms, of 100: {counts['hinted']:.1f} with any remark, " \
          f"{counts['warned']:.1f} with a warning, {counts['named']:.1f} given a slip's name; " \
          f"in inches throughout and recognised {counts['inches']:.1f}"  # fmt: skip
    yield f"{'of 100':26}{'remarked':>10}{'warned':>8}{'range':>8}{'others warned':>15}" \
          f"{'named':>8}{'named right':>13}"  # fmt: skip
    totals: dict[str, np.ndarray] = {}
    for fold, forms_of in pairs:
        for name, caught in judged_mishaps(fold.population, forms_of).items():
            totals[name] = totals.get(name, np.zeros(7)) + np.array(list(vars(caught).values()))
    for name, total in totals.items():
        yield f"{name:26}" + _row(total)
    right, wrong = sum(total[5] for total in totals.values()), sum(t[6] for t in totals.values())
    yield f"of all names given, right: {100 * right / (right + wrong):.1f} in 100"


def _row(total: np.ndarray) -> str:
    forms, hinted, warned, by_range, others, right, wrong = total
    share = 100 * right / (right + wrong) if right + wrong else float("nan")
    return (
        f"{100 * hinted / forms:10.1f}{100 * warned / forms:8.1f}{100 * by_range / forms:8.1f}"
        f"{100 * others / forms:15.1f}{100 * (right + wrong) / forms:8.1f}{share:13.1f}"
    )
