"""Questions about the cloth: which width is cheaper, and how long a garment a piece gives."""

from __future__ import annotations

from collections.abc import Iterator

from textual.screen import Screen

from tapewise_core.errors import TapewiseError
from tapewise_core.tasks import wizard
from tapewise_core.tasks.cloth import cloth_answer, longest
from tapewise_core.tasks.cloth_offers import cheapest_words, offer_of, on_cloth
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit
from tapewise_tui.dialogs.asking import AskDialog
from tapewise_tui.dialogs.telling import TellDialog

WIDTHS = {
    Unit.CM: "Widths there are, with the price of a metre if you like: 140=12.50 160=14",
    Unit.IN: "Widths there are, with the price of a yard if you like: 55=11 60=12.50",
}

LENGTH = "How long is the piece you have? Nothing says that there is enough in the shop."

MOST = 6
"""So many widths are compared at once, in well under a second (our choice)."""


def which_width(screen: Screen[None], found: Drafted) -> None:
    """Ask for the cloths on offer and tell what each comes to, and which is cheapest."""

    def told(text: str | None) -> None:
        if text:
            lines = tuple(_compared(found, text.replace(",", ".").split()[:MOST]))
            screen.app.push_screen(TellDialog("Which cloth is cheaper?", lines))

    title = "Which cloth is cheaper?"
    screen.app.push_screen(AskDialog(title, WIDTHS[found.unit]), told)


def _compared(found: Drafted, typed: list[str]) -> Iterator[str]:
    """A line for each cloth, and the cheapest; what cannot be read or drafted is told instead."""
    reader = Reader(found.unit)
    answers = []
    for text in typed:
        try:
            offer = offer_of(text, found.unit)
            answer = cloth_answer(on_cloth(found, offer), offer.price)
        except TapewiseError as error:
            yield f"! {reader.spell(error.told)}"
            continue
        answers.append(answer)
        yield f"{found.unit.spell(answer.width)}: {reader.spell(answer.says)}"
    if len(answers) > 1:
        yield reader.spell(cheapest_words(answers))


def how_long(found: Drafted) -> str:
    """Say how long a garment the piece of cloth there is gives; empty where none was named."""
    found_ = longest(found)
    return "" if found_ is None else found.reader.spell(found_.says)


def typed_length(garment: str, text: str, unit: Unit) -> str | None:
    """Return a length of cloth as its option keeps it, None for none; raises TapewiseError."""
    return wizard.plainly(garment, "cloth-length", text, unit) if text else None
