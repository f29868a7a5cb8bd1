"""What can be done with the people on file and their projects, and how the list shows them."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date
from functools import partial
from itertools import compress

from msgspec.structs import replace

from tapewise_core.errors import TapewiseError
from tapewise_core.frozen import Frozen
from tapewise_core.measures.catalogue import CATALOGUE, NAMES
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.store import Entry
from tapewise_core.tasks import people, people_changes, projects, work
from tapewise_core.tasks.people_changes import Change
from tapewise_core.tasks.work import Work
from tapewise_core.units import Unit
from tapewise_tui import words


class Done(Frozen):
    """What was done, in a sentence; ``what`` names it and ``undo`` takes it back, if it can be."""

    says: str
    what: str = ""
    undo: Callable[[], object] | None = None


Told = tuple[str, str, str, str]
"""Name, groups, day of the last reading, and what is open."""


def shown(
    rows: Mapping[str, Told], *, wide: bool, widest: bool
) -> tuple[tuple[tuple[str, int], ...], list[tuple[str, tuple[str, ...]]]]:
    """Return the columns of the list, and its rows.

    There are groups only where anybody is in one; unless there is room for all columns they stand
    in place of the last reading.
    """
    grouped = any(row[1] for row in rows.values())
    columns = (
        ("Person", 28 if wide else 22), ("Group", 14), ("Last measured", 17), ("Open", 12),
    )  # fmt: skip
    there = (True, grouped, widest or not grouped, True)
    lines = [(key, tuple(compress(row, there))) for key, row in rows.items()]
    return tuple(compress(columns, there)), lines


def row(entry: Entry, *, brief: bool) -> Told:
    """Return how the list tells of a person; ``brief`` judges nothing."""
    name = f"{entry.name} (example)" if entry.shipped else entry.name
    if entry.fault:
        return name, "", "", "cannot be read; Enter says why"
    last = entry.known.last
    undated = "day not noted" if entry.known.measures else "never"
    when = words.day(date.fromisoformat(last)) if last else undated
    if brief or entry.profile is None:
        still = _still(len(CATALOGUE) - entry.known.measures) or "nothing"
        return name, "", when, still
    return name, ", ".join(entry.profile.groups), when, _open(entry.profile)


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


def project_name(one: Work) -> str:
    """Return what a project is called: as its owner named it, else as its garment is called."""
    return _sewn(one.title)


def _sewn(name: str) -> str:
    """Return the title of the garment of a name; any other name as it is."""
    from tapewise_core.tasks.wizard import garments  # not before it is wanted

    return next((page.title for page in garments() if page.name == name), name)


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


def project_line(one: Work) -> str:
    """Return a project as a list shows it: its name, what it is, what was chosen, and when."""
    told = [project_name(one), _sewn(one.garment) if one.title != one.garment else ""]
    told.append(words.count(len(one.asked), "choice") if one.asked else "")
    told.append(words.day(date.fromisoformat(one.when[:10])) if one.when else "")
    return ", ".join(filter(None, told))


def beginning(profile: Profile, garment: str) -> Work:
    """Return a person's project of a garment to go on with, or a new one."""
    return replace(work.of_garment(work.load(profile.name), garment), page="measure", measure="")


def compared(name: str, unit: Unit) -> tuple[str, ...]:
    """Return a line for each measure that differs from the last time, or one that says why not."""
    try:
        found = people_changes.last_time(people.store.states(name))
    except TapewiseError as error:
        return (str(error),)
    if found is None:
        return (f"{name} was measured on one day only; there is nothing to compare with yet.",)
    then, now = (words.day(one.when.date()) for one in (found.before, found.now))
    lines = tuple(_change(one, unit) for one in found.changes)
    return (f"{then} and {now}:", *(lines or ("No measure differs.",)))


def _change(one: Change, unit: Unit) -> str:
    before, after = (_spelt(cm, unit) for cm in (one.before, one.after))
    more = ""
    if one.before is not None and one.after is not None:
        by = (one.after - one.before) * 10
        more = f"  {'+' if by > 0 else '–'}{unit.number(abs(by))}"
    return f"{NAMES[one.key]:<20} {before} to {after}{more}"


def _spelt(cm: float | None, unit: Unit) -> str:
    return "open" if cm is None else unit.spell(cm * 10)


def trash() -> tuple[tuple[str, Callable[[], object]], ...]:
    """Return whoever and whatever was deleted within a day, and how to bring it back."""
    whole = [(one.name, partial(people.store.restore, one.name)) for one in people.store.gone()]
    parts = [
        (f"{_sewn(one.name)} of {one.person}", partial(work.bring_back, one)) for one in work.gone()
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
