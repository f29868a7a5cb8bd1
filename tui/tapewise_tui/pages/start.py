"""Start: the people on file, what is open with each, and where one stopped."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence

from textual import on
from textual.events import Key
from textual.widget import Widget
from textual.widgets import Static

from tapewise_core.errors import TapewiseError
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.store import Entry
from tapewise_core.tasks import people, work
from tapewise_tui import keys, peopling
from tapewise_tui.desk_state import Done
from tapewise_tui.line import Line
from tapewise_tui.page import Page
from tapewise_tui.widgets.find import FindDialog
from tapewise_tui.widgets.people_rows import PeopleRows
from tapewise_tui.widgets.rows import Rows

WELCOME = (
    "Tapewise drafts a jersey pattern to one person's own measures, proves it before anyone "
    "cuts, and says how to sew it. Take a tape, an elastic and about twenty minutes."
)

BEGIN = "Ctrl+N, or +, begins: who is measured, what is made for her or him, and then the measures."


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

    def parts(self) -> Iterable[Widget]:
        yield Static(WELCOME, id="welcome", markup=False)
        yield PeopleRows()
        yield Static("", id="resume", markup=False)

    def show(self) -> None:
        super().show()
        self.call_after_refresh(self._fill)

    def _fill(self) -> None:
        if self.gone:  # left again before it stood
            return
        table = self.query_one(PeopleRows)
        try:
            table.read()
        except TapewiseError as error:
            self.warn(error)
        self._resume(table)
        table.focus()

    def _resume(self, table: PeopleRows) -> None:
        last = work.latest()
        at = table.file_of(last.person) if last is not None else None
        says = BEGIN
        if last is not None and at is not None:
            table.to(at)
            where = NAMES.get(last.measure, "") if last.page in ("measure", "table") else ""
            where = f" at the {where}" if where else ""
            says = f"Last time: {last.person}, page {last.page}{where}. Enter goes on there."
        self.query_one("#resume", Static).update(says)

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
        table = self.query_one(PeopleRows)
        return table.found_by(), table.at

    def found(self, key: str) -> None:
        self.query_one(Rows).to(key)

    def _chosen(self) -> Entry | None:
        return self.query_one(PeopleRows).chosen

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
