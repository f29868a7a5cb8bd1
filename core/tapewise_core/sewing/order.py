"""The sewing order, chosen by the seams a pattern has and the machines there are.

The order of a grown-on top made at home (common practice): stay the shoulders,
sew them, try the head, set the neckband, close side and underarm in one, hem.
"""

from __future__ import annotations

from collections.abc import Callable

from tapewise_core.drafting.piece import Pattern, SeamKind
from tapewise_core.sewing.machines import Machine, Stitching
from tapewise_core.units import Unit

StepsOf = Callable[[Pattern, Stitching, Unit], tuple[str, ...]]


def sewing_order(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    """Return the sentences of the sewing order, first to last."""
    kinds = {seam.kind for seam in pattern.seams}
    return tuple(
        sentence
        for kind, steps in ORDER
        if kind in kinds
        for sentence in steps(pattern, stitching, unit)
    )


def _width(pattern: Pattern, kind: SeamKind, unit: Unit) -> str:
    """The allowance to sew with, so that nobody sews another out of habit."""
    run = next(seam.first[0] for seam in pattern.seams if seam.kind is kind)
    piece = pattern.piece(run.piece)
    name = next(name for name in run.edges if piece.has_edge(name))
    return unit.spell(piece.edge(name).allowance)


def _shoulders(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    return (
        "Stay the back's shoulders: clear elastic or woven tape along the stitch line, cut to the "
        f"pattern's length, not stretched, so that shoulders and neck do not sag; {stitching.stay}.",
        f"Sew the shoulder (overarm) seams, right sides together, notches matched, the surplus of "
        f"the front eased in, {_width(pattern, SeamKind.SHOULDER, unit)} from the edge: "
        f"{stitching.seam}. Press towards the back.",
        "Try the head through the neck opening now, before the band: it must pass with ease.",
    )


def _neckband(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    return (
        f"Join the band's ends into a ring, {_width(pattern, SeamKind.BAND_JOIN, unit)} from the "
        "edge, narrow zigzag or lockstitch pressed open; fold it lengthwise, wrong sides together, "
        "and press.",
        "Pin band and neckline together at the quarters: the join at centre back, the middle at "
        "centre front, and halfway round on both sides; not at the shoulder seams.",
        f"Sew the band on with the band uppermost, {_width(pattern, SeamKind.NECKBAND, unit)} from "
        f"the edge, stretching only the band: {stitching.seam}.",
        "Try it on once more: the band lies flat. If it stands up it is too long, if the neckline "
        "puckers it is too short; unpick and mend it now.",
        f"Press the allowance down into the body; topstitch it if you like: {stitching.topstitch}.",
    )


def _sides(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    return (
        "Sew underarm and side seams in one go from the sleeve's hem to the hem, underarm and "
        f"notches matched, {_width(pattern, SeamKind.SIDE, unit)} from the edge: "
        f"{stitching.seam}. Press towards the back.",
    )


def _hems(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    return (
        f"Turn up the sleeves' hems by {_width(pattern, SeamKind.SLEEVE_HEM, unit)}, their mirrored "
        f"corners matching the seams, press, and sew from the right side: {stitching.hem}.",
    )


def _lower_hem(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    return (
        f"Turn up the hem by {_width(pattern, SeamKind.HEM, unit)}, press, and sew it from the right "
        f"side: {stitching.hem}. Stretch it once by hand: no thread may pop.",
    )


ORDER: tuple[tuple[SeamKind, StepsOf], ...] = (
    (SeamKind.SHOULDER, _shoulders),
    (SeamKind.NECKBAND, _neckband),
    (SeamKind.SIDE, _sides),
    (SeamKind.SLEEVE_HEM, _hems),
    (SeamKind.HEM, _lower_hem),
)


def needles(stitching: Stitching) -> str:
    """Say which needles and thread."""
    twin = "" if Machine.COVERSTITCH in stitching.machines else ", a stretch twin needle for hems"
    return f"ballpoint or stretch needles 70 to 90{twin}; polyester thread"
