"""What was not measured, drawn together: bodies rather than single values."""

from __future__ import annotations

import numpy as np
import pytest

from tapewise_core.measures.body import Origin, Reference, WaistSite
from tapewise_core.measures.catalogue import BY_KEY
from tapewise_core.profiles.examples import DEMO, example
from tapewise_core.statistics.estimate import HALF_90, estimate
from tapewise_core.statistics.joint import unmeasured
from tapewise_core.tasks.people import plausible_bodies

WOMEN, MIDWAY = Reference.WOMEN, WaistSite.MIDWAY
KNOWN = {"height": 165.0, "bust": 92.0, "waist": 76.0, "hip": 100.0}


def test_each_measure_alone_is_the_estimate() -> None:
    """Drawn bodies scatter about each estimate as its interval says."""
    bodies = unmeasured(KNOWN, WOMEN, MIDWAY).draw(3000, seed=1)
    for key, one in estimate(KNOWN, WOMEN, MIDWAY).items():
        drawn = np.array([body[key] for body in bodies])
        assert np.median(drawn) == pytest.approx(one.cm, abs=0.1 * one.spread)
        inside = np.mean((one.low < drawn) & (drawn < one.high))
        assert inside == pytest.approx(0.9, abs=0.025), key


def test_measures_hang_together() -> None:
    """Whose waist lies lower has the longer back and the shorter way to the floor."""
    bodies = unmeasured(KNOWN, WOMEN, WaistSite.NOT_SAID).draw(2000, seed=2)
    back, floor = (
        np.array([body[key] for body in bodies]) for key in ("back_waist_length", "waist_to_floor")
    )
    assert np.corrcoef(back, floor)[0, 1] < -0.4
    assert min(back) > 0


def test_a_seed_gives_the_same_bodies() -> None:
    """Twice the same, and with another seed others."""
    spread = unmeasured(KNOWN, WOMEN, MIDWAY)
    assert spread.draw(5, seed=3) == spread.draw(5, seed=3)
    assert spread.draw(5, seed=3) != spread.draw(5, seed=4)


def test_nothing_is_drawn_for_a_child_or_a_whole_form() -> None:
    """Where nothing is estimated every body is the one that was measured."""
    child = unmeasured({"height": 110.0}, WOMEN, MIDWAY)
    assert child.keys == ()
    assert child.draw(2) == ({}, {})
    whole = unmeasured(dict.fromkeys(BY_KEY, 90.0), WOMEN, MIDWAY)
    assert whole.draw(1) == ({},)


def test_a_persons_bodies_keep_what_was_measured() -> None:
    """Readings stay as they are; what is drawn is marked as estimated."""
    demo = example(DEMO)
    bodies = plausible_bodies(demo, 3, seed=1)
    assert len({body.values["shoulder_drop"].cm for body in bodies}) == 3
    for body in bodies:
        assert body.values["bust"] == demo.values()["bust"]
        assert body.values["shoulder_drop"].origin is Origin.ESTIMATED


def test_the_spread_is_as_wide_as_the_intervals() -> None:
    """On the model's scale the covariance's diagonal is the estimates' spread."""
    spread = unmeasured(KNOWN, WOMEN, MIDWAY)
    one = estimate(KNOWN, WOMEN, MIDWAY)["arm_length"]
    place = spread.keys.index("arm_length")
    half = HALF_90 * spread.covariance[place][place] ** 0.5
    assert (one.high - one.low) / 2 == pytest.approx(half)
