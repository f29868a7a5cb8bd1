"""Sewing the seams that close a garment: sides and underarms, and a skirt's panels.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.seam import SeamKind
from tapewise_core.sewing.amounts import times_sewn
from tapewise_core.sewing.edges import SLIT, TAKEN_OUT, VENT
from tapewise_core.sewing.operation import Lies, Meeting, Operation, Sort, Stage
from tapewise_core.sewing.stitches import STRETCHED
from tapewise_core.sewing.way import Way, Work, made_so, of_kind
from tapewise_core.text.told import LineName, Told, said
from tapewise_core.units import mm


def sides(work: Work) -> tuple[Operation, ...]:
    """Underarm and side in one, as far as a slit leaves them to be sewn."""
    pockets = of_kind(work.pattern, SeamKind.POCKET)
    bags = ", going round each pocket's bag instead of across its opening" if pockets else ""
    stitch, ease = work.stitching.seam, _full(work)
    do = said(
        "Sew {} from the {} to the {}{}{}, {}{} from the edge: {}.",
        *_named(work), _end(work), bags, work.matched(*_underarm(work)),
        (*ease, ", ") if ease else (), work.at, stitch.words,
    )  # fmt: skip
    meets = (*work.joins(), *(Meeting(bag.first) for bag in pockets))
    press = "Press towards the back, pockets towards the front." if pockets else PRESS_BACK
    gathers = _gathers(work)
    return (
        *gathers,
        work.do(
            "sides", "Close the sides", do, Stage.CLOSE, meets=meets, lies=Lies.FLAT,
            closes=True, stitches=(stitch,), ease=ease, press=(press,),
            check=(TAKEN_OUT,) if gathers else (),
        ),
    )  # fmt: skip


def _gathers(work: Work) -> tuple[Operation, ...]:
    """Where a side's extra is gathered in: how it is drawn up before the seam is sewn."""
    found = [seam for seam in work.seams if seam.fullness and seam.fullness.gathered]
    if not found:
        return ()
    stitch = work.stitching.gathering
    do = said(
        "Gather each side of the {} between its two notches: {} within its allowance, the threads "
        "left long; draw up one thread of each until it lies on the other edge between the "
        "notches there, and spread the gathers evenly.",
        LineName(found[0].first[0].piece), stitch.words,
    )  # fmt: skip
    return (
        work.do(
            "sides-gather", "Gather the sides", do, Stage.CLOSE, sort=Sort.PREPARE,
            stitches=(stitch,),
        ),
    )  # fmt: skip


PRESS_BACK = "Press towards the back."


def _named(work: Work) -> tuple[str, str]:
    """What the seams are called, and where they begin."""
    names = {name for seam in work.seams for run in seam.first for name in run.edges}
    kinds = {seam.kind for seam in work.pattern.seams}
    sleeved = {SeamKind.SLEEVE, SeamKind.SLEEVE_HEM} & kinds
    if {name.removesuffix("_2") for name in names} >= {"underarm", "side"} or (
        sleeved and _sewn_with_sleeve(work)
    ):
        return "underarm and side seams in one go", "sleeve's hem"
    return "the side seams", "underarm"


def _sewn_with_sleeve(work: Work) -> bool:
    """Say whether the sleeve's own seam is among these, or grown on."""
    pieces = {run.piece for seam in work.seams for run in seam.first}
    return "sleeve" in pieces or not of_kind(work.pattern, SeamKind.SLEEVE)


def _underarm(work: Work) -> tuple[str, ...]:
    """What is matched besides notches where a sleeve is closed in one with the side."""
    return ("underarm",) if _named(work)[1] == "sleeve's hem" else ()


def _full(work: Work) -> Told:
    """What one side has more, and how it is taken in."""
    found = [(seam.first[0].piece, seam.fullness) for seam in work.seams if seam.fullness]
    if not found:
        return ()
    piece, fullness = found[0]
    how = "gathered" if fullness.gathered else "eased"
    words = f"the {{}}'s extra {{}} {how} in between its two notches"
    return said(words, LineName(piece), mm(fullness.more))


def _end(work: Work) -> Told:
    """Where the side seams end."""
    if of_kind(work.pattern, SeamKind.WAIST):
        return ("waist",)
    slits = made_so(work.pattern, SLIT)
    if not slits:
        return ("hem",)
    high = max(work.pattern.run_length(slit.first) for slit in slits)
    return said("top of the slit, {} above the hem", mm(high))


def panels(work: Work) -> tuple[Operation, ...]:
    """The seams between a skirt's own pieces."""
    stitch = work.stitching.seam
    one = sum(times_sewn(work.pattern, seam) for seam in work.seams) == 1
    opened = _opened(work)
    gently = "," * bool(opened) + " without pulling"
    do = said(
        "Sew the skirt's {}, right sides together, {} from the edge, from the waist down{}{}: {}.",
        "seam" if one else "seams", work.at, opened, "" if stitch is STRETCHED else gently,
        stitch.words,
    )  # fmt: skip
    return (
        work.do(
            "panels", "Sew the skirt's seams", do, Stage.CLOSE, meets=work.joins(),
            lies=Lies.FLAT, closes=True, stitches=(stitch,), press=("Press to one side.",),
        ),
    )  # fmt: skip


def _opened(work: Work) -> Told:
    """How far down a skirt's seams are sewn, where slits or a vent open them."""
    if made_so(work.pattern, VENT):
        return (" to the hem, at the centre back to the vent's underlap",)
    slits = made_so(work.pattern, SLIT)
    if not slits:
        return ()
    high = max(work.pattern.run_length(slit.first) for slit in slits)
    return said(" to the top of the slits, {} above the hem", mm(high))


SIDES_CLOSED = Way("sides closed", sides)
PANELS = Way("panels joined", panels)
