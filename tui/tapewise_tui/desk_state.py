"""What lies on the desk at one moment, and how another window's changes go into it."""

from __future__ import annotations

from collections.abc import Callable

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import people, work
from tapewise_core.tasks.work import Work
from tapewise_core.units import Unit


class Done(Frozen):
    """What was done to the list of people, in a sentence; ``what`` names it and ``undo`` takes it
    back, if it can be."""

    says: str
    what: str = ""
    undo: Callable[[], object] | None = None


class State(Frozen):
    """Everything a change may change; ``says`` names the change that led here."""

    profile: Profile | None = None
    work: Work | None = None
    says: str = ""

    def holds(self, profile: Profile, made: Work) -> bool:
        """Whether it is the same person and the same work, whenever that was kept last."""
        mine = replace(self.work, when=made.when) if self.work else None
        return (self.profile, mine) == (profile, made)

    def brought_here(self, other: State) -> State:
        """Return another state at the place where the person is in this one.

        Notes, and what was written, stay as they are here.
        """
        if other.work is None or self.work is None:
            return other
        now = self.work
        here = replace(other.work, page=now.page, measure=now.measure, notes=now.notes)
        drafts = now.drafts if now.title == here.title else here.drafts
        return replace(other, work=replace(here, drafts=drafts))

    def with_profile(self, mine: Profile, kept: Profile) -> State:
        """Return the state with what others changed between what was saved and what is kept."""
        if self.profile is None:
            return self
        return replace(self, profile=people.merged(mine, kept, self.profile)[0])

    def with_work(self, mine: Work, both: Work) -> State:
        """Return the state with what others changed of its project; another one is as it was."""
        if self.work is None or self.work.title != both.title:
            return self
        return replace(self, work=work.merged(mine, both, self.work))


def question(clash: people.store.Clash, unit: Unit) -> str:
    """Ask which of two readings counts, where another window changed the same measure."""
    mine, theirs = (
        "nothing" if row is None else unit.spell(row.value * 10)
        for row in (clash.mine, clash.theirs)
    )
    name = NAMES[clash.key]
    return (
        f"Which counts for {name}? Another window made it {theirs} while this one made it "
        f"{mine}. {theirs} stands; enter {mine} once more if yours counts."
    )
