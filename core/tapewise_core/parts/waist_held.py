"""A skirt's waist held by an elastic in a casing or by a wide band: its pieces, seams and facts."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.facts import Casing, Level, Passage, Waist
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.parts.waist_finish import casing_of, elastic_length
from tapewise_core.parts.waist_style import WaistStyle
from tapewise_core.parts.waistband import Marks, cut_waistband, draft_waistband
from tapewise_core.sewing.gathers import GATHERED_BAND
from tapewise_core.sewing.waist import CASING, WAISTBAND, WAISTBAND_RING
from tapewise_core.sewing.way import Elastic, Way
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import mm


class HeldWaist(Frozen):
    """The seams at the waist, and the band with its draft if there is one."""

    seams: tuple[Seam, ...]
    drafts: tuple[Draft, ...] = ()
    pieces: tuple[Piece, ...] = ()


def held_waist(
    body: Body,
    held: WaistStyle,
    runs: tuple[EdgeRun, ...],
    edge: float,
    marks: Marks,
    gathered: float = 1.0,
) -> HeldWaist:
    """Return what holds a waist ``edge`` [mm] walked along ``runs``; a band has ``marks``, and the
    edge may be ``gathered`` to it, so much for each length."""
    if held.casing:
        return HeldWaist((Seam(SeamKind.CASING, runs, (), making=_casing(body, held)),))
    draft = draft_waistband(held, marks)
    piece = cut_waistband(draft, held, marks)
    first, last = (EdgeRun("waistband", (name,)) for name in ("join", "join_2"))
    ring = Seam(SeamKind.BAND_JOIN, (first,), (last,), making=WAISTBAND_RING)
    ratio, band = piece.length("waist") / edge, (EdgeRun("waistband", ("waist",)),)
    how = WAISTBAND if gathered == 1 else GATHERED_BAND
    joined = Seam(SeamKind.WAISTBAND, band, runs, ratio, how, drawn_in=1 / gathered)
    return HeldWaist((ring, joined), (with_allowances(draft, piece),), (piece,))


def _casing(body: Body, held: WaistStyle) -> Way:
    elastic = Elastic(elastic_length(body).mm, held.elastic_width.mm)
    return replace(CASING, elastic=elastic)


def waist_allowance(held: WaistStyle) -> float:
    """Return what a waist's edge is cut with [mm]: a casing's depth, or a seam's allowance."""
    return casing_of(held).mm if held.casing else held.seam.mm


def passed(body: Body, held: WaistStyle, edge: float) -> Waist:
    """Return the waist that the hips get through, of an ``edge`` [mm] and its band."""
    way_in = body["hip"].mm
    if held.casing:
        return Waist(Passage.EDGE, edge, way_in, edge)
    band = held.band_length.mm
    return Waist(Passage.BAND, min(band, edge), way_in, edge, band)


def turned_down(held: WaistStyle, edge: float, turned: float) -> Casing | None:
    """Return the casing of an ``edge`` whose allowance is ``turned`` long at its own edge [mm]."""
    return Casing(turned, edge) if held.casing else None


def waist_level(body: Body, held: WaistStyle, given: float) -> Level:
    """Return the waist's edge, before an elastic or a band draws it in; a skirt has no nape."""
    waist = body["waist"].mm
    return Level("waist", None, waist, held.ease.mm, waist + held.ease.mm, given)


LOOSE = 5.0
"""A band that is longer than the waist by more than this does not hold on it [mm] (our choice)."""


def elastic_told(body: Body, held: WaistStyle) -> tuple[Told, ...]:
    """Say how long to cut the elastic; or where a band is too long to hold, and what does."""
    if held.casing:
        return (said("Cut the elastic: {}.", elastic_length(body)),)
    over = (held.band_length - body["waist"]).mm
    if over <= LOOSE:
        return ()
    words = "The waistband is {} longer than the waist: alone it slides down to where the body is "
    ways = "as wide. Draw an elastic as long as the waist into it, or set {} to elastic."
    return (said(words + ways, mm(over), OptionKey("waist-finish")),)


def elastic_lengths(body: Body, held: WaistStyle) -> dict[str, float]:
    """Return the elastic's own lengths by name [mm], none without one."""
    if not held.casing:
        return {}
    return {"elastic": elastic_length(body).mm, "elastic width": held.elastic_width.mm}


def holder(held: WaistStyle) -> str:
    """Return what carries the skirt."""
    return "the elastic" if held.casing else "the band"
