"""A shoulder placket: one shoulder open from the neck, added to a pattern of which back and front
stay on the fold.

Two folded strips are sewn to the opened edges: a facing, turned to the inside of the front, and an
underlap, which stands out from the back under it. The neckband is open there too.
"""

from __future__ import annotations

from collections.abc import Iterator

from msgspec.structs import replace

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finish import for_pieces, with_allowances
from tapewise_core.drafting.labels import title
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Notch, Piece
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.errors import DraftError
from tapewise_core.geometry.crossings import nearest
from tapewise_core.parts.neck_style import NeckStyle
from tapewise_core.parts.placket_band import cut_open_band, draft_open_band
from tapewise_core.parts.placket_options import SHORTEST
from tapewise_core.parts.placket_strip import (
    AT_NECK,
    END,
    FACING,
    UNDERLAP,
    WIDE,
    cut_strip,
    draft_placket_strip,
)
from tapewise_core.parts.placket_style import Placket, PlacketStyle
from tapewise_core.parts.placket_ways import PLACKET, PLACKET_BAND, PLACKET_SHOULDERS
from tapewise_core.style.style import Style
from tapewise_core.text.amounts import Bound
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import Length, mm

LEAST_BEYOND = 5.0
"""A drawn shoulder goes on at least so far beyond its placket [mm] (our choice)."""

BACK, FRONT = "centre back", "centre front"


def with_placket(pattern: Pattern, style: Style) -> Pattern:
    """Return a pattern with the placket a style asks for, of a body whose sides are alike; raises
    DraftError where its shoulder is too short for it."""
    asked, neck = PlacketStyle.of(style), NeckStyle.of(style)
    if asked.side is Placket.NONE:
        return pattern
    asked = _reaching(pattern, asked)
    bodies = tuple(_marked(pattern.piece(name), asked) for name in ("back", "front"))
    band_draft, band, ratio = _band(pattern, neck)
    drafts = tuple(draft_placket_strip(name, asked) for name in (FACING, UNDERLAP))
    strips = tuple(
        cut_strip(name, one, neck.allowances)
        for name, one in zip((FACING, UNDERLAP), drafts, strict=True)
    )
    changed = {piece.name: piece for piece in (*bodies, band)}
    finished = (*for_pieces(pattern.drafts, bodies), *map(with_allowances, drafts, strips))
    found = pattern.facts.neck
    assert found is not None, "a top has a neck"
    told = said(TOLD, asked.side.value, asked.length, asked.side.value)
    return replace(
        pattern,
        drafts=tuple(
            with_allowances(band_draft, band) if one.title == title(band.name) else one
            for one in finished
        ),
        pieces=(*(changed.get(piece.name, piece) for piece in pattern.pieces), *strips),
        seams=tuple(_seams(pattern, asked, ratio)),
        facts=replace(pattern.facts, neck=replace(found, opens=asked.opens)),
        remarks=(*pattern.remarks, told),
    )


TOLD = (
    "The wearer's {} shoulder opens over {} from the neck. Back and front are cut on the fold as "
    "ever, and marked on both shoulders: only the marks on the {} count."
)


def _reaching(pattern: Pattern, asked: PlacketStyle) -> PlacketStyle:
    """A placket that the shoulder drawn has room for: shorter where its length was not chosen."""
    halves = [pattern.piece(name) for name in ("back", "front")]
    drawn = min(
        nearest(half.edge("shoulder").path, half.points["shoulder_point"])[0] for half in halves
    )
    room = drawn - LEAST_BEYOND
    if asked.length.mm <= room:
        return asked
    if asked.chosen or room < SHORTEST * 10:
        words = "{} is {}, and the shoulder as it is drawn leaves {} at the most."
        told = OptionKey("placket-length"), asked.length, Bound(max(room, 0.0), "down")
        raise DraftError(said(words, *told))
    return replace(asked, length=mm(int(room)))


def _marked(piece: Piece, asked: PlacketStyle) -> Piece:
    """A half with the placket's marks, and with the open band's instead of a ring's."""
    kept = tuple(notch for notch in piece.notches if notch.edge != "neckline")
    middle = BACK if piece.name == "back" else FRONT
    marks = (
        Notch("neckline", 0.0, middle),
        Notch("shoulder", 0.0, AT_NECK),
        Notch("shoulder", asked.length.mm, END),
    )
    return replace(piece, notches=(*marks, *kept))


def _band(pattern: Pattern, neck: NeckStyle) -> tuple[Draft, Piece, float]:
    """The band from the front's edge round the neck to the underlap's fold, and its ratio."""
    back, front = (pattern.piece(name).length("neckline") for name in ("back", "front"))
    whole = Length(
        2 * (back + front) + WIDE.mm,
        ("neckline and underlap, (2 × (", back, " + ", front, ") + ", WIDE.mm, ")"),
    )
    found = next(seam for seam in pattern.seams if seam.kind is SeamKind.NECKBAND)
    draft = draft_open_band(whole, neck, found.ratio)
    marks = ((front, FRONT), (2 * front + back, BACK))
    piece = cut_open_band(draft, neck, [(at * found.ratio, pair) for at, pair in marks])
    return draft, piece, found.ratio


def _seams(pattern: Pattern, asked: PlacketStyle, ratio: float) -> Iterator[Seam]:
    """The seams, the placket's after the shoulders it opens."""
    for seam in pattern.seams:
        if seam.kind is SeamKind.SHOULDER:
            yield replace(seam, making=PLACKET_SHOULDERS)
            for strip, piece in ((FACING, "front"), (UNDERLAP, "back")):
                yield Seam(
                    SeamKind.PLACKET,
                    (EdgeRun(strip, ("shoulder",)),),
                    (EdgeRun(piece, ("shoulder",)),),
                    making=PLACKET,
                    where=asked.side.value,
                )
        elif seam.kind is SeamKind.NECKBAND:
            band = (EdgeRun("neckband", ("neckline",)),)
            yield Seam(SeamKind.NECKBAND, band, _walk(), ratio, PLACKET_BAND)
        elif seam.first[0].piece != "neckband":
            yield seam


def _walk() -> tuple[EdgeRun, ...]:
    """The neckline from the front's opened edge all round to the underlap's fold."""
    line = ("neckline",)
    return (
        EdgeRun("front", line, backwards=True), EdgeRun("front", line),
        EdgeRun("back", line, backwards=True), EdgeRun("back", line),
        EdgeRun(UNDERLAP, ("neck",)),
    )  # fmt: skip
