"""The people on file as a list, each judged aside once the list stands."""

from __future__ import annotations

from collections.abc import Mapping

from textual import on, work
from textual.events import Resize
from textual.message import Message

from tapewise_core.profiles.store import Entry
from tapewise_core.tasks import people
from tapewise_tui import people_told, trouble
from tapewise_tui.line import Line
from tapewise_tui.widgets.rows import Rows

MANY = 60
"""People above which the list counts measures alone and leaves the rest to the pages, so that it
stands at once (our choice)."""

WIDE = 72
"""Columns of the terminal from which names have more room."""

WIDEST = 96
"""Columns of the terminal from which groups and days stand side by side, and nothing is cut."""


class PeopleRows(Rows):
    """A row for everybody on file."""

    class Judged(Message):
        """A worker looked at everybody's measures."""

        def __init__(self, rows: Mapping[str, people_told.Told]) -> None:
            super().__init__()
            self.rows = rows

    def __init__(self) -> None:
        super().__init__(id="people")
        self.entries: dict[str, Entry] = {}
        self.told: Mapping[str, people_told.Told] = {}

    def read(self) -> None:
        """List whoever is on file; raises TapewiseError, with nobody listed."""
        self.entries = {}
        try:
            self.entries = {str(entry.path): entry for entry in people.store.listing()}
        finally:
            self._list({key: people_told.row(one, brief=True) for key, one in self.entries.items()})
        if len(self.entries) <= MANY:
            self.call_after_refresh(self._judge, tuple(self.entries.items()))

    @work(thread=True, exclusive=True, group="judge", description="judge")
    def _judge(self, entries: tuple[tuple[str, Entry], ...]) -> None:
        """Look what is there and what is unlikely about everybody, once the list stands."""
        try:
            rows = {key: people_told.row(entry, brief=False) for key, entry in entries}
        except Exception as error:  # the list stands without
            trouble.note(error)
            return
        self.post_message(self.Judged(rows))

    @on(Judged)
    def judged(self, event: Judged) -> None:
        event.stop()
        if list(event.rows) == list(self.entries):
            self._list(event.rows)

    def on_resize(self, event: Resize) -> None:
        """Set the columns to the room there is now."""
        super().on_resize(event)
        self._list(self.told)

    def _list(self, rows: Mapping[str, people_told.Told]) -> None:
        self.told = rows
        wide, widest = (self.screen.size.width >= columns for columns in (WIDE, WIDEST))
        self.fill(*people_told.shown(rows, wide=wide, widest=widest))

    @property
    def chosen(self) -> Entry | None:
        """Whoever is marked."""
        return self.entries.get(self.at or "")

    def file_of(self, name: str) -> str | None:
        """The key of the row of a person who can be opened, or None."""
        ways = (key for key, row in self.entries.items() if not row.fault and row.name == name)
        return next(ways, None)

    def found_by(self) -> list[Line]:
        """People by name and group; by what is open nobody is looked for."""
        return [Line(key, _found_by(entry)) for key, entry in self.entries.items()]


def _found_by(entry: Entry) -> str:
    groups = entry.profile.groups if entry.profile else ()
    return "  ".join((entry.name, *groups))
