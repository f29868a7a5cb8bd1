"""What joins the halves of a top, and what its proofs compare."""

from __future__ import annotations

from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.facts import Facts, Neck, Side, Underarm
from tapewise_core.drafting.making import How, Making
from tapewise_core.drafting.piece import EdgeRun, Girth, Join, Piece, Seam, SeamKind
from tapewise_core.geometry.point import crossing
from tapewise_core.measures.body import Body
from tapewise_core.parts.arm import UPPER_ARM_AT, arm_at
from tapewise_core.parts.girths import trunk_girths
from tapewise_core.parts.hand import hand_of
from tapewise_core.parts.hem import EDGE_OF, HEM


def body_seams(
    style: TopStyle, front: str = "", back: str = "", where: str = "", lower: str = HEM
) -> tuple[Seam, ...]:
    """Return the seams of one side; ``front`` and ``back`` are the suffixes of its edges.

    Edges with a suffix lie on the mirrored half, where a clockwise walk runs the other way. A
    body whose ``lower`` edge is a waist seam has no hem.
    """

    def run(piece: str, names: tuple[str, ...], suffix: str) -> tuple[EdgeRun, ...]:
        edges = tuple(name + suffix for name in names)
        return (EdgeRun(piece, edges, backwards=bool(suffix)),)

    def both(kind: SeamKind, how: How, *names: str) -> Seam:
        runs = run("front", names, front), run("back", names, back)
        return Seam(kind, *runs, making=Making(how), where=where)

    hem = (both(SeamKind.HEM, How.HEM, "hem"),) if lower == HEM else ()
    slit = (both(SeamKind.SLIT, How.SLIT, "split"),) if style.hem.split else ()
    return (
        both(SeamKind.SHOULDER, How.STAYED, "shoulder"),
        both(SeamKind.SIDE, How.SIDES, "underarm", "side"),
        both(SeamKind.SLEEVE_HEM, How.SLEEVE_HEM, "sleeve_hem"),
        *slit,
        *hem,
    )


def side_joins(
    style: TopStyle, front: str = "", back: str = "", where: str = "", lower: str = HEM
) -> tuple[Join, ...]:
    """Return the lines of one side that run on across a seam."""

    def across(name: str, line: str, beside: str) -> Join:
        first = ("back", line + back, beside + back)
        return Join(f"{name}{where}", first, ("front", line + front, beside + front))

    edge = EDGE_OF[lower]
    side = "split" if style.hem.split else "side"
    return (
        across("neckline across the shoulder", "neckline", "shoulder"),
        across("sleeve hem across the overarm", "sleeve_hem", "shoulder"),
        across(f"{edge} across the side seam", edge, side),
    )


def girths(halves: tuple[Piece, ...], body: Body, style: TopStyle) -> tuple[Girth, ...]:
    """Return the closed girths beside the body's; ``halves`` are left back and front, then right.

    A garment that is the same on both sides has the same two halves twice.
    """
    return (*trunk_girths(halves, body), *arm_girths(halves[:2], body, style))


def arm_girths(halves: tuple[Piece, ...], body: Body, style: TopStyle) -> tuple[Girth, ...]:
    """Return one sleeve's girth at its hem and at the upper arm, square to the overarm.

    Where the body of a wide top still covers the upper arm there is only the hem's.
    """
    sleeve = style.sleeve.length.mm
    hem = sum(half.length("sleeve_hem") for half in halves)
    past = body["arm_length"].mm * UPPER_ARM_AT if "arm_length" in body else sleeve
    at_hem = Girth("sleeve hem", hem, arm_at(body, sleeve).mm)
    if sleeve <= past:
        return (Girth("upper arm", hem, body["upper_arm"].mm), at_hem)
    if not all(half.has_edge("underarm") for half in halves):
        return (at_hem,)
    upper = sum(_half_at(half, past) for half in halves)
    return (Girth("upper arm", upper, body["upper_arm"].mm), at_hem)


def _half_at(half: Piece, past: float) -> float:
    """Half a sleeve's girth at a distance below the shoulder point [mm].

    Where the body still is there, as on a wide top, where the sleeve leaves it.
    """
    shoulder, underarm = half.points["shoulder_point"], half.edge("underarm").path
    along = (half.points["overarm_end"] - shoulder).unit()
    leaves = (half.points["underarm"] - shoulder).dot(along)
    at = shoulder + along * max(past, leaves)
    opposite = crossing(at, along.square(), underarm.start, underarm.leaving())
    return (opposite - at).length() if opposite else half.length("sleeve_hem")


def lengths(back: Piece, front: Piece) -> dict[str, float]:
    """Return the finished garment's lengths [mm]."""
    return {
        "centre back length": back.points["centre_hem"].y - back.points["nape"].y,
        "centre front length": front.points["centre_hem"].y - front.points["centre_front"].y,
        "overarm length": back.length("shoulder"),
        "side length": back.length("underarm", "side"),
        "neckline": 2 * (back.length("neckline") + front.length("neckline")),
    }


def facts(back: Draft, body: Body, style: TopStyle, neck: Neck) -> Facts:
    """Return what proofs ask of a top, all but its hem."""
    ease = style.trunk.ease.mm
    return Facts(
        head=body["head"].mm if "head" in body else None,
        ease=ease,
        hand=hand_of(body, style.sleeve.length),
        neck=neck,
        underarm=Underarm(back.paper.line("side").start.y, back["A"].y, back["W"].y),
        side=Side((body["waist"].mm + ease) / 4),
    )
