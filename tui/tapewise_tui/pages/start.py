"""Start: the people on file, what is open with each, and where one stopped."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence

from textual import on
from textual import work as working
from textual.events import Key
from textual.message import Message
from textual.widget import Widget
from textual.widgets import Static

from tapewise_core.errors import TapewiseError
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.store import Entry
from tapewise_core.tasks import people, work
from tapewise_tui import keys, people_told, peopling, trouble
from tapewise_tui.desk import Desk
from tapewise_tui.desk_state import Done
from tapewise_tui.line import Line
from tapewise_tui.page import Page
from tapewise_tui.widgets.find import FindDialog
from tapewise_tui.widgets.rows import Rows

WELCOME = (
    "Tapewise drafts a jersey pattern to one person's own measures, proves it before anyone "
    "cuts, and says how to sew it. Take a tape, an elastic and about twenty minutes."
)

BEGIN = "Ctrl+N, or +, begins: who is measured, what is made for her or him, and then the measures."

MANY = 60
"""People above which the list counts what is missing and leaves unlikely values to the review, so
that it stands at once (our choice)."""


WIDE = 72
"""Columns of the terminal from which names have more room."""

WIDEST = 96
"""Columns of the terminal from which groups and days stand side by side, and nothing is cut."""


class StartPage(Page):
    """The people on file."""

    NAME = "start"
    PURPOSE = (
        "Choose a person with the arrow keys, or type some letters of the name, and press Enter "
        "to go on where that person stopped; Ctrl+N begins with somebody new. F8 lists what else "
        "can be done: projects, groups, duplicates, comparing with the last time, and bringing "
        "back what was deleted. Example people may be opened and changed; what you change is "
        "kept as your own copy."
    )
    BINDINGS = [
        *keys.hidden("unit", "back"),
        *keys.of(
            "find",
            on="open the person marked",
            new="begin with somebody new: who, what, then the measures",
            change="all that can be done with the person marked: projects, groups and the rest",
            delete="delete the person marked, once you said yes",
        ),
    ]

    class Judged(Message):
        """A worker looked at everybody's measures."""

        def __init__(self, rows: Mapping[str, people_told.Told]) -> None:
            super().__init__()
            self.rows = rows

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.entries: dict[str, Entry] = {}

    def parts(self) -> Iterable[Widget]:
        yield Static(WELCOME, id="welcome", markup=False)
        yield Rows(id="people")
        yield Static("", id="resume", markup=False)

    def show(self) -> None:
        super().show()
        self.call_after_refresh(self._fill)

    def _fill(self) -> None:
        if self.gone:  # left again before it stood
            return
        try:
            entries = people.store.listing()
        except TapewiseError as error:
            self.warn(error)
            entries = ()
        self.entries = {str(entry.path): entry for entry in entries}
        table = self.query_one(Rows)
        self._list({key: people_told.row(one, brief=True) for key, one in self.entries.items()})
        self._resume(table)
        table.focus()
        if len(entries) <= MANY:
            self.call_after_refresh(self._judge, tuple(self.entries.items()))

    @working(thread=True, exclusive=True, group="judge", description="judge")
    def _judge(self, entries: tuple[tuple[str, Entry], ...]) -> None:
        """Look what is unlikely about everybody, once the list stands."""
        try:
            rows = {key: people_told.row(entry, brief=False) for key, entry in entries}
        except Exception as error:  # the list stands without
            trouble.note(error)
            return
        self.post_message(self.Judged(rows))

    @on(Judged)
    def judged(self, event: Judged) -> None:
        event.stop()
        if list(event.rows) == list(self.entries) and not self.gone:
            self._list(event.rows)

    def _list(self, rows: Mapping[str, people_told.Told]) -> None:
        """Show the people."""
        wide, widest = (self.size.width >= columns for columns in (WIDE, WIDEST))
        columns, lines = people_told.shown(rows, wide=wide, widest=widest)
        self.query_one(Rows).fill(columns, lines)

    def _resume(self, table: Rows) -> None:
        last = work.latest()
        at = self._file_of(last.person) if last is not None else None
        says = BEGIN
        if last is not None and at is not None:
            table.to(at)
            where = NAMES.get(last.measure, "") if last.page in ("measure", "table") else ""
            where = f" at the {where}" if where else ""
            says = f"Last time: {last.person}, page {last.page}{where}. Enter goes on there."
        self.query_one("#resume", Static).update(says)

    def _file_of(self, name: str) -> str | None:
        """The key of the row of a person who can be opened, or None."""
        ways = (key for key, row in self.entries.items() if not row.fault and row.name == name)
        return next(ways, None)

    def on_key(self, event: Key) -> None:
        """A letter begins the search for a name."""
        letter, dialog = event.character or "", self.app.screen
        if not event.is_printable:
            return
        if isinstance(dialog, FindDialog):  # typed before the dialog stood there
            event.stop()
            dialog.more(letter)
        elif letter.isalpha() and dialog is self:
            event.stop()
            self.find(letter)

    def findable(self) -> tuple[Sequence[Line], str | None]:
        """People by name and group; by what is open nobody is looked for."""
        lines = [Line(key, _found_by(entry)) for key, entry in self.entries.items()]
        return lines, self.query_one(Rows).at

    def found(self, key: str) -> None:
        self.query_one(Rows).to(key)

    def _chosen(self) -> Entry | None:
        return self.entries.get(self.query_one(Rows).at or "")

    @on(Rows.RowSelected)
    def open(self) -> None:
        entry = self._chosen()
        if entry is None or entry.profile is None:
            self.warn(entry.fault if entry else f"Nobody is on file. {BEGIN}")
            return
        try:  # anew, for a change may have been made again since she was listed
            profile = people.store.load(entry.name)
        except TapewiseError as error:
            self.warn(error)
            return
        self.tapewise.open_person(profile)

    def action_on(self) -> None:
        self.open()

    def action_new(self) -> None:
        from tapewise_tui.dialogs.person import PersonDialog

        self.app.push_screen(PersonDialog(), self._made)

    def _made(self, profile: Profile | None) -> None:
        if profile is None:
            return
        try:
            peopling.made_new(profile)
        except TapewiseError as error:
            self.warn(error)
            return
        from tapewise_tui.person_acts import ask_what

        ask_what(self, profile)

    def commands(self) -> Iterable[tuple[str, Callable[[], object]]]:
        """All that can be done with the person marked, and bringing back who was deleted."""
        entry = self._chosen()
        if entry is None or entry.profile is None:
            return ()
        from tapewise_tui.person_acts import PersonActs  # what opens a dialog is read by then

        return PersonActs(self, entry, entry.profile, self._do).there_are()

    def action_change(self) -> None:
        """List all that can be done with the person marked."""
        entry = self._chosen()
        if entry is None or entry.profile is None:
            self.warn(entry.fault if entry else f"Nobody is on file. {BEGIN}")
            return
        there = dict(self.commands())

        def chosen(says: str | None) -> None:
            if says is not None:
                there[says]()

        lines = [Line(says, says) for says in there]
        self.app.push_screen(FindDialog(entry.name, lines), chosen)

    def action_delete(self) -> None:
        from tapewise_tui.person_acts import delete_person

        entry = self._chosen()
        if entry is not None:
            delete_person(self, entry, self._do)

    def _do(self, act: Callable[[], Done]) -> None:
        """Do something to the list, say so, and keep how it is taken back."""
        try:
            done = act()
        except TapewiseError as error:
            self.warn(error)
            return
        self.desk.acted(done)
        self.show()
        self.tell(done.says)

    @property
    def still_there(self) -> str:
        """Say where somebody is whose deletion this page no longer knows of, or nothing."""
        gone = peopling.trash()
        return f" F8 offers to bring back {gone[0][0]}, last deleted." if gone else ""


def _found_by(entry: Entry) -> str:
    groups = entry.profile.groups if entry.profile else ()
    return "  ".join((entry.name, *groups))
