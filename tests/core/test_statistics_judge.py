"""Unlikely values: remarked on, named where the evidence allows, never blamed on others."""

from __future__ import annotations

import pytest

from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.measures.finding import Finding, Severity
from tapewise_core.statistics.doubts import HINT, WARNING
from tapewise_core.statistics.estimate import estimate
from tapewise_core.statistics.judge import judge
from tapewise_core.statistics.slips import believable
from tapewise_core.text.told import Reader, Told
from tapewise_core.units import Unit

WOMEN, MIDWAY = Reference.WOMEN, WaistSite.MIDWAY
START = {"height": 165.0, "bust": 92.0, "waist": 78.0, "hip": 101.0}
WHOLE = START | {key: round(one.cm, 1) for key, one in estimate(START, WOMEN, MIDWAY).items()}


def judged(
    known: dict[str, float],
    confirmed: frozenset[str] = frozenset(),
    unit: Unit = Unit.CM,
    age: float | None = None,
) -> tuple[Finding, ...]:
    """What is found in an invented woman's form."""
    return judge(known, confirmed, WOMEN, MIDWAY, unit, age)


def spelt(told: Told, unit: Unit = Unit.CM) -> str:
    """What a reader reads."""
    return Reader(unit).spell(told)


def test_a_usual_body_is_left_in_peace() -> None:
    """Nothing is said of a whole form, a short one, or an empty one."""
    assert judged(WHOLE) == ()
    assert judged(START) == ()
    assert judged({}) == ()


@pytest.mark.parametrize(
    ("key", "typed", "slip", "meant"),
    [
        ("bust", 36.2, "typed in inches", 91.948),
        ("hip", 50.5, "half the girth", 101.0),
        ("bust", 920.0, "decimal place slipped", 92.0),
        ("neck", 63.0, "two digits swapped", 36.0),
        ("waist", 147.0, None, None),
        ("height", 280.5, None, None),
        ("bust", 9.2, None, None),
        ("height", 65.0, None, None),
    ],
)
def test_a_slip_in_one_value_is_named_if_nothing_else_explains_it(
    key: str, typed: float, slip: str | None, meant: float | None
) -> None:
    """One warning, on that value alone; a slip that stands alone with what would mend it."""
    (found,) = judged(WHOLE | {key: typed})
    assert found.measures == (key,)
    assert found.severity is Severity.WARNING
    if slip is not None:
        assert found.slip == slip
    if meant is None:
        assert found.proposed is None
    else:
        assert found.proposed == {key: pytest.approx(meant)}


@pytest.mark.parametrize(("key", "typed"), [("bust", 9.2), ("hip", 10.5), ("height", 16.5)])
def test_a_value_short_of_a_digit_is_asked_about_and_no_number_is_offered(
    key: str, typed: float
) -> None:
    """92 without its point, or 95.2 without its 5: nobody can tell, so nothing is proposed."""
    (found,) = judged(WHOLE | {key: typed})
    assert "s a digit missing" in spelt(found.says)
    assert found.proposed is None


def test_inches_must_beat_half_by_far() -> None:
    """Where little is known, 42 may be a bust in inches or half of one: neither is proposed."""
    (found,) = judged({"height": 165.0, "bust": 42.0})
    assert found.proposed is None
    says = spelt(found.says).lower()
    assert "was it typed in inches" in says
    assert "is it half of the way round" in says


def test_a_correction_taken_leaves_nothing_to_say() -> None:
    """What is proposed, once taken, is quiet."""
    typed = WHOLE | {"bust": 36.2, "neck": 63.0, "hip": 1010.0}
    found = judged(typed)
    assert {one.measures for one in found} == {("bust",), ("neck",), ("hip",)}
    for one in found:
        assert one.proposed is not None
        typed |= dict(one.proposed)
    assert judged(typed) == ()


def test_swapped_measures_are_named_together() -> None:
    """Waist and hip in each other's place are one finding about both."""
    (found,) = judged(WHOLE | {"waist": 101.0, "hip": 78.0})
    assert set(found.measures) == {"waist", "hip"}
    assert found.slip == "two measures swapped"
    assert found.proposed == {"waist": 78.0, "hip": 101.0}


def test_a_value_entered_twice_is_named_and_nothing_is_proposed() -> None:
    """The hip's value typed at the waist too: the waist is to be measured."""
    (found,) = judged(WHOLE | {"waist": 101.0})
    assert found.slip == "entered twice"
    assert found.measures == ("waist", "hip")
    assert found.proposed is None
    assert "measure it again" in spelt(found.says)


@pytest.mark.parametrize("form", [START, WHOLE])
def test_a_whole_form_in_inches_is_one_finding(form: dict[str, float]) -> None:
    """All values mended at once, and no value accused by itself."""
    (found,) = judged({key: cm / 2.54 for key, cm in form.items()})
    assert set(found.measures) == set(form)
    assert found.slip == "whole form typed in inches"
    assert found.proposed == {key: pytest.approx(cm, abs=1e-3) for key, cm in form.items()}


def test_girths_in_inches_beside_a_height_in_centimetres_leave_the_height() -> None:
    """Only what was typed in inches is mended, and nothing is proposed that no body has."""
    typed = {key: cm / 2.54 if key != "height" else cm for key, cm in START.items()}
    (found,) = judged(typed)
    assert found.slip == "several values typed in inches"
    assert set(found.measures) == {"bust", "waist", "hip"}
    assert found.proposed == {key: pytest.approx(START[key], abs=1e-3) for key in found.measures}


def test_halved_girths_are_never_called_inches() -> None:
    """Bust, waist and hip laid flat: half of the way round, or a question without a proposal."""
    for known in (WHOLE, START):
        halved = {key: known[key] / 2 for key in ("bust", "waist", "hip")}
        for form in (halved, known | halved):
            for found in judged(form):
                assert "inches" not in (found.slip or "")
                assert found.slip is None or found.proposed is None or "half" in found.slip


@pytest.mark.parametrize("times", [0.1, 1 / 2.54, 0.5, 2.0, 2.54, 4.0])
@pytest.mark.parametrize("some", [("height",), ("bust", "waist", "hip"), ("hip", "neck"), None])
def test_whatever_is_proposed_is_believable(times: float, some: tuple[str, ...] | None) -> None:
    """Any values wrong by any factor: no proposal leaves its measure's believable range."""
    for unit in Unit:
        typed = {key: cm * times if key in (some or WHOLE) else cm for key, cm in WHOLE.items()}
        for found in judged(typed, unit=unit):
            for key, cm in (found.proposed or {}).items():
                assert believable(key, cm), (found.slip, key, cm)


def test_a_very_large_body_is_offered_nothing_beyond_belief() -> None:
    """77 may be a bust in inches beside such a hip, but 195.6 cm is outside the range: no offer."""
    large = {"waist": 185.0, "hip": 192.0, "high_bust": 176.0, "under_bust": 170.0, "height": 165.0}
    (found,) = judged(large | {"bust": 77.0}, frozenset(large))
    assert found.measures == ("bust",)
    assert found.proposed is None


def test_someone_who_types_inches_may_type_centimetres() -> None:
    """A bust of 92 typed where inches are expected, and a whole form of them."""
    (one,) = judged(WHOLE | {"bust": 92 * 2.54}, unit=Unit.IN)
    assert one.slip == "typed in centimetres"
    assert one.proposed == {"bust": pytest.approx(92.0)}
    assert "cm" not in spelt(one.says, Unit.IN)
    (whole,) = judged({key: cm * 2.54 for key, cm in START.items()}, unit=Unit.IN)
    assert whole.slip == "whole form typed in centimetres"


def test_a_confirmed_value_stays_quiet_and_accuses_nobody() -> None:
    """“Measured again, it is right” ends the matter, however odd the value."""
    odd = WHOLE | {"waist": 120.0}
    assert [one.measures for one in judged(odd)] == [("waist",)]
    assert judged(odd, frozenset({"waist"})) == ()


def test_a_confirmed_value_is_no_partner_in_a_swap() -> None:
    """A slip is not explained by exchanging it with what was measured again."""
    found = judged(WHOLE | {"waist": 101.0, "hip": 78.0}, frozenset({"hip"}))
    assert all(one.slip != "two measures swapped" for one in found)


def test_one_wild_value_does_not_accuse_the_rest() -> None:
    """Each gross error gives one finding on itself, on whichever measure it is."""
    for key, cm in WHOLE.items():
        found = judged(WHOLE | {key: cm * 10 if cm < 30 else cm / 10})
        assert len(found) == 1, key
        assert key in found[0].measures


def test_hints_are_quieter_than_warnings() -> None:
    """From 2.6 spreads a hint, from 3.3 a warning, below nothing."""
    seen = set()
    for wrist in range(30, 50):
        found = judged(WHOLE | {"wrist": wrist / 2})
        z = abs(found[0].z or 0.0) if found else 0.0
        seen.add(found[0].severity if found else None)
        assert not found or z >= HINT
        assert not found or (found[0].severity is Severity.WARNING) is (z >= WARNING)
    assert seen == {None, Severity.HINT, Severity.WARNING}


def test_a_measure_is_spoken_of_once() -> None:
    """What is out of range and unlikely too is one finding, not two."""
    for found in (judged({"bust": 36.0, "hip": 101.0}), judged(WHOLE | {"wrist": 40.0})):
        spoken = [key for one in found for key in one.measures]
        assert len(spoken) == len(set(spoken))


SMALL = {"height": 110.0, "bust": 58.0, "waist": 54.0, "hip": 62.0}
"""A child's form."""


def test_a_child_is_not_judged_by_adults() -> None:
    """One hint says that nothing is estimated; no value is called unlikely."""
    (found,) = judged(SMALL)
    assert found.severity is Severity.HINT
    assert "take every measure" in spelt(found.says)


@pytest.mark.parametrize("age", [2.0, 5.0, 12.0])
def test_nothing_is_said_of_a_child_whose_age_is_known(age: float) -> None:
    """There is nothing to look at again in a right height, alone or beside girths."""
    assert judged(SMALL, age=age) == ()
    assert judged({"height": SMALL["height"]}, age=age) == ()


def test_a_child_is_judged_by_children() -> None:
    """What no child has is warned of, a slip of the hand is named, and a sure reading is quiet."""
    (alone,) = judged({"height": 18.0}, age=6.0)
    assert "most children have" in spelt(alone.says)
    (tenfold,) = judged(SMALL | {"hip": 620.0}, age=5.0)
    assert (tenfold.measures, tenfold.severity) == (("hip",), Severity.WARNING)
    assert "the other measures suggest" in spelt(tenfold.says)
    (inches,) = judged(SMALL | {"waist": 54.0 / 2.54, "upper_arm": 18.0, "head": 51.0}, age=5.0)
    assert inches.proposed == {"waist": pytest.approx(54.0, abs=0.01)}
    assert judged(SMALL | {"hip": 620.0}, frozenset({"hip"}), age=5.0) == ()


def test_a_childs_girths_without_a_height_are_not_called_inches() -> None:
    """A head and three girths of a child of four: one hint, and no proposal."""
    (found,) = judged({"head": 50.5, "bust": 54.0, "waist": 50.0, "hip": 55.0})
    assert (found.severity, found.slip, found.proposed) == (Severity.HINT, None, None)
    assert "child" in spelt(found.says)


def test_what_may_be_a_childs_is_said_and_nobody_is_warned() -> None:
    """At 143 cm with slim girths the form may be a child's: one hint asks for the age."""
    known = {"height": 146.0, "bust": 75.0, "waist": 63.0, "hip": 79.0}
    found = judged(known)
    assert [one.severity for one in found] == [Severity.HINT]
    assert "give the age" in spelt(found[0].says)
    assert all("child" not in spelt(one.says) for one in judged(known, age=30.0))


def test_a_finding_is_a_sentence_in_the_readers_unit() -> None:
    """It names the measure, what was typed, the range, one question, and what if it is right."""
    (found,) = judged(WHOLE | {"hip": 50.5})
    assert spelt(found.says).startswith("Hip 50.5 cm: the other measures suggest ")
    asked = "Is it half of the way round? Then it is 101 cm. If it is right, keep it"
    assert asked in spelt(found.says)
    (inches,) = judged(WHOLE | {"hip": 50.8}, unit=Unit.IN)
    assert spelt(inches.says, Unit.IN).startswith("Hip 20 in: ")
    assert "cm" not in spelt(inches.says, Unit.IN)


@pytest.mark.parametrize("times", [0.1, 1 / 2.54, 0.5, 0.8, 1.3, 2.0, 10.0])
@pytest.mark.parametrize("key", ["bust", "hip", "wrist", "height", "arm_length", "hip_depth"])
def test_every_remark_asks_one_question_and_says_what_follows(key: str, times: float) -> None:
    """Never more than one question mark, always what happens if it is right, never a verdict."""
    for found in judged(WHOLE | {key: WHOLE[key] * times}):
        says = spelt(found.says)
        assert says.count("?") == 1, says
        assert "keep" in says
        assert not any(word in says for word in ("child", "too big", "wrong", "abnormal", "figure"))


def test_few_values_are_judged_by_what_most_people_have() -> None:
    """A form of one value has no others to compare with."""
    (found,) = judged({"height": 65.0})
    assert "most people have" in spelt(found.says)
    assert found.proposed is None


def test_digits_are_swapped_as_they_were_typed() -> None:
    """Whole inches, though kept in centimetres: 63 in for a bust of 36 in."""
    (found,) = judged(WHOLE | {"bust": 63 * 2.54}, unit=Unit.IN)
    assert found.slip == "two digits swapped"
    assert found.proposed == {"bust": pytest.approx(36 * 2.54, abs=1e-3)}


def test_a_girth_and_a_length_in_each_others_place_are_named() -> None:
    """Height typed at the hip, and the hip at the height."""
    (found,) = judged(START | {"height": 101.0, "hip": 165.0})
    assert found.slip == "two measures swapped"
    assert found.proposed == {"height": 165.0, "hip": 101.0}


def test_two_values_that_are_each_possible_are_seen_to_be_swapped() -> None:
    """Under bust and bust exchanged: neither is odd alone, the two together are."""
    (found,) = judged(WHOLE | {"bust": WHOLE["under_bust"], "under_bust": 92.0})
    assert set(found.measures) == {"bust", "under_bust"}
    says = spelt(found.says)
    assert says.count("?") == 1
    assert "the other measures suggest " in says
    low, high = map(float, says.split("suggest ")[1].split(" cm")[0].split(" to "))
    assert low < (92.0 if says.startswith("Bust") else WHOLE["under_bust"]) < high


def test_what_is_said_of_a_child_is_quiet_once_confirmed() -> None:
    """One hint beside the height, and none after that was confirmed."""
    child = {"height": 128.0, "waist": 58.0, "hip": 68.0}
    (hint,) = judged(child)
    assert "most often a child's" in spelt(hint.says)
    assert judged(child, frozenset({"height"})) == ()
