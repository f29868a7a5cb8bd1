"""Sewing what joins before anything closes: plain seams, and the shoulders on their stay.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.making import UNNOTICED
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import Seam
from tapewise_core.geometry.crossings import nearest
from tapewise_core.sewing.operation import Half, Lies, Meeting, Operation, Sort, Stage, Use
from tapewise_core.sewing.way import Way, Work, apart, sewn_at
from tapewise_core.text.amounts import About
from tapewise_core.text.told import LineName, Told, joined, said
from tapewise_core.units import mm

MELTS = "keeping the iron off clear elastic: it melts"
"""Said wherever elastic may lie under the iron."""


NARROW = said("{} wide", About(6, 10))
"""How wide a tape is that stays a seam or an edge (common practice)."""


def plain(work: Work) -> tuple[Operation, ...]:
    """Seams with nothing more to them, each by its edge and its pieces."""
    return tuple(_plain(work, seam) for seam in work.seams)


def _plain(work: Work, seam: Seam) -> Operation:
    pieces = tuple(dict.fromkeys(run.piece for run in (*seam.first, *seam.second)))
    edge, names = seam.first[0].edges[0], joined([(LineName(p),) for p in pieces], " and ")
    stitch = work.stitching.seam
    do = said(
        "Sew the {} of the {}, right sides together, {} from the edge: {}.",
        LineName(edge), names, sewn_at(work.pattern, seam), stitch.words,
    )  # fmt: skip
    key = "-".join(("plain", edge, *pieces)) + (f"-{seam.where}" if seam.where else "")
    title = f"Sew the {LineName(edge)}"
    meets = (Meeting(seam.first, seam.second),)
    return Work((seam,), work.pattern, work.stitching).do(
        key, title, do, Stage.CLOSE, meets=meets, lies=Lies.FLAT, closes=True, stitches=(stitch,)
    )


FLAT_BAND = "neckband sewn on flat"
"""The name of a way that leaves one shoulder open until the neck is finished."""


def shoulders(work: Work) -> tuple[Operation, ...]:
    """The shoulders on a stay, and the head tried through the neck."""
    if any(seam.making.name == FLAT_BAND for seam in work.pattern.seams):
        return (_stay(work), one_shoulder(work, Half.FIRST))
    stitch, ease = work.stitching.seam, _eased(work)
    also = (", ", *ease) if ease else ()
    sewn = said(
        "Sew the shoulder seams, right sides together{}{}, {} from the edge, "
        "through the stay: {}.",
        work.matched(), also, work.at, stitch.words,
    )  # fmt: skip
    return (
        _stay(work),
        work.do(
            "shoulders", "Sew the shoulders", sewn, Stage.JOIN, meets=work.joins(),
            lies=Lies.FLAT, stitches=(stitch,), ease=ease,
            press=said("Press towards the back, {}.", MELTS),
        ),
        head_through(work),
    )  # fmt: skip


def head_through(work: Work) -> Operation:
    """The head tried through the neck once the neckline is whole."""
    return work.do(
        "head", "Try the head through the neck",
        said(
            "Try the head through the neck opening now, before it is finished: it must pass "
            "with ease."
        ),
        Stage.JOIN, sort=Sort.TEST, before=("neckband", "neckline", "facing"),
    )  # fmt: skip


def one_shoulder(work: Work, half: Half) -> Operation:
    """Return one shoulder by itself: the first, or the one that closes a neck sewn flat."""
    stitch, ease, first = work.stitching.seam, _eased(work), half is Half.FIRST
    do = said(
        "Sew {} shoulder seam, right sides together{}{}, {} from the edge, through "
        "the stay: {}.{}",
        "one" if first else "the other", work.matched(), (", ", *ease) if ease else (), work.at,
        stitch.words,
        " Leave the other open." if first else "",
    )  # fmt: skip
    key, title = ("shoulders", "Sew one shoulder") if first else SECOND
    return work.do(
        key, title, do, Stage.JOIN if first else Stage.NECK, meets=work.halves(half),
        lies=Lies.FLAT, closes=not first, stitches=(stitch,), ease=ease,
        press=said("Press towards the back, {}.", MELTS),
    )  # fmt: skip


SECOND = "second-shoulder", "Sew the other shoulder"


def _stay(work: Work) -> Operation:
    length = mm(sum(map(stayed, _backs(work))))
    one = mm(length.mm / 2)
    do = said(
        "Stay the back's shoulders, so that shoulders and neck do not sag: pin clear elastic or "
        "woven tape, {} for each, along the stitch line on the wrong side, from the neck to the "
        "shoulder point and not stretched. It is sewn in with the seam.",
        one,
    )
    tape = Use(said("clear elastic or woven tape"), "the shoulders", length, NARROW)
    return work.do(
        "shoulder-stay", "Stay the back's shoulders", do, Stage.JOIN, sort=Sort.PREPARE,
        uses=(tape,),
    )  # fmt: skip


def _backs(work: Work) -> tuple[tuple[Piece, str], ...]:
    """The back's shoulder edges, one for each side of the body."""
    found = []
    for seam in work.seams:
        run = seam.second[0]
        piece = work.pattern.piece(run.piece)
        both = 2 if piece.on_fold else 1
        found += [(piece, name) for name in run.edges if piece.has_edge(name)] * both
    return tuple(found)


def stayed(edge: tuple[Piece, str]) -> float:
    """Return how much of a shoulder is stayed [mm]: from the neck to the shoulder point."""
    piece, name = edge
    path, twin = piece.edge(name).path, "_2" if name.endswith("_2") else ""
    ends = [piece.points.get(f"{point}{twin}") for point in ("side_neck", "shoulder_point")]
    places = [nearest(path, end)[0] for end in ends if end is not None]
    return abs(places[1] - places[0]) if len(places) == len(ends) else path.length()


def _eased(work: Work) -> Told:
    """Where one side of a shoulder is longer: which, and how much of it is eased in."""
    surplus, seam = max(
        ((apart(work.pattern, seam), seam) for seam in work.seams), key=lambda pair: abs(pair[0])
    )
    if abs(surplus) <= UNNOTICED:
        return ()
    longer = seam.first if surplus > 0 else seam.second
    where = "between the notches" if work.matched() else "evenly"
    return said("the {}'s extra {} eased in {}", LineName(longer[0].piece), mm(abs(surplus)), where)


SHOULDERS = Way("shoulders on a stay", shoulders)
