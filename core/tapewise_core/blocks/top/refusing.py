"""Grown-on sleeves that cannot be had, and what would do instead."""

from __future__ import annotations

from collections.abc import Callable

from tapewise_core.errors import DraftError
from tapewise_core.parts.grown_arm import Grown, shortest
from tapewise_core.parts.grown_body import SideOf
from tapewise_core.parts.shape.grown_drawn import Arm
from tapewise_core.text.told import OptionKey, capital, said
from tapewise_core.units import mm

LENGTHS = tuple(map(float, range(60, 460, 10)))
"""The lengths that are tried where one is refused [mm] (our choice)."""


IN_A_BODICE = said("set {} to set-in, or {} to none.", OptionKey("sleeve-cut"), OptionKey("sleeve"))
ELSEWHERE = said("set {} to none, or take a top with set-in sleeves.", OptionKey("sleeve"))
"""What does without a grown-on sleeve."""


def check_sleeve(
    made: Grown, arm_of: Callable[[float], Arm], side: SideOf, ease: float, *, bodice: bool
) -> None:
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
    instead = IN_A_BODICE if bodice else ELSEWHERE
    if works is None:
        raise DraftError((*cannot, " ", *capital(instead)))
    would = said(
        " The shortest that works is {} {}; or {}", OptionKey("sleeve-length"), mm(works), instead
    )
    raise DraftError((*cannot, *would))
