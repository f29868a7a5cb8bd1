"""Sewing a waist: a skirt joined to a bodice, or held by a band or by an elastic in a casing.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.sewing.amounts import sewn_length
from tapewise_core.sewing.edges import sewn_down
from tapewise_core.sewing.operation import Laid, Lies, Meeting, Operation, Sort, Stage, Use
from tapewise_core.sewing.way import Elastic, Way, Work
from tapewise_core.text.amounts import About
from tapewise_core.text.told import joined as joined_words
from tapewise_core.text.told import said
from tapewise_core.units import mm

STAY = About(6, 10)
"""How wide the elastic is that stays a waist seam."""

PINNED = "the two edges are as long as each other, so neither is stretched"
PULLED = "stretch the drawn-in waist evenly to the skirt"


def joined(work: Work) -> tuple[Operation, ...]:
    """A skirt joined to a bodice on a stay, so that its weight does not pull the jersey out."""
    stitch = work.stitching.seam
    do = said("Sew the waist seam {} from the edge: {}.", work.at, stitch.words)
    pops = () if stitch.number == "301" else (STRAIGHT_POPS,)
    sewn = work.do(
        "waist", "Join bodice and skirt", joined_words((do, pops)), Stage.WAIST,
        meets=work.joins(), stitches=(stitch,), ease=(PULLED,) if work.elastic else (),
        press=("Press up, keeping the iron off the elastic: it melts.",),
        check=("Pull the dress on: no thread pops, and the waist seam lies level.",),
    )  # fmt: skip
    pin = said(
        "Pin bodice and skirt together, right sides facing, at centre front, centre back and "
        "sides; {}.",
        PULLED if work.elastic else PINNED,
    )
    pinned = work.do(
        "waist-pin", "Pin the skirt on", pin, Stage.WAIST, sort=Sort.PREPARE,
        after=("sides", "panels"),
    )  # fmt: skip
    return (_stayed(work, sewn), pinned, sewn)


STRAIGHT_POPS = "A straight stitch pops the first time it goes over the hips."


def _stayed(work: Work, sewn: Operation) -> Operation:
    if work.elastic:
        return _drawn_in(work, work.elastic)
    length = mm(sewn_length(work.pattern, sewn))
    do = said(
        "Stay the bodice's waist: clear elastic {} wide, cut to the waist seam's length, {}, and "
        "a little to hold, pinned in quarters and {} within the allowance without stretching it.",
        STAY, length, work.stitching.basted.words,
    )  # fmt: skip
    elastic = Use(said("clear elastic"), "the waist seam", length, said("{} wide", STAY))
    return work.do(
        "waist-stay", "Stay the bodice's waist", do, Stage.WAIST, sort=Sort.PREPARE,
        after=("sides",), stitches=(work.stitching.basted,), uses=(elastic,),
    )  # fmt: skip


def _drawn_in(work: Work, elastic: Elastic) -> Operation:
    """A waist let out for the hips, drawn in by its stay."""
    lapped = work.stitching.lapped
    do = said(
        "Stay the bodice's waist and draw it in: cut {} of clear elastic {} wide, lap its ends by "
        "{} and {}. It is pinned to the waist seam in quarters and {} within the allowance, "
        "stretched evenly to the seam.",
        mm(elastic.length), STAY, About(10), lapped.words, work.stitching.basted.words,
    )  # fmt: skip
    use = Use(said("clear elastic"), "the waist seam", mm(elastic.length), said("{} wide", STAY))
    return work.do(
        "waist-stay", "Draw the bodice's waist in", do, Stage.WAIST, sort=Sort.PREPARE,
        after=("sides",), stitches=(lapped, work.stitching.basted), uses=(use,),
        check=("Stretch it: elastic and seam pass the hips.",),
    )  # fmt: skip


def ring(work: Work) -> tuple[Operation, ...]:
    """A waistband's ends joined, once it was seen that it passes the hips."""
    stitch = work.stitching.ring
    tried = said(
        "Pin the waistband's ends together, {} from the edge, and pull it up over the hips before "
        "it is sewn: stretched, it must pass.",
        work.at,
    )
    do = said(
        "Join the waistband's ends into a ring, right sides together, {} from the edge: {}.",
        work.at, stitch.words,
    )  # fmt: skip
    fold = "fold the band lengthwise, wrong sides together, and press."
    press = f"F{fold[1:]}" if stitch.cuts else f"Press the join open, {fold}"
    return (
        work.do(
            "waistband-hips", "Try the waistband over the hips", tried, Stage.WAIST,
            sort=Sort.TEST,
        ),
        work.do(
            "waistband-ring", "Join the waistband's ends", do, Stage.WAIST, meets=work.joins(),
            lies=Lies.FLAT, stitches=(stitch,), press=(press,),
        ),
    )  # fmt: skip


def band(work: Work) -> tuple[Operation, ...]:
    """A band folded along its middle and stretched to the skirt's waist."""
    stitch = work.stitching.seam
    pin = said(
        "Pin band and skirt together at their marks, right sides facing, the band's join at the "
        "centre back."
    )
    do = said(
        "Sew the band on with the band uppermost, both its layers, {} from the edge, stretching "
        "only the band between the marks: {}.",
        work.at, stitch.words,
    )  # fmt: skip
    first = tuple(run for seam in work.seams for run in seam.first)
    second = tuple(run for seam in work.seams for run in seam.second)
    return (
        work.do(
            "waistband-pin", "Pin the waistband on", pin, Stage.WAIST, sort=Sort.PREPARE,
            after=("waistband-ring", "panels"),
        ),
        work.do(
            "waistband", "Sew the waistband on", do, Stage.WAIST,
            meets=(Meeting(work.whole(first), second, Laid.FOLDED),), stitches=(stitch,),
            ease=("stretch only the band, evenly between the marks",),
            press=("Press the allowance down into the skirt.",),
            check=("Pull it over the hips: no thread may pop.",),
        ),
    )  # fmt: skip


BENT = 1.03
"""A casing's edge that is shorter than this is stretched to lie (our choice)."""


def _bent(work: Work) -> str:
    """How an edge is turned down that is shorter than where it lies."""
    casing = work.pattern.facts.casing
    if casing is not None and casing.seam < BENT * casing.edge:
        return "; pin it all round."
    return "; the edge is shorter than where it lies, so stretch it evenly as you pin it."


def casing(work: Work) -> tuple[Operation, ...]:
    """A casing turned down at the waist, and the elastic drawn in."""
    neaten, stitch = work.stitching.neaten, work.stitching.hem
    edge = (
        f"Neaten the waist's edge: {neaten.words}. Turn it" if neaten else "Turn the waist's edge"
    )
    turn = said("{} down by {} and press{}", edge, work.at, _bent(work))
    do = said(
        "Sew the casing down close to its lower edge, leaving {} open at the centre back, {}.",
        About(50), sewn_down(stitch),
    )  # fmt: skip
    runs = tuple(run for seam in work.seams for run in (*seam.first, *seam.second))
    return (
        work.do(
            "casing-turn", "Turn the casing down", turn, Stage.WAIST, sort=Sort.PREPARE,
            after=("panels",), stitches=(neaten,) if neaten else (),
        ),
        work.do(
            "casing", "Sew the casing", do, Stage.WAIST, sort=Sort.FINISH,
            meets=(Meeting(runs, (), Laid.TURNED),), stitches=(stitch,),
        ),
        drawn_in(work),
    )  # fmt: skip


def drawn_in(work: Work) -> Operation:
    """Return how the elastic is drawn into a casing."""
    elastic, lapped = work.elastic, work.stitching.lapped
    cut = said("Cut the elastic {} long", mm(elastic.length)) if elastic else ("Cut the elastic",)
    do = said(
        "{}, draw it through with a safety pin, lap its ends by {}, try it on, {}, and close "
        "the opening.",
        cut, About(20), lapped.words,
    )  # fmt: skip
    long, wide = (mm(elastic.length), said("{} wide", mm(elastic.width))) if elastic else (None, ())
    uses = (
        Use(("elastic",), "the casing", long, wide),
        Use(("a safety pin",), "drawing the elastic in"),
    )
    return work.do(
        "elastic", "Draw the elastic in", do, Stage.WAIST, sort=Sort.FINISH, stitches=(lapped,),
        uses=uses, check=("Spread the fullness evenly; the elastic is not twisted.",),
    )  # fmt: skip


STAYED_WAIST = Way("waist joined on a stay", joined)
WAISTBAND_RING = Way("waistband joined into a ring", ring)
WAISTBAND = Way("waistband", band)
CASING = Way("casing for elastic, at a curved edge", casing)
