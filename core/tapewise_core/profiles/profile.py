"""One person's measures as they are kept in a file.

The file is JSON: lengths in cm, ``unit`` is what the person reads and types.
Everything but format, version, name and each value may be left out::

    {"format": "tapewise profile", "version": 2, "name": "Ada", "id": "5c0f1d2e9ab34876",
     "unit": "in", "reference": "women", "waist_site": "navel", "age": 34, "groups": ["Tuesday"],
     "measures": {"bust": {"value": 92.25, "origin": "measured",
                           "readings": [92.0, 92.5], "taken": "2026-11-02"}}}

``adjustments`` holds what fittings changed, ``loved`` the garments that fit (see
:mod:`tapewise_core.profiles.fitted`). Whoever is written down without an ``id``, as all were in
version 1, has one that follows from the name. A file is read strictly, and every fault in it is
reported with its place.
"""

from __future__ import annotations

import json
import os
from collections.abc import Mapping
from datetime import date
from types import MappingProxyType
from typing import Annotated, Any, Literal, Self

from pydantic import AfterValidator, BaseModel, BeforeValidator, ConfigDict, Field, ValidationError
from pydantic import PlainSerializer as Serializer
from pydantic import WithJsonSchema as Schema

from tapewise_core.errors import ProfileError
from tapewise_core.measures.body import Origin, Reference, Value, WaistSite
from tapewise_core.profiles import rules
from tapewise_core.profiles.faults import faults_of
from tapewise_core.profiles.fitted import Adjustment, Loved
from tapewise_core.profiles.slug import digest
from tapewise_core.units import Unit

FORMAT = "tapewise profile"
VERSION = 2

_Centimetres = Annotated[float, AfterValidator(rules.centimetres), Schema(rules.CENTIMETRES)]


class Reading(BaseModel):
    """One measure of a person: its value [cm], and the readings [cm] it came from."""

    model_config = ConfigDict(frozen=True, extra="forbid", strict=True, defer_build=True)

    value: _Centimetres
    origin: Origin = Origin.MEASURED
    readings: Annotated[tuple[_Centimetres, ...], AfterValidator(rules.few)] = Field(
        default=(), json_schema_extra={"maxItems": rules.MOST_READINGS}
    )
    taken: Annotated[date | None, BeforeValidator(rules.day)] = None


_Measures = Annotated[
    Mapping[Annotated[str, AfterValidator(rules.known)], Reading],
    AfterValidator(MappingProxyType),
    Serializer(dict, return_type=dict[str, Reading]),
]


_Group = Annotated[str, AfterValidator(rules.line), Schema(rules.LINE)]


def _newest(version: int) -> int:
    """What was read is kept as the newest version from then on."""
    return VERSION


def id_of_name(name: str) -> str:
    """Return the id of whoever is written down without one; the same for the same name."""
    return f"name{digest(name, 16)}"


def new_id() -> str:
    """Return an id that nobody has."""
    return os.urandom(8).hex()


class Profile(BaseModel):
    """A person's measures; a change is a new profile.

    Making or changing one raises ProfileError with all faults.

    >>> ada = Profile.of("Ada").with_value("bust", 92.0)
    >>> ada.values()["bust"].cm, ada.without("bust").values()
    (92.0, mappingproxy({}))
    """

    model_config = ConfigDict(frozen=True, extra="forbid", strict=True, defer_build=True)

    format: Literal["tapewise profile"]
    version: Annotated[Literal[1, 2], BeforeValidator(rules.whole), AfterValidator(_newest)]
    name: Annotated[str, AfterValidator(rules.person), Schema(rules.PERSON)]
    id: Annotated[str, AfterValidator(rules.identity), Schema(rules.ID)] = Field(
        default_factory=lambda read: id_of_name(read.get("name", ""))
    )
    unit: Unit = Unit.CM
    reference: Reference = Reference.NOT_SAID
    waist_site: WaistSite = WaistSite.NOT_SAID
    age: Annotated[float | None, AfterValidator(rules.years)] = Field(
        default=None, json_schema_extra=rules.AGE
    )
    groups: Annotated[tuple[_Group, ...], AfterValidator(rules.each_once)] = ()
    adjustments: tuple[Adjustment, ...] = ()
    loved: tuple[Loved, ...] = ()
    measures: _Measures = Field(
        default_factory=lambda: MappingProxyType({}), json_schema_extra=rules.MEASURES
    )

    @classmethod
    def of(
        cls,
        name: str,
        *,
        unit: Unit = Unit.CM,
        reference: Reference = Reference.NOT_SAID,
        waist_site: WaistSite = WaistSite.NOT_SAID,
    ) -> Self:
        """Return a profile without measures, of somebody new."""
        return cls._checked(
            {
                "format": FORMAT,
                "version": VERSION,
                "name": name,
                "id": new_id(),
                "unit": unit,
                "reference": reference,
                "waist_site": waist_site,
            }
        )

    @classmethod
    def from_text(cls, text: str) -> Self:
        """Return the profile a file's text holds."""
        _refuse_newer(rules.plain_object(text))
        try:
            return cls.model_validate_json(text)
        except ValidationError as error:
            raise _refused(error) from None

    def text(self) -> str:
        """Return the text of the file that holds this profile: a line for each measure."""
        content = self.model_dump(mode="json", exclude_none=True)
        measures = content.pop("measures")
        head = [f"  {_spelt(key)}: {_spelt(value)},\n" for key, value in _told(content).items()]
        rows = [f"    {_spelt(key)}: {_spelt(_told(row))}" for key, row in measures.items()]
        body = "{\n" + ",\n".join(rows) + "\n  }" if rows else "{}"
        return "{\n" + "".join(head) + f'  "measures": {body}\n}}\n'

    def values(self) -> Mapping[str, Value]:
        """Return the measures [cm] with their origins."""
        return MappingProxyType(
            {key: Value(reading.value, reading.origin) for key, reading in self.measures.items()}
        )

    def read_off(self) -> dict[str, float]:
        """Return what was read off the body [cm]: every measure but those taken as estimates."""
        measures = self.measures.items()
        return {key: row.value for key, row in measures if row.origin is not Origin.ESTIMATED}

    def confirmed(self) -> frozenset[str]:
        """Return the measures that were read again and found right."""
        measures = self.measures.items()
        return frozenset(key for key, row in measures if row.origin is Origin.CONFIRMED)

    def with_value(
        self,
        key: str,
        value: float,
        *,
        origin: Origin = Origin.MEASURED,
        readings: tuple[float, ...] = (),
        taken: date | None = None,
    ) -> Self:
        """Return the profile with one measure [cm] entered or replaced."""
        entry = {"value": value, "origin": origin, "readings": readings, "taken": taken}
        return self._with(measures={**self.measures, key: entry})

    def without(self, key: str) -> Self:
        """Return the profile without one measure, or as it is if there was none."""
        kept = {name: reading for name, reading in self.measures.items() if name != key}
        return self._with(measures=kept)

    def with_name(self, name: str) -> Self:
        """Return the profile under another name."""
        return self._with(name=name)

    def with_unit(self, unit: Unit) -> Self:
        """Return the profile read and typed in another unit; its lengths stay."""
        return self._with(unit=unit)

    def with_reference(self, reference: Reference) -> Self:
        """Return the profile with estimates to be drawn from other bodies."""
        return self._with(reference=reference)

    def with_waist_site(self, site: WaistSite) -> Self:
        """Return the profile with how the waist was found."""
        return self._with(waist_site=site)

    def with_age(self, age: float | None) -> Self:
        """Return the profile with an age [years], or with none said."""
        return self._with(age=age)

    def having(self, **changes: Any) -> Self:
        """Return a copy with some fields changed, checked like a file."""
        return self._with(**changes)

    def _with(self, **changes: Any) -> Self:
        """Return a copy with some fields changed, checked like a file."""
        fields = {name: getattr(self, name) for name in type(self).model_fields}
        return self._checked({**fields, **changes})

    @classmethod
    def _checked(cls, fields: Mapping[str, object]) -> Self:
        try:
            return cls.model_validate(fields)
        except ValidationError as error:
            raise _refused(error) from None


def _spelt(value: object) -> str:
    return json.dumps(value, ensure_ascii=False)


def _told(fields: Mapping[str, object]) -> dict[str, object]:
    """Fields without what was left out."""
    return {key: value for key, value in fields.items() if value not in ([], ())}


def is_newer(content: Mapping[str, object]) -> bool:
    """Say whether a file's content is of a version that this program does not know yet."""
    version = content.get("version")
    return content.get("format") == FORMAT and type(version) is int and version > VERSION


def _refuse_newer(content: Mapping[str, object]) -> None:
    """A newer format may differ in anything, so say that alone."""
    if is_newer(content):
        raise ProfileError(
            f"This file is of version {content['version']}, written by a newer Tapewise; "
            f"this one reads up to version {VERSION}, so update the program."
        )


def _refused(error: ValidationError) -> ProfileError:
    faults = faults_of(error)
    rest = f" (and {len(faults) - 1} more)" if len(faults) > 1 else ""
    return ProfileError(f"{faults[0]}{rest}.", faults)
