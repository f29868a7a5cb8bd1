"""A cowl: the front slashed from the fold to the shoulder and spread, so that a fold hangs.

F is the neck edge on the fold, F1 the side neck where it comes to lie, F2 where the shoulder stops
being turned. Slash and spread is common practice; how far it is spread is our geometry.
"""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge
from tapewise_core.errors import DraftError
from tapewise_core.frozen import dataclass
from tapewise_core.geometry.path import Path
from tapewise_core.parts.neck_style import NeckStyle
from tapewise_core.parts.shape.cowl import Turned, drape_of, half_edge, turned, widths
from tapewise_core.parts.shape.least import HAIR
from tapewise_core.text.told import Bound, OptionKey, Told, said
from tapewise_core.units import Length, mm

FACING = 50.0
"""How deep a cowl's facing is, cut in one with the front [mm] (common practice)."""

SHALLOWEST = 30.0
"""No neckline is asked for that lies less deep in front [mm] (our choice)."""


@dataclass(frozen=True, slots=True)
class Drape:
    """How far a cowl's fold hangs below the nape's level, and by how much the front's side neck is
    drawn higher than it lies when worn [mm]."""

    depth: Length
    raised: float = 0.0


def neck_edge(path: Path, style: NeckStyle, *, front: bool) -> Edge:
    """Return a half's neckline as an edge: a cowl's front has its facing above it."""
    width, slants = style.allowances.along("neckline"), front and style.pointed
    if front and style.cowl:
        width = FACING
    return Edge("neckline", path, width, style.turned, slants=slants)


def cowl_steps(draft: Draft, shoulder: Path, names: tuple[str, ...], wanted: Drape) -> Draft:
    """Return the draft with a cowl's shoulder and neck edge; ``names`` are the points of the
    shoulder as it would be.

    Raises DraftError where this shoulder cannot be turned so far.
    """
    drape = wanted.depth.mm - shoulder.start.y - wanted.raised
    found = turned(shoulder, half_edge(shoulder.start.x, drape))
    if found is None:
        raise DraftError(_refused(shoulder, wanted))
    pivot, rest = names[-1], names[1:]
    if found.pivot < shoulder.length() - HAIR:
        called = "where the shoulder stops being turned"
        by = mm(found.pivot)
        draft, pivot = draft.along(names[0], names[1], "F2", by, called), "F2"
        rest = (pivot, *rest)
    draft = draft.note(*_slashes(names[0], pivot, found))
    draft = _edge(draft, found, drape)
    draft = draft.curve("shoulder", found.path, ("F1", *rest), MANNER)
    return draft.rule("neckline", "F", "F1", remark=SQUARE)


MANNER = "It is as long as before it was turned."
SQUARE = "square to the fold"


def _slashes(neck: str, pivot: str, found: Turned) -> Told:
    """How it is done with scissors; the points that follow are where it comes to lie."""
    return said(
        "Slash and spread: cut the front from the fold, above the bust, up to {}, and to two more "
        "points of the shoulder within {} of it towards {}, not through its seam line. Spread the "
        "slashes alike, {} together, until the shoulder stands upright at the neck; {} then lies "
        "at F1.",
        pivot, mm(found.bend), neck, f"{found.opened:.0f}°", neck,
    )  # fmt: skip


def _edge(draft: Draft, found: Turned, drape: float) -> Draft:
    """The neck edge: level, and half as long as a line that hangs as deep as asked."""
    height, half = found.path.start.y, found.path.start.x
    called = "the neck edge on the fold, which goes straight on"
    verb = draft.up if height < 0 else draft.down
    if abs(height) < HAIR:
        draft = draft.across("N", "F1", mm(half), _half_words(drape))
        return draft.inward("F1", "F", mm(half), called)
    draft = verb("N", "F", mm(abs(height)), called)
    return draft.across("F", "F1", mm(half), _half_words(drape))


def _half_words(drape: float) -> Told:
    return said(
        "the side neck, spread: half of an edge that hangs {} below a straight one", mm(drape)
    )


def _refused(shoulder: Path, wanted: Drape) -> Told:
    """What this shoulder allows, as the option is asked: below the nape's level."""
    wide, above = shoulder.start.x, shoulder.start.y + wanted.raised
    least, most = (drape_of(wide, half) + above for half in widths(shoulder))
    least = max(least, SHALLOWEST)
    if most < least:
        words = "A cowl cannot be spread from so short a shoulder; take a smaller {}."
        return said(words, OptionKey("neck-half-width"))
    return said(
        "A cowl of {} {} cannot be spread from this shoulder: take {} to {}, or change {}.",
        OptionKey("neck-depth"), wanted.depth, Bound(least, "up"), Bound(most, "down"),
        OptionKey("neck-half-width"),
    )  # fmt: skip
