"""A straight skirt on a waist's edge: its pieces, how they are sewn, and what they say."""

from __future__ import annotations

import math

from msgspec.structs import replace

from tapewise_core.blocks.skirt.straight_cut import BACK, FRONT, cut_back, cut_front
from tapewise_core.blocks.skirt.straight_draft import draft_back, draft_front
from tapewise_core.blocks.skirt.straight_plan import StraightPlan
from tapewise_core.blocks.skirt.straight_style import Vent
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.facts import Hem, Level
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.pattern import Girth
from tapewise_core.drafting.piece import Edge, Notch, Piece
from tapewise_core.drafting.seam import EdgeRun, Join, Seam, SeamKind
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.parts.hanging import finished_area, weight
from tapewise_core.parts.stride import skirt_hem
from tapewise_core.parts.waistband import Marks
from tapewise_core.sewing.closing import PANELS
from tapewise_core.sewing.edges import SLIT, TURNED_UP, VENT
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

SIDE, FRONT_MARK = "side at the waist", "centre front"
"""The marks by which the waist meets what is sewn to it."""


class StraightSkirt(Frozen):
    """What a straight skirt is made of, without its waist's finish."""

    plan: StraightPlan
    drafts: tuple[Draft, Draft]
    back: Piece
    front: Piece

    @property
    def pieces(self) -> tuple[Piece, Piece]:
        """Back and front."""
        return self.back, self.front

    @property
    def waist(self) -> float:
        """The waist's edge as it is drawn [mm]."""
        return 2 * sum(piece.length("waist") for piece in self.pieces)

    @property
    def runs(self) -> tuple[EdgeRun, ...]:
        """The whole waist edge, walked from the centre back."""
        return (EdgeRun(BACK, ("waist",), 2), EdgeRun(FRONT, ("waist",), 2, backwards=True))

    @property
    def marks(self) -> Marks:
        """A band's marks, its join at the centre back."""
        share = self.back.length("waist") / self.waist
        return ((share, SIDE), (0.5, FRONT_MARK), (1 - share, SIDE))

    def turned(self, depth: float) -> float:
        """Return how long the waist's allowance is at its own edge [mm]: shorter, where the waist
        bends up to the sides."""
        bends = (piece.edge("waist").path for piece in self.pieces)
        turns = (math.radians(path.leaving().angle_to(path.arriving())) for path in bends)
        return self.waist - 2 * depth * sum(turns)

    @property
    def grams(self) -> float:
        """What it weighs, a hem band counted twice, as it is folded [g]."""
        style = self.plan.style
        band = 2 * style.band.mm * hem_round(self)
        return weight(finished_area(self.pieces) + band, style.cloth_weight)


def straight_skirt(
    plan: StraightPlan, allowance: float, *, casing: bool, marked: bool
) -> StraightSkirt:
    """Return the skirt; its waist has an allowance [mm] which a casing turns down, and marks if
    something is sewn to it."""
    back = draft_back(plan)
    front = draft_front(back, plan)
    edges = tuple(
        Edge("waist", draft.paper.line("waist"), allowance, turned=casing)
        for draft in (back, front)
    )
    side = Notch("waist", edges[0].path.length(), SIDE, 2)
    marks = ((side,), (Notch("waist", 0.0, FRONT_MARK),)) if marked else ((), ())
    pieces = (
        cut_back(plan, back, edges[0], marks[0]),
        cut_front(plan, front, edges[1], marks[1]),
    )
    drafts = with_allowances(back, pieces[0]), with_allowances(front, pieces[1])
    return StraightSkirt(plan, drafts, *pieces)


def skirt_seams(skirt: StraightSkirt) -> tuple[Seam, ...]:
    """Return the seams between its pieces, and what is left open."""
    sides = (EdgeRun(BACK, ("side",)),), (EdgeRun(FRONT, ("side",)),)
    found = [Seam(SeamKind.PANEL, *sides, making=PANELS, where="side")]
    if skirt.plan.vented:
        centre = (EdgeRun(BACK, ("centre_back",)),)
        vent = (EdgeRun(BACK, ("vent",)),)
        found.append(Seam(SeamKind.PANEL, centre, centre, making=PANELS, where="centre back"))
        found.append(Seam(SeamKind.SLIT, vent, vent, making=VENT))
    if skirt.plan.style.vent is Vent.SLITS:
        slits = (EdgeRun(BACK, ("split",)),), (EdgeRun(FRONT, ("split",)),)
        found.append(Seam(SeamKind.SLIT, *slits, making=SLIT))
    return tuple(found)


def hem_seam() -> Seam:
    """Return the hem, which hangs straight."""
    edges = ("hem", "vent_hem")
    return Seam(
        SeamKind.HEM, (EdgeRun(BACK, edges, 2), EdgeRun(FRONT, edges, 2)), (),
        making=TURNED_UP,
    )  # fmt: skip


def skirt_joins(skirt: StraightSkirt) -> tuple[Join, ...]:
    """Return the lines that run on across the side seams."""
    lower = "split" if skirt.plan.style.vent is Vent.SLITS else "side"
    return (
        Join("waist across the side seam", (BACK, "waist", "side"), (FRONT, "waist", "side")),
        Join("hem across the side seam", (BACK, "hem", lower), (FRONT, "hem", lower)),
    )


def hem_of(skirt: StraightSkirt, body: Body) -> Hem:
    """Return the hem, and the girth where its vent or slits begin."""
    plan, style = skirt.plan, skirt.plan.style
    found = skirt_hem(body, style.length.mm, hem_round(skirt))
    if style.vent is Vent.NONE:
        return found
    above = plan.around(style.length.mm - style.vent_length.mm)
    return replace(found, slit=style.vent_length.mm, above_slit=above)


def hem_round(skirt: StraightSkirt) -> float:
    """Return how long the hem is, without a vent's underlap [mm]."""
    return 2 * sum(piece.length("hem") for piece in skirt.pieces)


def skirt_lengths(skirt: StraightSkirt) -> dict[str, float]:
    """Return the finished skirt's lengths by name [mm]."""
    length = skirt.plan.style.length.mm
    return {"skirt length": length, "waist edge": skirt.waist, "hem round": hem_round(skirt)}


def skirt_levels(skirt: StraightSkirt, body: Body) -> tuple[Level, ...]:
    """Return high hip, hip and hem, as asked and as measured on the pieces."""
    shape, plan = skirt.plan.shape, skirt.plan
    asked, ease, hip = plan.hip.mm, plan.style.hip_ease.mm, body["hip"].mm
    drawn = plan.around(shape.wish.hip_depth)
    high = body["high_hip"].mm if "high_hip" in body else (body["waist"].mm + hip) / 2
    out = 4 * plan.style.flare.mm
    why = _let_out(plan, drawn)
    return (
        Level(
            "high_hip", None, high, None, None, plan.around(shape.wish.halfway),
        ),
        Level("hip", None, hip, ease, asked, drawn, why),
        Level("hem", None, hip, ease + out, asked + out, hem_round(skirt), why),
    )  # fmt: skip


def _let_out(plan: StraightPlan, drawn: float) -> Told | None:
    """Why the hip is wider than asked."""
    more = drawn - plan.hip.mm
    if more < 1.0:
        return None
    above = "the waist" if plan.edge.mm >= drawn - 1.0 else "the belly"
    return said(
        "it hangs from {} above, which is wider, and would else cling under it by {}.",
        above, mm(more),
    )  # fmt: skip


def skirt_girths(skirt: StraightSkirt, body: Body) -> tuple[Girth, ...]:
    """Return the hip, a high hip that was measured, and a pegged hem, which the hip passes."""
    by_name = {level.name: level for level in skirt_levels(skirt, body)}
    found = [Girth("hip", by_name["hip"].given, body["hip"].mm)]
    if "high_hip" in body:
        found.insert(0, Girth("high hip", by_name["high_hip"].given, body["high_hip"].mm))
    if skirt.plan.style.flare.mm < 0 and skirt.plan.style.vent is Vent.NONE:
        found.append(Girth("hem", by_name["hem"].given, body["hip"].mm))
    return tuple(found)
