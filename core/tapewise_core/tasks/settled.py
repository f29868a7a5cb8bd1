"""What only the draft itself can settle: options worked out while drawing, and their reasons."""

from __future__ import annotations

from tapewise_core.drafting.facts import Facts
from tapewise_core.style.style import Style
from tapewise_core.text.told import Told


def as_drawn(style: Style, facts: Facts) -> Style:
    """Return a style with the ratio of its neckband as it was drawn."""
    ratio = facts.neck.ratio if facts.neck else None
    return style if ratio is None else style.drawn({"band-ratio": ratio})


def held_back(facts: Facts) -> tuple[Told, ...]:
    """Return why a neckband is no shorter, as a remark; nothing where it lies as it should."""
    return (facts.neck.held_back,) if facts.neck and facts.neck.held_back else ()
