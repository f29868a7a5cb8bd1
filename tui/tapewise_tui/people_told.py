"""How the list of people tells of each: how far her measuring is, her projects, the last time."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from itertools import compress

from tapewise_core.errors import TapewiseError
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.store import Entry
from tapewise_core.tasks import people, people_changes, work
from tapewise_core.tasks.people_changes import Change
from tapewise_core.tasks.work import Work
from tapewise_core.units import Unit
from tapewise_tui import words

Told = tuple[str, str, str, str]
"""Name, groups, day of the last reading, and how many measures are there."""


def shown(
    rows: Mapping[str, Told], *, wide: bool, widest: bool
) -> tuple[tuple[tuple[str, int], ...], list[tuple[str, tuple[str, ...]]]]:
    """Return the columns of the list, and its rows.

    There are groups only where anybody is in one; unless there is room for all columns they stand
    in place of the last reading.
    """
    grouped = any(row[1] for row in rows.values())
    columns = (
        ("Person", 28 if wide else 22), ("Group", 14), ("Last measured", 17), ("Measures", 12),
    )  # fmt: skip
    there = (True, grouped, widest or not grouped, True)
    lines = [(key, tuple(compress(row, there))) for key, row in rows.items()]
    return tuple(compress(columns, there)), lines


def row(entry: Entry, *, brief: bool) -> Told:
    """Return how the list tells of a person; ``brief`` looks at no garment and judges nothing."""
    name = f"{entry.name} (example)" if entry.shipped else entry.name
    if entry.fault:
        return name, "", "", "cannot be read; Enter says why"
    last = entry.known.last
    undated = "day not noted" if entry.known.measures else "never"
    when = words.day(date.fromisoformat(last)) if last else undated
    if brief or entry.profile is None:
        return name, "", when, _taken(entry.known.measures)
    return name, ", ".join(entry.profile.groups), when, _there(entry.profile)


def _taken(number: int) -> str:
    """Say how many measures are there, whatever is made."""
    return f"{number} taken" if number else "none yet"


def _there(profile: Profile) -> str:
    """Say how many of the measures are there that the garment made last, or the usual one, makes
    use of, and how many look unlikely."""
    check = people.check(profile)
    unlikely = sum(finding.severity.value == "warning" for finding in check.findings)
    said = [_of_the_garment(profile, check.missing), f"{unlikely} unlikely" if unlikely else ""]
    return ", ".join(filter(None, said))


def _of_the_garment(profile: Profile, missing: tuple[str, ...]) -> str:
    from tapewise_core.tasks.guesses import used  # not before it is wanted

    made = work.load(profile.name)
    try:
        wanted = used(made.garment, made.asked, profile, profile.unit)
    except TapewiseError:  # a garment that there is no more
        return _taken(len(profile.read_off()))
    still = sum(key in missing for key in wanted)
    return f"{len(wanted) - still} of {len(wanted)}" if still else f"all {len(wanted)}"


def project_name(one: Work) -> str:
    """Return what a project is called: as its owner named it, else as its garment is called."""
    return sewn(one.title)


def sewn(name: str) -> str:
    """Return the title of the garment of a name; any other name as it is."""
    from tapewise_core.tasks.wizard import garments  # not before it is wanted

    return next((page.title for page in garments() if page.name == name), name)


def project_line(one: Work) -> str:
    """Return a project as a list shows it: its name, what it is, what was chosen, and when."""
    told = [project_name(one), sewn(one.garment) if one.title != one.garment else ""]
    told.append(words.count(len(one.asked), "choice") if one.asked else "")
    told.append(words.day(date.fromisoformat(one.when[:10])) if one.when else "")
    return ", ".join(filter(None, told))


def compared(name: str, unit: Unit) -> tuple[str, ...]:
    """Return a line for each measure that differs from the last time, or one that says why not."""
    try:
        found = people_changes.last_time(people.store.states(name))
    except TapewiseError as error:
        return (str(error),)
    if found is None:
        why = f"No measures of {name} from an earlier day are on file"
        return (f"{why}; there is nothing to compare with yet.",)
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
