"""Finishing a neckline with a band, in the round or round a V. All common practice."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.drafting.piece import COLLAR_PIECE
from tapewise_core.drafting.seam import SeamKind
from tapewise_core.sewing.joining import MELTS
from tapewise_core.sewing.operation import Laid, Lies, Meeting, Operation, Sort, Stage
from tapewise_core.sewing.way import Way, Work, of_kind
from tapewise_core.text.amounts import About
from tapewise_core.text.told import OptionKey, Told, said


def _strip(work: Work) -> str:
    """What the strip is called: a collar, or a band."""
    return "band" if _named(work) != COLLAR_PIECE else COLLAR_PIECE


def _named(work: Work) -> str:
    """The strip as its piece is called."""
    return work.seams[0].first[0].piece


def ring(work: Work) -> tuple[Operation, ...]:
    """A band's ends joined, once it was seen that the head passes."""
    stitch = work.stitching.ring
    do = said(
        "Join the {}'s ends into a ring, right sides together, {} from the edge: {}.",
        _strip(work), work.at, stitch.words,
    )  # fmt: skip
    folding = f"old the {_strip(work)} lengthwise, wrong sides together, and press."
    fold, folded = f"Press the join open, f{folding}", f"F{folding}"
    return (
        head_tried(work),
        work.do(
            "neckband-ring", f"Join the {_named(work)}'s ends", do, Stage.NECK, meets=work.joins(),
            lies=Lies.FLAT, stitches=(stitch,), press=(folded if stitch.cuts else fold,),
        ),
    )  # fmt: skip


def head_tried(work: Work) -> Operation:
    """Return how a band is tried over the head before its ends are sewn."""
    do = said(
        "Pin the {}'s ends together, {} from the edge, and pull it over the head before it is "
        "sewn: stretched, it must pass.",
        _strip(work),
        work.at,
    )
    return work.do(
        "neckband-head", f"Try the {_strip(work)} over the head", do, Stage.NECK, sort=Sort.TEST,
        after=("head",),
    )  # fmt: skip


def band(work: Work) -> tuple[Operation, ...]:
    """A band sewn round a neckline without corners."""
    strip, raglan = _strip(work), bool(of_kind(work.pattern, SeamKind.RAGLAN))
    pin = said(
        "Pin {} and neckline together at the quarters, right sides together: the {}'s join at "
        "centre back, its middle at centre front, and halfway round on both sides; not at the "
        "{} seams.",
        strip,
        strip,
        "raglan" if raglan else "shoulder",
    )
    do = said(
        "Sew the {} on with the {} uppermost, both its layers, {} from the edge, stretching only "
        "the {}: {}.",
        strip, strip, work.at, strip, work.stitching.seam.words,
    )  # fmt: skip
    other = () if raglan else OTHER_FLAT
    return (pinned(work, pin), replace(sewn_on(work, do, LIES_FLAT), other=other))


def collar(work: Work) -> tuple[Operation, ...]:
    """A collar sewn round a high neckline: as a band is, but it is to stand, and never flat."""
    pin, sewn = band(work)
    return (pin, replace(sewn, check=STANDS, other=()))


STANDS = said(
    "Put it on: the collar stands close all round without pulling, and its join lies at the "
    "centre back."
)

LIES_FLAT = said(
    "Look at it on the body: the band lies flat. If it stands up it is too long, if the neckline "
    "puckers it is too short; unpick and mend it now."
)

OTHER_FLAT = said("Or flat, with one shoulder still open: set {} to flat.", OptionKey("band-sewn"))


def pinned(work: Work, pin: Told) -> Operation:
    """Return how a band is pinned to its neckline."""
    return work.do(
        "neckband-pin", f"Pin the {_named(work)} on", pin, Stage.NECK, sort=Sort.PREPARE,
        after=("shoulders", "neckband-ring"),
    )  # fmt: skip


def sewn_on(work: Work, do: Told, check: Told) -> Operation:
    """Return how a band is sewn to its neckline, both its layers."""
    top = work.stitching.topstitch
    stitches = (work.stitching.seam, *((top,) if top else ()))
    press = said(
        "Press the allowance down into the body, {}{}.",
        MELTS,
        f"; topstitch it there if you like: {top.words}" if top else "",
    )
    first = tuple(run for seam in work.seams for run in seam.first)
    second = tuple(run for seam in work.seams for run in seam.second)
    meets = (Meeting(work.whole(first), work.whole(second), Laid.FOLDED),)
    return work.do(
        "neckband", f"Sew the {_named(work)} on", do, Stage.NECK, meets=meets, stitches=stitches,
        ease=(f"stretch only the {_strip(work)}, evenly between the pins",), press=press,
        check=check,
    )  # fmt: skip


def mitre(work: Work) -> tuple[Operation, ...]:
    """A band's ends joined at the point of a V."""
    stitch = work.stitching.small
    do = said(
        "Fold the band lengthwise, wrong sides together, and press; open it again and join its "
        "ends, right sides together, along the drawn mitre, pivoting on the fold: {}. Trim to "
        "{} beyond the seam and snip into its corner as far as the stitches.",
        stitch.words, About(5),
    )  # fmt: skip
    return (
        head_tried(work),
        work.do(
            "neckband-ring", "Join the neckband's ends in a mitre", do, Stage.NECK,
            meets=work.joins(), lies=Lies.FLAT, stitches=(stitch,),
            press=("Fold the band again and press the point.",),
        ),
    )  # fmt: skip


def v_band(work: Work) -> tuple[Operation, ...]:
    """A mitred band sewn round a V."""
    pin = said(
        "Pin band and neckline together, right sides facing: the mitre at the point, the "
        "middle at centre back, and halfway round on both sides."
    )
    do = said(
        "Sew from the point up one side, round the back and down the other side to the point, "
        "both layers of the band, {} from the edge, stretching only the band, evenly between the "
        "pins; at the point the neckline lies uppermost, its snip spread so that the edge runs "
        "straight: {}.",
        work.at, work.stitching.seam.words,
    )  # fmt: skip
    check = said("Look at the point from the right side: seam and mitre meet, without a pleat.")
    return (point_stayed(work), pinned(work, pin), sewn_on(work, do, check))


def point_stayed(work: Work) -> Operation:
    """Return how the point of a V is held before it is snipped."""
    do = said(
        "Stay the point of the neckline: {} within the allowance, close beside the stitch line, "
        "for {} to either side of the point. Snip the allowance there as far as these stitches, "
        "not through them.",
        work.stitching.small.words, About(30),
    )  # fmt: skip
    return work.do(
        "neck-point", "Stay the point of the V", do, Stage.NECK, sort=Sort.PREPARE,
        after=("head",), stitches=(work.stitching.small,),
    )  # fmt: skip


BAND_RING = Way("neckband joined into a ring", ring)
COLLAR = Way("collar in the round", collar)
BAND = Way("neckband in the round", band)
BAND_MITRE = Way("neckband joined in a mitre", mitre)
V_BAND = Way("neckband round a V", v_band)
