"""Sewing, step by step: each operation of a draft's order, spelt for its reader, with its picture.

The order is that of the checklist's list “Sew”, one for one.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from tapewise_core.frozen import Frozen
from tapewise_core.paper.drawing import Drawing
from tapewise_core.sewing.operation import Operation, Sort
from tapewise_core.sewing.order import operations
from tapewise_core.sewing.pictures import picture
from tapewise_core.sewing.showing import Marked as Marked
from tapewise_core.sewing.showing import Shown as Shown
from tapewise_core.sewing.showing import Up as Up
from tapewise_core.sewing.showing import shown
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.text.told import Reader, joined


class SewingStep(Frozen):
    """One step at the machine: a key that never changes, a title, what to do, and its facts.

    ``facts`` are rows of a label and words, those that apply: stitch, allowance, ease, pressing,
    what to look at, another way. A ``test`` sews nothing.
    """

    key: str
    title: str
    says: str
    facts: tuple[tuple[str, str], ...]
    test: bool
    operation: Operation


def sewing_steps(drafted: Drafted, reader: Reader | None = None) -> tuple[SewingStep, ...]:
    """Return a draft's steps of sewing, first to last, spelt for its own reader or another.

    Lengths are those of the pieces as they are cut: what shrinks later is sewn before.
    """
    chain = operations(drafted.cut, drafted.stitching)
    return tuple(_step(operation, reader or drafted.reader) for operation in chain)


def step_picture(drafted: Drafted, step: SewingStep) -> Drawing | None:
    """Return a step's picture, drawn now; None where nothing is sewn that could be shown."""
    return picture(drafted.cut, step.operation)


def step_shown(drafted: Drafted, steps: Sequence[SewingStep], at: int) -> tuple[Shown, ...]:
    """Return the pieces of a step as they lie, of one that prepares a seam those of the seam; none
    where nothing is sewn that could be shown."""
    operation = steps[at].operation
    if operation.sort is Sort.PREPARE and not operation.meets:
        ahead = (step.operation for step in steps[at:])
        operation = next((one for one in ahead if one.meets), operation)
    return shown(drafted.cut, operation)


def _step(operation: Operation, reader: Reader) -> SewingStep:
    return SewingStep(
        operation.key,
        operation.title,
        reader.spell(operation.do),
        tuple(_facts(operation, reader)),
        operation.sort is Sort.TEST,
        operation,
    )


def _facts(operation: Operation, reader: Reader) -> Iterator[tuple[str, str]]:
    stitches = ", ".join(dict.fromkeys(_numbered(one.number) for one in operation.stitches))
    at = (operation.allowance,) if operation.allowance is not None else ()
    needed = joined((use.what for use in operation.uses), ", ")
    rows = (
        ("stitch", (stitches,) if stitches else ()),
        ("from the edge", at),
        ("ease", operation.ease),
        ("takes", needed),
        ("press", operation.press),
        ("look", operation.check),
        ("or", operation.other),
    )
    yield from ((label, reader.spell(told)) for label, told in rows if told)


def _numbered(number: str) -> str:
    """A stitch's number as the standard has it."""
    return f"ISO 4915 type {number}"
