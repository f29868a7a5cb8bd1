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
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import date
from types import MappingProxyType
from typing import Annotated, Any, Literal, Self

from tapewise_core.measures.body import Origin, Reference, Value, WaistSite
from tapewise_core.profiles import form, rules
from tapewise_core.profiles.fitted import Adjustment, Loved
from tapewise_core.profiles.form import STRICT, Passed
from tapewise_core.profiles.identity import id_of_name, new_id
from tapewise_core.profiles.plain import as_plain, read_plainly
from tapewise_core.profiles.version import FORMAT, VERSION, newest, refuse_newer
from tapewise_core.units import Unit

_Centimetres = Annotated[float, Passed(rules.centimetres, rules.CENTIMETRES)]


@dataclass(frozen=True, kw_only=True)
class Reading:
    """One measure of a person: its value [cm], and the readings [cm] it came from."""

    __pydantic_config__ = STRICT

    value: _Centimetres
    origin: Origin = Origin.MEASURED
    readings: Annotated[tuple[_Centimetres, ...], Passed(rules.few, rules.READINGS)] = ()
    taken: Annotated[date | None, Passed(rules.day, first=True)] = None


_Measures = Annotated[
    Mapping[Annotated[str, Passed(rules.known)], Reading],
    Passed(MappingProxyType, rules.MEASURES),
]

_Group = Annotated[str, Passed(rules.line, rules.LINE)]


@dataclass(frozen=True, kw_only=True)
class Profile:
    """A person's measures; a change is a new profile.

    It comes from :meth:`of`, from a file's text or from another; each raises ProfileError with all
    faults, also of the readings, adjustments and garments it is given.

    >>> ada = Profile.of("Ada").with_value("bust", 92.0)
    >>> ada.values()["bust"].cm, ada.without("bust").values()
    (92.0, mappingproxy({}))
    """

    __pydantic_config__ = STRICT

    format: Literal["tapewise profile"]
    version: Annotated[Literal[1, 2], Passed(rules.whole, first=True), Passed(newest)]
    name: Annotated[str, Passed(rules.person, rules.PERSON)]
    id: Annotated[str, Passed(rules.identity, rules.ID)] = field(default_factory=str)
    unit: Unit = Unit.CM
    reference: Reference = Reference.NOT_SAID
    waist_site: WaistSite = WaistSite.NOT_SAID
    age: Annotated[float | None, Passed(rules.years, rules.AGE)] = None
    groups: Annotated[tuple[_Group, ...], Passed(rules.each_once)] = ()
    adjustments: tuple[Adjustment, ...] = ()
    loved: tuple[Loved, ...] = ()
    measures: _Measures = field(default_factory=lambda: MappingProxyType({}))

    def __post_init__(self) -> None:
        """Whoever is written down without an id has one that follows from the name."""
        if not self.id:
            object.__setattr__(self, "id", id_of_name(self.name))

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
        made = cls(
            format=FORMAT,
            version=VERSION,
            name=name,
            id=new_id(),
            unit=unit,
            reference=reference,
            waist_site=waist_site,
        )
        return form.checked(made)

    @classmethod
    def from_text(cls, text: str) -> Self:
        """Return the profile a file's text holds."""
        content = rules.plain_object(text)
        refuse_newer(content)
        try:
            return read_plainly(cls, content)
        except ValueError:
            return form.read_with_care(cls, text)

    def text(self) -> str:
        """Return the text of the file that holds this profile: a line for each measure."""
        content = as_plain(self)
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
        entry = Reading(value=value, origin=origin, readings=readings, taken=taken)
        return self.having(measures={**self.measures, key: entry})

    def without(self, key: str) -> Self:
        """Return the profile without one measure, or as it is if there was none."""
        kept = {name: reading for name, reading in self.measures.items() if name != key}
        return self.having(measures=kept)

    def with_name(self, name: str) -> Self:
        """Return the profile under another name."""
        return self.having(name=name)

    def with_unit(self, unit: Unit) -> Self:
        """Return the profile read and typed in another unit; its lengths stay."""
        return self.having(unit=unit)

    def with_reference(self, reference: Reference) -> Self:
        """Return the profile with estimates to be drawn from other bodies."""
        return self.having(reference=reference)

    def with_waist_site(self, site: WaistSite) -> Self:
        """Return the profile with how the waist was found."""
        return self.having(waist_site=site)

    def with_age(self, age: float | None) -> Self:
        """Return the profile with an age [years], or with none said."""
        return self.having(age=age)

    def having(self, **changes: Any) -> Self:
        """Return a copy with some fields changed, checked like a file."""
        return form.checked(replace(self, **changes))


def _spelt(value: object) -> str:
    return json.dumps(value, ensure_ascii=False)


def _told(fields: Mapping[str, object]) -> dict[str, object]:
    """Fields without what was left out."""
    return {key: value for key, value in fields.items() if value not in ([], ())}
