"""What to see to before the first measure; the same on screen and on paper."""

from __future__ import annotations

from tapewise_core.text.amounts import About
from tapewise_core.text.told import Told, said

_CHECK = said("the tape against a ruler, end to {}: cloth tapes stretch with age.", About(200.0))

BEFORE: tuple[tuple[str, str | Told], ...] = (
    ("Wear", "what goes under the garment: underwear, and the bra you will wear with it."),
    ("Tie", "a narrow elastic round the waist, where it settles. It stays on to the end."),
    ("Mark", "with stickers: nape bone, shoulder points, the height where the seat stands out."),
    ("Stand", "as usual, feet together, weight on both; neither drawn in nor drawn up."),
    ("Breathe", "out easily before each reading. A girth touches the skin and presses nowhere."),
    ("Check", _CHECK),
    ("Read", "each measure twice, taking the tape off in between."),
)
"""What to do, the verb first. Common practice throughout."""

KNOW = (
    "What you leave open is estimated from tables of adults. They hold nobody under 17 and nobody "
    "pregnant: take every measure then."
)
"""What estimates cannot know, and whoever is measured should."""


def before(*, bra: bool) -> tuple[tuple[str, str | Told], ...]:
    """Return the advice for somebody who wears a bra, or who wears none.

    >>> before(bra=False)[0]
    ('Wear', 'what goes under the garment: underwear.')
    """
    return BEFORE if bra else (("Wear", "what goes under the garment: underwear."), *BEFORE[1:])
