"""The words of a draft's steps, and tables of their points, spelt for a reader."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.guide_steps import Beside
from tapewise_core.drafting.steps import Step
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.point import Vector
from tapewise_core.text.told import Reader

Row = tuple[str, ...]

HEAD: Row = ("point", "across", "down")
"""What a table of all points tells of each."""


class ToldStep(Frozen):
    """A step's sentences, and the rows of its table under their head, none without one."""

    text: str
    head: Row = ()
    rows: tuple[Row, ...] = ()


def told_steps(draft: Draft, reader: Reader) -> Iterator[ToldStep]:
    """Yield what every step of a draft says; the draft is one :func:`by_hand` has finished."""
    yield from (_told(step, reader) for step in draft.steps)


def _told(step: Step, reader: Reader) -> ToldStep:
    if isinstance(step, Beside) and (table := step.table()):
        head, *rows = (tuple(map(reader.spell, row)) for row in table)
        return ToldStep(reader.spell(step.opening()).strip(), head, tuple(rows))
    return ToldStep(reader.spell(step.tell()))


def all_points(draft: Draft, reader: Reader) -> tuple[Row, tuple[Row, ...]]:
    """Return the head and the rows of a table of all points, two beside each other in a row.

    Each is told from the first point, which lies at the draft's beginning.
    """
    points = draft.paper.points
    first = next(iter(points.values()))
    rows = [_place(name, at - first, reader) for name, at in points.items()]
    half = (len(rows) + 1) // 2
    rows += [("", "", "")] * (2 * half - len(rows))
    pairs = zip(rows[:half], rows[half:], strict=True)
    return (*HEAD, *HEAD), tuple((*one, *other) for one, other in pairs)


def _place(name: str, way: Vector, reader: Reader) -> Row:
    return name, reader.unit.spell(way.x), reader.unit.spell(way.y)
