"""The JSON schemas, against what is really written, read and printed."""

import json
from collections.abc import Mapping
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from jsonschema import Draft202012Validator, FormatChecker, ValidationError
from making import DAY, MIDDLE, person

from tapewise_core.errors import OptionError, ProfileError
from tapewise_core.garments.shelf import PAGES
from tapewise_core.measures.body import Origin
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.record import record_text
from tapewise_core.tasks.schemas import SCHEMAS, schema
from tapewise_tui.cli import main

EXAMPLES = sorted((Path(__file__).parents[3] / "profiles").glob("*.json"))


def validator(name: str) -> Draft202012Validator:
    """What judges by a schema, dates included."""
    return Draft202012Validator(schema(name), format_checker=FormatChecker())


@pytest.mark.parametrize("name", SCHEMAS)
def test_a_schema_is_one(name: str) -> None:
    """Each follows the dialect it names."""
    Draft202012Validator.check_schema(schema(name))


def test_another_name_is_refused() -> None:
    """The sentence says which schemas there are."""
    with pytest.raises(OptionError, match="draft, person, check"):
        schema("garment")


FEW = {"height": 167.0, "bust": 92.0, "waist": 74.0, "hip": 99.0}


def drafted_record(garment: str, measures: Mapping[str, float] = MIDDLE) -> dict[str, Any]:
    """The record of one garment as a machine reads it."""
    drafted = draft(person(measures), garment, {}, made=DAY)
    record: dict[str, Any] = json.loads(record_text(drafted, ["draft.json"]))
    return record


@pytest.mark.parametrize("garment", PAGES)
def test_the_record_of_every_garment_fits_its_schema(garment: str) -> None:
    """All measured, and most of it estimated with intervals."""
    check = validator("draft")
    check.validate(drafted_record(garment))
    guessed = drafted_record(garment, FEW)
    check.validate(guessed)
    assert any("interval" in row for row in guessed["measures"].values())


def test_the_schema_tells_a_record_from_what_is_none() -> None:
    """A key gone, a key too many, a length as words: none is a record."""
    check, record = validator("draft"), drafted_record("circle-skirt")
    first = record["pieces"][0]
    for wrong in (
        {key: value for key, value in record.items() if key != "proofs"},
        {**record, "colour": "red"},
        {**record, "unit": "in"},
        {**record, "made": "yesterday"},
        {**record, "pieces": [{**first, "grain": ["down"]}]},
    ):
        with pytest.raises(ValidationError):
            check.validate(wrong)


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_a_check_fits_its_schema(path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """For every example, alone and for a garment."""
    check = validator("check")
    for more in ([], ["--garment", "set-in-top"]):
        main(["check", str(path), "--json", *more])
        told = json.loads(capsys.readouterr().out)
        check.validate(told)
        assert ("unused" in told) == bool(more)
    with pytest.raises(ValidationError):
        check.validate({**told, "findings": None})


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_a_person_s_file_fits_its_schema(path: Path) -> None:
    """Every example as it is shipped, and as it is written again."""
    check = validator("person")
    check.validate(json.loads(path.read_text(encoding="utf-8")))
    check.validate(json.loads(Profile.from_text(path.read_text(encoding="utf-8")).text()))


def test_a_person_with_everything_fits_the_schema() -> None:
    """Readings, a day and an origin of each kind."""
    full = person(MIDDLE)
    for origin in Origin:
        full = full.with_value(
            "hip", 99.0, origin=origin, readings=(98.5, 99.0, 99.5), taken=date(2026, 1, 31)
        )
        validator("person").validate(json.loads(full.text()))


@pytest.mark.parametrize(
    "change",
    [
        {"name": ""},
        {"version": 3},
        {"unit": "ell"},
        {"colour": "red"},
        {"measures": {"tail": {"value": 12}}},
        {"measures": {"hip": {"value": 0}}},
        {"measures": {"hip": {"value": 301}}},
        {"measures": {"hip": {"value": 99, "readings": [99, 99, 99, 99, 99, 99]}}},
        {"measures": {"hip": {"value": 99, "taken": "31.1.2026"}}},
        {"measures": {"hip": {}}},
    ],
    ids=json.dumps,
)
def test_the_schema_refuses_what_the_program_refuses(change: dict[str, object]) -> None:
    """Whoever writes such a file by machine learns it from the schema as well."""
    file = {**json.loads(person(MIDDLE).text()), **change}
    with pytest.raises(ProfileError):
        Profile.from_text(json.dumps(file))
    with pytest.raises(ValidationError):
        validator("person").validate(file)


def test_the_command_prints_a_schema(capsys: pytest.CaptureFixture[str]) -> None:
    """As it is handed to a machine."""
    assert main(["schema", "draft"]) == 0
    assert json.loads(capsys.readouterr().out) == schema("draft")
