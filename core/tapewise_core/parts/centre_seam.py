"""A seam at the centre of back and front, in place of their folds: halves that lie on a cloth on
which the whole piece does not."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from tapewise_core.drafting.finish import for_pieces
from tapewise_core.drafting.piece import EdgeRun, Join, Pattern, Piece, Seam, SeamKind
from tapewise_core.parts.centre_style import CentreStyle
from tapewise_core.sewing.operation import Lies, Operation, Stage
from tapewise_core.sewing.way import Way, Work
from tapewise_core.text.told import LineName, Told, joined, said


def with_centre_seams(pattern: Pattern, style: CentreStyle) -> Pattern:
    """Return a pattern whose halves a style joins by seams, of a body whose sides are alike."""
    if not style.pieces:
        return pattern
    halves = tuple(_half(pattern.piece(name), style.seam.mm) for name in style.pieces)
    changed = {half.name: half for half in halves}
    return replace(
        pattern,
        drafts=for_pieces(pattern.drafts, halves),
        pieces=tuple(changed.get(piece.name, piece) for piece in pattern.pieces),
        seams=(*map(_seam, style.pieces), *pattern.seams),
        joins=(*pattern.joins, *(join for half in halves for join in _joins(half))),
        remarks=(*pattern.remarks, _told(style)),
    )


def _half(piece: Piece, seam: float) -> Piece:
    """A half to cut twice, its centre with an allowance."""
    edges = tuple(
        replace(edge, fold=False, allowance=seam) if edge.name == "centre" else edge
        for edge in piece.edges
    )
    return replace(piece, edges=edges, on_fold=False, count=2, mirrored=True)


def _seam(name: str) -> Seam:
    centre = (EdgeRun(name, ("centre",)),)
    return Seam(SeamKind.PANEL, centre, centre, making=CENTRE_SEAM, where=name)


def _joins(half: Piece) -> Iterator[Join]:
    """Neckline and hem run on across the seam; a V's point is none that could."""
    for line in ("neckline", "hem"):
        if half.has_edge(line) and not half.edge(line).slants:
            side = half.name, line, "centre"
            yield Join(f"{line} across the centre {half.name}", side, side)


def _told(style: CentreStyle) -> Told:
    names = joined([(LineName(name),) for name in style.pieces], " and ")
    return said(
        "Cut the {} as two halves: what the steps call their fold is a stitching line, with an "
        "allowance of {} beyond it.",
        names, style.seam,
    )  # fmt: skip


def centre_seams(work: Work) -> tuple[Operation, ...]:
    """The halves joined before anything else, while they lie flat."""
    stitch = work.stitching.seam
    names = joined([(LineName(seam.first[0].piece),) for seam in work.seams], " and ")
    do = said(
        "Join the halves of the {} at the centre, right sides together, {} from the edge: {}.",
        names, work.at, stitch.words,
    )  # fmt: skip
    return (
        work.do(
            "centre-seams", "Sew the centre seams", do, Stage.INSIDE, meets=work.joins(),
            lies=Lies.FLAT, stitches=(stitch,), press=("Press to one side.",),
        ),
    )  # fmt: skip


CENTRE_SEAM = Way("halves joined at the centre", centre_seams)
