"""People copied in from files and tables, and out into them."""

from __future__ import annotations

import argparse
from pathlib import Path

from tapewise_core.errors import OptionError
from tapewise_core.profiles import copying
from tapewise_core.profiles.files import typed_path
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import people
from tapewise_tui.exits import FINE, LOOK
from tapewise_tui.printing import complain, say_done


def copy_in(options: argparse.Namespace) -> int:
    """Copy a person in from her file, or a class from a table; or print an empty table."""
    if options.template:
        from tapewise_core.tasks.class_table import template

        print(template(), end="")
        return FINE
    if options.file is None:
        raise OptionError("Name the file to copy in, or ask for a --template of a table.")
    path = typed_path(options.file)
    if path.suffix.lower() in (".csv", ".tsv"):
        return _class_in(options, path)
    name = copying.copy_in(path, replace=options.replace).name
    say_done(options, {"saved": name}, f"Saved {name}.")
    return FINE


def _class_in(options: argparse.Namespace, path: Path) -> int:
    """Copy a whole class in; every fault is told, the rows without one are saved."""
    from tapewise_core.tasks import classes

    taken = classes.copy_in(path, replace=options.replace)
    faults = [{"row": f.row, "column": f.column, "says": f.says} for f in taken.faults]
    count = len(taken.saved)
    says = f"Saved {count} {'person' if count == 1 else 'people'}."
    say_done(options, {"saved": list(taken.saved), "faults": faults}, says)
    for fault in taken.faults:
        complain(f"{path.name}, {fault}")
    return LOOK if taken.faults else FINE


def copy_out(options: argparse.Namespace) -> int:
    """Copy a person out into a file, or several into a table."""
    place = typed_path(options.to)
    if options.person is None or place.suffix.lower() == ".csv":
        from tapewise_core.tasks import classes

        path = classes.copy_out(_those(options), place, replace=options.replace)
    else:
        path = copying.copy_out(options.person, place, replace=options.replace)
    say_done(options, {"written": str(path)}, f"Wrote {path}.")
    return FINE


def _those(options: argparse.Namespace) -> list[Profile]:
    """Whoever is named, else everybody saved, or of a group."""
    if options.person is not None:
        return [people.store.load(options.person)]
    if not options.to.lower().endswith(".csv"):
        raise OptionError("Several people go into a table; name a .csv file.")
    entries = [entry for entry in people.store.listing() if not entry.shipped]
    if options.group is not None:
        entries = [entry for entry in entries if options.group in entry.known.groups]
    found = [entry.profile for entry in entries if entry.profile is not None]
    if not found:
        raise OptionError(f"Nobody is in the group “{options.group}”." if options.group
                          else "Nobody is saved yet.")  # fmt: skip
    return found
