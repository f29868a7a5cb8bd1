"""A neckband sewn on while the neck lies flat, one shoulder still open. All common practice."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.drafting.seam import Seam, SeamKind
from tapewise_core.sewing.joining import FLAT_BAND, one_shoulder
from tapewise_core.sewing.neck import head_tried, pinned, sewn_on
from tapewise_core.sewing.operation import Half, Lies, Operation, Sort, Stage
from tapewise_core.sewing.way import Way, Work, of_kind
from tapewise_core.text.told import OptionKey, said


def band(work: Work) -> tuple[Operation, ...]:
    """A band sewn to an open neckline, and closed with the second shoulder."""
    joins = _only(work, SeamKind.BAND_JOIN)
    sewn = _only(work, SeamKind.NECKBAND)
    shoulders = replace(work, seams=of_kind(work.pattern, SeamKind.SHOULDER))
    return (
        head_tried(joins),
        pinned(sewn, PIN),
        replace(
            sewn_on(sewn, said(DO, sewn.at, work.stitching.seam.words), CHECK),
            lies=Lies.FLAT,
            other=OTHER_ROUND,
        ),
        _closed(one_shoulder(shoulders, Half.SECOND), joins),
        work.do(
            "neck-head", "Try the head through the neck", ("Try the head through: it must pass.",),
            Stage.NECK, sort=Sort.TEST,
        ),
    )  # fmt: skip


def _only(work: Work, kind: SeamKind) -> Work:
    seams: tuple[Seam, ...] = tuple(seam for seam in work.seams if seam.kind is kind)
    return replace(work, seams=seams)


def _closed(shoulder: Operation, joins: Work) -> Operation:
    """The second shoulder, sewn on through the ends of the band."""
    do = (*shoulder.do, " Begin at the band's folded edge, so that its ends meet exactly there.")
    return replace(shoulder, do=do, meets=(*shoulder.meets, *joins.joins()))


PIN = said(
    "Fold the band lengthwise, wrong sides together, and press. Mark the quarters of the band and "
    "of the open neckline: fold each in half, and in half again (the marks on the pattern are for "
    "a band in the round). Pin them together there and at both ends, right sides together."
)

DO = (
    "Sew the band on flat with the band uppermost, both its layers, {} from the edge, stretching "
    "only the band: {}."
)

CHECK = said(
    "Look at it flat: neither neckline nor band waves; if one does, unpick and mend it now."
)

OTHER_ROUND = said(
    "Or in the round, its join at centre back: set {} to round.", OptionKey("band-sewn")
)

BAND_FLAT = Way(FLAT_BAND, band)
