"""Start: the people on file, what is open with each, and where one stopped."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from datetime import date

from textual import on
from textual.widget import Widget
from textual.widgets import Static

from tapewise_core.errors import TapewiseError
from tapewise_core.measures.catalogue import CATALOGUE, NAMES
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.store import Entry
from tapewise_core.tasks import people, work
from tapewise_tui import keys, words
from tapewise_tui.desk import Desk
from tapewise_tui.dialogs.person import PersonDialog
from tapewise_tui.line import Line
from tapewise_tui.page import Page
from tapewise_tui.widgets.rows import Rows

WELCOME = (
    "Tapewise drafts a jersey pattern to one person's own measures, proves it before anyone "
    "cuts, and says how to sew it. Take a tape, an elastic and about twenty minutes."
)


MANY = 60
"""People above which the list counts what is missing and leaves unlikely values to the review, so
that it stands at once (our choice)."""


class StartPage(Page):
    """The people on file."""

    NAME = "start"
    PURPOSE = (
        "Choose a person with the arrow keys and press Enter to go on where that person "
        "stopped; Ctrl+N begins with somebody new. Example people may be opened and changed; "
        "what you change is kept as your own copy."
    )
    BINDINGS = [
        *keys.hidden("unit", "back"),
        *keys.of(
            "find",
            on="open the person marked",
            new="begin with somebody new",
            change="change name, unit, age or whose bodies estimates are drawn from",
            delete="delete the person marked",
        ),
    ]

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.entries: dict[str, Entry] = {}
        self.undone: list[tuple[str, Callable[[], object]]] = []

    def parts(self) -> Iterable[Widget]:
        yield Static(WELCOME, id="welcome", markup=False)
        yield Rows(id="people")
        yield Static("", id="resume", markup=False)

    def show(self) -> None:
        super().show()
        self.call_after_refresh(self._fill)

    def _fill(self) -> None:
        try:
            entries = people.store.listing()
        except TapewiseError as error:
            self.warn(error)
            entries = ()
        self.entries = {str(entry.path): entry for entry in entries}
        table = self.query_one(Rows)
        columns = (("Person", 28), ("Last measured", 17), ("Open", 20))
        brief = len(entries) > MANY
        table.fill(columns, [(str(entry.path), _row(entry, brief=brief)) for entry in entries])
        self._resume(table)
        table.focus()

    def _resume(self, table: Rows) -> None:
        last = work.latest()
        at = self._file_of(last.person) if last is not None else None
        says = "Enter opens the person in the line marked; Ctrl+N begins with somebody new."
        if last is not None and at is not None:
            table.to(at)
            where = NAMES.get(last.measure, "") if last.page == "measure" else ""
            where = f" at the {where}" if where else ""
            says = f"Last time: {last.person}, page {last.page}{where}. Enter goes on there."
        self.query_one("#resume", Static).update(says)

    def _file_of(self, name: str) -> str | None:
        """The key of the row of a person who can be opened, or None."""
        ways = (key for key, row in self.entries.items() if not row.fault and row.name == name)
        return next(ways, None)

    def findable(self) -> tuple[Sequence[Line], str | None]:
        table = self.query_one(Rows)
        return table.lines(), table.at

    def found(self, key: str) -> None:
        self.query_one(Rows).to(key)

    def _chosen(self) -> Entry | None:
        return self.entries.get(self.query_one(Rows).at or "")

    @on(Rows.RowSelected)
    def open(self) -> None:
        entry = self._chosen()
        if entry is None or entry.profile is None:
            self.warn(
                entry.fault if entry else "Nobody is on file; Ctrl+N begins with somebody new."
            )
            return
        self.tapewise.open_person(entry.profile)

    def action_on(self) -> None:
        self.open()

    def action_new(self) -> None:
        self.app.push_screen(PersonDialog(), self._made)

    def _made(self, profile: Profile | None) -> None:
        if profile is None:
            return
        try:
            people.store.add(profile)
        except TapewiseError as error:
            self.warn(error)
            return
        self.tapewise.open_person(profile, "measure")

    def action_change(self) -> None:
        entry = self._chosen()
        if entry is not None and entry.profile is not None:
            self.app.push_screen(PersonDialog(entry.profile), self._edited)

    def _edited(self, profile: Profile | None) -> None:
        entry = self._chosen()
        if profile is None or entry is None or entry.profile in (None, profile):
            return
        try:
            work.bring_over(entry.name, entry.known.id)
            kept = people.store.keep(_own(profile, entry), _on_file(entry)).profile
            work.follow(kept.id, kept.name)
            self.undone.append((f"change to {entry.name}", lambda: _back(entry, kept)))
        except TapewiseError as error:
            self.warn(error)
            return
        self.show()
        self.tell(f"{profile.name} is kept.")

    def action_delete(self) -> None:
        entry = self._chosen()
        if entry is None:
            return
        try:
            people.store.remove(entry)
        except TapewiseError as error:
            self.warn(error)
            return
        said = f"{entry.name} is deleted."
        if not entry.fault:
            undo = (f"{entry.name} deleted", lambda: people.store.restore(entry.name))
            self.undone.append(undo)
            said += " Ctrl+Z brings everything back, for a day."
        self.show()
        self.tell(said)

    def undo(self) -> str | None:
        """Take back the last change to the list of people; return what it was."""
        if not self.undone:
            return None
        says, way = self.undone.pop()
        way()
        return says


def _row(entry: Entry, *, brief: bool) -> tuple[str, str, str]:
    name = f"{entry.name} (example)" if entry.shipped else entry.name
    if entry.fault:
        return name, "", "cannot be read; Enter says why"
    last = entry.known.last
    when = words.day(date.fromisoformat(last)) if last else "never"
    if brief or entry.profile is None:
        return name, when, _still(len(CATALOGUE) - entry.known.measures) or "nothing"
    return name, when, _open(entry.profile)


def _still(missing: int) -> str:
    """Say how many measures are still to take."""
    if missing == len(CATALOGUE):
        return "everything"
    return words.count(missing, "measure") if missing else ""


def _open(profile: Profile) -> str:
    """Say what is still to do about somebody's measures."""
    check = people.check(profile)
    if len(check.missing) == len(CATALOGUE):
        return "everything"
    unlikely = sum(finding.severity.value == "warning" for finding in check.findings)
    said = [_still(len(check.missing)), f"{unlikely} unlikely" if unlikely else ""]
    return ", ".join(filter(None, said)) or "nothing"


def _on_file(entry: Entry) -> Profile | None:
    return None if entry.shipped else entry.profile


def _own(profile: Profile, entry: Entry) -> Profile:
    """An example under another name is somebody new."""
    renamed = entry.shipped and profile.name != entry.name
    return people.somebody_new(profile) if renamed else profile


def _back(entry: Entry, changed: Profile) -> None:
    """Put a person back as she was before a change."""
    if entry.shipped:
        people.store.delete(changed.name)
    elif entry.profile is not None:
        people.store.keep(entry.profile, changed)
        work.follow(changed.id, entry.name)
