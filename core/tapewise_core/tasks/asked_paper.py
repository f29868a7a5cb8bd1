"""What a person asks of paper."""

from __future__ import annotations

from tapewise_core.frozen import Frozen


class Shown(Frozen):
    """Which pieces are drawn, and how: halves opened out, with allowances; all if none named."""

    unfolded: bool = False
    allowances: bool = True
    pieces: tuple[str, ...] = ()


AS_DRAFTED = Shown()
"""Every piece as it was drafted, halves on the fold, allowances included."""


class Paper(Frozen):
    """What a person asks of paper, as typed; None leaves what is usual."""

    overlap: str | None = None
    roll_width: str | None = None
    margin: str | None = None
    page: str | None = None
    shown: Shown = AS_DRAFTED


USUAL_PAPER = Paper()
"""Paper as it is usual."""
