"""Sewing a cowl: its bent shoulders, the back's neck edge, the front's facing. Common practice."""

from __future__ import annotations

from tapewise_core.drafting.seam import EdgeRun
from tapewise_core.parts.neck_style import NeckStyle
from tapewise_core.sewing.edges import sewn_down
from tapewise_core.sewing.joining import MELTS, SHOULDERS, shoulders
from tapewise_core.sewing.operation import Laid, Lies, Meeting, Operation, Sort, Stage
from tapewise_core.sewing.stitches import BACKSTITCH
from tapewise_core.sewing.way import Way, Work
from tapewise_core.text.told import said
from tapewise_core.units import Length, mm


def bent_shoulders(work: Work) -> tuple[Operation, ...]:
    """Shoulders whose front is bent and whose back is straight, equally long."""
    do = said(
        "The front's shoulders bend where they were spread, the back's do not. Pin each front to "
        "its back at both ends, then at the bend, opened straight: the front lies uppermost as "
        "they are sewn. If the bend does not open, snip its allowance there first, by half at most."
    )
    pin = work.do(
        "cowl-shoulders", "Pin the shoulders at their bends", do, Stage.JOIN, sort=Sort.PREPARE,
        lies=Lies.FLAT,
    )  # fmt: skip
    stay, *others = shoulders(work)
    return (stay, pin, *others)


def cowl(work: Work) -> tuple[Operation, ...]:
    """The back's edge first, whose ends the facing covers in the end."""
    fronts = tuple(run for seam in work.seams for run in seam.first)
    backs = tuple(run for seam in work.seams for run in seam.second)
    return (_back(work, backs), _front(work, fronts))


def _back(work: Work, runs: tuple[EdgeRun, ...]) -> Operation:
    """The stay is the back's alone: the front has to hang."""
    stitch = work.stitching.hem
    do = said(
        "Turn the back's neck edge in by {} as far as the shoulder seams, pin it, press ({}), and "
        "sew it {}.",
        _allowance(work, runs), MELTS, sewn_down(stitch),
    )  # fmt: skip
    return work.do(
        "cowl-back", "Turn the back's neck edge in", do, Stage.NECK, sort=Sort.FINISH,
        after=("head",), meets=(_turned(work, runs),), stitches=(stitch,),
    )  # fmt: skip


def _front(work: Work, runs: tuple[EdgeRun, ...]) -> Operation:
    """Neither pressed nor stitched along its fold, which would keep it from hanging."""
    do = said(
        "Fold the front's facing to the inside along the neck edge, {} deep, and let it hang: no "
        "crease is pressed and no stitching shows. Catch its ends to the shoulder seams' "
        "allowances by hand: {}.",
        _allowance(work, runs), BACKSTITCH.words,
    )  # fmt: skip
    return work.do(
        "cowl-facing", "Fold the cowl's facing in", do, Stage.NECK, sort=Sort.FINISH,
        after=("cowl-back",), meets=(_turned(work, runs),), stitches=(BACKSTITCH,),
        check=("Put it on: the fold hangs at the centre and the facing stays inside when you "
               "bend.",),
    )  # fmt: skip


def _turned(work: Work, runs: tuple[EdgeRun, ...]) -> Meeting:
    return Meeting(work.whole(runs), (), Laid.TURNED)


def _allowance(work: Work, runs: tuple[EdgeRun, ...]) -> Length:
    run = runs[0]
    return mm(work.pattern.piece(run.piece).edge(run.edges[0]).allowance)


COWL = Way("cowl's edge folded in", cowl)
BENT_SHOULDERS = Way("bent shoulders on a stay", bent_shoulders)


def shoulders_of(style: NeckStyle) -> Way:
    """Return how the shoulders of a neckline are sewn."""
    return BENT_SHOULDERS if style.cowl else SHOULDERS
