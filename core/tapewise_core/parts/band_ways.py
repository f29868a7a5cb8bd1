"""Sewing a band round an armhole, a sleeve's end or a hem. Common practice."""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.sewing.operation import Laid, Lies, Meeting, Operation, Sort, Stage
from tapewise_core.sewing.way import Way, Work
from tapewise_core.text.told import said


class Words(Frozen):
    """What a band is called in its steps: ``key`` for ticks, ``one`` and ``many`` of it, what it is
    sewn to, what lies at the join, what is looked at when it is on, its ``noun`` alone, and how it
    is ``cut``, where that makes it another way."""

    key: str
    one: str
    many: str
    edge: str
    pinned: str
    check: str
    stage: Stage = Stage.ROUND
    noun: str = "band"
    cut: str = ""


ARM = Words(
    "armband", "each armhole band", "the armhole bands", "its armhole",
    "the join at the side seam, and the marks on each other, two strokes at the back, one in front",
    "Put it on: the band lies on the body all round. If it stands off in front, it is too long; "
    "unpick it there and shorten it now.",
)  # fmt: skip

CUFF = Words(
    "cuff", "each cuff", "the cuffs", "its sleeve",
    "the join at the underarm seam, and both in quarters",
    "Pull the sleeve over the hand: no thread may pop.",
    Stage.HEM, "cuff",
)  # fmt: skip

HEM = Words(
    "hem-band", "the hem band", "the hem band", "the hem",
    "the join at the centre back, the marks at side seams and centre front",
    "Put it on: the band passes shoulders and hips, and no thread pops.",
    Stage.HEM,
)  # fmt: skip


HALVES = Words(
    "hem-band", "both halves of the hem band", "the hem band", "the hem",
    "the joins at the centre back and the centre front, the marks at the side seams",
    HEM.check, Stage.HEM, cut=" in halves",
)  # fmt: skip


def ring_way(words: Words) -> Way:
    """Return how a band's ends are joined."""

    def ring(work: Work) -> tuple[Operation, ...]:
        stitch = work.stitching.ring
        do = said(
            f"Join the ends of {words.one} into a ring, right sides together, {{}} from the edge: "
            "{}.",
            work.at, stitch.words,
        )  # fmt: skip
        fold = f"old the {words.noun} lengthwise, wrong sides together, and press."
        press = f"F{fold}" if stitch.cuts else f"Press the join open, f{fold}"
        return (
            work.do(
                f"{words.key}-ring", f"Join the ends of {words.many}", do, Stage.CLOSE,
                meets=work.joins(), lies=Lies.FLAT, stitches=(stitch,), press=(press,),
            ),
        )  # fmt: skip

    return Way(f"{words.key}{words.cut} joined into a ring", ring)


def band_way(words: Words) -> Way:
    """Return how a band is sewn on, once what its edge crosses is closed."""

    def band(work: Work) -> tuple[Operation, ...]:
        return (_pinned(work, words), _sewn_on(work, words))

    return Way(f"{words.key}{words.cut} in the round", band)


def _pinned(work: Work, words: Words) -> Operation:
    do = said(f"Pin {words.one} round {words.edge}, right sides together: {words.pinned}.")
    return work.do(
        f"{words.key}-pin", f"Pin {words.many} on", do, words.stage, sort=Sort.PREPARE,
        after=("shoulders", "sides", f"{words.key}-ring"),
    )  # fmt: skip


def _sewn_on(work: Work, words: Words) -> Operation:
    stitch = work.stitching.seam
    do = said(
        f"Sew {words.many} on with the {words.noun} uppermost, both its layers, {{}} from the "
        f"edge, stretching only the {words.noun}: {{}}.",
        work.at, stitch.words,
    )  # fmt: skip
    first = tuple(run for seam in work.seams[:1] for run in seam.first)
    second = tuple(run for seam in work.seams for run in seam.second)
    return work.do(
        words.key, f"Sew {words.many} on", do, words.stage,
        meets=(Meeting(work.whole(first), work.whole(second), Laid.FOLDED),), lies=Lies.ROUND,
        stitches=(stitch,), after=(f"{words.key}-pin",),
        ease=(f"stretch only the {words.noun}, evenly between the pins",),
        press=(f"Press the allowance away from the {words.noun}.",), check=(words.check,),
    )  # fmt: skip


ARMBAND_RING, ARMBAND = ring_way(ARM), band_way(ARM)
CUFF_RING, CUFF_ON = ring_way(CUFF), band_way(CUFF)
HEM_RING, HEM_BAND = ring_way(HEM), band_way(HEM)
HEM_HALVES_RING, HEM_HALVES = ring_way(HALVES), band_way(HALVES)
