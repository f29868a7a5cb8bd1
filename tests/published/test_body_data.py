"""Estimates and judgements against open tables of bodies.

Sources, excerpted in ``data/`` beside this file: the US Army's surveys of 1988 [ansur1] and 2012
[ansur2], and the US health survey of 2017 to 2020 [nhanes], all public domain. The people of the
first and the last are a few among the thousands the model was built from, those of the second none
of them; figures on held-out people are printed by ``python -m tapewise_core.statistics.proving``.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.measures.finding import Severity
from tapewise_core.statistics.building.tables import (
    SEXES,
    civilians,
    soldiers_1988,
    soldiers_2012,
)
from tapewise_core.statistics.estimate import estimate
from tapewise_core.statistics.judge import judge
from tapewise_core.statistics.population import population
from tapewise_core.statistics.proving.against_rules import compared
from tapewise_core.statistics.proving.coverage import FOUR, Tallies, tallied
from tapewise_core.statistics.proving.detection import judged_honest, judged_mishaps
from tapewise_core.statistics.proving.people import Group, at_home
from tapewise_core.units import Unit

DATA = Path(__file__).parent / "data"


def soldiers(sex: str, site: WaistSite, share: float) -> Group:
    """The excerpt of 1988 beside the shipped population."""
    return Group(population(Reference(sex), site), soldiers_1988(DATA, sex).at(share))


def forms(people: Group) -> list[dict[str, float]]:
    """What the excerpt's people would read at home."""
    rng = np.random.default_rng(1)
    return [at_home(people.true(row), rng) for row in range(len(people))]


def covered(tallies: Tallies) -> float:
    """How many in a hundred lie in the 95 % intervals, all measures together."""
    return float(np.mean([tally.covered(95) for tally in tallies.values()]))


@pytest.mark.parametrize("sex", SEXES)
@pytest.mark.parametrize(
    ("site", "share"), [(WaistSite.NARROWEST, 0.0), (WaistSite.MIDWAY, 0.5), (WaistSite.NAVEL, 1.0)]
)
def test_intervals_hold_the_soldiers_measures(sex: str, site: WaistSite, share: float) -> None:
    """From height, bust, waist and hip, 95 % intervals hold 93 to 98 in 100 measures."""
    tallies = tallied([soldiers(sex, site, share)], FOUR, 40)
    assert len(tallies) == 19
    assert 93 <= covered(tallies) <= 98


@pytest.mark.parametrize("sex", SEXES)
def test_intervals_without_a_waist_site_hold_it_wherever_it_is(sex: str) -> None:
    """With the site not said, the intervals hold waists at either end."""
    for share in (0.0, 1.0):
        tallies = tallied([soldiers(sex, WaistSite.NOT_SAID, share)], ("height", "bust", "hip"), 40)
        assert tallies["back_waist_length"].covered(95) >= 85
        assert tallies["waist"].covered(95) >= 85


@pytest.mark.parametrize("sex", SEXES)
def test_another_survey_is_covered_less_well(sex: str) -> None:
    """ANSUR II put landmarks elsewhere: 95 % intervals hold at least 80 in 100 there, not 95."""
    columns = soldiers_2012(DATA, sex)
    people = Group(population(Reference(sex), WaistSite.NAVEL), columns)
    assert 80 <= covered(tallied([people], FOUR, 20)) <= 97


@pytest.mark.parametrize("sex", SEXES)
def test_civilians_hips_are_covered(sex: str) -> None:
    """From height and a waist at the navel, intervals hold at least 9 in 10 civilian hips."""
    people = civilians(DATA, sex).columns
    inside = 0
    for height, waist, hip in zip(people["height"], people["waist"], people["hip"], strict=True):
        known = {"height": float(height), "waist": float(waist)}
        guess = estimate(known, Reference(sex), WaistSite.NAVEL)["hip"]
        inside += guess.cm - 1.96 * guess.spread <= hip <= guess.cm + 1.96 * guess.spread
    assert inside >= 36


def test_estimates_come_nearer_than_the_rules() -> None:
    """From height, bust, waist and hip, errors are at most 0.75 of the best rule's on average."""
    people = soldiers("women", WaistSite.MIDWAY, 0.5)
    rows = compared([people], "women", tallied([people], FOUR, 40))
    assert np.mean([row.estimate / row.rule for row in rows]) <= 0.75


@pytest.mark.parametrize("sex", SEXES)
def test_a_form_in_inches_is_recognised_whole(sex: str) -> None:
    """Every form typed in inches is recognised, and no honest one is taken for it."""
    honest = judged_honest(
        population(Reference(sex), WaistSite.NARROWEST),
        forms(soldiers(sex, WaistSite.NARROWEST, 0.0)),
    )
    assert (honest.forms, honest.inches) == (40, 40)
    assert honest.warned <= 4


@pytest.mark.parametrize("sex", SEXES)
def test_slips_are_caught_and_named(sex: str) -> None:
    """Gross slips are nearly all remarked on, and at least nine names in ten are right."""
    people = soldiers(sex, WaistSite.NARROWEST, 0.0)
    caught = judged_mishaps(people.population, forms(people))
    for name in ("inches typed as cm", "half the girth", "decimal place"):
        assert caught[name].hinted >= 39, name
    assert caught["two digits swapped"].hinted >= 36
    assert caught["waist and hip swapped"].hinted >= 38
    right = sum(count.right for count in caught.values())
    assert right >= 0.9 * (right + sum(count.wrong for count in caught.values()))


@pytest.mark.parametrize("sex", SEXES)
def test_a_girth_five_centimetres_wrong_is_not_caught(sex: str) -> None:
    """The program must not claim it: most trunk girths read 5 cm wrong pass without a warning."""
    people = soldiers(sex, WaistSite.NARROWEST, 0.0)
    caught = judged_mishaps(people.population, forms(people))["trunk girth 5 cm wrong"]
    assert caught.warned <= 0.25 * caught.forms


def test_large_civilians_are_not_accused() -> None:
    """No more than 3 of 40 civilian women's own values are warned of."""
    people = civilians(DATA, "women").columns
    warned = 0
    for row in range(40):
        known = {key: float(people[key][row]) for key in ("height", "waist", "hip", "upper_arm")}
        found = judge(known, frozenset(), Reference.WOMEN, WaistSite.NAVEL, Unit.CM)
        warned += any(one.severity is Severity.WARNING for one in found)
    assert warned <= 3


@pytest.mark.parametrize("bust", [74, 86, 98, 113, 131])
def test_a_size_table_is_an_honest_form(bust: int) -> None:
    """[en13402-3] (waist and hip from memory): no size is warned of, small or large."""
    waist, hip = {74: (60, 84), 86: (72, 96), 98: (84, 108), 113: (100, 122), 131: (118, 137)}[bust]
    known = {"bust": float(bust), "waist": float(waist), "hip": float(hip)}
    found = judge(known, frozenset(), Reference.WOMEN, WaistSite.MIDWAY, Unit.CM)
    assert [one for one in found if one.severity is Severity.WARNING] == []
