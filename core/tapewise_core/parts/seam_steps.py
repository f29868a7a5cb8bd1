"""A side seam's points on a draft, set off from the fold, and other points set off so.

Points are numbered from the underarm down: Q1 to Q4 stand on the seam at the underarm, the bust,
the waist and the hip.
"""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.ways import HELP
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.crossings import point_at_height
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.parts.shape.least import HAIR
from tapewise_core.parts.shape.side_seam import SideSeam
from tapewise_core.text.told import Told, said
from tapewise_core.units import Length, mm


class Fold(Frozen):
    """The names of the points on the fold from which the seam's own points are set off."""

    underarm: str
    bust: str
    waist: str
    hip: str | None


class SeamQuarters(Frozen):
    """Bust and hip in quarters with their ease, with the working that a person reads; ``more`` is
    what this half has more than the quarter at the bust and at the hip, less where it is below
    zero [mm]."""

    bust: Length
    hip: Length
    more: tuple[float, float] = (0.0, 0.0)


def seam_steps(
    draft: Draft, seam: SideSeam, side: Path, fold: Fold, wide: SeamQuarters
) -> tuple[Draft, tuple[str, ...]]:
    """Return the draft with the points of a half's ``side``, and their names from the top down.

    Only those that the side reaches are told, and not its end, which is the hem's corner; what
    they are is told by the ``seam``.
    """
    at = {
        "Q2": (fold.bust, _with(wide.bust, wide.more[0]), (*BUST, *_other(wide.more[0]))),
        "Q1": (fold.underarm, None, ("the side on the underarm's line",)),
        "Q3": (fold.waist, None, _waist_words(seam)),
    }
    if fold.hip is not None:
        quarter = _with(wide.hip, wide.more[1])
        passed = point_at_height(side, draft[fold.hip].y)
        flared = passed is not None and abs(passed.x - quarter.mm) > LET_OUT
        at["Q4"] = (fold.hip, quarter, (*_hip_words(seam, flared=flared), *_other(wide.more[1])))
    reached = {}
    for name, (start, told, words) in at.items():
        y = draft[start].y
        drawn = side.start if abs(side.start.y - y) < HAIR else point_at_height(side, y)
        if drawn is not None and (drawn - side.end).length() > HAIR:
            draft = draft.across(start, name, _exact(told, drawn.x), words)
            reached[name] = y
    return draft, tuple(sorted(reached, key=reached.__getitem__))


def _with(quarter: Length, more: float) -> Length:
    """A quarter and what this half has more or less."""
    return quarter + mm(more) if abs(more) >= HAIR else quarter


def _exact(told: Length | None, drawn: float) -> Length:
    """The working where it is what is drawn."""
    return told if told is not None and abs(told.mm - drawn) < 0.01 else mm(drawn)


BUST: Told = ("the side on the bust line, a quarter of the bust with its ease",)


def _other(more: float) -> Told:
    """What one half has more, the other has less."""
    if abs(more) < HAIR:
        return ()
    which, other = ("more", "back") if more > 0 else ("less", "front")
    return said(", and {} {} than the {}'s half of it", mm(abs(more)), which, other)


def _waist_words(seam: SideSeam) -> Told:
    words: Told = ("the side on the waist line, gone in as the waist shaping says",)
    if seam.dart > HAIR:
        words += said(", and {} for a waist dart", mm(seam.dart))
    if seam.kept > HAIR:
        words += said(", and {} more, so that the seam stays smooth", mm(seam.kept))
    return words


LET_OUT = 1.0
"""A hip that is wider than its quarter by more is let out [mm] (our choice)."""


def _hip_words(seam: SideSeam, *, flared: bool) -> Told:
    if seam.wider_hip > HAIR:
        return ("the side on the hip line, let out to hang from the wider waist",)
    if flared:
        return ("the side on the hip line, let out by the flare from the waist",)
    return ("the side on the hip line, a quarter of the hip with its ease",)


def set_off(draft: Draft, start: str, name: str, to: Point, called: str | Told) -> Draft:
    """Return the draft with a point set off from another: square across, then up or down.

    A help point stands between the two.
    """
    way = to - draft[start]
    if abs(way.x) < HAIR:
        return _upright(draft, start, name, way.y, called)
    out = draft.across if way.x > 0 else draft.inward
    if abs(way.y) < HAIR:
        return out(start, name, mm(abs(way.x)), called)
    beside = f"{HELP}{draft.paper.next_of(HELP)}"
    draft = out(start, beside, mm(abs(way.x)), f"a help for {name}")
    return _upright(draft, beside, name, way.y, called)


def _upright(draft: Draft, start: str, name: str, by: float, called: str | Told) -> Draft:
    verb = draft.down if by > 0 else draft.up
    return verb(start, name, mm(abs(by)), called)


def on_line(draft: Draft, line: tuple[str, str], name: str, at: Point, called: str | Told) -> Draft:
    """Return the draft with a point measured along a line, or set off where it lies beside it."""
    start, way = draft[line[0]], at - draft[line[0]]
    along = (draft[line[1]] - start).unit()
    if abs(along.cross(way)) < HAIR and along.dot(way) > HAIR:
        return draft.along(*line, name, mm(along.dot(way)), called)
    return set_off(draft, line[0], name, at, called)
