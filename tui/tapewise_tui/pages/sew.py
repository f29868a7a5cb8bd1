"""Sew: the checklist to tick, kept between runs, with room for notes."""

from __future__ import annotations

from collections.abc import Iterable

from rich.text import Text
from textual import on
from textual.binding import Binding
from textual.containers import Horizontal, Vertical
from textual.widget import Widget
from textual.widgets import Label, OptionList, Static, TextArea
from textual.widgets.option_list import Option

from tapewise_core.tasks import wizard
from tapewise_core.tasks.drafting import Drafted
from tapewise_core.tasks.wizard import Chores
from tapewise_tui import drafting
from tapewise_tui.page import PAGES_KEY, Page


class SewPage(Page):
    """Everything to do, in order."""

    NAME = "sew"
    PURPOSE = (
        "Enter ticks the thing marked; ticks stay until you take them off. If the pattern "
        "changes, what has changed is open again. F6 goes to your notes and back."
    )
    BINDINGS = [
        Binding("f6", "notes", "Notes", tooltip="to the notes and back"),
        PAGES_KEY,
    ]

    def parts(self) -> Iterable[Widget]:
        with Horizontal(id="sheet"):
            yield OptionList(id="chores")
            with Vertical(id="notes-side"):
                yield Label("Notes for the next time")
                yield TextArea(self.desk.work.notes, id="notes", compact=True)
        yield Static("", id="summary", markup=False)

    def show(self) -> None:
        super().show()
        result = drafting.drafted(self.desk)
        if not isinstance(result, Drafted):
            self.warn(result)
            self.chores: tuple[Chores, ...] = ()
        else:
            self.chores = wizard.chores(result.checklist())
        chores = self.query_one("#chores", OptionList)
        at = chores.highlighted
        chores.clear_options()
        chores.add_options(self._rows())
        chores.highlighted = (
            at if at is not None else next_open(self._items(), self.desk.work.ticked)
        )
        self._count()
        if self.focused is None:
            chores.focus()

    def _rows(self) -> Iterable[Option]:
        ticked = self.desk.work.ticked
        for chore in self.chores:
            yield Option(Text(chore.heading, "bold"), disabled=True)
            for item in chore.items:
                mark = f"[{'x' if item in ticked else ' '}]" if chore.to_tick else "  –"
                yield Option(Text(f"{mark} {item}"), disabled=not chore.to_tick)

    def _items(self) -> list[str | None]:
        """Return what each row can tick, None for headings and cautions."""
        found: list[str | None] = []
        for chore in self.chores:
            found += [None, *(item if chore.to_tick else None for item in chore.items)]
        return found

    def _count(self) -> None:
        items = [item for item in self._items() if item]
        done = sum(item in self.desk.work.ticked for item in items)
        self.query_one("#summary", Static).update(f"{done} of {len(items)} done.")

    @on(OptionList.OptionSelected, "#chores")
    def tick(self, event: OptionList.OptionSelected) -> None:
        event.stop()
        item = self._items()[event.option_index]
        if item is None:
            return
        done = item not in self.desk.work.ticked
        self.desk.change(
            f"{'ticked' if done else 'open'}: {item[:30]}…", made=self.desk.work.toggled(item)
        )
        self.show()
        if done:
            self.query_one("#chores", OptionList).action_cursor_down()

    @on(TextArea.Changed, "#notes")
    def jot(self, event: TextArea.Changed) -> None:
        event.stop()
        self.desk.jot(event.text_area.text)

    def action_notes(self) -> None:
        notes, chores = self.query_one("#notes", TextArea), self.query_one("#chores")
        (chores if notes.has_focus else notes).focus()


def next_open(items: list[str | None], ticked: tuple[str, ...]) -> int | None:
    """Return the row of the first thing not ticked yet."""
    return next((row for row, item in enumerate(items) if item and item not in ticked), None)
