"""How an armhole without a sleeve is finished: a band, an edge turned in, or a facing."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Notch, Piece
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.frozen import Frozen
from tapewise_core.parts.arm_facing import arm_facing_seams, cut_arm_facing, draft_arm_facing
from tapewise_core.parts.band_ways import ARMBAND, ARMBAND_RING
from tapewise_core.parts.bare_style import ArmholeFinish, BareStyle
from tapewise_core.parts.bare_ways import TURNED_ARMHOLE
from tapewise_core.parts.edge_band import (
    BandKind,
    BandSize,
    Mark,
    band_join,
    band_seam,
    cut_band,
    draft_band,
)
from tapewise_core.parts.neck_finish import Halves
from tapewise_core.parts.shape.band import Band, armband, as_used
from tapewise_core.parts.two_sides import Sewn
from tapewise_core.text.told import Told
from tapewise_core.units import Length


class Bare(Frozen):
    """What a finish adds: drafts, pieces and seams; ``taken`` is how much shorter than the front
    armhole it holds it [mm], ``told`` what a band could not do and ``ratio`` its length as a share
    of the armhole, None without a band."""

    drafts: tuple[Draft, ...] = ()
    pieces: tuple[Piece, ...] = ()
    seams: tuple[Seam, ...] = ()
    taken: float = 0.0
    told: Told = ()
    ratio: float | None = None


def finish_armhole(halves: Halves, sides: Sequence[Sewn], style: BareStyle) -> Bare:
    """Return the finish a style asks for, the same for both armholes; ``sides`` say how each side
    of the body calls its edges."""
    return FINISHES[style.finish](halves, sides, style)


def _round(sewn: Sewn) -> tuple[EdgeRun, ...]:
    """An armhole walked from the back's underarm over the shoulder to the front's."""
    return (*sewn.run("back", ("armhole",), up=True), *sewn.run("front", ("armhole",)))


MARKS = (
    "Mark both long edges where the armhole is marked: the shoulder's seam, two strokes at the "
    "back, one in front. The join goes to the side seam."
)

ARM = BandKind(
    "armband", "armhole", "Armhole band", MARKS, 2, SeamKind.ARMBAND, ARMBAND_RING, ARMBAND
)


def ratio_of(armhole: float, style: BareStyle) -> Band:
    """Return a band's ratio for a whole armhole [mm]: as chosen, or as it is worked out."""
    if style.ratio is not None:
        return Band(style.ratio, ())
    found = armband(armhole, style.width.mm, style.stretch)
    return Band(as_used(found), found.held_back)


def _band(halves: Halves, sides: Sequence[Sewn], style: BareStyle) -> Bare:
    back, front = halves.back.length("armhole"), halves.front.length("armhole")
    band = ratio_of(back + front, style)
    whole = Length(back + front, ("the whole armhole, (", back, " + ", front, ")"))
    size = BandSize(style.width, style.allowance, style.seam)
    draft = draft_band(ARM, whole, size, band.ratio)
    piece = cut_band(ARM, draft, size, _marks(halves, back, front))
    on = (band_seam(ARM, _round(one), band.ratio, one.where) for one in sides)
    seams = (band_join(ARM), *on)
    taken = (1 - band.ratio) * front
    return Bare((draft,), (piece,), seams, taken, band.held_back, band.ratio)


def _marks(halves: Halves, back: float, front: float) -> tuple[Mark, ...]:
    """The armhole's marks as shares of it, walked from the back's underarm."""
    whole = back + front

    def share(notch: Notch, *, behind: bool) -> float:
        return (back - notch.distance if behind else back + notch.distance) / whole

    found = [
        (share(notch, behind=behind), notch.pair, notch.strokes)
        for piece, behind in ((halves.back, True), (halves.front, False))
        for notch in piece.notches
        if notch.edge == "armhole"
    ]
    return tuple(sorted(found))


def _turned(halves: Halves, sides: Sequence[Sewn], style: BareStyle) -> Bare:
    return Bare(seams=tuple(
        Seam(
            SeamKind.ARM_EDGE,
            one.run("front", ("armhole",)),
            one.run("back", ("armhole",)),
            making=TURNED_ARMHOLE,
            where=one.where,
        )
        for one in sides
    ))  # fmt: skip


def _facing(halves: Halves, sides: Sequence[Sewn], style: BareStyle) -> Bare:
    drafts = tuple(
        draft_arm_facing(draft, name, style)
        for draft, name in zip(halves.drafts, ("back", "front"), strict=True)
    )
    pieces = tuple(
        cut_arm_facing(draft, piece, style)
        for draft, piece in zip(drafts, (halves.back, halves.front), strict=True)
    )
    seams = (seam for one in sides for seam in arm_facing_seams(_round(one), one.where))
    return Bare(drafts, pieces, tuple(dict.fromkeys(seams)))


FINISHES = {
    ArmholeFinish.BAND: _band,
    ArmholeFinish.TURNED: _turned,
    ArmholeFinish.FACING: _facing,
}
