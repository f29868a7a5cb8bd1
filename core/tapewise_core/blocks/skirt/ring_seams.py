"""How a circle skirt's pieces are joined, to each other and at the waist, and its marks."""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Notch
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.parts.waistband import Marks
from tapewise_core.sewing.closing import PANELS


def waist_runs(count: int) -> tuple[EdgeRun, ...]:
    """Return the whole waist edge, walked from the centre back."""
    if count == 1:
        return (EdgeRun("skirt", ("waist",), 2, backwards=True),)
    if count == 2:
        front = EdgeRun("skirt_front", ("waist",), 2, backwards=True)
        return (EdgeRun("skirt_back", ("waist",), 2), front)
    return (EdgeRun("skirt_panel", ("waist",), count),)


def waist_notches(name: str, draft: Draft, marked: bool) -> tuple[Notch, ...]:
    """Return the marks on a piece's waist edge that meet a band's or a bodice's."""
    if not marked:
        return ()
    whole = draft.paper.line("waist").length()
    if name == "skirt":
        return (Notch("waist", 0.0, "centre front"), Notch("waist", whole / 2, "side at the waist"))
    if name == "skirt_front":
        return (Notch("waist", 0.0, "centre front"),)
    if name == "skirt_back":
        return (Notch("waist", whole, "side at the waist", 2),)
    return (Notch("waist", whole, "panel seam"),)


def waist_marks(count: int) -> Marks:
    """Return a band's marks, its join at the centre back."""
    if count > 2:
        return tuple((number / count, "panel seam") for number in range(1, count))
    return ((0.25, "side at the waist"), (0.5, "centre front"), (0.75, "side at the waist"))


def panel_seams(count: int) -> tuple[Seam, ...]:
    """Return the seams between the skirt's own pieces."""
    if count == 1:
        ends = (EdgeRun("skirt", ("centre_back",)),)
        return (Seam(SeamKind.PANEL, ends, ends, making=PANELS),)
    if count == 2:
        front, back = (EdgeRun(f"skirt_{name}", ("side",)) for name in ("front", "back"))
        return (Seam(SeamKind.PANEL, (front,), (back,), making=PANELS),)
    right, left = (EdgeRun("skirt_panel", (name,)) for name in ("side", "side_2"))
    return (Seam(SeamKind.PANEL, (right,), (left,), making=PANELS),)
