"""A way of making a seam: what a garment or a part hands the sewing order with its seams.

A part writes a function from :class:`Work` to operations, wraps it in a :class:`Way`, and gives
that to its seams as their making. Nothing else has to know of it.
"""

from __future__ import annotations

from collections.abc import Callable

from msgspec import field
from msgspec.structs import replace

from tapewise_core.drafting.making import Making
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.frozen import Frozen
from tapewise_core.sewing.machines import Stitching
from tapewise_core.sewing.operation import Half, Laid, Lies, Meeting, Operation, Sort, Stage, Use
from tapewise_core.sewing.stitches import Stitch
from tapewise_core.text.told import Told
from tapewise_core.units import Length, mm


class Elastic(Frozen):
    """An elastic to be drawn in: what to cut, its lap with it, and how wide it is [mm]."""

    length: float
    width: float


class Work(Frozen):
    """What there is to sew in one way: its seams, the pattern, and the stitches there are."""

    seams: tuple[Seam, ...]
    pattern: Pattern
    stitching: Stitching
    elastic: Elastic | None = None

    @property
    def at(self) -> Length:
        """The allowance the seams are sewn with."""
        return sewn_at(self.pattern, self.seams[0])

    def joins(self, *laid: Laid) -> tuple[Meeting, ...]:
        """Return how the seams' edges meet: first onto second, right sides together."""
        way = laid[0] if laid else Laid.TOGETHER
        return tuple(Meeting(seam.first, seam.second, way) for seam in self.seams)

    def matched(self, *more: str) -> str:
        """Say what is matched along the seams: notches where they have any, and ``more``."""
        runs = [run for seam in self.seams for run in (*seam.first, *seam.second)]
        notched = any(
            notch.edge in run.edges
            for run in runs
            for notch in self.pattern.piece(run.piece).notches
        )
        named = (*more, *(("notches",) if notched else ()))
        return f", {' and '.join(named)} matched" if named else ""

    def halves(self, half: Half) -> tuple[Meeting, ...]:
        """Return how the seams' edges meet on one half of the body: the first, or the last."""
        if len(self.seams) == 1:
            return tuple(replace(meeting, half=half) for meeting in self.joins())
        return self.joins()[1:] if half is Half.FIRST else self.joins()[:1]

    def turned(self) -> tuple[Meeting, ...]:
        """Return the seams' edges, all of them turned to the wrong side."""
        runs = tuple(run for seam in self.seams for run in (*seam.first, *seam.second))
        return (Meeting(self.whole(runs), (), Laid.TURNED),)

    def whole(self, runs: tuple[EdgeRun, ...]) -> tuple[EdgeRun, ...]:
        """Return runs with the other half's edges of the same name, where a piece is whole."""
        found = {run.piece + run.edges[0].removesuffix("_2"): run for run in reversed(runs)}
        return tuple(_whole(self.pattern, run) for run in reversed(found.values()))

    def do(
        self,
        key: str,
        title: str,
        do: Told,
        stage: Stage,
        *,
        sort: Sort = Sort.SEAM,
        meets: tuple[Meeting, ...] = (),
        lies: Lies = Lies.ROUND,
        closes: bool = False,
        after: tuple[str, ...] = (),
        before: tuple[str, ...] = (),
        stitches: tuple[Stitch, ...] = (),
        ease: Told = (),
        press: Told = (),
        check: Told = (),
        uses: tuple[Use, ...] = (),
        other: Told = (),
    ) -> Operation:
        """Return an operation with the seams' allowance, where it sews any edge."""
        at = self.at if meets else None
        return Operation(
            key, title, do, sort, stage, meets, lies, closes, after, before, stitches, at, ease,
            press, check, uses, other,
        )  # fmt: skip


class Way(Making):
    """How seams are sewn: what there is to do, one thing after the other.

    All seams of a pattern with one way are told together: what is sewn twice is told once.
    """

    operations: Callable[[Work], tuple[Operation, ...]] = field(default=lambda work: ())
    elastic: Elastic | None = None


def _whole(pattern: Pattern, run: EdgeRun) -> EdgeRun:
    piece = pattern.piece(run.piece)
    stems = {name.removesuffix("_2") for name in run.edges}
    edges = tuple(edge.name for edge in piece.edges if edge.name.removesuffix("_2") in stems)
    return EdgeRun(run.piece, edges, run.times, run.backwards)


def sewn_at(pattern: Pattern, seam: Seam) -> Length:
    """Return the allowance a seam is sewn with, so that nobody sews another out of habit.

    That of the first edge there is: a run may name edges that a piece does not have.
    """
    run = seam.first[0]
    piece = pattern.piece(run.piece)
    name = next(name for name in run.edges if piece.has_edge(name))
    return mm(piece.edge(name).allowance)


def of_kind(pattern: Pattern, kind: SeamKind) -> tuple[Seam, ...]:
    """Return the pattern's seams of a kind, however they are made."""
    return tuple(seam for seam in pattern.seams if seam.kind is kind)


def made_so(pattern: Pattern, way: Way) -> tuple[Seam, ...]:
    """Return the pattern's seams that are sewn in one way."""
    return tuple(seam for seam in pattern.seams if seam.making.name == way.name)


def apart(pattern: Pattern, seam: Seam) -> float:
    """Return by how much a seam's first side is longer than its second [mm]."""
    return pattern.run_length(seam.first) - pattern.run_length(seam.second)
