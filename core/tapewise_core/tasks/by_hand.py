"""The steps of a draft by hand, each with what it says and what its picture shows."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.drafting.picturing.scene import Scene, scenes
from tapewise_core.drafting.told_steps import ToldStep, told_steps
from tapewise_core.frozen import Frozen
from tapewise_core.tasks.drafted import Drafted

CORNER = (
    "How a corner of the hem is mirrored: the cutting line goes on as far below the fold line as "
    "above it."
)
"""What the picture of a mirrored corner shows."""


class HandStep(Frozen):
    """One step: of which piece, whether it is that piece's first, its number through all; of some
    there is a second one that shows something ``nearer`` by."""

    piece: str
    first: bool
    number: int
    says: str
    scene: Scene
    nearer: bool = False


def hand_steps(drafted: Drafted) -> tuple[HandStep, ...]:
    """Return every step of a draft, numbered through as in the instructions."""
    return tuple(_steps(drafted))


def _steps(drafted: Drafted) -> Iterator[HandStep]:
    number = 0
    for draft in drafted.told:
        told = told_steps(draft, drafted.reader)
        for i, (step, scene) in enumerate(zip(told, scenes(draft), strict=True)):
            number += 1
            yield HandStep(draft.title, i == 0, number, _says(step), scene)
            if scene.shown and scene.shown.corner:
                yield HandStep(draft.title, False, number, CORNER, scene, nearer=True)


def _says(step: ToldStep) -> str:
    """A step's sentences, and its table a line each."""
    rows = (", ".join(filter(None, row)) for row in step.rows)
    head = (", ".join(step.head) + ":",) if step.rows else ()
    return "\n".join((step.text, *head, *rows))
