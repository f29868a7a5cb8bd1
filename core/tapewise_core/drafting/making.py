"""What a seam says of its making: a name. How it is sewn is told by a way of the sewing."""

from __future__ import annotations

from tapewise_core.frozen import Frozen


class Making(Frozen):
    """How a seam is made, by name. One that is no more than this is a plain seam; what there is
    to do for others is told by a :class:`tapewise_core.sewing.way.Way`, which is one."""

    name: str


PLAIN = Making("plain seam")
"""Right sides together, and nothing else to it."""

UNNOTICED = 3.0
"""A seam whose sides differ by no more needs no easing in [mm] (common practice)."""
