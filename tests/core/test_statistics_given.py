"""Conditioning in plain Python against a numerical library, and how fast it is."""

from __future__ import annotations

import math
import random
import subprocess
import sys

import numpy as np
import pytest

from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.measures.catalogue import BY_KEY
from tapewise_core.statistics.doubts import normal
from tapewise_core.statistics.given import WIDENINGS, given
from tapewise_core.statistics.population import AGES, WEIGHT, cautions, population, sources
from tapewise_core.statistics.symmetric import inverse

WOMEN, NARROWEST = Reference.WOMEN, WaistSite.NARROWEST
PEOPLE = population(WOMEN, NARROWEST)
FULL = {
    key: PEOPLE.unscaled(key, PEOPLE.mean[key] + shift * PEOPLE.covariance[key][key] ** 0.5)
    for key, shift in zip(PEOPLE.measures, [0.1, -0.2, 0.3] * 9, strict=False)
}


def by_library(known: dict[str, float], key: str) -> tuple[float, float]:
    """Condition with numpy, straight from the textbook."""
    keys = [name for name in PEOPLE.measures if name in known]
    covariance = np.array([[PEOPLE.covariance[a][b] for b in keys] for a in keys])
    covariance += np.diag([PEOPLE.error(name) for name in keys])
    with_key = np.array([PEOPLE.covariance[key][name] for name in keys])
    off = np.array([PEOPLE.scaled(name, known[name]) - PEOPLE.mean[name] for name in keys])
    mean = PEOPLE.mean[key] + with_key @ np.linalg.solve(covariance, off)
    variance = PEOPLE.covariance[key][key] + PEOPLE.definition[key] ** 2
    variance -= with_key @ np.linalg.solve(covariance, with_key)
    return float(mean), math.sqrt(variance)


def test_the_inverse_is_the_inverse() -> None:
    """Every stored population can be inverted, with and without the error of reading."""
    for reference in Reference:
        for site in WaistSite:
            people = population(reference, site)
            matrix = [[people.covariance[a][b] for b in people.keys] for a in people.keys]
            product = np.array(matrix) @ np.array(inverse(matrix))
            assert np.allclose(product, np.eye(len(matrix)), atol=1e-5)
            assert np.linalg.eigvalsh(np.array(matrix)).min() > 0


@pytest.mark.parametrize("known", [("height",), ("height", "bust", "hip"), tuple(FULL)[2:]])
def test_an_estimate_is_the_textbooks(known: tuple[str, ...]) -> None:
    """Mean and spread agree with the conditional normal distribution worked out by numpy."""
    values = {key: FULL[key] for key in known}
    body = given(values, PEOPLE)
    for key in PEOPLE.measures:
        if key not in values:
            assert body.of(key) == pytest.approx(by_library(values, key), rel=1e-6)


def test_leaving_one_out_is_never_having_had_it() -> None:
    """A body without a reading is the body of the other readings."""
    less = given(FULL, PEOPLE).without("waist")
    fresh = given({key: cm for key, cm in FULL.items() if key != "waist"}, PEOPLE)
    assert less.keys == fresh.keys
    assert np.allclose(less.precision, fresh.precision)
    assert less.of("waist") == pytest.approx(fresh.of("waist"))


def test_the_distance_of_a_reading_is_from_the_others_alone() -> None:
    """A reading's z is its distance from the others' prediction, in spreads of a reading."""
    body = given(FULL, PEOPLE)
    mean, spread = by_library({k: v for k, v in FULL.items() if k != "waist"}, "waist")
    spread = math.hypot(spread, PEOPLE.home["waist"])
    assert body.z("waist") == pytest.approx(
        (PEOPLE.scaled("waist", FULL["waist"]) - mean) / spread, rel=1e-5
    )


def test_large_bodies_have_wider_spreads() -> None:
    """The wider the larger the body mass index, weight never being asked."""
    bodies = {
        hip: given({"height": 162.0, "waist": hip * 0.85, "hip": float(hip)}, PEOPLE)
        for hip in (100, 122, 135, 155)
    }
    indices = [body.body_mass_index() for body in bodies.values()]
    assert indices == sorted(indices)
    assert indices[0] < 35 < 45 < indices[-1]
    for body, index in zip(bodies.values(), indices, strict=True):
        wider = next((wider for above, wider in WIDENINGS if index > above), 1.0)
        assert body.widening() == wider
    assert [body.widening() for body in bodies.values()][-1] > 1.5


def test_a_rare_height_has_wider_spreads() -> None:
    """A short woman is estimated, and a little less surely."""
    assert given({"height": 138.0}, PEOPLE).widening() > 1
    assert given({"height": 150.0}, PEOPLE).widening() == 1


def test_an_age_moves_what_changes_with_it() -> None:
    """Of two men of one build the older has the larger waist and the thinner arm."""
    known = {"height": 176.0, "hip": 103.0}
    young, old = (
        given(known, population(Reference.MEN, WaistSite.NAVEL, age)) for age in (25.0, 75.0)
    )
    people = old.population
    waists = [people.unscaled("waist", body.of("waist")[0]) for body in (young, old)]
    assert waists[1] > waists[0] + 5
    assert young.of("upper_arm")[0] > old.of("upper_arm")[0]
    unsaid = given(known, population(Reference.MEN, WaistSite.NAVEL))
    assert old.of("waist")[1] < unsaid.of("waist")[1]


def test_a_density_is_that_of_the_textbook() -> None:
    """The log density of a form is the multivariate normal's, for each cm."""
    stats = pytest.importorskip("scipy.stats")
    known = {key: FULL[key] for key in ("height", "shoulder_length", "arm_length")}
    keys = [key for key in PEOPLE.measures if key in known]
    covariance = np.array([[PEOPLE.covariance[a][b] for b in keys] for a in keys])
    covariance += np.diag([PEOPLE.error(name) for name in keys])
    means = [PEOPLE.mean[key] for key in keys]
    expected = stats.multivariate_normal.logpdf([known[key] for key in keys], means, covariance)
    assert given(known, PEOPLE).log_density() == pytest.approx(expected)


@pytest.mark.parametrize("key", ["hip", "waist", "neck", "arm_length"])
def test_every_length_has_a_place_on_its_scale(key: str) -> None:
    """There and back again, from a millimetre to more than any body has, and always rising."""
    lengths = [0.1, 1.0, 10.0, 50.0, 74.9, 75.1, 110.0, 299.0]
    placed = [PEOPLE.scaled(key, cm) for cm in lengths]
    assert placed == sorted(placed)
    assert [PEOPLE.unscaled(key, value) for value in placed] == pytest.approx(lengths)


def test_the_tails_are_student_s() -> None:
    """The normal distance of a t value agrees with the exact one."""
    stats = pytest.importorskip("scipy.stats")
    for far in (0.5, 2.6, 3.3, 4.0, 6.0):
        tail = stats.t.sf(far * math.sqrt(60 / 58), 60)
        assert normal(far) == pytest.approx(stats.norm.isf(tail), abs=0.01)


def test_the_model_says_where_it_comes_from() -> None:
    """Sources with years and numbers of people, and cautions, stand in the model's file."""
    assert any("1988" in source and "half of those measured" in source for source in sources())
    assert any("National Health" in source for source in sources())
    assert any("pregnant" in caution for caution in cautions())
    assert any("measure twice" in caution for caution in cautions())
    assert set(PEOPLE.keys) == {*BY_KEY, WEIGHT, *AGES} - {"across_front", "high_hip"}


def test_no_numeric_library_is_loaded_to_estimate_and_judge() -> None:
    """Start-up stays quick: neither numpy nor scipy is imported."""
    code = (
        "import sys; from tapewise_core.statistics.judge import judge; "
        "from tapewise_core.statistics.estimate import estimate; "
        "from tapewise_core.measures.body import Reference as R, WaistSite as W; "
        "from tapewise_core.units import Unit; "
        "estimate({'height': 165.0}, R.WOMEN, W.NAVEL); "
        "judge({'height': 165.0, 'bust': 36.0}, frozenset(), R.WOMEN, W.NAVEL, Unit.CM); "
        "print([name for name in ('numpy', 'scipy') if name in sys.modules])"
    )
    ran = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert ran.stdout.strip() == "[]"


def test_any_combination_of_readings_can_be_conditioned_on() -> None:
    """Random subsets of random bodies give finite, positive spreads within their own interval."""
    chance = random.Random(4)
    for _ in range(60):
        keys = chance.sample(list(FULL), chance.randrange(len(FULL)))
        body = given({key: FULL[key] * chance.uniform(0.9, 1.1) for key in keys}, PEOPLE)
        for key in PEOPLE.measures:
            if key not in keys:
                mean, spread = body.of(key)
                assert math.isfinite(mean)
                assert 0 < spread < 30
