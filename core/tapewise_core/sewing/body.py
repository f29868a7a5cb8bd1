"""Sewing the seams that close a garment: shoulders, sleeves, sides and panels.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.making import UNNOTICED, How
from tapewise_core.drafting.piece import Seam
from tapewise_core.sewing.work import Work, apart, made_so, sewn_at
from tapewise_core.text.told import LineName, Told, joined, said
from tapewise_core.units import mm

SLIGHTLY = 1.0
"""What a sleeve is shorter than its armhole, below which nobody need stretch it [mm]."""

MELTS = "keeping the iron off clear elastic: it melts"
"""Said wherever elastic may lie under the iron."""


def plain(work: Work) -> tuple[Told, ...]:
    """Seams with nothing more to them, each by its edge and its pieces."""
    return tuple(_plain(work, seam) for seam in work.seams)


def _plain(work: Work, seam: Seam) -> Told:
    pieces = dict.fromkeys(run.piece for run in (*seam.first, *seam.second))
    names = joined([(LineName(piece),) for piece in pieces], " and ")
    return said(
        "Sew the {} of the {}, right sides together, {} from the edge: {}.",
        LineName(seam.first[0].edges[0]),
        names,
        sewn_at(work.pattern, seam),
        work.stitching.seam,
    )


def shoulders(work: Work) -> tuple[Told, ...]:
    """The shoulders on a stay, and the head tried through the neck."""
    return (
        said(
            "Stay the back's shoulders: clear elastic or woven tape along the stitch line, cut to "
            "the pattern's length, not stretched, so that shoulders and neck do not sag; {}.",
            work.stitching.stay,
        ),
        said(
            "Sew the shoulder seams, right sides together, notches matched, {}{} from the edge: "
            "{}. Press towards the back, {}.",
            _eased(work),
            work.at,
            work.stitching.seam,
            MELTS,
        ),
        said(
            "Try the head through the neck opening now, before it is finished: it must pass with "
            "ease."
        ),
    )


def _eased(work: Work) -> Told:
    """Where one side of a shoulder is longer: which, and how much of it is eased in."""
    surplus, seam = max(
        ((apart(work.pattern, seam), seam) for seam in work.seams), key=lambda pair: abs(pair[0])
    )
    if abs(surplus) <= UNNOTICED:
        return ()
    longer = seam.first if surplus > 0 else seam.second
    return said(
        "the {}'s extra {} eased in between the notches, ",
        LineName(longer[0].piece),
        mm(abs(surplus)),
    )


def sleeves(work: Work) -> tuple[Told, ...]:
    """Sleeves set in while the body still lies flat."""
    return (
        said(
            "Lay out the sleeves: the side with two notches belongs to the back, the side with one "
            "to the front. Pin each into its armhole at crown and shoulder seam, at the notches "
            "and at both ends, right sides together."
        ),
        said(
            "Sew the sleeves in {} from the edge, the sleeve uppermost{}: {}. Press towards the "
            "sleeve.",
            work.at,
            _stretched(work),
            work.stitching.seam,
        ),
    )


def _stretched(work: Work) -> Told:
    shorter = max(-apart(work.pattern, seam) for seam in work.seams)
    if shorter < SLIGHTLY:
        return ()
    return said(" and stretched by the {} it is shorter", mm(shorter))


def sides(work: Work) -> tuple[Told, ...]:
    """Underarm and side in one, as far as a slit leaves them to be sewn."""
    pockets = made_so(work.pattern, How.POCKET)
    bags = ", going round each pocket's bag instead of across its opening" if pockets else ""
    return (
        said(
            "Sew underarm and side seams in one go from the sleeve's hem to the {}{}, underarm and "
            "notches matched, {}{} from the edge: {}. Press towards the back.",
            _end(work),
            bags,
            _full(work),
            work.at,
            work.stitching.seam,
        ),
    )


def _full(work: Work) -> Told:
    """What one side has more, and how it is taken in."""
    found = [(seam.first[0].piece, seam.fullness) for seam in work.seams if seam.fullness]
    if not found:
        return ()
    piece, fullness = found[0]
    how = "gathered" if fullness.gathered else "eased"
    words = f"the {{}}'s extra {{}} {how} in between its two notches, "
    return said(words, LineName(piece), mm(fullness.more))


def _to_slit(work: Work) -> Told:
    """How far down a skirt's seams are sewn, where slits open them."""
    slits = made_so(work.pattern, How.SLIT)
    if not slits:
        return ()
    high = max(work.pattern.run_length(slit.first) for slit in slits)
    return said("to the top of the slits, {} above the hem, ", mm(high))


def _end(work: Work) -> Told:
    """Where the side seams end."""
    if made_so(work.pattern, How.STAYED_WAIST):
        return ("waist",)
    slits = made_so(work.pattern, How.SLIT)
    if not slits:
        return ("hem",)
    high = max(work.pattern.run_length(slit.first) for slit in slits)
    return said("top of the slit, {} above the hem", mm(high))


def panels(work: Work) -> tuple[Told, ...]:
    """The seams between a skirt's own pieces."""
    return (
        said(
            "Sew the skirt's seams, right sides together, {} from the edge, from the waist down "
            "{}without pulling: {}. Press to one side.",
            work.at,
            _to_slit(work),
            work.stitching.seam,
        ),
    )
