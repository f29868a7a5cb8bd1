"""A line of a page that can be found by its letters."""

from __future__ import annotations

from tapewise_core.frozen import Frozen


class Line(Frozen):
    """A line's ``key`` on its page, or None for a heading, what it reads, and other words that find
    it without standing in it."""

    key: str | None
    text: str
    also: str = ""
