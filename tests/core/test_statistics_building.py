"""The model is worked out as it says, and its file is what the script writes."""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest
from msgspec.structs import replace

from tapewise_core.errors import FilesError
from tapewise_core.statistics.building import fields
from tapewise_core.statistics.building.fields import FIELDS, SELECTED
from tapewise_core.statistics.building.fit import (
    WAYS,
    Joint,
    at_site,
    joint_of,
    joint_of_people,
    mixed,
    reweighted,
)
from tapewise_core.statistics.building.model import described
from tapewise_core.statistics.building.pool import Surveys, pooled, survey_noise
from tapewise_core.statistics.building.tables import (
    SEXES,
    civilians,
    soldiers_1988,
    soldiers_2012,
    transformed,
)
from tapewise_core.statistics.building.young import KEYS, children, filled
from tapewise_core.statistics.population import AGES, SITED, population_of

DATA = Path(__file__).parent.parent / "published" / "data"


def surveys(sex: str) -> Surveys:
    """The extract's people, all of them."""
    return Surveys(soldiers_1988(DATA, sex), soldiers_2012(DATA, sex), civilians(DATA, sex))


@pytest.fixture(scope="module")
def joint() -> Joint:
    """The extract's women of 1988."""
    return joint_of(soldiers_1988(DATA, "women"))


@pytest.fixture(scope="module")
def others() -> Joint:
    """The extract's civilian women, ages included."""
    return joint_of_people(civilians(DATA, "women"), (*SELECTED, *AGES[1:]))


def test_reweighting_takes_the_civilians_own_means_and_covariances(
    joint: Joint, others: Joint
) -> None:
    """What both surveys measured is the civilians' after re-weighting, and so are their ages."""
    after = reweighted(joint, others, SELECTED).only(others.keys)
    assert after.mean == pytest.approx(others.mean)
    assert after.covariance == pytest.approx(others.covariance)


def test_reweighting_keeps_everything_else_given_them(joint: Joint, others: Joint) -> None:
    """The slopes on what was selected by are the soldiers', before and after."""
    after = reweighted(joint, others, SELECTED)

    def slopes(one: Joint) -> np.ndarray:
        own, rest = one.only(SELECTED), one.places(joint.keys)
        chosen = one.places(SELECTED)
        return np.asarray(np.linalg.solve(own.covariance, one.covariance[np.ix_(chosen, rest)]))

    assert slopes(after) == pytest.approx(slopes(joint), abs=1e-6)


def test_pooling_puts_the_surveys_in_the_middle() -> None:
    """What two teams measured apart comes out half-way between them, for the same body."""
    women = surveys("women")
    assert women.second is not None
    shifted = {"arm_length": women.second.columns["arm_length"] + 2.0}
    moved = replace(women, second=replace(women.second, columns=women.second.columns | shifted))
    places = pooled(women).places(("arm_length", "neck"))
    by = (pooled(moved).mean - pooled(women).mean)[places]
    assert by == pytest.approx([1.0, 0.0], abs=1e-6)


def test_what_surveys_disagree_about_is_doubt() -> None:
    """Moving one survey's measure widens that measure's noise; the others' hardly."""
    both = [surveys(sex) for sex in SEXES]
    moved = []
    for one in both:
        assert one.second is not None
        columns = one.second.columns
        columns = columns | {"arm_length": columns["arm_length"] + 6.0}
        moved.append(replace(one, second=replace(one.second, columns=columns)))
    before, after = survey_noise(both), survey_noise(moved)
    assert after["arm_length"] > 3.0 > before["arm_length"]
    assert after["height"] == 0.0
    assert set(before) == set(fields.KEYS)


def test_a_survey_not_seen_is_doubted_more() -> None:
    """One survey behind a measure leaves more doubt about the next than two do."""
    both = [surveys(sex) for sex in SEXES]
    assert survey_noise(both, seen=1)["neck"] > survey_noise(both, seen=2)["neck"]


def test_a_site_is_the_people_measured_there(joint: Joint) -> None:
    """At the narrowest place the means are those of the narrowest waists."""
    people = soldiers_1988(DATA, "women")
    table = transformed(people.narrowest, SITED)
    whole = Joint((*joint.keys, *AGES[1:]), np.append(joint.mean, [0, 0]), _wide(joint))
    narrowest = at_site(whole, "narrowest").only(SITED)
    assert narrowest.mean == pytest.approx(table.mean(axis=0))
    assert narrowest.covariance == pytest.approx(np.cov(table.T), abs=1e-9)


def test_a_site_not_said_moves_what_it_moves_together(joint: Joint) -> None:
    """Blurring adds the variance of an even spread, and nothing to what has no site."""
    whole = Joint((*joint.keys, *AGES[1:]), np.append(joint.mean, [0, 0]), _wide(joint))
    midway, blurred = at_site(whole, "midway"), at_site(whole, "not said")
    added = blurred.covariance - midway.covariance
    waist, depth = FIELDS.index("waist"), FIELDS.index("back_waist_length")
    apart = joint.only(WAYS).mean[SITED.index("back_waist_length")]
    assert added[depth, depth] >= apart**2 / 12
    assert added[depth, waist] > 0
    assert added[FIELDS.index("hip")] == pytest.approx(0)


def test_both_populations_together_are_wider(joint: Joint) -> None:
    """The mixture's mean lies between, its variance above the mean of both."""
    men = joint_of(soldiers_1988(DATA, "men"))
    both = mixed(joint, men)
    (height,) = joint.places(("height",))
    assert both.mean[height] == pytest.approx((joint.mean[height] + men.mean[height]) / 2)
    apart = (joint.mean[height] - men.mean[height]) / 2
    inside = (joint.covariance[height, height] + men.covariance[height, height]) / 2
    assert both.covariance[height, height] == pytest.approx(inside + apart**2)


def test_the_model_can_be_built_and_read() -> None:
    """From the extract to a population, by way of plain JSON."""
    both = [surveys(sex) for sex in SEXES]
    stored = described({"women": at_site(pooled(both[0]), "navel")}, survey_noise(both))
    people = population_of(json.loads(json.dumps(stored)), "women")
    assert 155 < people.mean["height"] < 170
    assert 30 < people.unscaled("neck", people.mean["neck"]) < 42
    assert people.unscaled("hip", people.scaled("hip", 104.5)) == pytest.approx(104.5)


def test_the_halves_are_drawn_once() -> None:
    """The same people are fitted and held out whenever the tables are read, about half each."""
    first, again = soldiers_1988(DATA, "men"), soldiers_1988(DATA, "men")
    assert (first.fitted == again.fitted).all()
    assert 0.25 < first.fitted.mean() < 0.75


def test_gaps_in_a_table_are_filled_as_its_people_are() -> None:
    """With a third of the numbers missing, means and covariances come out near the whole ones."""
    rng = np.random.default_rng(2)
    size = len(KEYS)
    root = np.tril(0.1 + 0.02 * rng.random((size, size)))
    table = 4.0 + rng.normal(size=(4000, size)) @ root.T
    holed = np.where(rng.random(table.shape) < 0.3, np.nan, table)
    found = filled(holed)
    assert found.mean == pytest.approx(table.mean(axis=0), abs=0.02)
    assert found.covariance == pytest.approx(np.cov(table.T), abs=0.02)


def test_a_missing_table_is_named(tmp_path: Path) -> None:
    """One sentence says which table cannot be read."""
    with pytest.raises(FilesError, match=r"children_1977\.csv cannot be read"):
        children(tmp_path)


def _wide(joint: Joint) -> np.ndarray:
    """The joint's covariance with room for the older ages, which the soldiers lack."""
    size = len(joint.keys)
    wide = np.eye(size + 2)
    wide[:size, :size] = joint.covariance
    return wide
