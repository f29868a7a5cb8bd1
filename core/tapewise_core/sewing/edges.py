"""Sewing edges that are turned up or back: hems and slits, never with an overlocker.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.seam import EdgeRun
from tapewise_core.sewing.operation import Laid, Meeting, Operation, Sort, Stage
from tapewise_core.sewing.stitches import Stitch
from tapewise_core.sewing.way import Way, Work
from tapewise_core.text.told import Told, said

TESTED = "Stretch it once: no thread may pop."

TAKEN_OUT = "Take out the gathering threads."


HANG = "hang"
"""The key of letting a skirt hang before it is hemmed."""


def sewn_down(stitch: Stitch) -> str:
    """Say how a folded edge is sewn: by machine from the right side, where its threads look best.

    >>> from tapewise_core.sewing.stitches import CATCH, COVER
    >>> sewn_down(COVER)
    'from the right side: two-needle cover stitch (406)'
    >>> sewn_down(CATCH)
    'loosely by hand, with a catch stitch (204)'
    """
    return stitch.words if stitch.by_hand else f"from the right side: {stitch.words}"


def sleeve_hems(work: Work) -> tuple[Operation, ...]:
    """The sleeves' hems."""
    do = said(
        "Turn up the sleeves' hems by {}, their mirrored corners matching the seams, press, "
        "and sew them {}.",
        work.at, sewn_down(work.stitching.hem),
    )  # fmt: skip
    return (_hem(work, "sleeve-hems", "Hem the sleeves", do, before=(HANG, "hem")),)


def hem(work: Work) -> tuple[Operation, ...]:
    """A hem that hangs straight."""
    do = said(
        "Turn up the hem by {}, press, and sew it {}.", work.at, sewn_down(work.stitching.hem)
    )
    return (_hem(work, "hem", "Hem", do),)


def hung_hem(work: Work) -> tuple[Operation, ...]:
    """The hem of a circle, which drops where the cloth hangs askew."""
    hang = said(
        "Hang it up by its waist for 24 hours before hemming the skirt: jersey drops most where "
        "its ribs run askew. Then put it on, level the hem from the floor with someone's help, and "
        "trim it."
    )
    do = said(
        "Turn up the hem by {}, easing in the surplus of the curve, press, and sew it {}.",
        work.at, sewn_down(work.stitching.hem),
    )  # fmt: skip
    return (
        work.do(HANG, "Let the skirt hang", hang, Stage.HEM, sort=Sort.PREPARE),
        _hem(work, "hem", "Hem the skirt", do, ease=("ease in the surplus of the curve",)),
    )


def _hem(
    work: Work, key: str, title: str, do: Told, before: tuple[str, ...] = (), ease: Told = ()
) -> Operation:
    return work.do(
        key, title, do, Stage.HEM, sort=Sort.FINISH, meets=work.turned(), before=before,
        stitches=(work.stitching.hem,), ease=ease, check=(TESTED,),
    )  # fmt: skip


def slit(work: Work) -> tuple[Operation, ...]:
    """The slits at the sides, finished before the hem and left open."""
    stitch = work.stitching.edge
    do = said(
        "The slits stay open: at the top of each, secure the end of the side seam with a few "
        "stitches across. Turn the slit's two edges back by {}, press, and sew each down, "
        "across the top as well: {}.",
        work.at, stitch.words,
    )  # fmt: skip
    return (
        work.do(
            "slits", "Finish the slits", do, Stage.HEM, sort=Sort.FINISH, meets=work.turned(),
            before=("hem",), stitches=(stitch,),
        ),
    )  # fmt: skip


def vent(work: Work) -> tuple[Operation, ...]:
    """A vent whose underlaps both lie to one side, held down by a row of stitches."""
    stitch, neaten = work.stitching.edge, work.stitching.neaten
    do = said(
        "Turn the vent's two long edges in by {}, press, and sew each down: {}. Press both "
        "underlaps to the same side, and sew their slanted upper edges down together in the same "
        "way, from outside and through all layers.",
        work.at, stitch.words,
    )  # fmt: skip
    top = tuple(EdgeRun(seam.first[0].piece, ("vent_top",)) for seam in work.seams)
    edges = tuple(EdgeRun(seam.first[0].piece, ("vent",)) for seam in work.seams)
    meets = (Meeting(edges, (), Laid.TURNED), Meeting(top, top))
    neatened = (_vent_neatened(work, neaten),) if neaten else ()
    return (
        *neatened,
        work.do(
            "vent", "Finish the vent", do, Stage.HEM, sort=Sort.FINISH, meets=meets,
            before=("hem",), stitches=(stitch,),
        ),
    )  # fmt: skip


def _vent_neatened(work: Work, neaten: Stitch) -> Operation:
    do = said("Neaten the vent's two long edges: {}.", neaten.words)
    return work.do(
        "vent-edges", "Neaten the vent's edges", do, Stage.INSIDE, sort=Sort.FINISH,
        before=("panels",), stitches=(neaten,),
    )  # fmt: skip


SLEEVE_HEM = Way("sleeve's hem turned up", sleeve_hems)
TURNED_UP = Way("hem turned up", hem)
HUNG_HEM = Way("hem of a circle, which hangs first", hung_hem)
SLIT = Way("slit", slit)
VENT = Way("vent with an underlap", vent)
