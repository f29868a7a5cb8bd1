"""The form of a person's file, as pydantic checks it, tells its faults and describes it.

Classes say their form by types and by what has ``Passed``; pydantic is imported when it is asked,
since reading it takes longer than all else that a small command does.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cache
from typing import TYPE_CHECKING, Any, TypeVar, cast

from tapewise_core.errors import ProfileError
from tapewise_core.frozen import Frozen

if TYPE_CHECKING:
    from pydantic import GetCoreSchemaHandler, GetJsonSchemaHandler, TypeAdapter, ValidationError
    from pydantic_core import CoreSchema

Kind = TypeVar("Kind")

STRICT = {"extra": "forbid", "strict": True, "revalidate_instances": "always"}
"""pydantic's configuration of every class here: nothing unknown, nothing taken for something else,
and what was made without a check is checked."""


class Passed(Frozen, eq=False):
    """Stands in a type for a rule that its values have passed, and how JSON schema tells it.

    A rule returns what it passes and raises ValueError; it looks at what was read as its type, or
    ``first`` at what stands in the file. The two methods are what pydantic asks for.
    """

    rule: Callable[[Any], Any]
    told: Mapping[str, object] | None = None
    first: bool = False

    def __get_pydantic_core_schema__(self, kind: Any, handler: GetCoreSchemaHandler) -> CoreSchema:
        from pydantic_core import core_schema

        if self.first:
            return core_schema.no_info_before_validator_function(self.rule, handler(kind))
        return core_schema.no_info_after_validator_function(self.rule, handler(kind))

    def __get_pydantic_json_schema__(
        self, schema: CoreSchema, handler: GetJsonSchemaHandler
    ) -> dict[str, Any]:
        return {**handler(schema), **(self.told or {})}


def read_with_care(kind: type[Kind], text: str) -> Kind:
    """Return the value that JSON holds, or raise ProfileError with all faults of it."""
    from pydantic import ValidationError

    try:
        read: Kind = _form(cast(Any, kind)).validate_json(text)
        return read
    except ValidationError as error:
        raise _refused(error) from None


def checked(made: Kind) -> Kind:
    """Return a value, its texts tidied, or raise ProfileError with all that is wrong with it."""
    from pydantic import ValidationError

    try:
        passed: Kind = _form(cast(Any, type(made))).validate_python(made)
        return passed
    except ValidationError as error:
        raise _refused(error) from None


def described(kind: type[object]) -> dict[str, Any]:
    """Return the JSON schema of a class."""
    return _form(cast(Any, kind)).json_schema()


@cache
def _form(kind: Any) -> TypeAdapter[Any]:
    from pydantic import TypeAdapter

    return TypeAdapter(kind)


def _refused(error: ValidationError) -> ProfileError:
    from tapewise_core.profiles.faults import faults_of

    faults = faults_of(error)
    rest = f" (and {len(faults) - 1} more)" if len(faults) > 1 else ""
    return ProfileError(f"{faults[0]}{rest}.", faults)
