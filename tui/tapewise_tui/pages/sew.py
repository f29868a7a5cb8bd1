"""Sew: the checklist to tick, kept between runs, with room for notes."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from textual import on
from textual.binding import Binding
from textual.containers import Horizontal, Vertical
from textual.widget import Widget
from textual.widgets import Label, Static, TextArea

from tapewise_core.tasks import wizard
from tapewise_core.tasks.drafting import Drafted
from tapewise_core.tasks.wizard import Chores
from tapewise_tui import drafting
from tapewise_tui.page import PAGES_KEY, Page
from tapewise_tui.widgets.ticks import Item, TickList


class SewPage(Page):
    """Everything to do, in order."""

    NAME = "sew"
    PURPOSE = (
        "Enter or Space ticks the thing marked; ticks stay until you take them off, in this "
        "run and the next. If the pattern changes, what has changed is open again. F5 goes to "
        "your notes and back."
    )
    BINDINGS = [
        Binding("f4", "on", show=False),
        Binding("f5", "notes", "Notes", tooltip="to the notes and back"),
        Binding("f8", "next", "Next open", tooltip="to the next thing not done yet"),
        PAGES_KEY,
    ]

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
            self.chores = wizard.chores(result.checklist())
        else:
            self.chores = ()
            self.warn(result)
        self.query_one(TickList).fill(tuple(self._items()))
        self._count()

    def _items(self) -> Iterator[Item]:
        for chore in self.chores:
            yield Item(None, chore.heading)
            yield from (self._item(chore, text) for text in chore.items)

    def _item(self, chore: Chores, text: str) -> Item:
        if not chore.to_tick:
            return Item(None, text, None)
        return Item(text, text, text in self.desk.work.ticked)

    def _count(self) -> None:
        boxes = [item for item in self.query_one(TickList).items if item.key]
        done = sum(bool(item.ticked) for item in boxes)
        self.query_one("#summary", Static).update(f"{done} of {len(boxes)} done.")

    @on(TickList.Ticked)
    def tick(self, event: TickList.Ticked) -> None:
        event.stop()
        done = event.key not in self.desk.work.ticked
        says = f"{'ticked' if done else 'opened'} “{_short(event.key)}”"
        self.desk.change(says, made=self.desk.work.toggled(event.key))
        self.show()
        if done:
            self.query_one(TickList).action_cursor_down()

    @on(TextArea.Changed, "#notes")
    def jot(self, event: TextArea.Changed) -> None:
        event.stop()
        self.desk.jot(event.text_area.text)

    def action_notes(self) -> None:
        notes, chores = self.query_one(TextArea), self.query_one(TickList)
        (chores if notes.has_focus else notes).focus()

    def action_next(self) -> None:
        chores = self.query_one(TickList)
        open_rows = [at for at, item in enumerate(chores.items) if item.key and not item.ticked]
        later = [at for at in open_rows if at > (chores.highlighted or 0)]
        if open_rows:
            chores.highlighted = (later or open_rows)[0]
            chores.focus()
        else:
            self.tell("Everything is done. Wear it well, and note what to change next time.")


def _short(text: str) -> str:
    return text if len(text) <= 40 else text[:39].rstrip() + "…"
