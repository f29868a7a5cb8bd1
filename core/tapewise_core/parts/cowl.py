"""A cowl: the front slashed from the fold to the shoulder and spread, so that a fold hangs.

F is the neck edge on the fold, F1 the side neck where it comes to lie, F2 where the shoulder stops
being turned. Slash and spread is common practice; how far it is spread is our geometry.
"""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge
from tapewise_core.errors import DraftError
from tapewise_core.geometry.path import Path
from tapewise_core.parts.neck_style import NeckStyle
from tapewise_core.parts.shape.cowl import Turned, drape_of, half_edge, turned, widths
from tapewise_core.parts.shape.least import HAIR
from tapewise_core.text.amounts import Bound
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import Length, mm

FACING = 50.0
"""How deep a cowl's facing is, cut in one with the front [mm] (common practice)."""

NARROW = 5.0
"""Where no more than this is left to choose, no cowl is offered [mm] (our choice)."""


def neck_edge(path: Path, style: NeckStyle, *, front: bool) -> Edge:
    """Return a half's neckline as an edge: a cowl's front has its facing above it."""
    width, slants = style.allowances.along("neckline"), front and style.pointed
    if front and style.cowl:
        width = FACING
    return Edge("neckline", path, width, style.turned, slants=slants)


def cowl_steps(draft: Draft, shoulder: Path, names: tuple[str, ...], hangs: Length) -> Draft:
    """Return the draft with a cowl's shoulder and neck edge; ``names`` are the points of the
    shoulder as it would be, ``hangs`` is how far the fold hangs below the side necks.

    Raises DraftError where this shoulder cannot be turned so far.
    """
    found = turned(shoulder, half_edge(shoulder.start.x, hangs.mm))
    if found is None:
        raise DraftError(_refused(shoulder, hangs))
    pivot, rest = names[-1], names[1:]
    if found.pivot < shoulder.length() - HAIR:
        called = "where the shoulder stops being turned"
        by = mm(found.pivot)
        draft, pivot = draft.along(names[0], names[1], "F2", by, called), "F2"
        rest = (pivot, *rest)
    draft = draft.note(*_slashes(names[0], pivot, found))
    draft = _edge(draft, found, mm(shoulder.start.x), hangs)
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


def _edge(draft: Draft, found: Turned, wide: Length, hangs: Length) -> Draft:
    """The neck edge: level, and half as long as a chain that hangs as deep as asked."""
    height = found.path.start.y
    half = wide.called("half of the way across") + _added(found, wide)
    says = _hangs(hangs)
    called = "the neck edge on the fold, which goes straight on"
    if abs(height) < HAIR:
        return draft.across("N", "F1", half, says).inward("F1", "F", half, called)
    verb = draft.up if height < 0 else draft.down
    return verb("N", "F", mm(abs(height)), called).across("F", "F1", half, says)


def _added(found: Turned, wide: Length) -> Length:
    """What the slashes add to a half's neck edge."""
    return mm(found.path.start.x - wide.mm).called("spread")


def _hangs(hangs: Length) -> Told:
    """A chain pinned at both side necks is the trade's measure of a drape (common practice)."""
    return said("the side neck, spread: half of a chain that hangs {} below the side necks", hangs)


def _refused(shoulder: Path, hangs: Length) -> Told:
    """What this shoulder allows."""
    least, most = (drape_of(shoulder.start.x, half) for half in widths(shoulder))
    if most < least + NARROW:
        words = "A cowl cannot be spread from so short a shoulder; take a smaller {}."
        return said(words, OptionKey("neck-half-width"))
    so = "deep" if hangs.mm > most else "high"
    return said(
        "A cowl spread from this shoulder cannot hang so {}: {} is {}; take {} to {}, or change "
        "{}.",
        so, OptionKey("cowl-depth"), hangs, Bound(least, "up"), Bound(most, "down"),
        OptionKey("neck-half-width"),
    )  # fmt: skip
