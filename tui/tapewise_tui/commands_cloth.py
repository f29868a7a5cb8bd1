"""What ``tapewise cloth`` does: questions about the cloth of a garment."""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from tapewise_core.errors import OptionError
from tapewise_core.tasks import people
from tapewise_core.text.told import Reader, said
from tapewise_core.units import Unit, mm
from tapewise_tui.closer import laid
from tapewise_tui.exits import FINE, LOOK
from tapewise_tui.printing import complain, print_json, say
from tapewise_tui.settings_asked import asked, unit_of, with_length

if TYPE_CHECKING:
    from tapewise_core.tasks.cloth import ClothAnswer, Longest
    from tapewise_core.tasks.cloth_offers import Offer
    from tapewise_core.tasks.drafted import Drafted


def cloth(options: argparse.Namespace) -> int:
    """Say how much cloth is needed, whether it fits, how long it can be, and which is cheaper."""
    profile = people.person(options.person)

    from tapewise_core.tasks.cloth import cloth_answer, longest  # a wrong name is told sooner
    from tapewise_core.tasks.cloth_offers import compared, on_cloth, price_of
    from tapewise_core.tasks.drafting import draft

    options.unit = options.unit or profile.unit.value
    unit = unit_of(options.unit)
    offers = _offers(options, unit)
    settings = with_length(asked(options.set), options.cloth_length)
    drafted = draft(profile, options.garment, settings, unit=unit)
    if len(offers) > 1:
        answers = compared(drafted, offers, lambda one: laid(one, options))
    else:
        drafted = on_cloth(drafted, offers[0]) if offers else drafted
        drafted = laid(drafted, options)
        price = offers[0].price if offers else price_of(options.price)
        answers = (cloth_answer(drafted, price),)
    longer = longest(drafted) if len(answers) == 1 else None
    if options.json:
        print_json(_json(drafted, answers, longer))
    elif not options.quiet:
        say("\n".join(_lines(drafted, answers, longer)))
    else:
        for answer in answers:
            if not answer.fits:
                complain(_line(answer, drafted.reader, several=len(answers) > 1))
    return FINE if all(answer.fits for answer in answers) else LOOK


def _offers(options: argparse.Namespace, unit: Unit) -> list[Offer]:
    """The cloths that are asked about; raises OptionError for one that is said twice."""
    from tapewise_core.tasks.cloth_offers import offer_of, price_of

    usual = price_of(options.price)
    found: list[Offer] = []
    for text in options.width:
        offer = offer_of(text, unit, usual, of="--width")
        if any(offer.width == other.width for other in found):
            raise OptionError(
                f"--width names {text.partition('=')[0].strip()} twice; name it once."
            )
        found.append(offer)
    return found


def _lines(
    drafted: Drafted, answers: Sequence[ClothAnswer], longest: Longest | None
) -> Iterator[str]:
    from tapewise_core.tasks.cloth_offers import cheapest_words

    reader = Reader(drafted.unit)
    yield f"{drafted.garment.title} for {drafted.person}:"
    yield from (_line(answer, reader, several=len(answers) > 1) for answer in answers)
    if longest is not None:
        yield reader.spell(longest.says)
    if len(answers) > 1:
        yield reader.spell(cheapest_words(answers))


def _line(answer: ClothAnswer, reader: Reader, *, several: bool) -> str:
    """What one cloth comes to; among several, one that will not do names its width too."""
    says = reader.spell(answer.says)
    if not several or answer.fits:
        return says
    return reader.spell(said("{} wide: {}", mm(answer.width), says))


def _json(
    drafted: Drafted, answers: Sequence[ClothAnswer], longest: Longest | None
) -> dict[str, object]:
    """The same for a machine; lengths in cm."""
    from tapewise_core.tasks.cloth_offers import cheapest

    reader, best = Reader(drafted.unit), cheapest(answers)
    found: dict[str, object] = {
        "garment": drafted.garment.name,
        "person": drafted.person,
        "cloths": [_answer(answer, reader) for answer in answers],
        "cheapest": None if best is None else _cm(best.width),
    }
    if longest is not None:
        length = None if longest.length is None else _cm(longest.length)
        found["longest"] = {"option": longest.key, "length": length}
    return found


def _answer(answer: ClothAnswer, reader: Reader) -> dict[str, object]:
    """Where a piece is wider than the cloth there is no amount to tell: null, not a number."""
    lies = not answer.lay.too_wide
    price = answer.bill.price if lies else None
    return {
        "width": _cm(answer.width),
        "fits": answer.fits,
        "length": _cm(answer.lay.length) if lies else None,
        "least": _cm(answer.bill.least) if lies else None,
        "buy": _cm(answer.bill.buy) if lies else None,
        "used": round(answer.lay.used, 3) if lies else None,
        "price": None if price is None else round(price, 2),
        "too_wide": list(answer.lay.too_wide),
        "says": reader.spell(answer.says),
    }


def _cm(length: float) -> float:
    return round(length / 10, 2)
