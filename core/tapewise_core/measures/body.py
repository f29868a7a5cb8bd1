"""A body as a draft sees it: lengths with names, and where each came from."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from functools import cached_property
from types import MappingProxyType

from msgspec import field
from msgspec.structs import replace

from tapewise_core.errors import MissingMeasure
from tapewise_core.frozen import Frozen
from tapewise_core.units import Length, named


class Origin(StrEnum):
    """Where a value came from; an estimate never looks like a measurement."""

    MEASURED = "measured"
    ESTIMATED = "estimated"
    CONFIRMED = "confirmed"


class Reference(StrEnum):
    """Whose bodies estimates are drawn from."""

    WOMEN = "women"
    MEN = "men"
    NOT_SAID = "not said"


class WaistSite(StrEnum):
    """How the waist was found."""

    NARROWEST = "narrowest"
    MIDWAY = "midway"
    NAVEL = "navel"
    NOT_SAID = "not said"


class Value(Frozen):
    """One measure's value [cm]; an estimate has its 90 % interval [cm] and its grounds."""

    cm: float
    origin: Origin = Origin.MEASURED
    interval: tuple[float, float] | None = None
    how: str = ""

    @property
    def plus_minus(self) -> float | None:
        """Half the interval's width [cm], or None for what was measured."""
        return None if self.interval is None else (self.interval[1] - self.interval[0]) / 2


class Body(Frozen, dict=True):
    """Measures by key; ``names`` gives the trade's name for each. ``reference`` and
    ``waist_site`` say whose proportions fill a gap between measures."""

    values: Mapping[str, Value]
    names: Mapping[str, str] = field(default_factory=dict)
    reference: Reference = Reference.NOT_SAID
    waist_site: WaistSite = WaistSite.NOT_SAID

    def __getitem__(self, key: str) -> Length:
        """Return a measure as a named length; raises MissingMeasure."""
        if key not in self._lengths:
            raise MissingMeasure(key, self.name(key))
        return self._lengths[key]

    @cached_property
    def _lengths(self) -> Mapping[str, Length]:
        """Every measure as a named length: a draft asks for each of them several times."""
        return {key: named(self.name(key), one.cm * 10) for key, one in self.values.items()}

    def __contains__(self, key: object) -> bool:
        return key in self.values

    def has(self, key: str) -> bool:
        """Say whether a measure is there and was taken on the body, not estimated."""
        return key in self.values and self.values[key].origin is not Origin.ESTIMATED

    def name(self, key: str) -> str:
        """Return the trade's name of a measure."""
        return self.names.get(key, key.replace("_", " "))

    def only(self, keys: tuple[str, ...]) -> Body:
        """Return the body reduced to some measures."""
        kept = {key: value for key, value in self.values.items() if key in keys}
        return replace(self, values=MappingProxyType(kept))
