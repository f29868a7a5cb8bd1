"""What there is to do for a draft, thing by thing, each with the key its tick is kept under."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import accumulate

from tapewise_core.frozen import Frozen
from tapewise_core.paper.document import Bullets, Document, Heading, Paragraph, Ticks
from tapewise_core.sewing.before_cutting import of_the_cloth
from tapewise_core.sewing.operation import Operation, Sort
from tapewise_core.sewing.order import operations
from tapewise_core.tasks.basis import Basis, after
from tapewise_core.tasks.documents import checklist_of
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

NEEDS, CUT, MARK, SEW, FINISH = "What you need", "Cut", "Mark", "Sew", "Press and finish"
"""Headings of the checklist whose things rest on something of their own."""

_List = tuple[str, tuple[str, ...], bool, str]
"""A heading, what stands under it, whether it is to be ticked, and what is said before."""


class Chore(Frozen):
    """One thing to do, and the ``key`` of its tick; nothing to tick where that is empty."""

    says: str
    key: str = ""


class Chores(Frozen):
    """Things to do, or only to be minded, under one heading; ``mind`` is said before them."""

    heading: str
    items: tuple[Chore, ...]
    mind: str = ""


def chores(drafted: Drafted, cloth: str = "") -> tuple[Chores, ...]:
    """Return a draft's things to do and to mind, by heading; ``cloth`` is what it is called.

    A key is the thing told in centimetres, whoever reads, or a step's title, behind the signs of
    what it rests on.
    """
    shown, told = (
        tuple(_listed(checklist_of(drafted.told_in(unit)))) for unit in (drafted.unit, Unit.CM)
    )
    return tuple(
        Chores(heading, tuple(map(Chore, items, keys) if keys else map(Chore, items)), mind)
        for (heading, items, _, mind), keys in zip(shown, _keys(drafted, cloth, told), strict=True)
    )


def _listed(checklist: Document) -> Iterator[_List]:
    heading = mind = ""
    for block in checklist.blocks:
        if isinstance(block, Heading):
            heading, mind = block.text, ""
        elif isinstance(block, Paragraph):
            mind = block.text
        elif isinstance(block, Ticks | Bullets):
            yield heading, block.items, isinstance(block, Ticks), mind


def _keys(drafted: Drafted, cloth: str, lists: tuple[_List, ...]) -> Iterator[tuple[str, ...]]:
    """The keys of each list, none where there is nothing to tick."""
    basis = Basis.of(drafted.garment.name, drafted.cloth, drafted.cut, cloth)
    chain = operations(drafted.cut, drafted.stitching)
    sewn = tuple(accumulate(_sewn(chain, basis), after, initial=basis.cloth))[1:]
    for heading, told, to_tick, _ in lists:
        if heading == SEW:
            told, rests = tuple(one.title for one in chain), sewn
        elif heading == FINISH:
            rests = (after(sewn[-1], heading),) * len(told)
        else:
            rests = _rests(drafted, basis, heading, told)
        yield tuple(map(" ".join, zip(rests, told, strict=True))) if to_tick else ()


def _sewn(chain: Sequence[Operation], basis: Basis) -> Iterator[list[str]]:
    """What each step rests on besides those before it: the pieces whose edges it sews, or those
    of the seam that it prepares."""
    for at, one in enumerate(chain):
        ahead = chain[at:] if one.sort is Sort.PREPARE else (one,)
        meets = next((later.meets for later in ahead if later.meets), ())
        runs = (run for meeting in meets for run in (*meeting.first, *meeting.second))
        yield [one.key, *sorted({basis.marked[run.piece] for run in runs})]


def _rests(drafted: Drafted, basis: Basis, heading: str, told: tuple[str, ...]) -> tuple[str, ...]:
    """The signs of what each thing rests on that does not follow another."""
    pieces = drafted.pattern.pieces
    if heading == CUT:
        return tuple(basis.pieces[piece.name] for piece in pieces)
    if heading == MARK:
        of_one = tuple(basis.marked[piece.name] for piece in pieces if piece.notches)
        return of_one + (basis.whole,) * (len(told) - len(of_one))
    if heading == NEEDS:
        return (basis.cloth,) * len(told)
    own = set(map(Reader(Unit.CM).spell, of_the_cloth(drafted.cloth, Unit.CM)))
    return tuple(basis.cloth if says in own else basis.whole for says in told)
