"""What a fitting taught about a person, and the garments that fit her."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from types import MappingProxyType
from typing import Annotated

from tapewise_core.profiles import rules
from tapewise_core.profiles.form import STRICT, Passed

_Line = Annotated[str, Passed(rules.line, rules.LINE)]
_Girth = Annotated[float, Passed(rules.centimetres, rules.CENTIMETRES)]
_Day = Annotated[date | None, Passed(rules.day, first=True)]


@dataclass(frozen=True, kw_only=True)
class Adjustment:
    """A change after a fitting: what, by how much [cm; percent of a band, degrees of a sleeve],
    when, on which garment, and why."""

    __pydantic_config__ = STRICT

    what: _Line
    amount: Annotated[float, Passed(rules.amount)]
    date: _Day = None
    garment: _Line | None = None
    symptom: _Line | None = None


@dataclass(frozen=True, kw_only=True)
class Loved:
    """A garment that fits: its name, its cloth's stretch [%] and what it measures flat [cm]."""

    __pydantic_config__ = STRICT

    name: _Line
    stretch: Annotated[float | None, Passed(rules.stretch)] = None
    flat: Annotated[Mapping[str, _Girth], Passed(MappingProxyType)] = field(
        default_factory=lambda: MappingProxyType({})
    )
