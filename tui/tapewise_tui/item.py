"""A row of a list to tick."""

from __future__ import annotations

from tapewise_core.frozen import Frozen


class Item(Frozen):
    """One row; a ``key`` of None makes a heading, or with ``ticked`` None a line only to read.

    ``lead`` stands in a column of its own before the text."""

    key: str | None
    text: str
    ticked: bool | None = False
    lead: str = ""
