"""Grown-on sleeves that cannot be had, and what would do instead."""

from __future__ import annotations

from collections.abc import Callable

from tapewise_core.errors import DraftError
from tapewise_core.parts.grown_arm import Grown, shortest
from tapewise_core.parts.grown_body import SideOf
from tapewise_core.parts.shape.grown_drawn import Arm
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import mm

LENGTHS = tuple(map(float, range(60, 460, 10)))
"""The lengths that are tried where one is refused [mm] (our choice)."""


def check_sleeve(made: Grown, arm_of: Callable[[float], Arm], side: SideOf, ease: float) -> None:
    """Raise DraftError where a sleeve was refused, with the shortest that works, by trying."""
    if not made.refused:
        return
    arm = made.arm
    works = shortest(arm_of, side, ease, LENGTHS)
    cannot = said(
        "A grown-on sleeve of {}, {} round the arm, would not meet this body under the arm.",
        mm(arm.length),
        mm(arm.upper),
    )
    if works is None:
        raise DraftError((*cannot, " Take set-in sleeves."))
    would = said(
        " The shortest that works is {} {}; or take set-in sleeves.",
        OptionKey("sleeve-length"),
        mm(works),
    )
    raise DraftError((*cannot, *would))
