"""The lower side seam and the hem of a top: straight, curved or split, at any length."""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.passing import Passing
from tapewise_core.errors import DraftError
from tapewise_core.geometry.crossings import distance_at_height, point_at_height
from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.parts.hem_style import HemStyle
from tapewise_core.parts.side_seam import SideSeam
from tapewise_core.parts.underarm import Underarm
from tapewise_core.text.told import LineName, OptionKey, said
from tapewise_core.units import mm

CURVED_PART = 0.3
"""The share of the hem's width, next to the side, over which it rises to meet the seam square."""

HEM_MANNER = "Straight and square to the centre, rising only near the side to meet the seam square."

CURVED_MANNER = (
    "Square to the centre and flat there, then up in one swing and level again towards the side, "
    "to meet the seam square."
)

HEM, WAIST_SEAM = "hem", "waist_seam"
"""What a body's lower edge is: its line's name, by which every step calls it."""

EDGE_OF = {HEM: "hem", WAIST_SEAM: "waist"}
"""Such a line's name to that of the edge which the pieces have there."""


def lower_of(draft: Draft) -> str:
    """Return the name of the line at which a finished draft of the body ends."""
    return WAIST_SEAM if WAIST_SEAM in draft.paper.lines else HEM


def side_and_underarm(
    draft: Draft, seam: SideSeam, underarm: Underarm, style: HemStyle, lower: str = HEM
) -> tuple[Draft, float]:
    """Return the draft with its underarm and side seam drawn, and the side's lean at the hem.

    Near a leaning side seam the hem rises so that it meets the seam square and
    hangs level: by its last part times the lean, exact arithmetic.
    """
    rise = style.rise.mm if style.curved else 0.0
    side, lean = _to_hem(seam, draft["B"].y - rise, lower)
    draft = draw_underarm(draft, underarm)
    return slit_told(draw_side(draft, side, underarm, lower), style), lean


def slit_told(draft: Draft, style: HemStyle) -> Draft:
    """Return the draft with a word on where the side seam ends, if it has a slit."""
    if not style.split:
        return draft
    return draft.note(
        "Mark the slit: from M measure ",
        style.slit,
        " up along the side; there the side seam ends.",
    )


def draw_side(draft: Draft, side: Path, underarm: Underarm, lower: str) -> Draft:
    """Return the draft with its side seam and the corner at the hem."""
    whole = underarm.rounding.then(side) if underarm.rounding else side
    draft = mark_corner(draft, side.end, lower)
    names = (_underarm_name(draft), "V", "G") if underarm.rounding else (_underarm_name(draft), "G")
    if side.end.y < draft["G"].y - 0.05:
        names = (*names[:-1], "M")
    elif side.end.y > draft["G"].y + 0.05:
        names = (*names, "M")
    manner = "One gentle curve to the hip line, without a corner at the waist; straight below."
    return draft.curve("side", whole, names, manner, waist_check(draft, whole))


def hem_line(draft: Draft, centre: str, lean: float, style: HemStyle, lower: str = HEM) -> Draft:
    """Return the draft with its lower edge drawn from a point on the centre to M at the side."""
    side = draft.paper.line("side").end
    if style.curved:
        path, manner = curved_hem(draft[centre], side, lean), CURVED_MANNER
    else:
        path, manner = hem_path(draft[centre], side, lean), HEM_MANNER
    return draft.curve(lower, path, (centre, "M"), manner)


def hem_path(centre: Point, side: Point, lean: float) -> Path:
    """Return a hem square to the centre and to a side seam that leans outwards by ``lean``."""
    run = side.x * CURVED_PART
    return curved(centre, Point(side.x * 0.5, centre.y), side + Vector(-run, run * lean), side)


def curved_hem(centre: Point, side: Point, lean: float) -> Path:
    """Return a hem that rises to the side in one swing and ends square to both."""
    run = side.x * 0.32
    return curved(centre, Point(side.x * 0.55, centre.y), side + Vector(-run, run * lean), side)


def _to_hem(seam: SideSeam, hem: float, lower: str) -> tuple[Path, float]:
    """The side seam cut or lengthened to the hem, and its lean there."""
    rise = seam.hip.x * CURVED_PART * seam.lean
    drop = hem - rise - seam.hip.y
    if drop < 0:
        return _cropped(seam.path, hem, lower)
    if drop < 0.1:
        return seam.path, seam.lean
    end = seam.hip + Vector(drop * seam.lean, drop)
    return seam.path.then(ruled(seam.hip, end)), seam.lean


def _cropped(path: Path, hem: float, lower: str) -> tuple[Path, float]:
    """The side seam cut off where a hem that meets it square ends, found by closing in."""
    end = point_at_height(path, hem) or path.end
    if hem <= path.start.y:
        raise DraftError(
            said(
                "The {} at {} below the nape would lie above the underarm at {}; choose a longer "
                "{}.",
                LineName(lower),
                mm(hem),
                mm(path.start.y),
                OptionKey("body-length"),
            )
        )
    lean = 0.0
    for _ in range(6):
        along = path.at(distance_at_height(path, end.y) or 0.0)[1]
        lean = along.x / along.y
        end = point_at_height(path, hem - end.x * CURVED_PART * lean) or end
    distance = distance_at_height(path, end.y) or 0.0
    return path.split(distance)[0], lean


def draw_underarm(draft: Draft, underarm: Underarm) -> Draft:
    """Return the draft with the sleeve's own underarm seam, where it has one."""
    if underarm.seam is None or underarm.corner is None:
        return draft
    by = mm((underarm.point - underarm.corner).length())
    check = Passing("U", underarm.point, "C", by, "at its nearest: the underarm point")
    names = ("H", "Y") if underarm.upper is None else ("H", "T", "Y")
    bend = ", bent gently at T," if underarm.upper else ""
    manner = f"Straight from H to Y{bend} then round towards V without a corner."
    return draft.curve("underarm", underarm.seam, names, manner, (check,))


def mark_corner(draft: Draft, end: Point, lower: str) -> Draft:
    """Return the draft with the side's end at its lower edge, told from the centre back."""
    corner = said("the side at the {}", LineName(lower))
    rise = draft["B"].y - end.y
    if abs(rise) < 0.05:
        return draft.across("B", "M", mm(end.x), corner)
    draft = draft.across("B", "m", mm(end.x), ("below ", *corner))
    verb = draft.up if rise > 0 else draft.down
    return verb("m", "M", mm(abs(rise)), (*corner, ", where the seam's slant ends"))


def _underarm_name(draft: Draft) -> str:
    return "U" if "U" in draft.paper.points else "H"


def waist_check(draft: Draft, side: Path) -> tuple[Passing, ...]:
    """Return the check where a side seam passes the waist line, unless that is marked already."""
    if "D" in draft.paper.points:
        return ()
    at = point_at_height(side, draft["W"].y)
    if at is None:
        return ()
    return (Passing("D", at, "W", mm(at.x), "on the waist line, and not inside I"),)
