"""Sets of options: in their order, taken up by name, wrong names refused at once."""

import pytest

from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.text.told import said


def one(key: str) -> Option:
    """Return an option of this key."""
    return Option(key=key, group=Group.STYLE, says=said("something"), default=2.0, low=1, high=3)


THREE = Options.of(one("a"), one("b"), one("c"))


def test_only_the_named_ones_are_taken_in_the_sets_own_order() -> None:
    """Options are settled in order, whoever takes them."""
    assert THREE.only("c", "a").keys == ("a", "c")


def test_a_changed_option_keeps_its_place() -> None:
    """And the set it came from keeps its own."""
    changed = THREE.changed("b", default=3.0)
    assert changed.keys == THREE.keys
    assert changed["b"].default == 3.0
    assert THREE["b"].default == 2.0


def test_a_change_that_spoils_the_default_is_refused() -> None:
    """Limits that leave the default outside."""
    with pytest.raises(ValueError, match=r"b: its default 2\.0 is outside"):
        THREE.changed("b", low=2.5)


def test_sets_are_joined_in_order() -> None:
    """The second after the first."""
    assert (THREE + Options.of(one("d"))).keys == ("a", "b", "c", "d")


def test_a_key_cannot_stand_twice() -> None:
    """Neither in one set nor in a sum."""
    with pytest.raises(ValueError, match="named twice: b"):
        THREE + Options.of(one("b"))


@pytest.mark.parametrize("wrong", ["only", "changed", "item"])
def test_an_unknown_key_is_named_with_those_there_are(wrong: str) -> None:
    """A misspelt allow-list does not pass as a shorter one."""
    ways = {
        "only": lambda: THREE.only("a", "x"),
        "changed": lambda: THREE.changed("x", default=1.0),
        "item": lambda: THREE["x"],
    }
    with pytest.raises(ValueError, match="no such options: x; there are"):
        ways[wrong]()


def test_a_field_that_options_do_not_have_is_refused() -> None:
    """A misspelt field changes nothing in silence."""
    with pytest.raises(TypeError):
        THREE.changed("a", hihg=4)


def test_words_are_kept_to_those_named() -> None:
    """One that is not there to keep is refused, and so is a default left outside."""
    colours = Options.of(
        Option(
            key="colour",
            group=Group.STYLE,
            says=said("a colour"),
            kind=ValueKind.CHOICE,
            default="red",
            choices=("red", "green", "blue"),
        )
    )
    assert colours.narrowed({"colour": ("blue", "red")})["colour"].words == ("blue", "red")
    with pytest.raises(ValueError, match="colour has no such words: pink"):
        colours.narrowed({"colour": ("red", "pink")})
    with pytest.raises(ValueError, match="its default red is outside"):
        colours.narrowed({"colour": ("green", "blue")})
