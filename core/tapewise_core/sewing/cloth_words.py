"""How much cloth to buy, in words: and whether to buy it yet."""

from __future__ import annotations

import math
from collections.abc import Sequence

from tapewise_core.drafting.cloth import Cloth, Spread
from tapewise_core.lay.buying import COTTON, Purchase, bought
from tapewise_core.lay.lay import Lay
from tapewise_core.text.amounts import Yardage
from tapewise_core.text.told import LineName, Told, joined, said
from tapewise_core.units import Length, Unit, mm

SPREADS = {
    Spread.OPEN: "",
    Spread.FOLDED: "Fold the cloth lengthwise, selvedge on selvedge.",
    Spread.TUBE: "Leave the tube as it is, in two layers.",
}
"""How the cloth is laid out, where that has to be said."""

LAYERED = {Spread.OPEN: "", Spread.FOLDED: " folded in two", Spread.TUBE: " lying as a tube"}
"""What makes a cloth narrower than it is."""


def cloth_words(lay: Lay, cloth: Cloth, unit: Unit, bill: Purchase) -> Told:
    """Say how much to buy, and why; or that this cloth should not be bought."""
    if lay.too_wide:
        return said(
            "DO NOT BUY YET: {} {} wider than this cloth{}. Take cloth at least {} wide.",
            _names(lay.too_wide),
            "is" if len(lay.too_wide) == 1 else "are",
            LAYERED[cloth.spread],
            mm(lay.width),
        )
    if cloth.length and bill.least > cloth.length + 1e-6:
        return said(
            "DO NOT CUT YET: there are {} of this cloth, and {} are needed. {}",
            mm(cloth.length),
            _least(bill),
            joined(_reasons(lay, cloth, unit)),
        )
    if cloth.length:
        amount = said("{} of the {} there are will do", _least(bill), mm(cloth.length))
    else:
        amount = said("buy {}{}", Yardage(bill.buy), _costs(bill))
    return joined(
        (
            said("{} {} wide: {}.", _kind(cloth), mm(cloth.width), amount),
            *_reasons(lay, cloth, unit),
            *_lying(lay, cloth),
        )
    )


def _least(bill: Purchase) -> Length:
    """What is needed at the least, to the next millimetre."""
    return mm(math.ceil(bill.least - 1e-6))


def _kind(cloth: Cloth) -> str:
    return "Jersey tube" if cloth.spread is Spread.TUBE else "Jersey"


def _costs(bill: Purchase) -> str:
    return "" if bill.price is None else f", which costs {bill.price:.2f}"


def _reasons(lay: Lay, cloth: Cloth, unit: Unit) -> tuple[Told, ...]:
    """What the amount is made of."""
    covered = f"{lay.used * 100:.0f} %"
    after = " after washing" if cloth.washed else ""
    lie = said("The pieces lie on {}{} and cover {} of it.", mm(lay.length), after, covered)
    return (lie, _repeat(cloth), _shrinking(lay, cloth, unit))


def _repeat(cloth: Cloth) -> Told:
    return said("One repeat of {} is added.", mm(cloth.repeat)) if cloth.repeat else ()


def _shrinking(lay: Lay, cloth: Cloth, unit: Unit) -> Told:
    """The amount and its reason; more of it where cotton may lose more than is allowed for."""
    if not cloth.washed:
        return ("Nothing is added for shrinking: the pieces are drawn larger by what it shrinks.",)
    allowed = f"This amount allows for {cloth.shrinkage * 100:g} % shrinkage"
    laid = lay.length + cloth.repeat
    more = bought(laid, COTTON, unit)
    if more <= bought(laid, cloth.shrinkage, unit):
        return (f"{allowed}.",)
    return said("{}; cotton can lose 8 %, so test a piece or buy {}.", allowed, Yardage(more))


def _lying(lay: Lay, cloth: Cloth) -> tuple[Told, ...]:
    """How the cloth and those pieces are laid that do not simply follow the grain."""
    lie: list[Told] = [(SPREADS[cloth.spread],)] if SPREADS[cloth.spread] else []
    if cloth.nap:
        lie.append(("Lay all pieces with their tops towards the same end.",))
    if lay.head_to_tail:
        lie.append(said("Lay the {} head to tail.", _names(_many(lay.head_to_tail))))
    if lay.turned:
        lie.append(said("Lay the {} with the arrow across the cloth.", _names(lay.turned)))
    return tuple(lie)


def _many(names: Sequence[str]) -> tuple[str, ...]:
    """Names of pieces cut more than once, as people say them: several sleeves."""
    return tuple(f"{name}s" for name in names)


def _names(pieces: Sequence[str]) -> Told:
    return joined([(LineName(piece),) for piece in pieces], " and ")
