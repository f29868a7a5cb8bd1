"""What is caught, as tables of plain text."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import numpy as np

from tapewise_core.statistics.building.fields import KEYS
from tapewise_core.statistics.proving.coverage import FOUR
from tapewise_core.statistics.proving.detection import judged_honest, judged_mishaps
from tapewise_core.statistics.proving.people import (
    Form,
    Group,
    at_home,
    civilians_held_out,
    held_out,
    shipped,
)

SHORT_FORM = (
    *FOUR,
    *("upper_arm", "back_waist_length", "hip_depth", "armscye_depth", "head", "neck"),
)


def detection(folder: Path, sex: str, people: int) -> Iterator[str]:
    """Yield what is caught among soldiers, with all measures or some, and among civilians."""
    folds = list(held_out(folder, sex, "narrowest", civilian=True))
    rng = np.random.default_rng(6)
    for keys, name in ((KEYS, "all measures"), (SHORT_FORM, "ten measures")):
        pairs = [(fold, _forms(fold, keys, people, rng)) for fold in folds]
        yield from _caught(f"Held-out soldiers, {sex}, {name}", pairs)
    blind = shipped(folder, sex)
    yield from _caught(f"Soldiers, {sex}, all measures, nothing said of body or waist",
                       [(blind, _forms(blind, KEYS, people, rng))])  # fmt: skip
    fold, _weights = civilians_held_out(folder, sex)
    keys = ("height", "waist", "hip", "upper_arm")
    yield from _caught(f"Held-out civilians, {sex}, {', '.join(keys)}",
                       [(fold, _forms(fold, keys, 3 * people, rng))])  # fmt: skip


def _forms(fold: Group, keys: tuple[str, ...], people: int, rng: np.random.Generator) -> list[Form]:
    rows = range(min(len(fold), people))
    true = [{key: fold.true(row)[key] for key in keys} for row in rows]
    return [at_home(form, rng) for form in true]


def _caught(title: str, pairs: list[tuple[Group, list[Form]]]) -> Iterator[str]:
    honest = [judged_honest(fold.population, forms) for fold, forms in pairs]
    forms = sum(one.forms for one in honest)
    counts = {name: 100 * sum(getattr(one, name) for one in honest) / forms
              for name in ("hinted", "warned", "named", "inches")}  # fmt: skip
    yield f"\n{title}: {forms} honest forms, of 100: {counts['hinted']:.1f} with any remark, " \
          f"{counts['warned']:.1f} with a warning, {counts['named']:.1f} given a slip's name; " \
          f"in inches throughout and recognised {counts['inches']:.1f}"  # fmt: skip
    yield f"{'of 100':26}{'remarked':>10}{'warned':>8}{'range':>8}{'others warned':>15}" \
          f"{'names':>8}{'named right':>13}"  # fmt: skip
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
