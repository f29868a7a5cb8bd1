"""Grown-on sleeves that cannot be had, and what would do instead."""

from __future__ import annotations

from tapewise_core.errors import DraftError
from tapewise_core.parts.grown_arm import Grown, shortest
from tapewise_core.parts.grown_body import SideOf
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import mm

LONGEST = 450.0
"""Grown-on sleeves are tried up to this length [mm] (our choice): an elbow's and more."""


def check_sleeve(made: Grown, side: SideOf, ease: float) -> None:
    """Raise DraftError where a sleeve was refused, with the shortest that works, by trying."""
    if not made.refused:
        return
    arm = made.arm
    works = shortest(arm, side, ease, LONGEST)
    if works is None:
        raise DraftError(
            said(
                "No grown-on sleeve of {} meets this body under the arm with {} round the arm; take "
                "less {}, or the top with set-in sleeves.",
                mm(arm.length),
                mm(arm.upper),
                OptionKey("sleeve-ease"),
            )
        )
    raise DraftError(
        said(
            "A grown-on sleeve of {} would bite under the arm or end inside the body. The shortest "
            "that works here: {} {}; or take the top with set-in sleeves.",
            mm(arm.length),
            OptionKey("sleeve-length"),
            mm(works),
        )
    )
