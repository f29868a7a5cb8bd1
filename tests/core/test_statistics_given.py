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
from tapewise_core.statistics.given import given, inverse
from tapewise_core.statistics.population import WEIGHT, cautions, population, sources

WOMEN, NARROWEST = Reference.WOMEN, WaistSite.NARROWEST
PEOPLE = population(WOMEN, NARROWEST)
FULL = {
    key: PEOPLE.unscaled(key, PEOPLE.mean[key] + shift * PEOPLE.covariance[key][key] ** 0.5)
    for key, shift in zip(PEOPLE.measures, [0.1, -0.2, 0.3] * 8, strict=False)
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
    """1.3 times above a body mass index of 35, 1.6 times above 40, weight never being asked."""
    bodies = {
        hip: given({"height": 162.0, "waist": hip * 0.85, "hip": float(hip)}, PEOPLE)
        for hip in (100, 125, 150)
    }
    indices = [body.body_mass_index() for body in bodies.values()]
    assert indices[0] < 35 < indices[1] < 40 < indices[2]
    assert [body.widening() for body in bodies.values()] == [1.0, 1.3, 1.6]


def test_the_tails_are_student_s() -> None:
    """The normal distance of a t value agrees with the exact one."""
    stats = pytest.importorskip("scipy.stats")
    for far in (0.5, 2.6, 3.3, 4.0, 6.0):
        tail = stats.t.sf(far * math.sqrt(60 / 58), 60)
        assert normal(far) == pytest.approx(stats.norm.isf(tail), abs=0.01)


def test_the_model_says_where_it_comes_from() -> None:
    """Sources with years and numbers of people, and cautions, stand in the model's file."""
    assert any("1988" in source and "2208 women" in source for source in sources())
    assert any("National Health" in source for source in sources())
    assert any("pregnant" in caution for caution in cautions())
    assert any("measure twice" in caution for caution in cautions())
    assert set(PEOPLE.keys) == {*BY_KEY, WEIGHT}


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
