"""A line of a page that can be found by its letters."""

from __future__ import annotations

from tapewise_core.frozen import Frozen


class Line(Frozen):
    """A line's ``key`` on its page, or None for a heading, and what it reads."""

    key: str | None
    text: str
