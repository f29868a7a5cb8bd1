"""A garment's ends with bands: a hem band, and cuffs, added to a pattern whose body, skirt and
sleeves were drafted so much shorter."""

from __future__ import annotations

from collections.abc import Sequence
from types import MappingProxyType

from msgspec.structs import replace

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.facts import EndBand
from tapewise_core.drafting.finish import for_pieces, with_allowances
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Notch, Piece
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.parts.edge_band import (
    BandKind,
    BandSize,
    Mark,
    band_join,
    band_seam,
    cut_band,
    draft_band,
)
from tapewise_core.parts.end_bands import CUFF, HALVES, HEM, MIDDLE, PART, SIDE
from tapewise_core.parts.end_ratio import cuff_ratio, free_for, hem_ratio
from tapewise_core.parts.end_style import EndStyle
from tapewise_core.text.told import Told, said
from tapewise_core.units import Length


class _End(Frozen):
    """One kind of band, drafted and cut, with its seams and what proofs ask of it."""

    draft: Draft
    piece: Piece
    seams: tuple[Seam, ...]
    fact: EndBand
    told: Told


Lower = tuple[str, str]
"""The two pieces, back and front, that have the hem."""


def with_ends(
    pattern: Pattern, body: Body, style: EndStyle, lower: Lower = ("back", "front")
) -> Pattern:
    """Return a pattern with the bands a style asks for, of a body whose sides are alike."""
    if style.band.mm:
        end = _hem(pattern, body, style, lower)
        pattern = _with(_marked(pattern, lower, end.piece), end, SeamKind.HEM)
        pattern = _hung(
            _longer(pattern, style.band, BODY if "back" in lower else SKIRT),
            style.band.mm,
            end.fact.opening,
        )
    if style.cuff.mm:
        pattern = _with(pattern, _cuff(pattern, style), SeamKind.SLEEVE_HEM)
        pattern = _longer(pattern, style.cuff, SLEEVE)
    return pattern


BODY = ("centre back length", "centre front length", "side length")
SKIRT = ("skirt length",)
SLEEVE = ("overarm length", "sleeve length")
"""Lengths of the finished garment that a band is part of."""


def _longer(pattern: Pattern, by: Length, names: tuple[str, ...]) -> Pattern:
    more = {name: pattern.lengths[name] + by.mm for name in names if name in pattern.lengths}
    return replace(pattern, lengths=MappingProxyType({**pattern.lengths, **more}))


def _hung(pattern: Pattern, lower: float, around: float) -> Pattern:
    """The hem is the band's lower edge."""
    hem = pattern.facts.hem
    if hem is None:
        return pattern
    nape = None if hem.below_nape is None else hem.below_nape + lower
    hem = replace(hem, round=around, below_waist=hem.below_waist + lower, below_nape=nape)
    named = {name: around for name in ("hem", "hem round") if name in pattern.lengths}
    return replace(
        pattern,
        facts=replace(pattern.facts, hem=hem),
        lengths=MappingProxyType({**pattern.lengths, **named}),
    )


def _with(pattern: Pattern, end: _End, instead: SeamKind) -> Pattern:
    """The pattern with a band in place of a turned hem."""
    seams = [seam for seam in pattern.seams if seam.kind is not instead]
    facts = replace(pattern.facts, ends=(*pattern.facts.ends, end.fact))
    return replace(
        pattern,
        drafts=(*pattern.drafts, with_allowances(end.draft, end.piece)),
        pieces=(*pattern.pieces, end.piece),
        seams=(*seams, *end.seams),
        facts=facts,
        remarks=(*pattern.remarks, *filter(None, (end.told,))),
    )


def _marked(pattern: Pattern, lower: Lower, band: Piece) -> Pattern:
    """Back and front marked where the band's marks go."""
    back, front = lower
    marks = {back: (0.0, SIDE), front: (pattern.piece(front).length("hem"), MIDDLE)}
    if band.count == HALVES.count:
        del marks[front]  # a join goes there

    def marked(piece: Piece) -> Piece:
        if piece.name not in marks:
            return piece
        at, pair = marks[piece.name]
        return replace(piece, notches=(*piece.notches, Notch("hem", at, pair)))

    pieces = tuple(map(marked, pattern.pieces))
    return replace(pattern, pieces=pieces, drafts=for_pieces(pattern.drafts, pieces))


def _hem(pattern: Pattern, body: Body, style: EndStyle, lower: Lower) -> _End:
    back, front = (pattern.piece(name).length("hem") for name in lower)
    whole = Length(2 * (back + front), ("the whole hem, 2 × (", back, " + ", front, ")"))
    over = max(body["bust"].mm, body["hip"].mm)
    ratio = style.band_ratio or hem_ratio(
        whole.mm, over, style.stretch, free_for(pattern.facts.hem, style.band.mm)
    )
    walk = (EdgeRun(lower[0], ("hem",), 2, True), EdgeRun(lower[1], ("hem",), 2))
    size, side = BandSize(style.band, style.seam, style.seam), back / whole.mm
    if whole.mm * ratio + 2 * size.join.mm > style.across:
        half = Length(back + front, ("half the hem, (", back, " + ", front, ")"))
        made = _made(HALVES, half, size, ratio, walk, over, ((2 * side, SIDE, 1),))
        ends = (EdgeRun(HALVES.name, ("join_2",)),)
        front_join = Seam(SeamKind.BAND_JOIN, ends, ends, making=HALVES.ring, where="front")
        return replace(made, seams=(*made.seams, front_join))
    marks = ((side, SIDE, 1), (0.5, MIDDLE, 1), (1 - side, SIDE, 1))
    return _made(HEM, whole, size, ratio, walk, over, marks)


def _cuff(pattern: Pattern, style: EndStyle) -> _End:
    levels = {one.name: one for one in pattern.facts.levels}
    level = levels.get("sleeve_hem") or levels["upper_arm"]
    hand = pattern.facts.hand
    if any(piece.name == "sleeve" for piece in pattern.pieces):
        around = pattern.piece("sleeve").length("sleeve_hem")
        whole = Length(around, ("the sleeve's end ", around))
        walk: tuple[EdgeRun, ...] = (EdgeRun("sleeve", ("sleeve_hem",)),)
    else:
        names = [one.name for one in pattern.pieces if one.has_edge("sleeve_hem")]
        ends = sorted(names)  # the back's before the front's
        back, front = (pattern.piece(name).length("sleeve_hem") for name in ends)
        whole = Length(back + front, ("the sleeve's end, (", back, " + ", front, ")"))
        walk = (EdgeRun(ends[0], ("sleeve_hem",)), EdgeRun(ends[1], ("sleeve_hem",), 1, True))
    ratio = style.cuff_ratio or cuff_ratio(whole.mm, level.body, hand, style.stretch)
    size = BandSize(style.cuff, style.seam, style.seam)
    return _made(CUFF, whole, size, ratio, walk, hand, ())


def _made(
    kind: BandKind, edge: Length, size: BandSize, ratio: float, walk: tuple[EdgeRun, ...],
    over: float | None, marks: Sequence[Mark],
) -> _End:  # fmt: skip
    draft = draft_band(kind, edge, size, ratio)
    piece = cut_band(kind, draft, size, marks)
    times = 2 if kind is HALVES else 1
    seams = (band_join(kind, halves=times == 2), band_seam(kind, walk, ratio, times=times))
    told = said(PART[kind.name], size.width)
    fact = EndBand(kind.title.lower(), edge.mm * ratio * times, over, ratio)
    return _End(draft, piece, seams, fact, told)
