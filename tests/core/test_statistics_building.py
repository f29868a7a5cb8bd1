"""The model is worked out as it says, and its file is what the script writes."""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest

from tapewise_core.errors import FilesError
from tapewise_core.statistics.building.fields import FIELDS, SELECTED
from tapewise_core.statistics.building.fit import Joint, at_site, joint_of, mixed, reweighted
from tapewise_core.statistics.building.model import model_of
from tapewise_core.statistics.building.tables import civilians, soldiers_1988, transformed
from tapewise_core.statistics.population import SITED, population_of

DATA = Path(__file__).parent.parent / "published" / "data"
CHOSEN = [FIELDS.index(key) for key in SELECTED]


@pytest.fixture(scope="module")
def joint() -> Joint:
    """The excerpt's women."""
    return joint_of(soldiers_1988(DATA, "women"))


def test_reweighting_takes_the_civilians_own_means_and_covariances(joint: Joint) -> None:
    """What both surveys measured is the civilians' after re-weighting, by survey weight."""
    others = civilians(DATA, "women")
    table = transformed(others.columns, SELECTED)
    after = reweighted(joint, others)
    assert after.mean[CHOSEN] == pytest.approx(np.average(table, axis=0, weights=others.weights))
    expected = np.cov(table.T, aweights=others.weights)
    assert after.covariance[np.ix_(CHOSEN, CHOSEN)] == pytest.approx(expected)


def test_reweighting_keeps_everything_else_given_them(joint: Joint) -> None:
    """The slopes on what was selected by are the soldiers', before and after."""
    after = reweighted(joint, civilians(DATA, "women"))

    def slopes(one: Joint) -> np.ndarray:
        own = one.covariance[np.ix_(CHOSEN, CHOSEN)]
        return np.asarray(np.linalg.solve(own, one.covariance[CHOSEN]))

    assert slopes(after) == pytest.approx(slopes(joint), abs=1e-8)


def test_a_site_is_the_people_measured_there(joint: Joint) -> None:
    """At the narrowest place the means are those of the narrowest waists."""
    people = soldiers_1988(DATA, "women")
    table = transformed(people.narrowest, FIELDS)
    narrowest = at_site(joint, "narrowest")
    assert narrowest.mean == pytest.approx(table.mean(axis=0))
    assert narrowest.covariance == pytest.approx(np.cov(table.T), abs=1e-9)


def test_a_site_not_said_moves_what_it_moves_together(joint: Joint) -> None:
    """Blurring adds the variance of an even spread, and nothing to what has no site."""
    midway, blurred = at_site(joint, "midway"), at_site(joint, "not said")
    added = blurred.covariance - midway.covariance
    waist, depth = FIELDS.index("waist"), FIELDS.index("back_waist_length")
    apart = joint.mean[len(FIELDS) + SITED.index("back_waist_length")]
    assert added[depth, depth] >= apart**2 / 12
    assert added[depth, waist] > 0
    assert added[FIELDS.index("hip")] == pytest.approx(0)


def test_both_populations_together_are_wider(joint: Joint) -> None:
    """The mixture's mean lies between, its variance above the mean of both."""
    men = joint_of(soldiers_1988(DATA, "men"))
    both = mixed(joint, men)
    height = FIELDS.index("height")
    assert both.mean[height] == pytest.approx((joint.mean[height] + men.mean[height]) / 2)
    apart = (joint.mean[height] - men.mean[height]) / 2
    inside = (joint.covariance[height, height] + men.covariance[height, height]) / 2
    assert both.covariance[height, height] == pytest.approx(inside + apart**2)


def test_the_model_can_be_built_and_read() -> None:
    """From a folder of tables to a population, by way of plain JSON."""
    model = json.loads(json.dumps(model_of(DATA)))
    assert {name.split(", ")[0] for name in model["populations"]} == {"women", "men", "not said"}
    assert len(model["populations"]) == 12
    people = population_of(model, "women, navel")
    assert 155 < people.mean["height"] < 170
    assert 30 < people.unscaled("neck", people.mean["neck"]) < 42


def test_a_missing_table_is_named(tmp_path: Path) -> None:
    """One sentence says which table cannot be read."""
    with pytest.raises(FilesError, match=r"ansur1_1988\.csv cannot be read"):
        model_of(tmp_path)
