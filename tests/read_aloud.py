"""What a person reads of a draft, spelt in centimetres unless asked otherwise."""

from __future__ import annotations

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.steps import Step
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit


def spelt(step: Step, unit: Unit = Unit.CM) -> str:
    """Return one step's sentences."""
    return Reader(unit).spell(step.tell())


def steps(pattern: Pattern, unit: Unit = Unit.CM) -> list[str]:
    """Return the sentences of every step."""
    return [spelt(step, unit) for draft in pattern.drafts for step in draft.steps]


def remarks(made: Drafted) -> list[str]:
    """Return what a draft remarks on, in its reader's unit."""
    return [made.reader.spell(remark) for remark in made.pattern.remarks]
