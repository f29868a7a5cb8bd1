"""Darts and a front's side told with pencil and ruler.

D1 and D2 are the side dart's mouth from the top down, D3 its tip, D5 the mouth's middle and D4
the peak that its fold makes in the cut line; R numbers the points of a waist dart.
"""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.geometry.crossings import distance_at_height
from tapewise_core.parts.seam_steps import set_off
from tapewise_core.parts.shape.side_dart import FrontSide, SideDart
from tapewise_core.parts.shape.waist_darts import WaistDart
from tapewise_core.text.told import said
from tapewise_core.units import mm


def side_dart_steps(draft: Draft, front: FrontSide, top: str, bust: str, end: str) -> Draft:
    """Return the draft with a front's side and its dart.

    ``top`` is the underarm, ``bust`` the point on the fold at the bust line, ``end`` the corner at
    the hem; both ends are on the paper.
    """
    dart, lower = front.dart, front.lower
    if dart is None or lower is None:
        raise ValueError("a front without a dart")
    draft = set_off(draft, bust, "D1", dart.upper, "the upper end of the dart's mouth")
    draft = set_off(draft, bust, "D2", dart.lower, "the lower end of the dart's mouth")
    draft = set_off(draft, bust, "D3", dart.tip, "the dart's tip")
    draft = draft.curve("side", front.upper, (top, "D1"))
    draft = draft.rule("dart_upper", "D1", "D3").rule("dart_lower", "D3", "D2", remark="as long")
    manner = "The dart closed, it is as long as the back's side."
    return _peak(draft.curve("side_2", lower, ("D2", end), manner), dart)


def _peak(draft: Draft, dart: SideDart) -> Draft:
    """The folded dart's corner, for the cut line."""
    called = "the middle of the dart's mouth"
    draft = draft.along("D1", "D2", "D5", mm(dart.intake / 2), called)
    mouth = (draft["D2"] - draft["D1"]).unit()
    out = (dart.peak - draft["D5"]).dot(mouth.square())
    if abs(out) < 0.05:
        return draft
    called = "the corner of the mouth when the dart is folded downwards"
    return draft.square(("D1", "D2"), "D4", mm(out), called, at="D5")


def eased_side_steps(
    draft: Draft, front: FrontSide, top: str, waist: tuple[str, float], end: str
) -> Draft:
    """Return the draft with a front's side that is eased or gathered to the back's.

    ``waist`` is the point on the fold at the waist and how far the front is let down [mm].
    """
    fold, lower = waist
    path = front.upper
    at = distance_at_height(path, draft[fold].y + lower)
    if at is None or at > path.length() - 1:
        return draft.curve("side", path, (top, end))
    called = said("the side on the waist line, let down by {}", mm(lower))
    draft = set_off(draft, fold, "D1", path.at(at)[0], called)
    return draft.curve("side", path, (top, "D1", end))


def waist_dart_steps(draft: Draft, dart: WaistDart, waist: str) -> Draft:
    """Return the draft with a waist dart; ``waist`` is the point on the fold at the waist."""
    half = mm(dart.intake / 2)
    draft = draft.across(waist, "R1", mm(dart.middle), "the middle of the waist dart")
    draft = draft.up("R1", "R2", mm(dart.waist - dart.top), "the dart's upper end")
    draft = draft.inward("R1", "R3", half, "one side of the dart")
    draft = draft.across("R1", "R4", half, "its other side")
    if dart.bottom <= dart.waist:
        return draft.rule("waist_dart", "R3", "R2", "R4")
    draft = draft.down("R1", "R5", mm(dart.bottom - dart.waist), "the dart's lower end")
    return draft.rule("waist_dart", "R2", "R4", "R5", "R3", "R2")
