"""Estimates and judgements against open tables of bodies.

Sources: the US Army's surveys of 1988 [ansur1] and 2012 [ansur2], the US health survey of 2017 to
2020 [nhanes] and the survey of US children of 1975 to 1977 [snyder], all public domain. The people
in ``data/`` are invented after those halves of the tables that the model was not worked out from;
the figures on all of those are printed by ``python -m tapewise_core.statistics.proving``.
"""

from __future__ import annotations

from functools import cache
from pathlib import Path

import numpy as np
import pytest

from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.measures.finding import Finding, Severity
from tapewise_core.statistics.building.tables import (
    SEXES,
    children_1977,
    civilians,
    soldiers_1988,
    soldiers_2012,
)
from tapewise_core.statistics.estimate import estimate
from tapewise_core.statistics.judge import judge
from tapewise_core.statistics.population import population
from tapewise_core.statistics.proving.against_rules import compared
from tapewise_core.statistics.proving.coverage import FEW, FOUR, Tallies, pooled, tallied
from tapewise_core.statistics.proving.detection import Caught, judged_honest, judged_mishaps
from tapewise_core.statistics.proving.goals import FIFTEEN
from tapewise_core.statistics.proving.people import Form, Group
from tapewise_core.statistics.whose import SHORT, refusal
from tapewise_core.units import Unit

DATA = Path(__file__).parent / "data"


def soldiers(sex: str, site: WaistSite, share: float) -> Group:
    """The extract of 1988 beside the shipped population."""
    return Group(population(Reference(sex), site), soldiers_1988(DATA, sex).at(share))


def later(sex: str) -> Group:
    """The extract of 2012 beside the shipped population."""
    return Group(population(Reference(sex), WaistSite.NAVEL), soldiers_2012(DATA, sex).columns)


def covered(tallies: Tallies) -> float:
    """How many in a hundred lie in the 95 % intervals, all measures together."""
    return float(np.mean([tally.covered(95) for tally in tallies.values()]))


@pytest.mark.parametrize("sex", SEXES)
@pytest.mark.parametrize(
    ("site", "share"), [(WaistSite.NARROWEST, 0.0), (WaistSite.MIDWAY, 0.5), (WaistSite.NAVEL, 1.0)]
)
def test_intervals_hold_the_soldiers_measures(sex: str, site: WaistSite, share: float) -> None:
    """From height, bust, waist and hip, 95 % intervals hold 94 to 99 in 100 measures."""
    tallies = tallied(soldiers(sex, site, share), FOUR, 60)
    assert len(tallies) == 20
    assert 94 <= covered(tallies) <= 99


@pytest.mark.parametrize("sex", SEXES)
def test_intervals_without_a_waist_site_hold_it_wherever_it_is(sex: str) -> None:
    """With the site not said, the intervals hold waists at either end."""
    for share in (0.0, 1.0):
        tallies = tallied(soldiers(sex, WaistSite.NOT_SAID, share), ("height", "bust", "hip"), 60)
        assert tallies["back_waist_length"].covered(95) >= 85
        assert tallies["waist"].covered(95) >= 85


@pytest.mark.parametrize("sex", SEXES)
def test_another_survey_is_covered_as_well(sex: str) -> None:
    """ANSUR II put landmarks elsewhere, and no measure of it is left out of its range."""
    tallies = tallied(later(sex), FEW, 60)
    assert pooled(tallies).covered(90) >= 88
    assert pooled(tallies).covered(95) >= 93
    for key, tally in tallies.items():
        assert tally.covered(90) >= 80, key


@pytest.mark.parametrize("sex", SEXES)
def test_civilians_hips_are_covered(sex: str) -> None:
    """From height and a waist at the navel, intervals hold at least 9 in 10 civilian hips."""
    people = civilians(DATA, sex).columns
    inside = []
    for height, waist, hip in zip(people["height"], people["waist"], people["hip"], strict=True):
        known = {"height": float(height), "waist": float(waist)}
        guess = estimate(known, Reference(sex), WaistSite.NAVEL, age=30.0)["hip"]
        inside.append(guess.low <= hip <= guess.high)
    assert np.mean(inside) >= 0.85


def test_estimates_come_nearer_than_the_rules() -> None:
    """From height, bust, waist and hip, errors are at most 0.75 of the best rule's on average."""
    ratios = []
    for sex in SEXES:
        for group in (soldiers(sex, WaistSite.MIDWAY, 0.5), later(sex)):
            rows = compared(group, sex, tallied(group, FEW, 60))
            ratios += [row.estimate / row.rule for row in rows]
    assert np.mean(ratios) <= 0.75


@cache
def caught(sex: str, keys: tuple[str, ...]) -> dict[str, Caught]:
    """What slips made on purpose are called, in the extract of 2012."""
    group = later(sex)
    return judged_mishaps(group.population, group.forms(keys, 60))


@pytest.mark.parametrize("sex", SEXES)
@pytest.mark.parametrize("keys", [FIFTEEN, FEW], ids=["fifteen", "four"])
def test_honest_forms_are_left_in_peace(sex: str, keys: tuple[str, ...]) -> None:
    """Of sixty forms at most four are warned of, none is given a slip, all inches are seen."""
    group = later(sex)
    honest = judged_honest(group.population, group.forms(keys, 60))
    assert honest.warned <= 4
    assert honest.hinted <= 16
    assert honest.named == 0
    assert honest.inches == honest.forms


@pytest.mark.parametrize("sex", SEXES)
@pytest.mark.parametrize(
    ("keys", "right", "wrong"), [(FIFTEEN, 80, 4), (FEW, 55, 2)], ids=["fifteen", "four"]
)
def test_neighbours_swapped_are_named(
    sex: str, keys: tuple[str, ...], right: float, wrong: float
) -> None:
    """Most exchanges between neighbours get their name, and hardly any another."""
    found = caught(sex, keys)["neighbours swapped"]
    assert found.share("right") >= right
    assert found.share("wrong") <= wrong


@pytest.mark.parametrize("sex", SEXES)
@pytest.mark.parametrize("keys", [FIFTEEN, FEW], ids=["fifteen", "four"])
def test_a_digit_mistyped_or_lost_is_called_nothing_else(sex: str, keys: tuple[str, ...]) -> None:
    """It is remarked on without a proposal, whatever it looks like."""
    for slip in ("a digit mistyped", "a digit lost"):
        assert caught(sex, keys)[slip].share("wrong") <= 7
    assert caught(sex, keys)["a digit lost"].share("warned") >= 98


@pytest.mark.parametrize("sex", SEXES)
def test_gross_slips_are_caught(sex: str) -> None:
    """Inches, halves and slipped points are all remarked on; waist and hip mostly warned of."""
    found = caught(sex, FIFTEEN)
    for name in ("inches typed as cm", "half the girth", "decimal place"):
        assert found[name].share("hinted") >= 98, name
        assert found[name].share("wrong") <= 4, name
    assert found["two digits swapped"].share("hinted") >= 85
    assert found["waist and hip swapped"].share("warned") >= 50


@pytest.mark.parametrize("sex", SEXES)
def test_a_girth_five_centimetres_wrong_is_not_caught(sex: str) -> None:
    """The program must not claim it: most trunk girths read 5 cm wrong pass without a warning."""
    assert caught(sex, FIFTEEN)["trunk girth 5 cm wrong"].share("warned") <= 25


def test_large_civilians_are_not_accused() -> None:
    """No more than 4 of 60 civilian women's own values are warned of."""
    people = civilians(DATA, "women").columns
    warned = 0
    for row in range(60):
        known = {key: float(people[key][row]) for key in ("height", "waist", "hip", "upper_arm")}
        warned += warns(judge(known, frozenset(), Reference.WOMEN, WaistSite.NAVEL, Unit.CM))
    assert warned <= 4


def children() -> list[Form]:
    """The extract's children: head, three girths and height."""
    columns = children_1977(DATA).columns
    keys = ("height", "head", "bust", "waist", "hip")
    return [{key: float(columns[key][row]) for key in keys} for row in range(len(columns["head"]))]


def test_children_are_known_with_and_without_a_height() -> None:
    """Nine in ten below 140 cm are kindly refused, and no form is called all in inches."""
    small = [form for form in children() if form["height"] < SHORT]
    assert len(small) > 30
    for keys in (("height", "head", "bust", "waist", "hip"), ("head", "bust", "waist", "hip")):
        forms = [{key: form[key] for key in keys} for form in small]
        assert np.mean([bool(refusal(form)) for form in forms]) >= 0.9
        for form in forms:
            for found in judge(form, frozenset(), Reference.WOMEN, WaistSite.NAVEL, Unit.CM):
                assert "inches" not in (found.slip or "")


def test_tall_children_are_not_warned_of() -> None:
    """From 140 to 150 cm hardly any child's own values are called unlikely."""
    tall = [form for form in children() if SHORT <= form["height"] < 150]
    assert len(tall) >= 8
    found = [judge(f, frozenset(), Reference.WOMEN, WaistSite.NAVEL, Unit.CM) for f in tall]
    assert sum(map(warns, found)) <= 1


def warns(findings: tuple[Finding, ...]) -> bool:
    """Say whether anything is warned of."""
    return any(one.severity is Severity.WARNING for one in findings)


@pytest.mark.parametrize("bust", [74, 86, 98, 113, 131])
def test_a_size_table_is_an_honest_form(bust: int) -> None:
    """[en13402-3] (waist and hip from memory): no size is warned of, small or large."""
    waist, hip = {74: (60, 84), 86: (72, 96), 98: (84, 108), 113: (100, 122), 131: (118, 137)}[bust]
    known = {"bust": float(bust), "waist": float(waist), "hip": float(hip)}
    found = judge(known, frozenset(), Reference.WOMEN, WaistSite.MIDWAY, Unit.CM)
    assert not warns(found)
    assert not refusal(known)
