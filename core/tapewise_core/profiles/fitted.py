"""What a fitting taught about a person, and the garments that fit her."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from types import MappingProxyType
from typing import Annotated

from pydantic import AfterValidator, BaseModel, BeforeValidator, ConfigDict, Field
from pydantic import PlainSerializer as Serializer
from pydantic import WithJsonSchema as Schema

from tapewise_core.profiles import rules

_Line = Annotated[str, AfterValidator(rules.line), Schema(rules.LINE)]
_Girth = Annotated[float, AfterValidator(rules.centimetres), Schema(rules.CENTIMETRES)]
_Day = Annotated[date | None, BeforeValidator(rules.day)]


class Adjustment(BaseModel):
    """A change after a fitting: what, by how much [cm; percent of a band, degrees of a sleeve],
    when, on which garment, and why."""

    model_config = ConfigDict(frozen=True, extra="forbid", strict=True, defer_build=True)

    what: _Line
    amount: Annotated[float, AfterValidator(rules.amount)]
    date: _Day = None
    garment: _Line | None = None
    symptom: _Line | None = None


class Loved(BaseModel):
    """A garment that fits: its name, its cloth's stretch [%] and what it measures flat [cm]."""

    model_config = ConfigDict(frozen=True, extra="forbid", strict=True, defer_build=True)

    name: _Line
    stretch: Annotated[float | None, AfterValidator(rules.stretch)] = None
    flat: Annotated[
        Mapping[str, _Girth],
        AfterValidator(MappingProxyType),
        Serializer(dict, return_type=dict[str, float]),
    ] = Field(default_factory=lambda: MappingProxyType({}))
