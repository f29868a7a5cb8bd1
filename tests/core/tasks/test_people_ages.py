"""Setting an age beside measures."""

import pytest

from tapewise_core.errors import ProfileError, ReadingError
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.people_changes import with_setting
from tapewise_core.units import Unit


def test_an_age_is_set_and_taken_off_in_years() -> None:
    """Whatever unit lengths are read in; it is no measure."""
    aged = with_setting(Profile.of("Zoe Hart"), "age=41", Unit.IN)
    assert aged.age == 41
    assert not aged.measures
    assert with_setting(aged, "age=", Unit.IN).age is None


@pytest.mark.parametrize(("typed", "fault"), [("old", ReadingError), ("-3", ProfileError)])
def test_what_is_no_age_is_refused(typed: str, fault: type[Exception]) -> None:
    """With a sentence, and nothing changes."""
    with pytest.raises(fault):
        with_setting(Profile.of("Zoe Hart"), f"age={typed}", Unit.CM)
