"""The desk the pages work at: whose measures, what is being made, and how to undo.

It knows nothing of terminals. A change replaces a frozen value, is kept on
disk at once, and can be taken back.
"""

from __future__ import annotations

import contextlib
from collections.abc import Callable, Mapping
from datetime import date, datetime
from pathlib import Path

from msgspec.structs import replace

from tapewise_core.errors import FilesError, TapewiseError
from tapewise_core.measures.body import Origin, WaistSite
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.measures.order import KEYS
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import people, settings, work
from tapewise_core.tasks.people import Check
from tapewise_core.tasks.work import Work
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit
from tapewise_tui import trouble
from tapewise_tui.desk_state import State, question

MOST_UNDONE = 200
"""How many changes can be taken back."""


class Desk:
    """One person's measures and work at a time; ``today`` is fixed in tests.

    ``all_measures`` says that all are gone through, not the garment's alone; ``judges`` that pages
    work out how sure the garment is while the person measures.
    """

    def __init__(self, today: date | None = None) -> None:
        self._today = today
        self.state = State()
        self.past: list[State] = []
        self.future: list[State] = []
        self.trouble = ""
        self.asked_machines = self.asked_site = False
        self.marked = ""
        self.drawn: tuple[tuple[Profile, object, object], ...] = ()
        self.asked: tuple[people.store.Clash, ...] = ()
        self.all_measures = False
        self.judges = True
        self._ordered: tuple[Profile, tuple[str, Mapping[str, str]], tuple[str, ...]] | None = None
        self._base: Profile | None = None
        self._seen: dict[str, Work] = {}
        self._checked: tuple[Profile, Check] | None = None

    @property
    def today(self) -> date:
        return self._today or date.today()

    @property
    def profile(self) -> Profile:
        """Whose measures lie on the desk; only pages after the first may ask."""
        assert self.state.profile is not None
        return self.state.profile

    @property
    def work(self) -> Work:
        assert self.state.work is not None
        return self.state.work

    @property
    def unit(self) -> Unit:
        return self.state.profile.unit if self.state.profile else Unit.CM

    @property
    def reader(self) -> Reader:
        """Whom the pages speak to: in the person's unit, options as the pages name them."""
        return Reader(self.unit, plain=True)

    @property
    def check(self) -> Check:
        """What is missing, estimated and unlikely; worked out once for each profile."""
        if self._checked is None or self._checked[0] is not self.profile:
            self._checked = (self.profile, people.check(self.profile))
        return self._checked[1]

    @property
    def used(self) -> tuple[str, ...]:
        """The measures that the garment makes use of, in the order of taking them."""
        made, known = self.work, self._ordered
        if known is None or known[0] is not self.profile or known[1] != (made.garment, made.asked):
            from tapewise_core.tasks.guesses import used  # not before it is wanted

            try:
                found = used(made.garment, made.asked, self.profile, self.unit)
            except TapewiseError:
                raise
            except Exception as error:  # a garment at fault leaves the measures to be taken
                trouble.note(error)
                found = KEYS
            known = self._ordered = (self.profile, (made.garment, made.asked), found)
        return known[2]

    @property
    def order(self) -> tuple[str, ...]:
        """The measures to go through: those used, or all if that was asked for."""
        return KEYS if self.all_measures else self.used

    @property
    def open_measures(self) -> tuple[str, ...]:
        """The measures that the garment makes use of and that are not measured yet."""
        missing = self.check.missing
        return tuple(key for key in self.used if key in missing)

    def open(self, profile: Profile, project: Work | None = None) -> str:
        """Lay a person's things on the desk; what was undone before is forgotten.

        If no project is named, it is the latest. What lay there already, unchanged since, can
        still be taken back.

        Returns a sentence if the work kept for the person had to be set aside, else nothing.
        """
        self._base = profile
        made, remark = work.take_up(profile.name)
        same = self.state.holds(profile, project or made)
        self.state = State(profile, project or made, self.state.says if same else "")
        self._seen = {one.title: one for one in (project or made,)}
        self.all_measures = self.asked_site = False
        self.asked = ()
        if not same:
            self.past, self.future = [], []
        return remark

    def clear(self) -> None:
        """Put everything away."""
        self.state, self.past, self.future = State(), [], []

    def change(self, says: str, profile: Profile | None = None, made: Work | None = None) -> None:
        """Keep a change on the desk and on disk; ``trouble`` says if the disk refuses it."""
        new = self._keep(State(profile or self.state.profile, made or self.state.work, says))
        self.past = [*self.past[-MOST_UNDONE:], self.state]
        self.state, self.future = new, []

    def value(
        self, key: str, readings: tuple[float, ...], cm: float, origin: Origin, says: str
    ) -> None:
        """Keep one measure [cm] with its readings [cm]."""
        profile = self.profile.with_value(
            key, cm, origin=origin, readings=readings, taken=self.today
        )
        self.change(says, profile)

    def waist_site(self, site: WaistSite) -> None:
        self.change(f"waist: {site.value}", self.profile.with_waist_site(site))

    def usual(self, key: str, text: str) -> None:
        """Remember for everybody what is usual here, such as the machines; no change to undo."""
        with contextlib.suppress(TapewiseError):  # the work itself is kept all the same
            settings.keep(settings.changed(settings.settings(), key, text))

    def place(self, page: str | None = None, measure: str | None = None) -> None:
        """Remember where the person is; no change to undo."""
        if self.state.work is None:
            return
        now = self.work
        where = replace(now, page=page or now.page, measure=measure or now.measure)
        if where != self.work:
            self.state = replace(self.state, work=self._stamped(where))
            self._save_work()

    def jot(self, notes: str) -> None:
        """Keep notes; the notes' own field undoes typing."""
        if self.state.work is not None and notes != self.work.notes:
            self.state = replace(self.state, work=self._stamped(replace(self.work, notes=notes)))
            self._save_work()

    def wrote(self, folder: Path, fingerprint: str) -> None:
        """Note a draft that was written; no change to undo, for its files are there."""
        when = self._stamped(self.work).when
        made = work.with_draft(self.work, folder, fingerprint, when)
        self.state = replace(self.state, work=self._stamped(made))
        self._save_work()

    def undo(self) -> str | None:
        """Take the last change back; return what it was, or None if there is none."""
        if not self.past:
            return None
        before = self._keep(self.state.brought_here(self.past[-1]))
        now = self.state
        self.past, self.future = self.past[:-1], [*self.future, now]
        self.state = before
        return now.says

    def redo(self) -> str | None:
        """Make a change again that was taken back; return what it was, or None."""
        if not self.future:
            return None
        after = self._keep(self.state.brought_here(self.future[-1]))
        self.future, self.past = self.future[:-1], [*self.past, self.state]
        self.state = after
        return after.says

    def _keep(self, new: State) -> State:
        """Save what changed, and after trouble everything; what cannot be saved stays here.

        Returns the state with what other windows changed meanwhile.
        """
        everything = bool(self.trouble)
        self.trouble = ""
        try:
            if new.profile is not None and (everything or new.profile is not self.state.profile):
                new = replace(new, profile=self._merged(new.profile))
            if new.work is not None and (everything or new.work is not self.state.work):
                new = replace(new, work=self._kept_work(new.work))
        except TapewiseError as error:
            self.trouble = self.reader.spell(error.told)
        return new

    def _merged(self, mine: Profile) -> Profile:
        """Save a profile; what came in from elsewhere goes into every state that can be undone."""
        kept = people.store.keep(mine, self._base)
        self._base = kept.profile
        if kept.profile != mine:
            self._everywhere(lambda one: one.with_profile(mine, kept.profile))
        self.asked = (*kept.clashes, *self._still_asked(kept))
        return kept.profile

    def _kept_work(self, made: Work) -> Work:
        """Save a project; what came in from elsewhere goes into every state, as with people."""
        mine, base = self._stamped(made), self._seen.get(made.title)
        both = self._seen[made.title] = work.keep(mine, base)
        if both == mine:
            return made
        self._everywhere(lambda one: one.with_work(mine, both))
        return both

    def _still_asked(self, kept: people.store.Kept) -> list[people.store.Clash]:
        """What was asked before and nobody has answered, by this change neither."""
        new = {clash.key for clash in kept.clashes}
        there = kept.profile.measures
        asked = (one for one in self.asked if one.key not in new)
        return [one for one in asked if there.get(one.key) == one.theirs]

    def settle(self, *, mine: bool) -> None:
        """Answer the first question: what was entered here counts, or what is on file."""
        clash, *rest = self.asked
        self.asked = tuple(rest)
        if mine:
            self.change(f"{NAMES[clash.key]} as entered here", clash.settled(self.profile))

    @property
    def question(self) -> str:
        """Ask which of two readings counts, where another window changed the same measure."""
        return " ".join(question(clash, self.unit) for clash in self.asked)

    def _everywhere(self, changed: Callable[[State], State]) -> None:
        """Change what lies here and every state that can come back."""
        self.state, *self.past = map(changed, (self.state, *self.past))
        self.future = list(map(changed, self.future))

    def _save_work(self) -> None:
        try:
            kept = self._kept_work(self.work)
            self.state = replace(self.state, work=kept)
        except FilesError as error:
            self.trouble = self.reader.spell(error.told)

    def _stamped(self, made: Work) -> Work:
        when = datetime.now() if self._today is None else datetime.combine(self._today, _NOON)
        return replace(made, when=when.isoformat(timespec="seconds"))


_NOON = datetime(2000, 1, 1, 12).time()
