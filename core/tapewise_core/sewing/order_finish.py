"""Necklines without a round band, slits, pockets and belts: their sentences in the sewing order.

All common practice.
"""

from __future__ import annotations

from tapewise_core.drafting.piece import Pattern, SeamKind
from tapewise_core.sewing.machines import Stitching
from tapewise_core.sewing.widths import sewn_at
from tapewise_core.units import Unit


def v_band(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    """Say how a band is mitred at the point of a V and set on."""
    return (
        "Fold the band lengthwise, wrong sides together, and press; open it again and join its "
        "ends, right sides together, along the drawn mitre, pivoting on the fold: straight stitch, "
        "short. Trim to 5 mm beyond the seam, snip into the corner, turn and press the point.",
        "Stay the point of the neckline: a line of short straight stitches just inside the stitch "
        "line, 3 cm to either side of it. Snip to the stitch at the point, not through it.",
        "Pin band and neckline together: the mitre at the point, the middle at centre back, and "
        "halfway round on both sides.",
        f"Sew from the point up one side and round to the other, "
        f"{sewn_at(pattern, SeamKind.NECKBAND, unit)} from the edge, the neckline uppermost at the "
        f"point; stretch only the band, most of it round the back: {stitching.seam}.",
        "Look at the point from the right side: seam and mitre meet. Press the allowance into the "
        f"body; topstitch it if you like: {stitching.topstitch}.",
    )


def neck_edge(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    """Say how the neckline's own edge is turned."""
    return (
        "Lay a narrow strip of clear elastic or fusible tape along the neckline's wrong side, "
        "inside the allowance and not stretched, so that the edge keeps its length.",
        f"Turn the neckline's edge in by {sewn_at(pattern, SeamKind.NECK_EDGE, unit)}, pin it in "
        f"quarters, press, and sew it from the right side: {stitching.hem}. It must still pass the "
        "head.",
    )


def facing(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    """Say how a facing is joined and turned to the inside."""
    return (
        "Join the facing's shoulders, "
        f"{sewn_at(pattern, SeamKind.FACING_SHOULDER, unit)} from the edge, press open, and neaten "
        "its outer edge.",
        f"Sew the facing to the neckline, right sides together, shoulder seams matched, "
        f"{sewn_at(pattern, SeamKind.FACING, unit)} from the edge, with a stitch that stretches: "
        f"{stitching.seam}. Clip the allowance where it curves.",
        "Turn the facing inside; stitch it to the allowances close to the seam, so that it does "
        "not roll out, and catch it down at the shoulder seams.",
    )


def slit(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    """Say how the slits at the side are finished, before the hem."""
    return (
        "At each side, secure the end of the seam above the slit with a few stitches across; turn "
        f"the slit's edges back by {sewn_at(pattern, SeamKind.SLIT, unit)}, press and topstitch: "
        f"{stitching.topstitch}.",
    )


def pocket(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    """Say how pockets are set into the side seams, before those are closed."""
    return (
        "Sew a pocket to each side of front and back between its two notches, right sides "
        f"together, {sewn_at(pattern, SeamKind.POCKET, unit)} from the edge; stay the front's "
        "opening with tape first. Press the pockets outwards.",
        "When the sides are sewn: leave the openings, and carry the seam on round each bag.",
    )


def belt(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    """Say how belt and loops are made."""
    return (
        "Fold the belt lengthwise, right sides together, and sew it all round "
        f"{sewn_at(pattern, SeamKind.BELT, unit)} from the edge, leaving a gap in the middle; "
        "turn, press, and close the gap. Work a thread loop at each side between the two marks.",
    )
