"""Files that cannot be used, named where they are met, each with what could take its place."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from shlex import quote

from tapewise_core.frozen import Frozen
from tapewise_core.profiles import store
from tapewise_core.profiles.folders import alone
from tapewise_core.tasks import settings, work_files
from tapewise_core.tasks.project import Work
from tapewise_core.tasks.work_index import briefs
from tapewise_core.text.legible import legible


class Damaged(Frozen):
    """A project whose file cannot be used: whose it is, why, and its last good state if any."""

    place: Path
    person: str
    why: str
    good: Work | None

    @property
    def title(self) -> str:
        """What the project was called, as far as that is known."""
        return self.good.title if self.good else legible(self.place.stem)

    @property
    def says(self) -> str:
        """What is wrong and what would help, in a sentence."""
        told, act = self._told, f"“tapewise projects restore {quote(self.title)}”"
        if self.good is None:
            return f"{told}no earlier state of it is kept, {act} sets the file aside."
        return f"{told}{act} takes up its last good state{_of(self.good.when)}."

    @property
    def begun_anew(self) -> str:
        """What is wrong, where a new project takes its place."""
        return f"{self._told}its file is set aside, and it begins anew."

    @property
    def _told(self) -> str:
        whose = f" of {self.person}" if self.person else ""
        return f"The project “{self.title}”{whose} cannot be used ({self.why}): {self.place}; "


def _of(when: str) -> str:
    return f" of {when.replace('T', ' ')}" if when else ""


def projects(person: str | None = None) -> tuple[Damaged, ...]:
    """Return the projects that cannot be used, of a person or all."""
    owner = store.id_of(person) if person is not None else None
    told = [(place, one.fault) for place, one in briefs().items() if one.fault]
    spoilt = [row for row in told if owner in (None, row[0].parent.name)]
    if not spoilt:
        return ()
    names = {entry.known.id: entry.name for entry in store.listing() if not entry.fault}
    return tuple(
        Damaged(place, names.get(place.parent.name, ""), why, work_files.before(place))
        for place, why in spoilt
    )


def take_good(one: Damaged) -> str:
    """Set a project's file aside and take up its last good state; return what was done."""
    with alone():
        return work_files.mended(one.person or "somebody", one.place)


def met() -> Iterator[str]:
    """Yield a sentence for each file that cannot be used: people, projects, settings."""
    yield from (person_says(entry) for entry in store.listing() if entry.fault)
    yield from (one.says for one in projects())
    says = settings.found().fault
    if says:
        yield says


def person_says(entry: store.Entry) -> str:
    """Return the fault of a person's file, and her last good state where it is known."""
    state = store.good_state(entry)
    if state is None:
        return entry.fault
    when = state.when.isoformat(" ", "minutes")
    return (
        f"{entry.fault} “tapewise profiles restore {entry.name}” takes up how "
        f"{state.profile.name} was on {when}."
    )
