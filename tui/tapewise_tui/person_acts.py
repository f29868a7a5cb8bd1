"""All that can be done with a person on file, each with the question that it asks first."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial

from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.store import Entry
from tapewise_core.tasks import work
from tapewise_core.tasks.work import Work
from tapewise_tui import people_told, peopling, words
from tapewise_tui.desk_state import Done
from tapewise_tui.dialogs.asking import AskDialog, SureDialog
from tapewise_tui.dialogs.person import PersonDialog
from tapewise_tui.dialogs.telling import TellDialog
from tapewise_tui.line import Line
from tapewise_tui.page import Page
from tapewise_tui.widgets.find import FindDialog

Do = Callable[[Callable[[], Done]], None]
"""How a page does something to its list, says so, and keeps how it is taken back."""


class PersonActs:
    """What the start page offers for one person; dialogs are shown over the page."""

    def __init__(self, page: Page, entry: Entry, profile: Profile, do: Do) -> None:
        self.page, self.entry, self.profile, self.do = page, entry, profile, do

    def there_are(self) -> Iterator[tuple[str, Callable[[], object]]]:
        """Yield what can be done, in words, and how."""
        own = work.projects(self.entry.name)
        for one in own:
            yield f"Go on with {people_told.project_line(one)}", partial(self.go_on, one)
        yield "Begin another garment", partial(ask_what, self.page, self.profile)
        yield "Change name, unit, age or whose bodies", self.edit
        yield f"Groups: {', '.join(self.profile.groups) or 'none'}", self.group
        yield "Compare with the last time", self.compare
        yield "Duplicate the person", self.duplicate
        for one in own:
            yield f"Duplicate the project {people_told.project_name(one)}", partial(self.copy, one)
            yield f"Delete the project {people_told.project_name(one)}", partial(self.drop, one)
        yield "Delete the person", partial(delete_person, self.page, self.entry, self.do)
        for says, back in peopling.trash():
            yield f"Bring back {says}", partial(self.do, partial(_brought, says, back))

    def go_on(self, one: Work) -> None:
        """Open the person with one of her projects, where it was left."""
        self.page.tapewise.open_person(self.profile, "", one)

    def edit(self) -> None:
        """Ask for name, unit, age and whose bodies afresh."""

        def edited(profile: Profile | None) -> None:
            if profile is not None and profile != self.profile:
                self.do(partial(peopling.changed, self.entry, profile))

        self.page.app.push_screen(PersonDialog(self.profile), edited)

    def group(self) -> None:
        """Ask for the groups."""
        says = "Names, separated by commas; nothing for no group."
        act = partial(peopling.grouped, self.entry, self.profile)
        self._ask(f"Groups of {self.entry.name}", says, act, ", ".join(self.profile.groups))

    def compare(self) -> None:
        """Tell what changed since the last day of measuring."""
        lines = people_told.compared(self.profile.name, self.profile.unit)
        dialog = TellDialog(f"{self.profile.name}, the last time and now", lines)
        self.page.app.push_screen(dialog)

    def duplicate(self) -> None:
        """Ask for the name of a second person with the same measures."""
        says = f"Name of a second person with the measures of {self.entry.name}"
        self._ask("Duplicate", says, partial(peopling.duplicated, self.entry))

    def copy(self, one: Work) -> None:
        """Ask for the name of a second project with the same choices."""
        says = f"Name of a second project with the choices of {people_told.project_name(one)}"
        self._ask("Duplicate", says, partial(peopling.project_copied, one))

    def drop(self, one: Work) -> None:
        """Delete a project, once that was said."""
        says = f"Its choices, ticks and notes go; the measures of {one.person} stay."
        act = partial(_put_away, self.page, self.entry, partial(peopling.project_removed, one))
        _sure(
            self.page,
            f"Delete {people_told.project_name(one)} of {one.person}?",
            says,
            partial(self.do, act),
        )

    def _ask(self, title: str, says: str, act: Callable[[str], Done], value: str = "") -> None:
        def answered(text: str | None) -> None:
            if text is not None:
                self.do(partial(act, text))

        self.page.app.push_screen(AskDialog(title, says, value), answered)


def ask_what(page: Page, profile: Profile) -> None:
    """Ask what is made for somebody, and go on to the measures; left, it is the usual."""
    from tapewise_core.tasks.wizard import garments  # not before it is wanted

    lines = tuple(Line(one.name, f"{one.title}: {one.says}") for one in garments())

    def chosen(name: str | None) -> None:
        made = peopling.beginning(profile, name or lines[0].key or "")
        page.tapewise.open_person(profile, "measure", made)

    page.app.push_screen(FindDialog(f"What is made for {profile.name}?", lines), chosen)


def delete_person(page: Page, entry: Entry, do: Do) -> None:
    """Delete a person, once that was said; an example refuses at once."""
    act = partial(do, partial(_put_away, page, entry, partial(peopling.removed, entry)))
    if entry.shipped:
        act()
        return
    there = words.sentence(words.count(entry.known.measures, "measure"))
    says = f"{there} and all projects go. It can be undone for a day."
    _sure(page, f"Delete {entry.name}?", says, act)


def _put_away(page: Page, entry: Entry, act: Callable[[], Done]) -> Done:
    """Delete something of a person; nothing of hers stays on the desk, where it would be kept."""
    done = act()
    page.desk.put_away(entry.known.id)
    return done


def _sure(page: Page, title: str, says: str, act: Callable[[], object]) -> None:
    def answered(yes: bool | None) -> None:
        if yes:
            act()

    page.app.push_screen(SureDialog(title, says), answered)


def _brought(says: str, back: Callable[[], object]) -> Done:
    back()
    return Done(f"{says} is back.")
