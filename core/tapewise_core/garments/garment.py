"""What a garment page offers to the rest of the house."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field

from tapewise_core.drafting.piece import Pattern
from tapewise_core.measures.body import Body
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import Told


@dataclass(frozen=True, slots=True, kw_only=True)
class Garment:
    """One garment: what it needs, what may be chosen, and how it is drafted.

    ``needs`` are the measures it cannot be drafted without, ``helps`` those
    that make it fit better; no other measure is used. ``agree`` returns a
    sentence for every pair of values that disagree; ``idle`` names measures that
    a style makes no use of, ``measured_only`` those that are of no use estimated.
    ``moves`` says how many cm
    the garment moves for each cm of a measure, where an estimate's uncertainty
    matters, with the place in words.
    """

    name: str
    title: str
    says: str
    needs: tuple[str, ...]
    helps: tuple[str, ...]
    options: Options
    agree: Callable[[Body, Style], tuple[Told, ...]]
    draft: Callable[[Body, Style], Pattern]
    measured_only: tuple[str, ...] = ()
    idle: Callable[[Style], tuple[str, ...]] = lambda style: ()
    moves: Mapping[str, tuple[float, str]] = field(default_factory=dict)
