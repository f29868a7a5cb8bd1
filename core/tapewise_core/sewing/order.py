"""The sewing order, chosen by the seams a pattern has and the machines there are.

The order of a top made at home (common practice): stay the shoulders, sew them, try
the head, set the neckband, set in sleeves that are not grown on, close side and
underarm in one, hem. A skirt: its seams, the waist, a day on the hanger, the hem.
"""

from __future__ import annotations

from collections.abc import Callable

from tapewise_core.drafting.piece import Pattern, SeamKind
from tapewise_core.sewing import order_finish, order_skirt, order_sleeve
from tapewise_core.sewing.machines import Stitching
from tapewise_core.sewing.widths import sewn_at
from tapewise_core.units import Unit

StepsOf = Callable[[Pattern, Stitching, Unit], tuple[str, ...]]


def sewing_order(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    """Return the sentences of the sewing order, first to last, in the reader's unit."""
    kinds = {seam.kind for seam in pattern.seams}
    return tuple(
        unit.reword(sentence)
        for kind, steps in ORDER
        if kind in kinds
        for sentence in steps(pattern, stitching, unit)
    )


def _shoulders(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    return (
        "Stay the back's shoulders: clear elastic or woven tape along the stitch line, cut to the "
        "pattern's length, not stretched, so that shoulders and neck do not sag; "
        f"{stitching.stay}.",
        "Sew the shoulder seams, right sides together, notches matched, the surplus of the "
        f"front eased in, {sewn_at(pattern, SeamKind.SHOULDER, unit)} from the edge: "
        f"{stitching.seam}. Press towards the back.",
        "Try the head through the neck opening now, before it is finished: it must pass with ease.",
    )


def _neckband(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    if "neck point" in pattern.facts:
        return order_finish.v_band(pattern, stitching, unit)
    return (
        f"Join the band's ends into a ring, {sewn_at(pattern, SeamKind.BAND_JOIN, unit)} from the "
        "edge, narrow zigzag or lockstitch pressed open; fold it lengthwise, wrong sides together, "
        "and press.",
        "Pin band and neckline together at the quarters: the join at centre back, the middle at "
        "centre front, and halfway round on both sides; not at the shoulder seams.",
        f"Sew the band on with the band uppermost, {sewn_at(pattern, SeamKind.NECKBAND, unit)} "
        f"from the edge, stretching only the band: {stitching.seam}.",
        "Try it on once more: the band lies flat. If it stands up it is too long, if the neckline "
        "puckers it is too short; unpick and mend it now.",
        f"Press the allowance down into the body; topstitch it if you like: {stitching.topstitch}.",
    )


def _sides(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    return (
        f"Sew underarm and side seams in one go from the sleeve's hem to the {_end(pattern)}, "
        f"underarm and notches matched, {sewn_at(pattern, SeamKind.SIDE, unit)} from the edge: "
        f"{stitching.seam}. Press towards the back.",
    )


def _end(pattern: Pattern) -> str:
    """Where the side seams end."""
    return "waist" if any(seam.kind is SeamKind.WAIST for seam in pattern.seams) else "hem"


def _hems(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    return (
        f"Turn up the sleeves' hems by {sewn_at(pattern, SeamKind.SLEEVE_HEM, unit)}, their "
        "mirrored corners matching the seams, press, and sew from the right side: "
        f"{stitching.hem}.",
    )


def _lower_hem(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    if order_skirt.is_skirt(pattern):
        return order_skirt.hem(pattern, stitching, unit)
    return (
        f"Turn up the hem by {sewn_at(pattern, SeamKind.HEM, unit)}, press, and sew it from the "
        f"right side: {stitching.hem}. Stretch it once by hand: no thread may pop.",
    )


ORDER: tuple[tuple[SeamKind, StepsOf], ...] = (
    (SeamKind.SHOULDER, _shoulders),
    (SeamKind.NECKBAND, _neckband),
    (SeamKind.NECK_EDGE, order_finish.neck_edge),
    (SeamKind.FACING, order_finish.facing),
    (SeamKind.POCKET, order_finish.pocket),
    (SeamKind.SLEEVE, order_sleeve.set_in),
    (SeamKind.SIDE, _sides),
    (SeamKind.SLEEVE_HEM, _hems),
    (SeamKind.PANEL, order_skirt.panels),
    (SeamKind.WAIST, order_skirt.waist),
    (SeamKind.WAISTBAND, order_skirt.waistband),
    (SeamKind.CASING, order_skirt.casing),
    (SeamKind.SLIT, order_finish.slit),
    (SeamKind.HEM, _lower_hem),
    (SeamKind.BELT, order_finish.belt),
)
