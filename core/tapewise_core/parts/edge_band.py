"""A band round an edge: a strip across the grain, shorter than the edge, folded along its middle
and joined into a ring. Armholes, sleeves' ends and hems are finished so."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Notch, Piece
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.frozen import Frozen
from tapewise_core.parts.strip import draft_strip, folded, rule_strip, strip_edges
from tapewise_core.sewing.way import Way
from tapewise_core.units import Length

Mark = tuple[float, str, int]
"""A share of the edge, walked from the band's join, the pair it belongs to, and its strokes."""


class BandKind(Frozen):
    """What a band is for: the piece's name and its edge's, the draft's title, what is told of its
    marks, how many are cut, and how it is sewn."""

    name: str
    edge: str
    title: str
    marks: str
    count: int
    seam: SeamKind
    ring: Way
    sewn: Way


class BandSize(Frozen):
    """A band's finished width, and what is added along the edge and at its join."""

    width: Length
    allowance: Length
    join: Length


def draft_band(kind: BandKind, edge: Length, size: BandSize, ratio: float) -> Draft:
    """Return the band as drawn by hand; ``edge`` is the whole stitched edge."""
    called = "the band's length, seam to seam"
    draft = draft_strip(kind.title, "across", edge * ratio, called, size.width)
    return rule_strip(draft, "band").note(kind.marks)


def cut_band(kind: BandKind, draft: Draft, size: BandSize, marks: Sequence[Mark] = ()) -> Piece:
    """Return the band as a piece, both its long edges marked."""
    edges = strip_edges(draft, kind.edge, "join", size.allowance.mm, size.join.mm)
    a, b = edges[0].path.start, edges[0].path.end
    notches = tuple(
        Notch(edge, b.x * (share if edge == kind.edge else 1 - share), pair, strokes)
        for edge in (kind.edge, f"{kind.edge}_2")
        for share, pair, strokes in marks
    )
    return folded(draft, kind.name, edges, {"join": a, "join_2": b}, notches, kind.count)


def band_join(kind: BandKind, *, halves: bool = False) -> Seam:
    """Return the seam that makes a ring of the band, or the first of the two that join halves."""
    last = "join" if halves else "join_2"
    ends = (EdgeRun(kind.name, ("join",)),), (EdgeRun(kind.name, (last,)),)
    return Seam(SeamKind.BAND_JOIN, *ends, making=kind.ring, where=kind.title.lower())


def band_seam(
    kind: BandKind, edge: tuple[EdgeRun, ...], ratio: float, where: str = "", times: int = 1
) -> Seam:
    """Return the band's seam round an edge, walked from the band's join; a band of two halves goes
    round with both."""
    around = (EdgeRun(kind.name, (kind.edge,), times),)
    return Seam(kind.seam, around, edge, ratio, kind.sewn, where)
