"""Estimates: never without their uncertainty, never for children, whatever is known."""

from __future__ import annotations

from itertools import pairwise

import pytest

from tapewise_core.measures.body import Origin, Reference, WaistSite
from tapewise_core.measures.catalogue import BY_KEY
from tapewise_core.statistics.estimate import estimate
from tapewise_core.statistics.rules import RULES, rule_of_thumb
from tapewise_core.statistics.whose import Whose, refusal, whose
from tapewise_core.statistics.worth import moves, worth
from tapewise_core.statistics.young import CAUTIONS, cautions_for
from tapewise_core.text.told import Reader, Told
from tapewise_core.units import Unit

WOMEN, MEN, NOT_SAID = Reference.WOMEN, Reference.MEN, Reference.NOT_SAID
ESTIMATED = set(BY_KEY) - {"across_front", "high_hip"}
"""No open table holds the other two."""
KNOWN = {"height": 165.0, "bust": 92.0, "waist": 76.0, "hip": 100.0}


def spelt(told: Told) -> str:
    """What a reader of centimetres reads."""
    return Reader(Unit.CM).spell(told)


@pytest.mark.parametrize("reference", list(Reference))
@pytest.mark.parametrize("site", list(WaistSite))
@pytest.mark.parametrize("known", [{}, {"height": 165.0}, KNOWN, {"wrist": 16.0, "head": 56.0}])
def test_everything_missing_is_estimated(
    reference: Reference, site: WaistSite, known: dict[str, float]
) -> None:
    """Any combination, nothing included, gives the rest of the table, each inside its interval."""
    guesses = estimate(known, reference, site)
    assert set(guesses) == ESTIMATED - set(known)
    for key, guess in guesses.items():
        assert guess.low < guess.cm < guess.high
        assert BY_KEY[key].low <= guess.cm <= BY_KEY[key].high


def test_what_is_asked_for_alone_is_estimated_alike() -> None:
    """Whoever makes use of some measures gets their estimates, no others and the same."""
    everything = estimate(KNOWN, WOMEN, WaistSite.MIDWAY)
    some = estimate(KNOWN, WOMEN, WaistSite.MIDWAY, keys=("height", "arm_length", "wrist"))
    assert some == {key: everything[key] for key in ("arm_length", "wrist")}
    assert estimate(KNOWN, WOMEN, WaistSite.MIDWAY, keys=("height",)) == {}


def test_more_known_is_nearer() -> None:
    """Each further measure narrows an estimate or leaves it, as a share of its value."""
    spreads = []
    for number in range(len(KNOWN) + 1):
        known = dict(list(KNOWN.items())[:number])
        guess = estimate(known, WOMEN, WaistSite.MIDWAY)["upper_arm"]
        spreads.append(guess.spread / guess.cm)
    assert spreads == sorted(spreads, reverse=True)
    assert spreads[-1] < spreads[0] / 2


def test_an_estimate_never_looks_like_a_measurement() -> None:
    """As a value it carries its origin, its interval and what it was drawn from."""
    value = estimate(KNOWN, WOMEN, WaistSite.MIDWAY)["arm_length"].as_value()
    assert value.origin is Origin.ESTIMATED
    assert value.interval is not None
    assert value.interval[0] < value.cm < value.interval[1]
    assert value.how.startswith("estimated from height")


def test_it_says_what_it_was_drawn_from_and_the_rule_beside_it() -> None:
    """One sentence with half the interval and the grounds, one with the trade's rule."""
    guess = estimate(KNOWN, WOMEN, WaistSite.MIDWAY)["back_waist_length"]
    assert guess.drawn_from[0] == "height"
    assert guess.rule == (pytest.approx(41.25), "height ÷ 4")
    assert "± " in spelt(guess.says)
    assert "height ÷ 4, gives 41.2 cm" in spelt(guess.says)
    assert "cm" not in Reader(Unit.IN).spell(guess.says)


def test_where_the_waist_was_found_decides() -> None:
    """A waist at the navel lies more than 5 cm lower than the narrowest; not said is wider."""
    found = {
        site: estimate({"height": 165.0}, WOMEN, site)["back_waist_length"] for site in WaistSite
    }
    assert found[WaistSite.NAVEL].cm - found[WaistSite.NARROWEST].cm > 5
    middle = found[WaistSite.MIDWAY]
    assert found[WaistSite.NARROWEST].cm < middle.cm < found[WaistSite.NAVEL].cm
    assert found[WaistSite.NOT_SAID].spread > 1.1 * middle.spread


def test_whose_body_decides_and_not_said_is_wider() -> None:
    """Between women and men, and wider than either."""
    found = {who: estimate({}, who, WaistSite.MIDWAY)["back_waist_length"] for who in Reference}
    assert found[WOMEN].cm < found[NOT_SAID].cm < found[MEN].cm
    assert found[NOT_SAID].spread > max(found[WOMEN].spread, found[MEN].spread)


def test_a_wild_value_does_not_draw_estimates_after_it() -> None:
    """A waist in inches is left out of an estimate, unless the person confirmed it."""
    wild = KNOWN | {"waist": 30.0}
    without = {key: cm for key, cm in KNOWN.items() if key != "waist"}
    at = WaistSite.MIDWAY
    guess = estimate(wild, WOMEN, at)["under_bust"]
    assert guess.cm == pytest.approx(estimate(without, WOMEN, at)["under_bust"].cm)
    confirmed = estimate(wild, WOMEN, at, frozenset({"waist"}))["under_bust"]
    assert confirmed.cm < guess.cm - 3


CHILD = {"height": 110.0, "bust": 58.0, "waist": 54.0, "hip": 62.0}


@pytest.mark.parametrize(
    ("known", "age"),
    [
        (CHILD, None),
        ({"height": 120.0}, None),
        ({"head": 52.0, "bust": 60.0, "waist": 55.0, "hip": 63.0}, None),
        (KNOWN, 12.0),
        ({}, 16.9),
    ],
)
def test_children_are_not_estimated(known: dict[str, float], age: float | None) -> None:
    """By height, by girths or by age: a kind sentence, no estimate, and cautions for children."""
    assert "take every measure" in spelt(refusal(known, age=age))
    assert estimate(known, WOMEN, WaistSite.MIDWAY, age=age) == {}
    assert worth(known, {"hip_depth": 1.0}, WOMEN, WaistSite.MIDWAY, age=age) == ()
    assert cautions_for(known, frozenset(), age) == CAUTIONS


@pytest.mark.parametrize(
    ("known", "age"),
    [
        (KNOWN, None),
        ({}, None),
        (KNOWN | {"height": 65.0}, None),
        ({"height": 65.0}, None),
        ({"height": 65.0, "bust": 36.0, "hip": 40.0}, None),
        ({"bust": 46.0, "waist": 38.0}, None),
        ({"height": 138.0}, 40.0),
        ({"height": 138.0, "bust": 92.0, "waist": 80.0, "hip": 100.0}, None),
    ],
)
def test_grown_people_are_not_taken_for_children(
    known: dict[str, float], age: float | None
) -> None:
    """A slip in a height, a form in inches or halved, or a short woman: all are estimated."""
    assert refusal(known, age=age) == ()
    assert estimate(known, WOMEN, WaistSite.MIDWAY, age=age)
    assert cautions_for(known, frozenset(), age) == ()


def test_a_confirmed_small_height_is_drafted_for() -> None:
    """Whoever confirms a height of 138 cm is estimated, with wider ranges than with an age."""
    small, sure = {"height": 138.0}, frozenset({"height"})
    assert refusal(small)
    assert refusal(small, sure) == ()
    unsaid = estimate(small, WOMEN, WaistSite.MIDWAY, sure)["hip"]
    aged = estimate(small, WOMEN, WaistSite.MIDWAY, sure, 40.0)["hip"]
    assert unsaid.spread > aged.spread
    usual = estimate({"height": 150.0}, WOMEN, WaistSite.MIDWAY, age=40.0)["hip"]
    assert aged.spread / aged.cm > usual.spread / usual.cm


def test_a_height_no_survey_holds_is_not_estimated() -> None:
    """At 110 cm, confirmed and grown, nothing is estimated; unconfirmed it is a slip."""
    small, sure = {"height": 110.0}, frozenset({"height"})
    assert "hold no grown body" in spelt(refusal(small, sure, 40.0))
    assert estimate(small, WOMEN, WaistSite.MIDWAY, sure, 40.0) == {}
    assert estimate(small, WOMEN, WaistSite.MIDWAY, age=40.0)


def test_what_may_be_a_childs_reaches_down_to_one() -> None:
    """From 142 cm alone, the hip's range holds a girl's 72 cm as well as a woman's 100."""
    known = {"height": 142.0}
    assert whose(known) is Whose.PERHAPS
    hip = estimate(known, WOMEN, WaistSite.MIDWAY)["hip"]
    assert hip.low < 72 < 100 < hip.high
    aged = estimate(known, WOMEN, WaistSite.MIDWAY, age=30.0)["hip"]
    assert aged.low > hip.low + 8


def test_a_rule_that_means_another_waist_says_so() -> None:
    """height ÷ 4 means a waist midway, and is told with that elsewhere."""
    for site in (WaistSite.MIDWAY, WaistSite.NOT_SAID):
        rule = rule_of_thumb("back_waist_length", KNOWN, WOMEN, site)
        assert rule == (pytest.approx(41.25), "height ÷ 4")
    rule = rule_of_thumb("back_waist_length", KNOWN, WOMEN, WaistSite.NAVEL)
    assert rule is not None
    assert "midway" in rule[1]


def test_no_rule_gives_a_waist_depth_of_twenty() -> None:
    """height ÷ 10 + 4 is an armscye depth, and no rule offers it as a waist depth."""
    depths = [rule.value(KNOWN) for rule in RULES if rule.key == "back_waist_length"]
    assert all(38 <= depth <= 46 for depth in depths)
    assert {rule.key for rule in RULES} <= set(BY_KEY)


def test_the_measure_that_helps_most_comes_first() -> None:
    """What the garment follows closely and nobody knows well is worth most, in centimetres."""
    needs = {"back_waist_length": 1.0, "wrist": 0.5, "bust": 0.25, "hip_depth": 0.2}
    ranked = worth(KNOWN, needs, WOMEN, WaistSite.NOT_SAID)
    assert ranked[0].key == "back_waist_length"
    assert {one.key for one in ranked} == {"back_waist_length", "wrist", "hip_depth"}
    assert all(a.gain >= b.gain for a, b in pairwise(ranked))
    best = ranked[0]
    assert best.then < best.now
    assert 0 < best.gain <= best.now
    assert "back waist length" in spelt(best.says)


def test_nothing_missing_is_worth_nothing() -> None:
    """With all of a garment's measures known there is nothing to propose."""
    assert worth(KNOWN, dict.fromkeys(KNOWN, 1.0), WOMEN, WaistSite.MIDWAY) == ()


def test_what_a_garment_does_not_use_does_not_move_it() -> None:
    """Half an interval times how much the garment follows the measure."""
    assert moves(
        {"hip_depth": 3.0, "head": 2.0, "wrist": 1.0}, {"hip_depth": 0.5, "head": 0.0}
    ) == {"hip_depth": 1.5}
