"""How long a neckband is, as a share of its neckline: lying flat, or standing up as a collar."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.parts.neck_style import NeckStyle
from tapewise_core.parts.shape.band import Band, as_used, at_least, neckband
from tapewise_core.text.told import said
from tapewise_core.units import Length, mm

FINE = 3
"""A ratio that a fitting moved by a few percent keeps one digit more (our choice)."""

HEAD_ROOM = 10.0
"""What an opening must have over the head's girth [mm] (common practice)."""

SEWN = 0.4
"""How far a neckline sewn on an overlocker stretches, whatever its cloth does (common practice);
what the machines at hand give is proved once they are known."""


def band_of(neckline: float, style: NeckStyle, head: float | None) -> Band:
    """Return a band's ratio for a whole neckline [mm]: as chosen, or as it is worked out; longer
    or shorter by what fittings found."""
    if style.band_ratio is not None:
        found = Band(style.band_ratio, ())
    elif style.high:
        found = standing(neckline, style.stretch, head)
    else:
        found = lying(neckline, style.band_width, style.stretch, head, style.opens)
    if not style.band_longer:
        return found
    return replace(found, ratio=round(found.ratio * (1 + style.band_longer), FINE))


STANDS = 0.95
"""A collar's length as a share of its neckline: it follows the neck, which is narrower above its
base, and is hardly shorter (common practice)."""


def standing(neckline: float, stretch: float, head: float | None) -> Band:
    """Return the ratio of a collar that stands up round a neckline [mm]; held back where a head
    [mm] would not pass a closer one."""
    passes = _passing(neckline, stretch, head)
    return Band(max(STANDS, at_least(min(passes, 1.0))), ())


def _passing(neckline: float, stretch: float, head: float | None) -> float:
    """The least ratio that lets a head [mm] through."""
    return (head + HEAD_ROOM) / (1 + min(stretch, SEWN)) / neckline if head else 0.0


def lying(
    neckline: float, width: Length, stretch: float, head: float | None, opens: float = 0.0
) -> Band:
    """Return the ratio by which a band round a neckline [mm] lies flat, in a cloth that stretches
    by a fraction; held back where it could not be sewn on, or a head [mm] would not pass
    beside what a placket ``opens`` [mm]."""
    found = neckband(neckline, width.mm, stretch)
    passes = _passing(neckline, stretch, head - opens if head else None)
    if head and passes > found.ratio:
        return Band(at_least(min(passes, 1.0)), said(HEAD, width, mm(head)))
    return Band(as_used(found), found.held_back)


HEAD = (
    "A band {} wide would have to be shorter to lie flat, but must let a head of {} through: it "
    "will stand up a little. On a wider neckline it lies flat."
)
