"""What to heed in clothes for a child.

Common practice and, for cords, the idea of [en14682], from memory and not from a copy: a child
can be caught and strangled by them.
"""

from __future__ import annotations

from collections.abc import Mapping

from tapewise_core.statistics.whose import Whose, whose
from tapewise_core.text.amounts import About
from tapewise_core.text.told import Told, said

CAUTIONS: tuple[Told, ...] = (
    said(
        "For a child: no cords, ties or ribbons at the neck or in a hood; they catch on "
        "playground equipment and doors."
    ),
    said(
        "For a child: at the waist and the hem no loose end of a cord longer than {}, and none "
        "that hangs below the hem.",
        About(140),
    ),
    said(
        "For a child under three: no buttons, beads or bows that a strong pull takes off; they "
        "can be swallowed."
    ),
    said(
        "For a child: no elastic tighter than a finger can lift, and a neckline that passes the "
        "head easily, for a child's head is large for its body."
    ),
    said("For sleep: a close fit, and cotton rather than a fluffy cloth; it catches fire less."),
)
"""Said wherever the person is a child."""


def cautions_for(
    known: Mapping[str, float], confirmed: frozenset[str], age: float | None
) -> tuple[Told, ...]:
    """Return what to heed if the body is a child's; nothing otherwise."""
    return CAUTIONS if whose(known, confirmed, age) is Whose.CHILD else ()
