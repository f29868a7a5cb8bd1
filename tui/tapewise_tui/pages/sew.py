"""Sew: the checklist to tick, kept between runs, with room for notes."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from textual import on
from textual.containers import Horizontal, Vertical
from textual.widget import Widget
from textual.widgets import Label, Static, TextArea

from tapewise_core.tasks import wizard
from tapewise_core.tasks.drafting import Drafted
from tapewise_core.tasks.wizard import Chores
from tapewise_tui import drafting, keys
from tapewise_tui.item import Item
from tapewise_tui.line import Line
from tapewise_tui.page import Page
from tapewise_tui.widgets.ticks import TickList


class SewPage(Page):
    """Everything to do, in order."""

    NAME = "sew"
    PURPOSE = (
        "Enter or Space ticks the thing marked; ticks stay until you take them off, in this "
        "run and the next. If the pattern changes, what has changed is open again. Tab goes to "
        "your notes and back."
    )
    BINDINGS = [*keys.hidden("on"), *keys.of("find", "steps")]

    def parts(self) -> Iterable[Widget]:
        yield Static("", id="summary", markup=False)
        with Horizontal(id="sheet"):
            yield TickList(id="chores")
            with Vertical(id="notes-side"):
                yield Label("Notes for the next time")
                yield TextArea(self.desk.work.notes, id="notes", compact=True)

    def begin(self) -> None:
        self.query_one(TickList).focus()

    def show(self) -> None:
        super().show()
        result = drafting.drafted(self.desk)
        if isinstance(result, Drafted):
            self.chores = wizard.chores(result)
        else:
            self.chores = ()
            self.warn(result)
        self.query_one(TickList).fill(tuple(self._items()))
        self._count()

    def _items(self) -> Iterator[Item]:
        for chore in self.chores:
            yield Item(None, chore.heading)
            for key, text in zip(chore.keys, chore.items, strict=True):
                yield self._item(chore, key, text)

    def _item(self, chore: Chores, key: str, text: str) -> Item:
        """A line to tick by its key; without one to tick, a line to read."""
        if not chore.to_tick:
            return Item(None, text, None)
        return Item(key, text, key in self.desk.work.ticked)

    def _count(self) -> None:
        boxes = [item for item in self.query_one(TickList).items if item.key]
        done = sum(bool(item.ticked) for item in boxes)
        self.query_one("#summary", Static).update(f"{done} of {len(boxes)} done.")

    @on(TickList.Ticked)
    def tick(self, event: TickList.Ticked) -> None:
        event.stop()
        done = event.key not in self.desk.work.ticked
        text = next(i.text for i in self.query_one(TickList).items if i.key == event.key)
        says = f"{'ticked' if done else 'opened'} “{_short(text)}”"
        self.desk.change(says, made=self.desk.work.toggled(event.key))
        self.show()
        if done:
            self.query_one(TickList).action_cursor_down()

    @on(TextArea.Changed, "#notes")
    def jot(self, event: TextArea.Changed) -> None:
        event.stop()
        self.desk.jot(event.text_area.text)

    def findable(self) -> tuple[Sequence[Line], str | None]:
        return self.query_one(TickList).lines()

    def found(self, key: str) -> None:
        self.query_one(TickList).to(key)


def _short(text: str) -> str:
    return text if len(text) <= 40 else text[:39].rstrip() + "…"
