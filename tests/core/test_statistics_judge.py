"""Unlikely values: remarked on, named where the evidence allows, never blamed on others."""

from __future__ import annotations

import pytest

from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.measures.finding import Finding, Severity
from tapewise_core.statistics.doubts import HINT, WARNING
from tapewise_core.statistics.estimate import estimate
from tapewise_core.statistics.judge import judge
from tapewise_core.units import Unit

WOMEN, MIDWAY = Reference.WOMEN, WaistSite.MIDWAY
START = {"height": 165.0, "bust": 92.0, "waist": 78.0, "hip": 101.0}
WHOLE = START | {key: round(one.cm, 1) for key, one in estimate(START, WOMEN, MIDWAY).items()}


def judged(
    known: dict[str, float], confirmed: frozenset[str] = frozenset(), unit: Unit = Unit.CM
) -> tuple[Finding, ...]:
    """What is found in an invented woman's form."""
    return judge(known, confirmed, WOMEN, MIDWAY, unit)


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
        ("bust", 9.2, "decimal place slipped", 92.0),
        ("hip", 10.1, "decimal place slipped", 101.0),
        ("waist", 87.0 + 60, None, None),
        ("neck", 63.0, "two digits swapped", 36.0),
        ("height", 65.0, "typed in inches", 165.1),
        ("height", 561.0 / 2, None, None),
    ],
)
def test_a_slip_in_one_value_is_named(
    key: str, typed: float, slip: str | None, meant: float | None
) -> None:
    """One warning, on that value alone, with the slip and what would mend it."""
    (found,) = judged(WHOLE | {key: typed})
    assert found.measures == (key,)
    assert found.severity is Severity.WARNING
    assert found.slip == slip
    if meant is not None:
        assert found.proposed == {key: pytest.approx(meant)}


def test_a_correction_taken_leaves_nothing_to_say() -> None:
    """What is proposed, once taken, is quiet."""
    typed = WHOLE | {"bust": 36.2, "neck": 63.0, "hip": 10.1}
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
    assert "Measure it again" in found.says


@pytest.mark.parametrize("form", [START, WHOLE])
def test_a_whole_form_in_inches_is_one_finding(form: dict[str, float]) -> None:
    """All values mended at once, and no value accused by itself."""
    (found,) = judged({key: cm / 2.54 for key, cm in form.items()})
    assert set(found.measures) == set(form)
    assert found.slip == "whole form typed in inches"
    assert found.proposed == {key: pytest.approx(cm, abs=1e-3) for key, cm in form.items()}


def test_someone_who_types_inches_may_type_centimetres() -> None:
    """A bust of 92 typed where inches are expected, and a whole form of them."""
    (one,) = judged(WHOLE | {"bust": 92 * 2.54}, unit=Unit.IN)
    assert one.slip == "typed in centimetres"
    assert one.proposed == {"bust": pytest.approx(92.0)}
    assert "cm" not in one.says
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
        assert [one.measures for one in found] == [(key,)], key


def test_hints_are_quieter_than_warnings() -> None:
    """From 2.6 spreads a hint, from 3.3 a warning, below nothing."""
    seen = set()
    for hip in range(101, 131):
        found = judged(WHOLE | {"hip": float(hip)})
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


def test_a_child_is_not_judged_by_adults() -> None:
    """One hint says that nothing is estimated; no value is called unlikely."""
    (found,) = judged({"height": 110.0, "bust": 58.0, "waist": 54.0, "hip": 62.0})
    assert found.severity is Severity.HINT
    assert "measure instead" in found.says


def test_a_finding_is_a_sentence_in_the_persons_unit() -> None:
    """It names the measure, what was typed and what the others suggest."""
    (found,) = judged(WHOLE | {"hip": 50.5})
    assert found.says.startswith("Hip 50.5 cm: the other measures suggest ")
    assert found.says.endswith("Is it half of the way round? Then it is 101 cm.")
    (inches,) = judged(WHOLE | {"hip": 50.8}, unit=Unit.IN)
    assert inches.says.startswith("Hip 20 in: ")


def test_few_values_are_judged_by_what_most_people_have() -> None:
    """A form of one value has no others to compare with."""
    (found,) = judged({"height": 65.0})
    assert "most people have" in found.says
    assert found.slip == "typed in inches"


def test_digits_are_swapped_as_they_were_typed() -> None:
    """Whole inches, though kept in centimetres: 63 in for a bust of 36 in."""
    (found,) = judged(WHOLE | {"bust": 63 * 2.54}, unit=Unit.IN)
    assert found.slip == "two digits swapped"
    assert found.proposed == {"bust": pytest.approx(36 * 2.54, abs=1e-3)}


def test_two_explanations_are_mentioned_and_none_is_proposed() -> None:
    """A waist of 37.5 is half of 75, or 73.5 with its digits swapped: the body cannot tell."""
    (found,) = judged(START | {"waist": 37.5})
    assert (found.slip, found.proposed) == (None, None)
    assert "half the girth or two digits swapped" in found.says
