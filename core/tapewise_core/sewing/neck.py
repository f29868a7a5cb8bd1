"""Finishing a neckline: a band in the round or round a V, an edge turned in, a facing.

All common practice.
"""

from __future__ import annotations

from tapewise_core.sewing.body import MELTS
from tapewise_core.sewing.work import Work
from tapewise_core.text.told import About, Told, said


def ring(work: Work) -> tuple[Told, ...]:
    """A band's ends joined."""
    return (
        said(
            "Join the band's ends into a ring, {} from the edge, {}; fold it lengthwise, wrong "
            "sides together, and press.",
            work.at,
            work.stitching.ring,
        ),
    )


def band(work: Work) -> tuple[Told, ...]:
    """A band sewn round a neckline without corners."""
    return (
        said(
            "Pin band and neckline together at the quarters: the join at centre back, the middle "
            "at centre front, and halfway round on both sides; not at the shoulder seams."
        ),
        said(
            "Sew the band on with the band uppermost, {} from the edge, stretching only the band: "
            "{}.",
            work.at,
            work.stitching.seam,
        ),
        said(
            "Try it on once more: the band lies flat. If it stands up it is too long, if the "
            "neckline puckers it is too short; unpick and mend it now."
        ),
        said("Press the allowance down into the body{}.", _topstitch(work)),
    )


def _topstitch(work: Work) -> str:
    stitch = work.stitching.topstitch
    return f"; topstitch it if you like: {stitch}" if stitch else ""


def mitre(work: Work) -> tuple[Told, ...]:
    """A band's ends joined at the point of a V."""
    return (
        said(
            "Fold the band lengthwise, wrong sides together, and press; open it again and join its "
            "ends, right sides together, along the drawn mitre, pivoting on the fold: {}. Trim to "
            "{} beyond the seam, snip into its corner as far as the stitches, fold the band again "
            "and press the point.",
            work.stitching.small,
            About(5),
        ),
    )


def v_band(work: Work) -> tuple[Told, ...]:
    """A mitred band sewn round a V."""
    return (
        _point_stayed(work),
        said(
            "Pin band and neckline together, right sides facing: the mitre at the point, the "
            "middle at centre back, and halfway round on both sides."
        ),
        said(
            "Sew from the point up one side, round the back and down the other side to the point, "
            "{} from the edge, stretching only the band, evenly between the pins; at the point "
            "the neckline lies uppermost, its snip spread so that the edge runs straight: {}.",
            work.at,
            work.stitching.seam,
        ),
        said(
            "Look at the point from the right side: seam and mitre meet. Press the allowance into "
            "the body{}.",
            _topstitch(work),
        ),
    )


def _point_stayed(work: Work) -> Told:
    """The point of a V held before it is snipped."""
    return said(
        "Stay the point of the neckline: {} within the allowance, close beside the stitch line, "
        "for {} to either side of the point. Snip the allowance there as far as these stitches, "
        "not through them.",
        work.stitching.small,
        About(30),
    )


def turned(work: Work) -> tuple[Told, ...]:
    """A neckline's own edge turned to the inside."""
    return (
        said(
            "Lay a narrow strip of clear elastic or fusible knit tape along the neckline's wrong "
            "side, inside the allowance and not stretched, so that the edge keeps its length."
        ),
        said(
            "Turn the neckline's edge in by {}, pin it in quarters, press ({}), and sew it {}. It "
            "must still pass the head.",
            work.at,
            MELTS,
            work.stitching.hem,
        ),
    )


def turned_v(work: Work) -> tuple[Told, ...]:
    """The same round a V, whose point has to be snipped to be turned."""
    return (_point_stayed(work), *turned(work))


def facing_ring(work: Work) -> tuple[Told, ...]:
    """A facing's own shoulders."""
    stitch = work.stitching.light
    way = f"{stitch}, pressed open" if stitch else work.stitching.seam
    return (
        said(
            "Join the facing's shoulders, right sides together, {} from the edge: {}. Neaten the "
            "facing's outer edge.",
            work.at,
            way,
        ),
    )


def facing(work: Work) -> tuple[Told, ...]:
    """A facing sewn to a neckline and turned to the inside."""
    return (_faced(work), _faced_inside(work))


def v_facing(work: Work) -> tuple[Told, ...]:
    """The same round a V, whose point is sewn and snipped before the rest."""
    return (
        said(
            "Pin the facing to the neckline, right sides together, and sew the point of the V "
            "first, {} from the edge, for {} to either side, turning sharply at the point: {}. "
            "Snip both allowances at the point as far as these stitches, not through them.",
            work.at,
            About(30),
            work.stitching.small,
        ),
        _faced(work),
        _faced_inside(work),
    )


def _faced(work: Work) -> Told:
    """An overlocked seam is not clipped: that would cut its threads."""
    stitch = work.stitching.light
    clip = "Clip the allowance where it curves, as far as the stitches." if stitch else NO_CLIP
    return said(
        "Sew the facing to the neckline, right sides together, shoulder seams matched, {} from "
        "the edge, with a stitch that stretches: {}. {}",
        work.at,
        stitch or work.stitching.seam,
        clip,
    )


NO_CLIP = "Do not clip the curve: that would cut the overlocker's threads."


def _faced_inside(work: Work) -> Told:
    return said(
        "Turn the facing to the inside; stitch it to the allowances close to the seam, so that it "
        "does not roll out: {}. Catch it down at the shoulder seams by hand.",
        work.stitching.light or "small backstitches by hand",
    )
