"""A file that is plainly well is read without pydantic, and never otherwise than pydantic does."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any, Literal

import pytest

from tapewise_core.errors import ProfileError
from tapewise_core.profiles import examples
from tapewise_core.profiles.form import read_with_care
from tapewise_core.profiles.plain import read_plainly
from tapewise_core.profiles.profile import Profile

FULL: dict[str, Any] = {
    "format": "tapewise profile",
    "version": 1,
    "name": " Ada  B ",
    "id": "5c0f1d2e9ab34876",
    "unit": "in",
    "reference": "women",
    "waist_site": "navel",
    "age": 34,
    "groups": ["Tuesday", "Tuesday"],
    "adjustments": [
        {"what": "hem", "amount": -1, "date": "2026-11-02", "garment": "top", "symptom": "long"}
    ],
    "loved": [{"name": "the blue one", "stretch": 40, "flat": {"bust": 45.0, "waist": 40}}],
    "measures": {
        "bust": {"value": 92, "origin": "confirmed", "readings": [92.0, 91], "taken": "2026-11-02"}
    },
}
"""A file that holds everything that there can be."""

ODD: list[Any] = [
    None, True, False, 0, 1, 1.0, 2, -3, 92.25, 300.5, 10**20, 10**400, 1e300, float("nan"),
    float("inf"), "", "x", "Zoë", "a\nb", "\ud800", "x" * 81, "cm", "IN", "men", "2026-13-01",
    "hips", [], ["x"], [1] * 6, {}, {"value": 92}, {"hip": {"value": 92}}, [{"name": "x"}],
]  # fmt: skip
"""What stands in the place of each entry, at times a good one."""


def changed(content: Any) -> Iterator[Any]:
    """Some content with one thing in it odd, left out or new, each place and each thing in turn."""
    yield from ODD
    if isinstance(content, list):
        for number, one in enumerate(content):
            yield from (
                [*content[:number], other, *content[number + 1 :]] for other in changed(one)
            )
    if isinstance(content, dict):
        yield from ({**content, key: 1} for key in ("mood", "hip", "\ud800"))
        for key, one in content.items():
            yield {name: other for name, other in content.items() if name != key}
            yield from ({**content, key: other} for other in changed(one))


def plainly(content: object) -> Profile | None:
    """The person in a file, if she is read without pydantic."""
    try:
        return read_plainly(Profile, content)
    except ValueError:
        return None


def test_what_is_read_plainly_is_what_pydantic_reads() -> None:
    """With anything odd anywhere: the same person to the last digit, or pydantic is asked."""
    read = [(content, plainly(content)) for content in (FULL, *changed(FULL))]
    for content, person in read:
        if person is not None:  # told to the letter, since 1 equals 1.0 and true
            assert repr(person) == repr(read_with_care(Profile, json.dumps(content)))
    assert sum(person is not None for _, person in read) > 50


def test_pydantic_is_asked_for_nothing_that_it_would_pass() -> None:
    """Whatever is well is read plainly, so that nobody waits whose file is good."""
    for content in changed(FULL):
        if plainly(content) is None:
            with pytest.raises(ProfileError):
                read_with_care(Profile, json.dumps(content))


@pytest.mark.parametrize(
    "path", sorted(examples.folder().glob("*.json")), ids=lambda path: path.stem
)
def test_the_example_people_are_read_plainly(path: Path) -> None:
    """They are there at every start."""
    assert plainly(json.loads(path.read_text("utf-8")))


@pytest.mark.parametrize("odd", [True, 1.0, "1", 3])
def test_what_only_equals_a_word_is_none(odd: object) -> None:
    """True equals 1 in this language."""
    assert read_plainly(Literal[1, 2], 1) == 1  # type: ignore[arg-type]
    with pytest.raises(ValueError, match="none of these"):
        read_plainly(Literal[1, 2], odd)  # type: ignore[arg-type]
