"""What can be done with the people on file and their projects."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from msgspec.structs import replace

from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.store import Entry
from tapewise_core.tasks import people, projects, work
from tapewise_core.tasks.work import Work
from tapewise_tui import words
from tapewise_tui.desk_state import Done
from tapewise_tui.people_told import project_name, sewn


def made_new(profile: Profile) -> None:
    """Put somebody new on file; raises FilesError if somebody of that name is."""
    people.store.add(profile)


def changed(entry: Entry, profile: Profile) -> Done:
    """Keep a changed person, under a new name too; raises TapewiseError."""
    work.bring_over(entry.name, entry.known.id)
    kept = people.store.keep(_own(profile, entry), _on_file(entry)).profile
    work.follow(kept.id, kept.name)
    return Done(f"{kept.name} is kept.", f"change to {entry.name}", partial(_back, entry, kept))


def grouped(entry: Entry, profile: Profile, text: str) -> Done:
    """Put a person into the groups named, separated by commas, and out of all others."""
    names = tuple(dict.fromkeys(" ".join(part.split()) for part in text.split(",")))
    done = changed(entry, profile.having(groups=tuple(filter(None, names))))
    told = words.listed([name for name in names if name]) if any(names) else "no group"
    return replace(done, says=f"{profile.name} is in {told}.")


def removed(entry: Entry) -> Done:
    """Delete a person with all that is kept about her; raises FilesError."""
    people.store.remove(entry)
    said = f"{entry.name} is deleted."
    if entry.fault:
        return Done(said)
    says = f"{said} Ctrl+Z brings everything back, for a day."
    return Done(says, f"{entry.name} deleted", partial(people.store.restore, entry.name))


def duplicated(entry: Entry, name: str) -> Done:
    """Save a second person with the same measures under another name; raises TapewiseError."""
    from tapewise_core.profiles import copying

    made = copying.duplicate(entry.name, name)
    says = f"{made.name} is on file, with the measures of {entry.name}."
    return Done(says, f"{made.name} made", partial(people.store.delete, made.name))


def project_removed(one: Work) -> Done:
    """Delete a project; raises FilesError."""
    work.delete(one)
    gone = work.gone(one.person)[0]
    name = project_name(one)
    says = f"{name} of {one.person} is deleted. Ctrl+Z brings it back, for a day."
    return Done(says, f"{name} deleted", partial(work.bring_back, gone))


def project_copied(one: Work, name: str) -> Done:
    """Save a second project with the choices of one; raises TapewiseError."""
    made = projects.copied(one.title, name, one.person)
    says = f"{made.title} is kept, with the choices of {project_name(one)}."
    return Done(says, f"{made.title} made", partial(work.delete, made))


def beginning(profile: Profile, garment: str) -> Work:
    """Return a person's project of a garment to go on with, or a new one."""
    return replace(work.of_garment(work.load(profile.name), garment), page="measure", measure="")


def trash() -> tuple[tuple[str, Callable[[], object]], ...]:
    """Return whoever and whatever was deleted within a day, and how to bring it back."""
    whole = [(one.name, partial(people.store.restore, one.name)) for one in people.store.gone()]
    parts = [
        (f"{sewn(one.name)} of {one.person}", partial(work.bring_back, one)) for one in work.gone()
    ]
    return (*whole, *parts)


def _on_file(entry: Entry) -> Profile | None:
    return None if entry.shipped else entry.profile


def _own(profile: Profile, entry: Entry) -> Profile:
    """An example under another name is somebody new."""
    renamed = entry.shipped and profile.name != entry.name
    return people.somebody_new(profile) if renamed else profile


def _back(entry: Entry, kept: Profile) -> None:
    """Put a person back as she was before a change."""
    if entry.shipped:
        people.store.delete(kept.name)
    elif entry.profile is not None:
        people.store.keep(entry.profile, kept)
        work.follow(kept.id, entry.name)
