"""A sheet of lengths to measure on a draft made by hand, and where to look if one is off."""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import combinations

from tapewise_core.drafting.curve_steps import Curve, Round
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.drafting_paper import SAME
from tapewise_core.drafting.guide_steps import Beside
from tapewise_core.drafting.labels import LabelHead
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.drafting.steps import Straight
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import Path
from tapewise_core.paper.document import Block, Document, Heading, Paragraph, Table
from tapewise_core.text.told import LineName
from tapewise_core.units import Unit

OFF = {Unit.CM: "3 mm", Unit.IN: "1/4 in"}
"""What rounding, ruler and pencil may do to a length (our choice: what an independent hand that
works as printed comes within, and a millimetre for the pencil)."""

DIAGONALS = 3
"""So many diagonals of a piece are measured (our choice)."""

Row = tuple[str, str, str, str]

HEAD: Row = ("length", "should be", "on my paper", "if off, see step")


class Control(Frozen):
    """One length of a piece [mm]: what is measured, and the steps it rests on."""

    what: str
    by: float
    steps: tuple[int, ...]

    def row(self, unit: Unit) -> Row:
        """Return it with room to write in."""
        return self.what, unit.spell(self.by), "", ", ".join(map(str, self.steps))


def control_sheet(pattern: Pattern, drafts: tuple[Draft, ...], label: LabelHead) -> Document:
    """Return the sheet; the drafts have all that a hand is told of them, and their steps are
    numbered as the instructions number them."""
    unit = label.unit
    title = f"{label.garment} for {label.person}: lengths to check a hand draft by"
    blocks: list[Block] = [Heading(title, 1), Paragraph(HOW.format(OFF[unit]))]
    if label.fingerprint:
        blocks.append(Paragraph(f"This is {label.set_words()}; every sheet of it says so."))
    number = 0
    for draft in drafts:
        rows = tuple(one.row(unit) for one in controls(draft, number))
        number += len(draft.steps)
        if rows:
            blocks += [Heading(draft.title), Table(HEAD, rows)]
    sewn = tuple(_sewn(pattern, seam, unit) for seam in pattern.seams if seam.kind in JOINING)
    if sewn:
        blocks += [Heading("What is sewn together"), Paragraph(SEAMS), Table(SEWN, sewn)]
    girths = tuple((girth.name, unit.spell(girth.garment), "") for girth in pattern.girths)
    if girths:
        blocks += [Heading("Girths"), Paragraph(GIRTHS), Table(ROUND, girths)]
    return Document(title, tuple(blocks))


HOW = (
    "Measure these lengths on your paper before you cut, curves with the tape on its edge, and "
    "write them beside what they should be. Up to {} off is pencil and paper. If one is further "
    "off, look at the steps named beside it, the first of them first: a point that was set off "
    "wrong spoils all that rest on it, so begin at the top of the list."
)

SEAMS = (
    "Stitching lines, darts closed. Both sides come from your own paper: they should differ by "
    "as much as they do here."
)

JOINING = (
    SeamKind.SHOULDER, SeamKind.SIDE, SeamKind.NECKBAND, SeamKind.FACING, SeamKind.FACING_SHOULDER,
    SeamKind.SLEEVE, SeamKind.OVERARM, SeamKind.RAGLAN, SeamKind.WAIST, SeamKind.WAISTBAND,
    SeamKind.PANEL, SeamKind.TIER,
)  # fmt: skip
"""Seams whose two sides are measured against each other."""

GIRTHS = (
    "Back and front measured from the centre to the side and added up, twice where they lie on "
    "the fold, darts closed; a sleeve from seam to seam, or both halves of it."
)

ROUND = ("girth", "should be", "mine")

SEWN = ("seam", "one side", "mine", "other side", "mine")


def controls(draft: Draft, before: int = 0) -> Iterator[Control]:
    """Yield a draft's diagonals, then the lengths of its lines; ``before`` is how many steps were
    numbered before its own."""
    marked, drawn = _where(draft, before)
    for one, other in _diagonals(draft):
        by = (draft[other] - draft[one]).length()
        steps = tuple(sorted({marked[one], marked[other]}))
        yield Control(f"{one} straight to {other}", by, steps)
    for name, path in draft.paper.lines.items():
        ends = draft.paper.letter(path.start), draft.paper.letter(path.end)
        if name in drawn and all(ends) and ends[0] != ends[1]:
            words = f"{LineName(name)}, {ends[0]} to {ends[1]}"
            yield Control(words, path.length(), drawn[name])


def _where(draft: Draft, before: int) -> tuple[dict[str, int], dict[str, tuple[int, ...]]]:
    """By which step each letter and each line came onto the paper."""
    marked: dict[str, int] = {}
    drawn: dict[str, tuple[int, ...]] = {}
    beside: dict[str, tuple[int, ...]] = {}
    for number, (step, paper) in enumerate(zip(draft.steps, draft.papers, strict=True), before + 1):
        for name in paper.points:
            marked.setdefault(name, number)
        if isinstance(step, Beside):
            beside[step.of] = (*beside.get(step.of, ()), number)
        if isinstance(step, Curve | Straight | Round):
            drawn[step.line] = (*beside.get(step.line, ()), number)
    return marked, drawn


def _diagonals(draft: Draft) -> list[tuple[str, str]]:
    """The longest ways between corners that do not lie beside each other."""
    corners = _corners(draft)
    apart = [
        (one, other)
        for (i, one), (k, other) in combinations(enumerate(corners), 2)
        if 1 < k - i < len(corners) - 1
    ]
    apart.sort(key=lambda pair: -round((draft[pair[1]] - draft[pair[0]]).length(), 3))
    chosen: list[tuple[str, str]] = []
    for pair in apart:
        if all(len({*pair, *other}) > 3 for other in chosen):
            chosen.append(pair)
    return chosen[:DIAGONALS]


def _corners(draft: Draft) -> list[str]:
    """The letters at which the pattern's lines end, in the order round the piece."""
    ends = [end for path in _outline(draft) for end in (path.start, path.end)]
    names = list(dict.fromkeys(filter(None, map(draft.paper.letter, ends))))
    x = sum(draft[name].x for name in names) / max(len(names), 1)
    y = sum(draft[name].y for name in names) / max(len(names), 1)
    return sorted(names, key=lambda name: math.atan2(draft[name].y - y, draft[name].x - x))


def _outline(draft: Draft) -> Iterator[Path]:
    """The pattern's lines, strips by their sides, without darts inside."""
    for name, path in draft.paper.lines.items():
        if name not in ("cutting_line", "waist_dart"):
            closed = (path.end - path.start).length() < SAME
            yield from (Path((segment,)) for segment in path.segments) if closed else (path,)


def _sewn(pattern: Pattern, seam: Seam, unit: Unit) -> tuple[str, str, str, str, str]:
    """A seam's two sides as they should be."""
    name = f"{seam.kind}{f', {seam.where}' if seam.where else ''}"
    first, second = (_side(pattern, runs, unit) for runs in (seam.first, seam.second))
    return name, first, "", second, ""


def _side(pattern: Pattern, runs: tuple[EdgeRun, ...], unit: Unit) -> str:
    pieces = ", ".join(dict.fromkeys(str(LineName(run.piece)) for run in runs))
    return f"{pieces}: {unit.spell(pattern.run_length(runs))}"
