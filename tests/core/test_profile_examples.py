"""The invented people who come with the program."""

from tapewise_core.measures.catalogue import BY_KEY
from tapewise_core.profiles.examples import DEMO, example, examples, folder
from tapewise_core.units import Unit


def test_there_are_people_of_different_build():
    """At least five; women and men, inches and centimetres, every way of finding the waist."""
    people = [profile for _, profile in examples()]
    assert len(people) >= 5
    assert {person.unit for person in people} == set(Unit)
    assert {"women", "men"} <= {person.reference for person in people}
    assert {"narrowest", "midway", "navel"} <= {person.waist_site for person in people}
    heights = [person.values()["height"].cm for person in people]
    assert max(heights) - min(heights) > 30


def test_some_have_gaps_and_one_has_none():
    """Estimates show on some, and one shows a full form."""
    counts = [len(profile.measures) for _, profile in examples()]
    assert max(counts) == len(BY_KEY)
    assert min(counts) <= len(BY_KEY) - 5


def test_the_demo_lacks_two_needed_measures():
    """So that the demo shows what an estimate looks like."""
    demo = example(DEMO)
    assert {"bust", "waist", "hip", "head", "upper_arm"} <= set(demo.measures)
    assert not {"shoulder_drop", "armscye_depth"} & set(demo.measures)


def test_example_files_are_written_as_the_program_writes_them():
    """Saving an example changes nothing but the place."""
    for path, profile in examples():
        assert path.read_text("utf-8") == profile.text()


def test_readings_and_value_of_an_example_agree():
    """The value lies midway between two readings, as the program settles it."""
    for _, profile in examples():
        for key, reading in profile.measures.items():
            if reading.readings:
                mean = sum(reading.readings) / len(reading.readings)
                assert abs(mean - reading.value) < 0.01, (profile.name, key)


def test_every_file_in_the_folder_is_a_person():
    """Nothing else is shipped among them."""
    assert {path.suffix for path in folder().iterdir()} == {".json"}
