"""Sewing a shoulder placket, the shoulders beside it, and the band that is open there.

Common practice in the trade.
"""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.drafting.seam import EdgeRun, SeamKind
from tapewise_core.sewing.joining import shoulders
from tapewise_core.sewing.neck import pinned, sewn_on
from tapewise_core.sewing.operation import Laid, Lies, Meeting, Operation, Sort, Stage, Use
from tapewise_core.sewing.way import Way, Work, of_kind
from tapewise_core.text.amounts import About
from tapewise_core.text.told import said
from tapewise_core.units import Length, mm

BUTTONS = "placket-buttons"
"""The key of sewing buttons on."""

BUTTON = "button"
"""How the points begin at which a strip has a button."""


def placket(work: Work) -> tuple[Operation, ...]:
    """Facing and underlap on the opened edges, held at the end, and buttons at last."""
    return (_stayed(work), _strips(work), _held(work), _buttoned(work))


def _stayed(work: Work) -> Operation:
    strip = work.pattern.piece(work.seams[0].first[0].piece)
    length, width = strip.length("shoulder"), strip.length("end") / 2
    do = said(
        "Iron light fusible knit interfacing, {} by {}, onto the wrong side of both placket "
        "strips, on the half with the buttons' line, so that buttonholes and buttons have hold.",
        mm(length), mm(width),
    )  # fmt: skip
    wide = said("{} wide", mm(width))
    use = Use(("light fusible knit interfacing",), "the placket", mm(2 * length), wide)
    return work.do(
        "placket-stay", "Stay the placket's strips", do, Stage.JOIN, sort=Sort.PREPARE, uses=(use,)
    )


def _strips(work: Work) -> Operation:
    stitch = work.stitching.small
    do = said(
        "Fold both placket strips lengthwise, wrong sides together, and press. On the wearer's {} "
        "side sew the facing to the front's shoulder and the underlap to the back's, right sides "
        "together, all their raw edges even, from the neck to the mark and no stitch further, {} "
        "from the edge: {}. Snip the body's allowances at the mark as far as the last stitch.",
        work.seams[0].where, work.at, stitch.words,
    )  # fmt: skip
    press = said(
        "Turn the facing to the inside, so that the front ends in the seam; let the underlap stand "
        "out from the back, the allowance lying under the back. Press both."
    )
    meets = tuple(
        Meeting(work.whole(seam.first), seam.second, Laid.FOLDED, partly=True)
        for seam in work.seams
    )
    return work.do(
        "placket", "Sew facing and underlap on", do, Stage.JOIN, meets=meets, lies=Lies.FLAT,
        stitches=(stitch,), press=press, before=("shoulders",),
    )  # fmt: skip


def _held(work: Work) -> Operation:
    """Both strips sewn through at the placket's end, and trimmed at the neck."""
    small = work.stitching.small
    do = said(
        "Lay the front over the underlap as it will be worn, its edge on the line of the shoulder "
        "seam. Sew across at the placket's end, to and fro, through front, facing and underlap: "
        "{}. Trim what lies beyond to {} and sew over its edges by hand. Pin the placket closed "
        "and trim both strips at the neck level with the front's neckline.",
        small.words, About(10),
    )  # fmt: skip
    ends = tuple(EdgeRun(seam.first[0].piece, ("end",)) for seam in work.seams)
    found = work.do(
        "placket-end", "Close the placket's end", do, Stage.JOIN, meets=(Meeting(ends),),
        lies=Lies.FLAT, stitches=(small,), after=("shoulders",), before=("neckband-pin",),
        check=("Look at it from outside: shoulder seam and placket lie in one line.",),
    )  # fmt: skip
    return replace(found, allowance=_at(work, ends[0]))


def _buttoned(work: Work) -> Operation:
    do = said(
        "Work a buttonhole through front and facing at each mark, and one in the middle of the "
        "band's end above them; close the placket and sew the buttons by hand to the underlap and "
        "the band's other end, where the buttonholes lie. Or set snaps in the same places."
    )
    facing = work.pattern.piece(work.seams[0].first[0].piece)
    count = 1 + sum(name.startswith(BUTTON) for name in facing.points)
    use = Use(said("{} flat buttons {} across, or snaps", f"{count}", About(10, 12)), "the placket")
    return work.do(
        BUTTONS, "Sew the buttons on", do, Stage.NECK, sort=Sort.FINISH, after=("neckband",),
        uses=(use,),
        check=("Pull on every button. Open them all and try the head through.",),
    )  # fmt: skip


def placket_shoulders(work: Work) -> tuple[Operation, ...]:
    """Shoulders one of which is sewn, and stayed, from the end of its placket only."""
    seam = of_kind(work.pattern, SeamKind.PLACKET)[0]
    side, opened = seam.where, mm(work.pattern.piece(seam.first[0].piece).length("shoulder"))
    more = {
        "shoulder-stay": said(
            " On the wearer's {} it begins at the placket's end and is {} shorter.", side, opened
        ),
        "shoulders": said(
            " On the wearer's {} begin at the placket's end, close to its last stitch.", side
        ),
    }
    return tuple(
        replace(one, do=(*one.do, *more.get(one.key, ())), uses=_less(one.uses, opened))
        for one in shoulders(work)
    )


def _less(uses: tuple[Use, ...], opened: Length) -> tuple[Use, ...]:
    """The stay's tape, of which the opened part of a shoulder takes none."""
    return tuple(
        replace(one, length=mm(one.length.mm - opened.mm)) if one.length else one for one in uses
    )


def placket_band(work: Work) -> tuple[Operation, ...]:
    """A band sewn round a neck that is open at the placket, its ends closed before."""
    do = said(
        "Sew the band on with the band uppermost, both its layers, {} from the edge, stretching "
        "only the band, through the neck ends of facing and underlap too: {}.",
        work.at, work.stitching.seam.words,
    )  # fmt: skip
    sewn = sewn_on(work, do, CHECK)
    facing = of_kind(work.pattern, SeamKind.PLACKET)[0].first[0].piece
    meeting = sewn.meets[0]
    more = replace(meeting, second=(*meeting.second, *_neck(work, facing)))
    return (_ends(work), pinned(work, PIN), replace(sewn, meets=(more,)))


def _neck(work: Work, strip: str) -> tuple[EdgeRun, ...]:
    return work.whole((EdgeRun(strip, ("neck",)),))


def _ends(work: Work) -> Operation:
    stitch, ends = work.stitching.ring, EdgeRun("neckband", ("end", "end_2"))
    at = _at(work, ends)
    do = said(
        "Fold the neckband lengthwise, right sides together, and sew across both its ends, {} "
        "from the edge: {}. Turn it right side out.",
        at, stitch.words,
    )  # fmt: skip
    found = work.do(
        "neckband-ends", "Close the neckband's ends", do, Stage.NECK, meets=(Meeting((ends,)),),
        lies=Lies.FLAT, stitches=(stitch,),
        press=("Press the band folded, its corners sharp.",),
    )  # fmt: skip
    return replace(found, allowance=at)


def _at(work: Work, run: EdgeRun) -> Length:
    return mm(work.pattern.piece(run.piece).edge(run.edges[0]).allowance)


PIN = said(
    "Pin band and neckline together, right sides facing: one end at the front's edge on the "
    "placket, the other at the underlap's fold, the marks at centre front and centre back."
)

CHECK = said(
    "Close the placket and look at it: the band's ends lie on each other, and it lies flat."
)

PLACKET = Way("shoulder placket", placket)
PLACKET_SHOULDERS = Way("shoulders beside a placket", placket_shoulders)
PLACKET_BAND = Way("neckband open at a placket", placket_band)
