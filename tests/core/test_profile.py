"""One person's file: what it holds, what it refuses, and how it says so."""

import json
from datetime import date

import pytest

from tapewise_core.errors import ProfileError
from tapewise_core.measures.body import Origin, Reference, Value, WaistSite
from tapewise_core.profiles.profile import Profile
from tapewise_core.units import Unit

LEAST = {"format": "tapewise profile", "version": 1, "name": "Ada"}

FULL = """{
  "format": "tapewise profile",
  "version": 2,
  "name": "Ada",
  "id": "5c0f1d2e9ab34876",
  "unit": "in",
  "reference": "women",
  "waist_site": "navel",
  "measures": {
    "bust": {"value": 92.25, "origin": "measured", "readings": [92.0, 92.5], "taken": "2026-11-02"},
    "shoulder_drop": {"value": 6.3, "origin": "estimated"}
  }
}
"""


def faults(**changes: object) -> tuple[str, ...]:
    """What is said of a least file with some entries changed."""
    with pytest.raises(ProfileError) as refused:
        Profile.from_text(json.dumps({**LEAST, **changes}))
    return refused.value.faults


def fault(**changes: object) -> str:
    """The one fault of such a file."""
    (only,) = faults(**changes)
    return only


def hip(**entry: object) -> dict[str, object]:
    """A table of measures with one hip."""
    return {"hip": {"value": 98.0, **entry}}


def test_a_full_file_is_read_and_written_back_to_the_letter():
    """What is read is what was written."""
    ada = Profile.from_text(FULL)
    assert (ada.name, ada.unit, ada.reference) == ("Ada", Unit.IN, Reference.WOMEN)
    assert ada.waist_site is WaistSite.NAVEL
    assert ada.measures["bust"].readings == (92.0, 92.5)
    assert ada.measures["bust"].taken == date(2026, 11, 2)
    assert ada.text() == FULL


def test_an_estimate_that_was_kept_stays_an_estimate():
    """The origin in the file reaches the values a draft sees."""
    values = Profile.from_text(FULL).values()
    assert values["bust"] == Value(92.25, Origin.MEASURED)
    assert values["shoulder_drop"].origin is Origin.ESTIMATED


def test_all_but_format_version_and_name_may_be_left_out():
    """A new person is three entries; a value without an origin was measured."""
    ada = Profile.from_text(json.dumps({**LEAST, "measures": {"hip": {"value": 98}}}))
    assert (ada.unit, ada.reference, ada.waist_site) == (Unit.CM, "not said", "not said")
    assert ada.values() == {"hip": Value(98.0, Origin.MEASURED)}


@pytest.mark.parametrize("entry", ["format", "version", "name"])
def test_what_a_file_must_have(entry):
    """A missing entry is named."""
    content = {key: value for key, value in LEAST.items() if key != entry}
    with pytest.raises(ProfileError) as refused:
        Profile.from_text(json.dumps(content))
    assert refused.value.faults == (f"{entry}: is missing",)


@pytest.mark.parametrize("value", [-3, 0, 300.5, 1e300])
def test_a_value_no_body_has_is_named_with_its_place(value):
    """The place, what would be right, and what is there."""
    says = fault(measures={"hip": {"value": value}})
    assert says.startswith("measures.hip.value: must be more than 0 and at most 300 cm, is ")
    assert says.endswith(json.dumps(value))


@pytest.mark.parametrize("value", ["NaN", "Infinity", "-Infinity", "1e999"])
def test_numbers_that_are_none_are_named_with_their_place(value):
    """JSON readers let NaN and infinity pass; a person's file does not."""
    with pytest.raises(ProfileError, match=r"measures\.hip\.value: must be more than 0"):
        Profile.from_text(
            json.dumps(LEAST)[:-1] + f', "measures": {{"hip": {{"value": {value}}}}}}}'
        )


@pytest.mark.parametrize("value", [True, "98", None, [98], {}])
def test_a_value_is_a_number_and_nothing_like_one(value):
    """Neither true nor a number in quotes is a length."""
    assert fault(measures={"hip": {"value": value}}).startswith(
        "measures.hip.value: must be a number"
    )


def test_every_fault_is_reported_not_only_the_first():
    """One reading of the list mends the whole file."""
    found = faults(
        unit="mm",
        mood="good",
        measures={
            "hip": {"value": -3},
            "hips": {"value": 98},
            "bust": {"value": 92, "readings": [92, 0], "taken": "2026-13-01", "by": "me"},
            "neck": {},
            "wrist": 15,
        },
    )
    assert set(found) == {
        'unit: must be "cm" or "in", is "mm"',
        "mood: is not part of the format; take it out",
        "measures.hip.value: must be more than 0 and at most 300 cm, is -3",
        "measures.hips: is not a measure; did you mean hip or high_hip",
        "measures.bust.readings[2]: must be more than 0 and at most 300 cm, is 0",
        'measures.bust.taken: must be a date such as 2026-11-02, is "2026-13-01"',
        "measures.bust.by: is not part of the format; take it out",
        "measures.neck.value: is missing",
        'measures.wrist: must be an object such as {"value": 92}',
    }


def test_a_newer_file_is_told_apart_from_a_broken_one():
    """Whatever else is new in it, the one thing to do is to update."""
    with pytest.raises(ProfileError, match=r"version 3, .* newer Tapewise") as refused:
        Profile.from_text(json.dumps({**LEAST, "version": 3, "colour": "red"}))
    assert len(refused.value.faults) == 1


def test_a_file_of_version_1_is_read_as_the_newest():
    """What it says stays; the id follows from the name, so that it is the same each time."""
    ada = Profile.from_text(json.dumps({**LEAST, "measures": {"hip": {"value": 98}}}))
    assert (ada.version, ada.name, ada.values()["hip"].cm) == (2, "Ada", 98.0)
    assert ada.id == Profile.from_text(json.dumps(LEAST)).id
    assert ada.id != Profile.from_text(json.dumps({**LEAST, "name": "Bea"})).id
    assert Profile.from_text(ada.text()) == ada


NEW = {
    "id": "5c0f1d2e9ab34876",
    "age": 34.0,
    "groups": ["Tuesday", "beginners"],
    "adjustments": [
        {"what": "hem", "amount": -1.5, "date": "2026-11-02", "garment": "jersey-top",
         "symptom": "too long"},
        {"what": "bust ease", "amount": 2.0},
    ],
    "loved": [{"name": "the blue one", "stretch": 40.0, "flat": {"bust": 45.0}}],
}  # fmt: skip
"""What version 2 adds."""


def test_what_version_2_adds_comes_back():
    """Id, age, groups, what fittings changed and garments that fit, to the letter."""
    ada = Profile.from_text(json.dumps({**LEAST, "version": 2, **NEW}))
    again = json.loads(ada.text())
    assert {key: again[key] for key in NEW} == NEW
    assert ada.adjustments[0].symptom == "too long"
    assert Profile.from_text(ada.text()) == ada


@pytest.mark.parametrize(
    ("entry", "value"),
    [("id", "../../etc"), ("id", ""), ("id", 7), ("age", 0), ("age", -3), ("age", 150),
     ("age", float("nan")), ("groups", "Tuesday"), ("groups", ["a\x1b[2J"]), ("groups", [""]),
     ("adjustments", [{"what": "hem"}]), ("adjustments", [{"what": "hem", "amount": 1e9}]),
     ("loved", [{"name": "x", "flat": {"bust": -1}}]), ("loved", [{"name": "x", "stretch": 1e9}])],
)  # fmt: skip
def test_what_version_2_adds_is_checked_too(entry, value):
    """One fault, with its place."""
    assert fault(**{entry: value}).startswith(entry)


@pytest.mark.parametrize("version", [0, -1, True, 1.0, "1", None])
def test_a_version_is_a_whole_number_that_was_given_out(version):
    """True equals 1 in this language and is no version."""
    assert fault(version=version).startswith("version: must be ")


@pytest.mark.parametrize("name", ["", "  ", "\u200b", "a\nb", "a\x00b", "a\u202eb", "x" * 81, 5])
def test_a_name_is_one_line_that_can_be_read(name):
    """Empty, endless, or hiding something: no name."""
    assert fault(name=name).startswith("name: must ")


@pytest.mark.parametrize("name", ["Zoë", "张伟", "Ольга", "O'Neill–Smith", "می\u200cنا", "x" * 80])
def test_a_name_may_be_in_any_script(name):
    """People are called what they are called."""
    assert Profile.from_text(json.dumps({**LEAST, "name": name})).name == name


def test_blanks_in_a_name_are_tidied():
    """A blank typed too much makes no second person."""
    assert Profile.of("  Ada   Byron ").name == "Ada Byron"


@pytest.mark.parametrize("taken", ["2026-02-30", "20261102", "1700000000", 20261102, "0001-01-01"])
def test_a_date_is_a_real_day(taken):
    """Neither a day that was not nor a number of seconds."""
    assert fault(measures=hip(taken=taken)).startswith("measures.hip.taken: must be a date")


def test_at_most_five_readings_are_kept():
    """Three settle a measure; fifty are a mistake."""
    assert "at most 5" in fault(measures=hip(readings=[98.0] * 6))
    assert fault(measures=hip(readings=98)).startswith("measures.hip.readings: must be a list")


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("", "not a JSON file: line 1, column 1"),
        ('{"format": \n oops}', "not a JSON file: line 2"),
        ("[]", "must hold one JSON object"),
        ("[" * 100_000, "nested far too deeply"),
        ('{"name": "A", "name": "B"}', "“name” stands twice"),
        ('{"measures": {"hip": {"value": 1}, "hip": {"value": 2}}}', "“hip” stands twice"),
        ('{"version": ' + "9" * 5000 + "}", "far too long"),
    ],
    ids=["empty", "broken", "list", "deep", "twice", "twice inside", "long number"],
)
def test_what_is_no_such_file_is_refused_in_one_sentence(text, says):
    """No traceback, and nothing lost in silence."""
    with pytest.raises(ProfileError, match=says):
        Profile.from_text(text)


def test_half_a_character_is_refused():
    """A lone surrogate cannot be written to a file again."""
    with pytest.raises(ProfileError, match="cannot be read as JSON"):
        Profile.from_text('{"format": "tapewise profile", "version": 1, "name": "\\ud800"}')


def test_a_change_is_a_new_profile():
    """The old one stays as it was."""
    ada = Profile.of("Ada")
    more = ada.with_value("hip", 98.0, readings=(97.5, 98.5), taken=date(2026, 11, 2))
    assert not ada.measures
    assert more.measures["hip"].readings == (97.5, 98.5)
    assert more.without("hip") == ada
    assert more.without("bust") == more


def test_nothing_in_a_profile_can_be_written_over():
    """Neither a field nor the table of measures."""
    ada = Profile.of("Ada").with_value("hip", 98.0)
    with pytest.raises(AttributeError, match="cannot assign"):
        ada.name = "Bo"  # type: ignore[misc]
    with pytest.raises(TypeError):
        ada.measures["hip"] = ada.measures["hip"]  # type: ignore[index]


def test_each_setting_can_be_changed():
    """Name, unit, reference and waist site, one at a time."""
    ada = (
        Profile.of("Ada")
        .with_name("Bo")
        .with_unit(Unit.IN)
        .with_reference(Reference.MEN)
        .with_waist_site(WaistSite.MIDWAY)
    )
    bo = Profile.of("Bo", unit=Unit.IN, reference=Reference.MEN, waist_site=WaistSite.MIDWAY)
    assert ada == bo.having(id=ada.id)


@pytest.mark.parametrize(("key", "value"), [("hips", 98.0), ("hip", -1.0), ("hip", float("nan"))])
def test_a_change_is_checked_like_a_file(key, value):
    """No profile can be made that could not be read again."""
    with pytest.raises(ProfileError, match="measures"):
        Profile.of("Ada").with_value(key, value)
