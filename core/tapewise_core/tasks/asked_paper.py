"""What a person asks of paper."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Paper:
    """What a person asks of paper, as typed; None leaves what is usual."""

    overlap: str | None = None
    roll_width: str | None = None
    margin: str | None = None


USUAL_PAPER = Paper()
"""Paper as it is usual."""
