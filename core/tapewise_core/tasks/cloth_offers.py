"""Cloths on offer: what a draft comes to on each of them, and which is cheapest.

The garment is drafted anew for each width: on another one a skirt may be cut in other pieces.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from tapewise_core.errors import OptionError
from tapewise_core.frozen import Frozen
from tapewise_core.tasks.cloth import ClothAnswer, cloth_answer, laid_better
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.mending import redrafted
from tapewise_core.text.told import Told, said
from tapewise_core.text.typed import parse_length, parse_number
from tapewise_core.units import Unit, mm


class Offer(Frozen):
    """A cloth in a shop: its ``width`` [mm], and the price of a metre, or of a yard for who reads
    inches; None if it does not matter."""

    width: float
    price: float | None = None


DEAREST = 1e5
"""No price is higher than this (our choice)."""


def price_of(text: str | None) -> float | None:
    """Return a price as it is typed, None for none; raises OptionError, or ReadingError for what
    is no number."""
    if text is None:
        return None
    price = parse_number(text)
    if not 0 <= price <= DEAREST:
        raise OptionError(f"A price is a number from 0 to {DEAREST:g}, not {text.strip()[:24]}.")
    return price


def offer_of(
    text: str, unit: Unit, usual: float | None = None, *, of: str = "The width of a cloth"
) -> Offer:
    """Return a cloth typed as WIDTH or WIDTH=PRICE, at the ``usual`` price without one; raises
    ReadingError or OptionError for what is neither."""
    width, equals, price = text.partition("=")
    wide = parse_length(width, unit, of=of)
    return Offer(wide, price_of(price) if equals else usual)


def compared(
    drafted: Drafted,
    offers: Sequence[Offer],
    lay: Callable[[Drafted], Drafted] = laid_better,
) -> tuple[ClothAnswer, ...]:
    """Return the answer for each cloth on offer, in their order; a skirt may be cut in more pieces
    from a narrow one. ``lay`` looks for its lay. Raises OptionError for a width on which it cannot
    be drafted."""
    return tuple(cloth_answer(lay(on_cloth(drafted, offer)), offer.price) for offer in offers)


def on_cloth(drafted: Drafted, offer: Offer) -> Drafted:
    """Return the same drafted for another width of cloth; raises OptionError where it cannot be."""
    again = redrafted(drafted, {"cloth-width": f"{offer.width / 10:g} cm"})
    if again is None:
        width = mm(offer.width)
        raise OptionError(said("This garment cannot be drafted for a cloth {} wide.", width))
    return again


def cheapest(answers: Sequence[ClothAnswer]) -> ClothAnswer | None:
    """Return the cloth that costs least of those that fit; where one has no price, the one of
    which the least area is bought. None where none fits."""
    fit = [answer for answer in answers if answer.fits]
    priced = all(answer.bill.price is not None for answer in fit)
    return min(fit, key=lambda one: _cost(one, priced=priced), default=None)


def _cost(answer: ClothAnswer, *, priced: bool) -> float:
    price = answer.bill.price
    return price if priced and price is not None else answer.bill.buy * answer.width


def cheapest_words(answers: Sequence[ClothAnswer]) -> Told:
    """Say which of several cloths is cheapest."""
    best = cheapest(answers)
    if best is None:
        return ("None of these cloths will do.",)
    if any(answer.fits and answer.bill.price is None for answer in answers):
        return said("Least cloth is bought {} wide; prices were not named for all.", mm(best.width))
    return said("Cheapest is the cloth {} wide.", mm(best.width))
