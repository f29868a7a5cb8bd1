"""The two-circle side seam on a draft: its quarters, its circles with the ruler, and its line.

Points are numbered from the underarm down: Q1 to Q4 stand on the seam at the underarm, the bust,
the waist and the hip; O1 to O4 are the circles' centres, K1 to K4 where the ruler touches them;
F and C mark the way to a curve that is no circle, V the seam moved for the front's or the back's
share of the cup.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.guide_steps import Beside, Light, Off, Ruler
from tapewise_core.geometry.crossings import point_at_height
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.parts.shape.bends import Bend
from tapewise_core.parts.shape.shares import Share
from tapewise_core.parts.shape.side_seam import SideSeam
from tapewise_core.text.told import Told, said
from tapewise_core.units import Length, mm

HAIR, CURVED = 0.05, 0.5
"""Nobody sets off less, nor marks a point of a curve that lies less beside its chord [mm]."""

PLACES = (0.25, 0.5, 0.75)
"""Between bust and hip the seam is moved at these shares of the way (our choice)."""


@dataclass(frozen=True, slots=True)
class Fold:
    """The names of the points on the fold from which the seam's own points are set off."""

    underarm: str
    bust: str
    waist: str
    hip: str | None


@dataclass(frozen=True, slots=True)
class SeamQuarters:
    """Bust and hip in quarters with their ease, with the working that a person reads."""

    bust: Length
    hip: Length


SEAM = "side seam"
"""The guide's name, from which back and front are traced where their shares differ."""

MANNER = said("Upright at the underarm and at the waist; round the circles and along the ruler.")


def seam_steps(draft: Draft, seam: SideSeam, fold: Fold, wide: SeamQuarters) -> Draft:
    """Return the draft with the seam's points, circles and rulers, but not yet its line."""
    draft = _quarters(draft, seam, fold, wide)
    parts = [(seam.trial.upper, "Q2", (1, 2))]
    if fold.hip is not None and seam.trial.lower is not None:
        parts.append((seam.trial.lower, "Q4", (3, 4)))
    for part, end, numbers in parts:
        if isinstance(part, Bend):
            draft = _circles(draft, part, end, numbers)
        else:
            ends = ("Q2", "Q3") if end == "Q2" else ("Q3", "Q4")
            draft, _ = on_curve(draft, part, ends)
    return draft


def _quarters(draft: Draft, seam: SideSeam, fold: Fold, wide: SeamQuarters) -> Draft:
    top = seam.path.start
    waist = point_at_height(seam.path, seam.at.waist) or seam.path.end
    draft = draft.across(fold.bust, "Q2", _exact(wide.bust, seam.width(seam.at.bust)), BUST)
    draft = draft.across(fold.underarm, "Q1", mm(top.x), _underarm_words(top.x, draft["Q2"].x))
    draft = draft.across(fold.waist, "Q3", mm(waist.x), _waist_words(seam))
    if fold.hip is None:
        return draft
    return draft.across(fold.hip, "Q4", _exact(wide.hip, seam.path.end.x), _hip_words(seam))


def _exact(told: Length, drawn: float) -> Length:
    """The working where it is what is drawn."""
    return told if abs(told.mm - drawn) < 0.01 else mm(drawn)


BUST = "the side on the bust line, a quarter of the bust with its ease"


def _underarm_words(top: float, bust: float) -> str:
    if abs(top - bust) < HAIR:
        return "the side on the underarm's line, straight above Q2"
    return "the side on the underarm's line"


def _waist_words(seam: SideSeam) -> Told:
    words: Told = ("the side on the waist line, gone in as the waist shaping says",)
    if seam.dart > HAIR:
        words += said(", and {} for a waist dart", mm(seam.dart))
    if seam.kept > HAIR:
        words += said(", and {} more, so that the seam stays smooth", mm(seam.kept))
    return words


def _hip_words(seam: SideSeam) -> str:
    if seam.wider_hip > HAIR:
        return "the side on the hip line, let out to hang from the wider waist"
    return "the side on the hip line, a quarter of the hip with its ease"


def _circles(draft: Draft, part: Bend, end: str, numbers: tuple[int, int]) -> Draft:
    """Centre and radius of both circles, and the ruler that touches them."""
    inner, outer = (f"O{n}" for n in numbers)
    draft = _centre(draft, "Q3", inner, part.inner_centre - part.waist)
    if part.outer and part.angle - part.end_angle > 1e-9:
        draft = _centre(draft, end, outer, part.outer_centre - part.end)
        touched = (part.from_waist, part.to_end)
        names = tuple(f"K{n}" for n in numbers)
        return draft.then(Ruler((inner, outer), names, touched, ("Q3", end)))
    return draft.then(Ruler((inner, end), (f"K{numbers[0]}",), (part.from_waist,), ("Q3",)))


def _centre(draft: Draft, start: str, name: str, way: Vector) -> Draft:
    """A circle's centre: square across, or square to the slope in which the seam goes on."""
    called, radius = f"the centre of a circle through {start}", mm(way.length())
    if abs(way.y) < HAIR:
        verb = draft.across if way.x > 0 else draft.inward
        return verb(start, name, radius, called)
    angle = math.degrees(math.atan2(abs(way.y), abs(way.x)))
    side, height = "right" if way.x > 0 else "left", "below" if way.y > 0 else "above"
    where = f"to the {side}, {angle:.1f}° {height} level,"
    return draft.toward(start, name, radius, way, where, called)


def on_curve(draft: Draft, path: Path, ends: tuple[str, str]) -> tuple[Draft, tuple[str, ...]]:
    """Return the draft with points on a curve, and their names: so far along the line of its ends,
    so far out from there.

    F numbers the feet on the straight line, C the points on the curve, going on from those there.
    """
    number = 1 + max((int(p[1:]) for p in draft.paper.points if _is_curve(p)), default=0)
    start = draft[ends[0]]
    places: list[Off] = []
    chord = (draft[ends[1]] - start).unit()
    right = chord.square() if chord.square().x > 0 else -chord.square()
    for share in PLACES:
        way = path.at(path.length() * share)[0] - start
        out = way.dot(right)
        if abs(out) >= CURVED:
            at = number + len(places)
            side = "right" if out > 0 else "left"
            places.append(Off(f"F{at}", f"C{at}", mm(way.dot(chord)), mm(abs(out)), side))
    names = tuple(place.name for place in places)
    return (draft.then(Beside(*ends, tuple(places))) if places else draft), names


def set_off(draft: Draft, start: str, name: str, to: Point, called: str | Told) -> Draft:
    """Return the draft with a point set off from one on the fold: square across, then up or down.

    H followed by the point's name is the help point between.
    """
    way = to - draft[start]
    out = draft.across if way.x > 0 else draft.inward
    if abs(way.y) < HAIR:
        return out(start, name, mm(abs(way.x)), called)
    beside = f"H{1 + sum(point[0] == 'H' for point in draft.paper.points)}"
    draft = out(start, beside, mm(abs(way.x)), f"a help for {name}")
    verb = draft.down if way.y > 0 else draft.up
    return verb(beside, name, mm(abs(way.y)), called)


def _is_curve(name: str) -> bool:
    return name[0] == "C" and name[1:].isdigit()


def seam_names(draft: Draft) -> tuple[str, ...]:
    """Return the points of the seam from the top down."""
    named = [(draft[name].y, name) for name in draft.paper.points if _on_seam(name)]
    return tuple(name for _, name in sorted(named))


def _on_seam(name: str) -> bool:
    return name[0] in "QKC" and name[1:].isdigit()


def seam_line(draft: Draft, path: Path, share: Share) -> Draft:
    """Return the draft with the seam drawn: as ``side`` where back and front share one line, as a
    guide where each is to be moved by its own share."""
    names = seam_names(draft)
    if share.bust == share.hip == 0.0:
        return draft.curve("side", path, names, MANNER)
    return draft.then(Light(SEAM, path, names, MANNER))
