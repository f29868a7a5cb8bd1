"""The JSON schemas of what machines read and write, made from the code that does so."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from tapewise_core.errors import OptionError
from tapewise_core.tasks.shapes import JsonType

DIALECT = "https://json-schema.org/draft/2020-12/schema"


def schema(name: str) -> dict[str, object]:
    """Return the schema of ``draft.json``, of a person's file or of a check.

    Raises OptionError for any other name.
    """
    if name not in SCHEMAS:
        raise OptionError(f"There is no schema “{name}”; there is {', '.join(SCHEMAS)}.")
    return {"$schema": DIALECT, "title": f"tapewise {name}", **SCHEMAS[name]()}


def _draft() -> JsonType:
    from tapewise_core.tasks.record import RECORD

    return RECORD.kind


def _check() -> JsonType:
    from tapewise_core.tasks.check_record import CHECK

    return CHECK.kind


def _person() -> JsonType:
    from tapewise_core.profiles import form
    from tapewise_core.profiles.profile import Profile

    made = form.described(Profile)
    del made["title"]
    briefed = _brief(made)
    assert isinstance(briefed, dict)
    return briefed


def _brief(part: object) -> object:
    """A piece of schema with each docstring cut to its first sentence's paragraph."""
    if isinstance(part, list):
        return [_brief(one) for one in part]
    if not isinstance(part, Mapping):
        return part
    return {key: _first(one) if key == "description" else _brief(one) for key, one in part.items()}


def _first(says: object) -> str:
    return " ".join(str(says).partition("\n\n")[0].split())


SCHEMAS: Mapping[str, Callable[[], JsonType]] = {
    "draft": _draft,
    "person": _person,
    "check": _check,
}
