"""The figures of forms that are wrong as a whole, and of children, each beside its goal."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import numpy as np

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.measures.finding import Finding
from tapewise_core.statistics.building.tables import SEXES
from tapewise_core.statistics.estimate import estimate
from tapewise_core.statistics.judge import judge
from tapewise_core.statistics.proving.coverage import FEW, Tally
from tapewise_core.statistics.proving.detection import judged
from tapewise_core.statistics.proving.people import Form, Group, child_forms, group_2012
from tapewise_core.statistics.slips import believable
from tapewise_core.statistics.whose import SHORT, Whose, refusal, whose
from tapewise_core.units import Unit

GIRTHS = ("bust", "waist", "hip")


class Row(Frozen):
    """One figure: what it is, its goal, and what came out."""

    what: str
    goal: str
    found: str


def of_forms(folder: Path, people: int) -> Iterator[Row]:
    """Forms that are wrong as a whole, and none may be called what it is not."""
    counts = {"kept": 0, "unbelievable": 0, "halved": 0, "forms": 0}
    for sex in SEXES:
        group = group_2012(folder, sex)
        for form in group.forms(FEW, people):
            counts["forms"] += 1
            counts["kept"] += _takes_height(group, _times(form, 1 / 2.54))
            counts["unbelievable"] += _unbelievable(group, _times(form, 1 / 2.54))
            halved = {key: cm for key, cm in _times(form, 0.5).items() if key != "height"}
            counts["halved"] += _in_inches(group, halved)
    share = {name: 100 * count / counts["forms"] for name, count in counts.items()}
    yield Row("girths in inches, height in cm: height taken for inches, proposals unbelievable",
              "never", f"{share['kept']:.1f}, {share['unbelievable']:.1f} %")  # fmt: skip
    yield Row("all girths halved, no height: called all in inches", "never",
              f"{share['halved']:.1f} %")  # fmt: skip


def _times(form: Form, times: float) -> Form:
    return {key: cm if key == "height" else cm * times for key, cm in form.items()}


def _takes_height(group: Group, form: Form) -> bool:
    return any("height" in (one.proposed or {}) for one in judged(group.population, form))


def _unbelievable(group: Group, form: Form) -> bool:
    found = [one.proposed or {} for one in judged(group.population, form)]
    return any(not believable(key, cm) for one in found for key, cm in one.items())


def _in_inches(group: Group, form: Form) -> bool:
    return any("inches" in str(one.slip) for one in judged(group.population, form))


def of_children(folder: Path) -> Iterator[Row]:
    """Children are known with and without a height, told of, and never called a slip."""
    keys = ("head", *GIRTHS)
    forms = list(child_forms(folder, ("height", *keys)))
    small = [form for _, form in forms if form["height"] < SHORT]
    girths = [{key: form[key] for key in keys} for form in small]
    called = [any("inches" in str(one.slip) for one in _judge(form)) for form in girths]
    yield Row("a child's head and three girths, no height: called all in inches", "never",
              f"{100 * np.mean(called):.1f} %")  # fmt: skip
    for name, these in (("no height", girths), ("all five", small)):
        refused = [bool(refusal(form)) for form in these]
        yield Row(f"children below 140 cm, {name}: kindly refused", "all",
                  f"{100 * np.mean(refused):.0f} % of {len(refused)}")  # fmt: skip
    yield from _tall_children([form for _, form in forms if 140 <= form["height"] <= 145])
    woman = {"height": 138.0, "bust": 92.0, "waist": 78.0, "hip": 98.0}
    ways = [
        bool(estimate(woman, Reference.WOMEN, WaistSite.NAVEL)),
        bool(estimate(woman, Reference.WOMEN, WaistSite.NAVEL, frozenset({"height"}))),
        bool(estimate({"height": 138.0}, Reference.WOMEN, WaistSite.NAVEL, age=40)),
    ]
    yield Row("a woman of 138 cm, her girths known, height confirmed, age said: estimated", "yes",
              ", ".join("yes" if way else "no" for way in ways))  # fmt: skip


def _tall_children(forms: list[Form]) -> Iterator[Row]:
    warned = [any(one.severity.value == "warning" for one in _judge(form)) for form in forms]
    told = [whose(form) is not Whose.GROWN for form in forms]
    yield Row(
        "children of 140 to 145 cm, five measures: warned / told of as a child's",
        "said, and widened",
        f"{100 * np.mean(warned):.0f} / {100 * np.mean(told):.0f} %",
    )
    tally = Tally()
    for form in forms:
        one = estimate({"height": form["height"]}, Reference.WOMEN, WaistSite.NAVEL)
        for key in GIRTHS:
            inside = one[key].low <= form[key] <= one[key].high
            tally.add(0.0 if inside else 9.0, form[key] - one[key].cm)
    yield Row("the same, from height alone: girths in the 90 % interval", "said, and widened",
              f"{tally.covered(90):.0f} %")  # fmt: skip


def _judge(form: Form) -> tuple[Finding, ...]:
    return judge(form, frozenset(), Reference.WOMEN, WaistSite.NAVEL, Unit.CM)
