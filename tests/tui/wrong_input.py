"""Every field of the app that is typed into, and what nobody should type there."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import partial
from typing import Any

from textual.screen import Screen
from textual.widgets import Input, Static
from walking import Walk

from tapewise_core.measures.catalogue import NAMES
from tapewise_core.tasks.loved.flat import BY_KEY
from tapewise_tui.dialogs.asking import AskDialog
from tapewise_tui.dialogs.fold import FoldDialog
from tapewise_tui.dialogs.lay import LayDialog
from tapewise_tui.dialogs.loved import LovedDialog
from tapewise_tui.dialogs.person import PersonDialog
from tapewise_tui.entry_page import EntryPage
from tapewise_tui.pages.garment import GarmentPage
from tapewise_tui.pages.measure import MeasurePage
from tapewise_tui.pages.save import SavePage
from tapewise_tui.widgets.choices import Choices
from tapewise_tui.widgets.field import Field
from tapewise_tui.widgets.rows import Rows

WRONG = (
    "abc", "-999", "99999", "9,9,9", "36 kg", "1/0", "1e400", "nan", "九十", "[red]", "12:30",
    "36-38", "½½", "36 in cm", "many words " * 40,
)  # fmt: skip
"""Letters, what is below zero or beyond everybody, two commas, other units or signs, a novel."""


NAMED = {"answer": "cloth length"}
"""What a field is called in a sentence, where that is not its name."""


@dataclass(frozen=True)
class Spot:
    """A field: where it is, how a text is put into it and entered, and what is said then."""

    name: str
    put: Callable[[str], object]
    said: Callable[[], str]


def measures(at: Walk) -> Iterator[Spot]:
    """The first reading of every measure, on its own page."""
    page = at.page
    assert isinstance(page, MeasurePage)
    for key in at.app.desk.order:

        def put(text: str, key: str = key) -> None:
            if page.key != key:
                page._turn(key)
            page.tell("")
            page.entered(0, text)

        yield Spot(NAMES[key], put, lambda: at.said)


def rows(at: Walk) -> Iterator[Spot]:
    """Every row of the table or the review, in each column."""
    page = at.page
    assert isinstance(page, EntryPage)
    for place, row in enumerate(page.rows):
        for column in range(page.COLUMNS):

            def put(text: str, place: int = place, column: int = column) -> None:
                page.query_one(Rows).move_cursor(place)
                page.spot = (place, column)
                page.mark()
                page.query_one(Field).value = text
                page.tell("")
                page.entered(text)

            yield Spot(row.measure.name, put, lambda: at.said)


def choices(at: Walk) -> Iterator[Spot]:
    """Every choice of the garment that a value is typed for."""
    page = at.page
    assert isinstance(page, GarmentPage)
    page.every = True
    page.show()
    for line in page.query_one(Choices).lines:
        if line.is_typed and line.key:

            def put(text: str, key: str = line.key) -> None:
                page.tell("")
                assert not page.take(key, text)

            yield Spot(line.label.strip(), put, lambda: at.said)


def paper(at: Walk) -> Iterator[Spot]:
    """What may be asked of paper."""
    page = at.page
    assert isinstance(page, SavePage)
    for name in ("overlap", "margin", "roll_width"):

        def put(text: str, name: str = name) -> None:
            field = page.query_one(f"#{name}", Input)
            usual, field.value = field.value, text
            page.tell("")
            assert not page.keep_typed()
            field.value = usual

        yield Spot(name.partition("_")[0], put, lambda: at.said)


async def dialogs(at: Walk) -> list[Spot]:
    """The fields of every question; each question stays open, one over the other."""
    profile, unit, found = at.app.desk.profile, at.app.desk.unit, list[Spot]()
    lay = LayDialog(at.app.desk)
    length = AskDialog("", "", fault=lay._fault)
    for dialog in (PersonDialog(), LovedDialog(profile, unit), FoldDialog(unit), length):
        at.app.push_screen(dialog)
        await at.settle()
        for field in dialog.query(Input):
            name = field.id or field.name or ""
            if name != "name":
                put = partial(_entered, dialog, field)
                told = BY_KEY[name].name if name in BY_KEY else NAMED.get(name, name)
                found.append(Spot(told, put, partial(_fault, dialog)))
    return found


def _fault(dialog: Screen[Any]) -> str:
    """What a question says is wrong."""
    return str(dialog.query_one("#fault", Static).content)


def _entered(dialog: Screen[Any], field: Input, text: str) -> None:
    """Answer one field of a question, others as they must be; then take the answer back."""
    for name, usual in (("#name", "somebody new"), ("#bust", "46")):
        for other in dialog.query(name).results(Input):
            other.value = usual
    field.value = text
    event = Input.Submitted(field, text)
    match dialog:
        case PersonDialog() | LovedDialog():
            dialog.action_keep()
        case FoldDialog():
            dialog.keep(event)
        case AskDialog():
            dialog.answered(event)
    field.value = ""
