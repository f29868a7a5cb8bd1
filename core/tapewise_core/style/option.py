"""A style option: what the wearer may choose, within limits, with its default."""

from __future__ import annotations

from collections.abc import Callable
from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.style.kind import WORDS, Value, ValueKind, value_told
from tapewise_core.style.style import Style
from tapewise_core.text.amounts import Bound
from tapewise_core.text.told import Told
from tapewise_core.units import cm


class Group(StrEnum):
    """The headings that options stand under, in the order of the page."""

    STYLE = "Style"
    LENGTHS = "Lengths"
    EASE = "Ease"
    CLOTH = "Cloth"
    NECK = "Neck"
    BANDS = "Bands"
    ALLOWANCES = "Allowances"
    FIGURE = "Figure, where it is not average"


class Option(Frozen, kw_only=True):
    """One option. Lengths and limits in cm, percentages as people say them (50 is half),
    weights of cloth in grams for a square metre.

    ``default`` is a value, or is worked out from the body and the options
    above it (a length, a number or a choice); ``default_says`` tells how.
    ``where`` is empty, or the key of another option and those of its words that give this one
    something to do; ``besides`` is a further one of the kind, ``instead`` one that is enough alone.
    ``source`` is a key of :mod:`tapewise_core.sources`. Raises ValueError for a fixed default
    outside the choices or limits, and for limits that leave nothing to choose.
    """

    key: str
    group: Group
    says: Told
    kind: ValueKind = ValueKind.LENGTH
    default: float | str | Callable[[Body, Style], Value]
    default_says: Told = ()
    where: tuple[str, ...] = ()
    besides: tuple[str, ...] = ()
    instead: tuple[str, ...] = ()
    low: float = 0.0
    high: float = 0.0
    choices: tuple[str, ...] = ()
    source: str = "practice"

    def __post_init__(self) -> None:
        if self.bounded == bool(self.words) or (self.bounded and self.low >= self.high):
            raise ValueError(f"{self.key} has neither words nor limits to choose within")
        if not callable(self.default) and not self.allows(self.default):
            raise ValueError(f"{self.key}: its default {self.default} is outside what it allows")

    @property
    def fixed(self) -> Value | None:
        """The default that is the same for everybody; None where it is worked out."""
        if callable(self.default):
            return None
        if self.kind is ValueKind.LENGTH:
            return cm(float(self.default))
        return self.default

    @property
    def bounded(self) -> bool:
        """Whether there are limits, as for all but words."""
        return self.kind not in WORDS

    @property
    def words(self) -> tuple[str, ...]:
        """The words to choose from; none for what is a length or a number."""
        return ("yes", "no") if self.kind is ValueKind.SWITCH else self.choices

    @property
    def limits(self) -> tuple[Told, Told]:
        """The lower and the upper limit of what is a length or a number."""
        if self.kind is ValueKind.LENGTH:
            return (Bound(self.low * 10, "up"),), (Bound(self.high * 10, "down"),)
        return value_told(self.kind, self.low), value_told(self.kind, self.high)

    def at_work(self, style: Style) -> bool:
        """Say whether the option has something to do in a style."""

        def met(key: str, *words: str) -> bool:
            return key not in style.chosen or style.chosen[key].value in words

        if self.instead and met(*self.instead):
            return True
        return all(met(*one) for one in (self.where, self.besides) if one)

    def allows(self, plain: float | str) -> bool:
        """Say whether a word is among the choices, or a number (a length in cm) in the limits."""
        if isinstance(plain, str) or not self.bounded:
            return plain in self.words
        return self.low - CLOSE <= plain <= self.high + CLOSE


CLOSE = 1e-6
"""A value this near to a limit lies on it."""
