"""What joins the halves of a top, and what its proofs compare."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.blocks.top.cut import side_fullness
from tapewise_core.blocks.top.plan import TopPlan
from tapewise_core.drafting.facts import Facts, Neck, Side, Underarm
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import Fullness, Join, Seam, SeamKind
from tapewise_core.parts.cowl_way import shoulders_of
from tapewise_core.parts.hand import hand_of
from tapewise_core.parts.hem import EDGE_OF, HEM
from tapewise_core.parts.neck_finish import head_of
from tapewise_core.parts.two_sides import Sewn
from tapewise_core.sewing.closing import SIDES_CLOSED
from tapewise_core.sewing.edges import SLEEVE_HEM, SLIT, TURNED_UP


def body_seams(plan: TopPlan, sewn: Sewn, underarm: float) -> tuple[Seam, ...]:
    """Return the seams of one side; ``underarm`` is a sleeve's own seam above the side [mm].

    A body whose lower edge is a waist seam has no hem.
    """
    style = plan.style
    hem = (sewn.seam(SeamKind.HEM, TURNED_UP, "hem"),) if plan.lower == HEM else ()
    slit = (sewn.seam(SeamKind.SLIT, SLIT, "split"),) if style.hem.split else ()
    side = sewn.seam(SeamKind.SIDE, SIDES_CLOSED, "underarm", "side", *_second(plan))
    return (
        sewn.seam(SeamKind.SHOULDER, shoulders_of(style.neck), "shoulder"),
        replace(side, fullness=_walked(side_fullness(plan), underarm)),
        sewn.seam(SeamKind.SLEEVE_HEM, SLEEVE_HEM, "sleeve_hem"),
        *slit,
        *hem,
    )


def _second(plan: TopPlan) -> tuple[str, ...]:
    """The side below a dart, where the front has one."""
    return ("side_2",) if plan.front.side.dart else ()


def _walked(full: Fullness | None, before: float) -> Fullness | None:
    """The fullness, walked from the sleeve's hem."""
    if full is None:
        return None
    return replace(full, start=full.start + before, end=full.end + before)


AT_HEM = 5.0
"""A sleeve's hem runs on under the arm within so much of a straight angle [degrees]; more shows as
a notch or a tail (common practice). A cap has no seam there that its hem could run across: its
edge opens above the side."""


def side_joins(plan: TopPlan, sewn: Sewn) -> tuple[Join, ...]:
    """Return the lines of one side that run on across a seam."""
    edge = EDGE_OF[plan.lower]
    under_arm = sewn.join("sleeve hem across the underarm", "sleeve_hem", "underarm", within=AT_HEM)
    side = "split" if plan.style.hem.split else "side"
    front = "side_2" if side == "side" and plan.front.side.dart else side
    return (
        sewn.join("neckline across the shoulder", "neckline", "shoulder"),
        sewn.join("sleeve hem across the overarm", "sleeve_hem", "shoulder"),
        *(() if plan.grown.cap else (under_arm,)),
        sewn.join(f"{edge} across the side seam", edge, side, front),
    )


def lengths(back: Piece, front: Piece) -> dict[str, float]:
    """Return the finished garment's lengths [mm]."""
    return {
        "centre back length": back.points["centre_hem"].y - back.points["nape"].y,
        "centre front length": front.points["centre_hem"].y - front.points["centre_front"].y,
        "overarm length": back.length("shoulder"),
        "side length": back.length("underarm", "side"),
        "neckline": 2 * (back.length("neckline") + front.length("neckline")),
    }


def facts(plan: TopPlan, neck: Neck) -> Facts:
    """Return what proofs ask of a top, all but its hem and its levels."""
    body, trunk, at = plan.body, plan.style.trunk, plan.side.levels
    return Facts(
        head=head_of(body),
        ease=trunk.ease.mm,
        hand=hand_of(body, plan.style.sleeve.length),
        neck=neck,
        underarm=Underarm(plan.foot.side.start.y, at.armscye.depth, at.waist.depth),
        side=Side((body["waist"].mm + trunk.waist_ease.mm) / 4),
    )
