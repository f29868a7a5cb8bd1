"""The lower side seam and the hem of a top's back, for any length."""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.errors import DraftError
from tapewise_core.garments.side_seam import SideSeam
from tapewise_core.garments.sleeve import Underarm
from tapewise_core.geometry.crossings import distance_at_height, point_at_height
from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.units import Length, Unit, mm

CURVED_PART = 0.3
"""The share of the hem's width, next to the side, over which it rises to meet the seam square."""


def straight_hem(draft: Draft, seam: SideSeam, underarm: Underarm, length: Length) -> Draft:
    """Return the draft with its underarm, side seam and hem drawn.

    The hem is straight and square to the centre; near a leaning side seam it
    rises so that it meets the seam square and hangs level (the rise is the
    hem's last part times the lean: exact arithmetic).
    """
    side, lean = _to_hem(seam, length.mm)
    draft = _draw_underarm(draft, underarm)
    whole = underarm.rounding.then(side) if underarm.rounding else side
    draft = _mark_corner(draft, side.end)
    names = (_underarm_name(draft), "V", "G") if underarm.rounding else (_underarm_name(draft), "G")
    if "M" not in names and side.end.y > seam.hip.y:
        names = (*names, "M")
    manner = "One gentle curve to the hip line, without a corner at the waist; straight below."
    draft = draft.curve("side", whole, names, manner, _waist(draft, whole))
    path = hem_path(draft["B"], side.end, lean)
    return draft.curve("hem", path, ("B", "M"), HEM_MANNER)


HEM_MANNER = "Straight and square to the centre, rising only near the side to meet the seam square."


def hem_path(centre: Point, side: Point, lean: float) -> Path:
    """Return a hem square to the centre and to a side seam that leans outwards by ``lean``."""
    run = side.x * CURVED_PART
    return curved(centre, Point(side.x * 0.5, centre.y), side + Vector(-run, run * lean), side)


def _to_hem(seam: SideSeam, hem: float) -> tuple[Path, float]:
    """The side seam cut or lengthened to the hem, and its lean there."""
    if hem > seam.hip.y:
        rise = seam.hip.x * CURVED_PART * seam.lean
        drop = max(hem - rise - seam.hip.y, 0.0)
        end = seam.hip + Vector(drop * seam.lean, drop)
        below = ruled(seam.hip, end) if drop > 0.1 else None
        return (seam.path.then(below) if below else seam.path), seam.lean
    return _cropped(seam.path, hem)


def _cropped(path: Path, hem: float) -> tuple[Path, float]:
    end = point_at_height(path, hem)
    if end is None:
        raise DraftError(
            f"The hem at {Unit.CM.spell(hem)} below the nape would lie above the underarm at "
            f"{Unit.CM.spell(path.start.y)}; choose a longer body-length."
        )
    for _ in range(4):
        distance = distance_at_height(path, end.y)
        along = path.at(distance or 0.0)[1]
        lean = along.x / along.y
        end = point_at_height(path, hem - end.x * CURVED_PART * lean) or end
    distance = distance_at_height(path, end.y) or 0.0
    return path.split(distance)[0], lean


def _draw_underarm(draft: Draft, underarm: Underarm) -> Draft:
    """The sleeve's own underarm seam, where it has one."""
    if underarm.seam is None or underarm.corner is None:
        return draft
    by = mm((underarm.point - underarm.corner).length())
    check = ("U", underarm.point, "C", by, "at its nearest: the underarm point")
    manner = "Straight from H to Y, then round towards V without a corner."
    return draft.curve("underarm", underarm.seam, ("H", "Y"), manner, (check,))


def _mark_corner(draft: Draft, end: Point) -> Draft:
    """The side's end at the hem, told from the centre back."""
    rise = draft["B"].y - end.y
    if abs(rise) < 0.05:
        return draft.across("B", "M", mm(end.x), "the side at the hem")
    draft = draft.across("B", "Z", mm(end.x), "below the side at the hem")
    verb = draft.up if rise > 0 else draft.down
    return verb("Z", "M", mm(abs(rise)), "the side at the hem, where the seam's slant ends")


def _underarm_name(draft: Draft) -> str:
    return "U" if "U" in draft.sheet.points else "H"


def _waist(draft: Draft, side: Path) -> tuple[tuple[str, Point, str, Length, str], ...]:
    at = point_at_height(side, draft["W"].y)
    if at is None:
        return ()
    return (("D", at, "W", mm(at.x), "on the waist line, and not inside I"),)
