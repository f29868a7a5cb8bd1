"""What a body that is not an average asks of a draft: its shoulders and back, and its lengths."""

from __future__ import annotations

from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.style.style import Style
from tapewise_core.units import Length, mm

NOTHING = mm(0)
"""What a garment without an amount of its own adds."""


class LowerShoulder(StrEnum):
    """Which shoulder hangs lower."""

    NONE = "none"
    LEFT = "left"
    RIGHT = "right"


class FigureStyle(Frozen):
    """Shoulders, neck, back and arm. A garment that does without a lower or a forward shoulder,
    or without more room for the arm, is drafted for a body that has none."""

    shoulder_drop: Length
    lower_shoulder: LowerShoulder
    lower_shoulder_by: Length
    forward_shoulder: Length
    broad_neck: Length
    round_back: Length
    full_arm: Length

    @classmethod
    def of(cls, style: Style) -> FigureStyle:
        """Read it from a style; enough of one is there once its own options are settled."""
        lower, by = _lower_shoulder(style)
        return cls(
            style.length("shoulder-drop"),
            lower,
            by,
            style.length("forward-shoulder", NOTHING),
            style.length("broad-neck"),
            style.length("round-back"),
            style.length("full-arm", NOTHING),
        )

    def amount(self, key: str) -> Length:
        """Return one of the lengths by its key."""
        return _length(self, key)

    @property
    def even(self) -> bool:
        """Whether both shoulders hang alike."""
        return self.lower_shoulder is LowerShoulder.NONE

    @property
    def lowest_drop(self) -> float:
        """How far the lower shoulder point lies below the side neck [mm]."""
        more = 0.0 if self.even else self.lower_shoulder_by.mm
        return self.shoulder_drop.mm + more


LEAST_LOWER = 0.5
"""Shoulders that differ by less are even [mm] (our choice): nobody draws less."""


def _lower_shoulder(style: Style) -> tuple[LowerShoulder, Length]:
    """Which shoulder hangs lower and by how much, what fittings found added."""
    side = LowerShoulder(style.choice("lower-shoulder", LowerShoulder.NONE))
    by = style.length("lower-shoulder-by", NOTHING)
    found = style.length("left-shoulder-lower", NOTHING).mm
    if not found:
        return side, by
    signs = {LowerShoulder.LEFT: 1.0, LowerShoulder.RIGHT: -1.0}
    left = found + signs.get(side, 0.0) * by.mm
    if abs(left) < LEAST_LOWER:
        return LowerShoulder.NONE, by
    return (LowerShoulder.LEFT if left > 0 else LowerShoulder.RIGHT), mm(abs(left))


class FullnessStyle(Frozen):
    """Lengths over belly and seat; ``asked`` are the keys of those the wearer chose
    herself. A garment whose hem is not the body's adds nothing over a full seat."""

    full_belly: Length
    full_seat: Length
    front_hem_drop: Length
    asked: frozenset[str]

    @classmethod
    def of(cls, style: Style) -> FullnessStyle:
        """Read it from a style."""
        return cls(
            style.length("full-belly"),
            style.length("full-seat", NOTHING),
            style.length("front-hem-drop"),
            frozenset(key for key in FULLNESS if style.asked(key)),
        )

    def amount(self, key: str) -> Length:
        """Return one of the lengths by its key."""
        return _length(self, key)


FULLNESS = ("full-belly", "full-seat", "front-hem-drop")
"""The keys of the lengths over belly and seat."""


def _length(view: FigureStyle | FullnessStyle, key: str) -> Length:
    """A field is named as its option's key is."""
    value = getattr(view, key.replace("-", "_"))
    if not isinstance(value, Length):
        raise TypeError(f"{key} is not a length")
    return value
