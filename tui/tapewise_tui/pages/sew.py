"""Sew: the checklist to tick, kept between runs, with room for notes."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from textual import on
from textual.containers import Horizontal, Vertical
from textual.widget import Widget
from textual.widgets import Label, Static, TextArea

from tapewise_core.tasks import ticking
from tapewise_core.tasks.chores import FINISH, SEW, Chore
from tapewise_tui import keys, noting, words
from tapewise_tui.chores_page import ChoresPage
from tapewise_tui.item import Item
from tapewise_tui.line import Line
from tapewise_tui.widgets.ticks import TickList

AGAIN = "again"
"""The key of the line that begins the same garment once more."""


class SewPage(ChoresPage):
    """Everything to do, in order."""

    NAME = "sew"
    PURPOSE = (
        "Enter or Space ticks the thing marked; ticks stay until you take them off, in this "
        "run and the next. If the pattern changes, what is true no more is open again: a cloth "
        "stays washed and a piece cut, unless they are others. Tab goes to your notes and back."
    )
    BINDINGS = keys.of(
        "find",
        "steps",
        "cloth",
        "fitting",
        on="on to cutting out, piece by piece",
        table="the piece or the step marked alone, with its picture",
    )

    def parts(self) -> Iterable[Widget]:
        yield Static("", id="summary", markup=False)
        with Horizontal(id="sheet"):
            yield TickList(id="chores")
            with Vertical(id="notes-side"):
                yield Label("Notes for the next time")
                yield TextArea(self.desk.work.notes, id="notes", compact=True)

    def begin(self) -> None:
        super().begin()
        self.query_one(TickList).focus()

    def show(self) -> None:
        super().show()
        area = self.query_one("#notes", TextArea)
        if area.text != self.desk.work.notes:
            area.load_text(self.desk.work.notes)
        self.query_one(TickList).fill(tuple(self._items()))
        self._mark()
        self._count()

    def _mark(self) -> None:
        """Put the cursor on what the person comes from."""
        marked, self.desk.marked = self.desk.marked, ""
        rows = self.query_one(TickList)
        for at, item in enumerate(rows.items):
            if marked and item.key == marked:
                rows.to(str(at))

    def _items(self) -> Iterator[Item]:
        done = self.done
        for part in self.chores:
            yield Item(None, part.heading)
            if part.mind:
                yield Item(None, part.mind, None)
            yield from (_item(chore, done) for chore in part.items)
        yield Item(None, "At the end")
        yield Item(noting.KEY, noting.SAYS, None)
        if self.draft and self.desk.work.sewn == self.fingerprint:
            yield Item(AGAIN, "Make the same once more: Enter takes all ticks off.", None)

    def _count(self) -> None:
        items = self.query_one(TickList).items
        boxes = [item for item in items if item.key and item.ticked is not None]
        done = sum(bool(item.ticked) for item in boxes)
        again = ticking.open_again(self.desk.work, self.chores, self.fingerprint)
        more = f" {_things(again)} open again: the pattern has changed since." if again else ""
        counted = f"{done} of {len(boxes)} done." if boxes else "There is no pattern to sew yet."
        self.query_one("#summary", Static).update(f"{counted}{more}")

    @on(TickList.Ticked)
    def tick(self, event: TickList.Ticked) -> None:
        event.stop()
        if event.key == noting.KEY:
            noting.begin(self)
            return
        if event.key == AGAIN:
            self.desk.change("begun once more", made=ticking.once_more(self.desk.work))
            self.show()
            self.query_one(TickList).action_first()
            return
        made = ticking.toggled(self.desk.work, event.key, self.chores, self.fingerprint)
        done = event.key in made.ticked
        text = next(i.text for i in self.query_one(TickList).items if i.key == event.key)
        says = f"{'ticked' if done else 'opened'} “{words.shortened(text, 40)}”"
        self.desk.change(says, made=made)
        self.show()
        if done:
            self.query_one(TickList).action_cursor_down()

    def action_on(self) -> None:
        self.tapewise.go("cut")

    def action_table(self) -> None:
        """Show what is marked alone: a step of sewing, else a piece to cut."""
        rows = self.query_one(TickList)
        marked = rows.items[rows.highlighted].key if rows.highlighted is not None else None
        parts = [part for part in self.chores if part.heading in (SEW, FINISH)]
        sewing = {chore.key for part in parts for chore in part.items} | {noting.KEY, AGAIN}
        self.desk.marked = marked or ""
        self.tapewise.go("stitch" if marked in sewing else "cut")

    @on(TextArea.Changed, "#notes")
    def jot(self, event: TextArea.Changed) -> None:
        event.stop()
        self.desk.jot(event.text_area.text)

    def findable(self) -> tuple[Sequence[Line], str | None]:
        return self.query_one(TickList).lines()

    def found(self, key: str) -> None:
        self.query_one(TickList).to(key)


def _item(chore: Chore, done: Sequence[str]) -> Item:
    """A line to tick by its key; without one to tick, a line to read."""
    if not chore.key:
        return Item(None, chore.says, None)
    return Item(chore.key, chore.says, chore.key in done)


def _things(many: int) -> str:
    return "1 thing is" if many == 1 else f"{many} things are"
