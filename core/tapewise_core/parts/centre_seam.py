"""A seam at the centre of back and front, in place of their folds: halves that lie on a cloth on
which the whole piece does not."""

from __future__ import annotations

from collections.abc import Iterator

from msgspec.structs import replace

from tapewise_core.drafting.extent import least_across
from tapewise_core.drafting.finish import for_pieces
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import EdgeRun, Join, Seam, SeamKind
from tapewise_core.geometry.cut_corners import MITRE
from tapewise_core.parts.centre_style import PIECES, CentreSeams, CentreStyle
from tapewise_core.sewing.operation import Lies, Operation, Stage
from tapewise_core.sewing.way import Way, Work
from tapewise_core.text.told import LineName, Told, joined, said
from tapewise_core.units import mm


def with_centre_seams(pattern: Pattern, style: CentreStyle) -> Pattern:
    """Return a pattern whose halves are joined by seams: those that a style names, and those that
    would be wider than the cloth."""
    names = style.pieces or _too_wide(pattern, style.room)
    if not names:
        return pattern
    halves = tuple(_half(pattern.piece(name), style.seam.mm) for name in names)
    changed = {half.name: half for half in halves}
    return replace(
        pattern,
        drafts=for_pieces(pattern.drafts, halves),
        pieces=tuple(changed.get(piece.name, piece) for piece in pattern.pieces),
        seams=(*map(_seam, names), *pattern.seams),
        joins=(*pattern.joins, *(join for half in halves for join in _joins(half))),
        remarks=(*pattern.remarks, *_told(names, style)),
    )


def _too_wide(pattern: Pattern, room: float) -> tuple[str, ...]:
    """The body's pieces on the fold that take more of the cloth's width than there is [mm]."""
    body = (pattern.piece(name) for name in PIECES[CentreSeams.BOTH])
    return tuple(piece.name for piece in body if piece.on_fold and _wider(piece, room))


def _wider(piece: Piece, room: float) -> bool:
    """Whether a piece that is opened out takes more than some width [mm]; its cut line is drawn
    only where the handles of its stitch line, which none of it passes, and its widest corner leave
    that open."""
    segments = (segment for edge in piece.edges for segment in edge.path.segments)
    tip = max(point.x for segment in segments for point in segment.handles)
    corner = MITRE * max(edge.allowance for edge in piece.edges)
    return 2 * (tip + corner) > room < least_across(piece)


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
    """Neckline, waist and hem run on across the seam; a V's point is none that could."""
    for line in ("neckline", "waist", "hem"):
        if half.has_edge(line) and not half.edge(line).slants:
            side = half.name, line, "centre"
            yield Join(f"{line} across the centre {half.name}", side, side)


def _told(names: tuple[str, ...], style: CentreStyle) -> Iterator[Told]:
    listed = joined([(LineName(name),) for name in names], " and ")
    if not style.pieces:
        yield said(
            "Opened out, the {} would be wider than the {} that this cloth has to give.",
            listed, mm(style.room),
        )  # fmt: skip
    yield said(
        "Cut the {} as two halves: what the steps call their fold is a stitching line, with an "
        "allowance of {} beyond it.",
        listed, style.seam,
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


def is_centre(seam: Seam) -> bool:
    """Whether a seam joins the halves of a piece at its centre."""
    return seam.making is CENTRE_SEAM
