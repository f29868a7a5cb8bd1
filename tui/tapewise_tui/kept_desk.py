"""What lies on the desk, each change of it kept on disk at once, and the way back.

It knows nothing of terminals. A change replaces a frozen value, and can be taken back.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, datetime, time

from msgspec.structs import replace

from tapewise_core.errors import FilesError, TapewiseError
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import people, work
from tapewise_core.tasks.work import Work
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit
from tapewise_tui.desk_state import Done, State, question

MOST_UNDONE = 200
"""How many changes can be taken back."""


class KeptDesk:
    """One person's measures and work at a time, as they are, were, and would be again.

    ``acts`` are changes to the list of people, each with how many of the person's own changes
    came before it. ``trouble`` is what the disk refused, ``asked`` what other windows changed too.
    """

    def __init__(self, today: date | None = None) -> None:
        self._today = today
        self.state = State()
        self.past: list[State] = []
        self.future: list[State] = []
        self.acts: list[tuple[Done, int]] = []
        self.trouble = ""
        self.asked: tuple[people.store.Clash, ...] = ()
        self._base: Profile | None = None
        self._seen: dict[str, Work] = {}

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

    def lay(self, profile: Profile, made: Work) -> None:
        """Lay a person's things on the desk; if they lay there already, unchanged since, what was
        changed can still be taken back."""
        self._base = profile
        same = self.state.holds(profile, made)
        self.state = State(profile, made, self.state.says if same else "")
        self._seen = {made.title: made}
        self.asked = ()
        if not same:
            self._forget()

    def put_away(self, id: str) -> None:
        """Put everything of a person away, as of one who is deleted."""
        if self.state.profile is not None and self.state.profile.id == id:
            self.state = State()
            self._forget()

    def _forget(self) -> None:
        """Nothing can be taken back any more but what was done to the list of people."""
        self.past, self.future = [], []
        self.acts = [(done, 0) for done, _ in self.acts]

    def change(self, says: str, profile: Profile | None = None, made: Work | None = None) -> None:
        """Keep a change on the desk and on disk; ``trouble`` says if the disk refuses it."""
        new = self._keep(State(profile or self.state.profile, made or self.state.work, says))
        lost = max(len(self.past) + 1 - MOST_UNDONE, 0)
        self.past = [*self.past[lost:], self.state]
        self.acts = [(done, max(before - lost, 0)) for done, before in self.acts]
        self.state, self.future = new, []

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

    def acted(self, done: Done) -> None:
        """Note a change to the list of people, if it can be taken back."""
        if done.undo is not None:
            self.acts.append((done, len(self.past)))

    def undo_any(self) -> str | None:
        """Take back what was done last, to the list of people or to the person's things; return
        what it was, or None if there is nothing."""
        if not self.acts or self.acts[-1][1] < len(self.past):
            says = self.undo()
            return says and f"{self.profile.name}, {says}"
        done, _ = self.acts.pop()
        if done.undo is not None:
            done.undo()
        return done.what

    def _keep(self, new: State) -> State:
        """Save what changed, and after trouble everything, and return it with what other windows
        changed meanwhile; what cannot be saved stays here."""
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
        when = datetime.now() if self._today is None else datetime.combine(self._today, time(12))
        return replace(made, when=when.isoformat(timespec="seconds"))
