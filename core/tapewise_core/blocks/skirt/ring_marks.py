"""The marks by which a skirt meets a bodice."""

from __future__ import annotations

from tapewise_core.blocks.skirt.ring import Ring
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Notch
from tapewise_core.parts.waist_seam import Mark


def waist_marks(skirt: Ring, count: int, back: float) -> tuple[Mark, ...]:
    """Return the marks of half the waist, walked from the centre back [mm].

    ``back`` is the bodice's waist from there to its side seam. Panels are marked
    by their seams, fewer pieces by side and centre front.
    """
    if count > 2:
        apart = skirt.waist / count
        return tuple(Mark(apart * number, "panel seam") for number in range(1, count // 2 + 1))
    return (Mark(back, "side at the waist", 2), Mark(skirt.waist / 2, "centre front"))


def notches_on(name: str, draft: Draft, marks: tuple[Mark, ...]) -> tuple[Notch, ...]:
    """Return the marks that fall on one of the skirt's pieces."""
    edge = draft.paper.line("waist").length()
    if name == "skirt_panel":
        return (Notch("waist", edge, marks[0].pair),)
    found = []
    for mark in marks:
        at = _on_edge(name, edge, mark.distance)
        if -0.5 <= at <= edge + 0.5:
            found.append(Notch("waist", min(max(at, 0.0), edge), mark.pair, mark.strokes))
    return tuple(found)


def _on_edge(name: str, edge: float, distance: float) -> float:
    """Where a distance from the centre back lies on a piece's own waist, walked from its fold."""
    if name == "skirt":
        return edge - distance
    return distance if name == "skirt_back" else 2 * edge - distance
