"""What is told of everybody's projects, remembered in ``projects/index.json``."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from tapewise_core.frozen import Frozen
from tapewise_core.profiles.files import why
from tapewise_core.profiles.memory import remembered
from tapewise_core.tasks import work_files
from tapewise_core.tasks.json_object import text_in
from tapewise_core.tasks.work_text import work_of


class Brief(Frozen):
    """Whose a project is and when it changed last, or why its file cannot be used."""

    person: str = ""
    when: str = ""
    fault: str = ""


def briefs() -> dict[Path, Brief]:
    """Return what is told of each project's file."""
    owners = work_files.owners()
    paths = (place for owner in owners for place in work_files.places(owner))
    return remembered(work_files.folder() / "index.json", paths, look, _brief)


def look(place: Path) -> Brief:
    """Read a file and return what is told of it."""
    try:
        work, _ = work_of(text_in(place))
    except (OSError, ValueError) as fault:
        return Brief(fault=why(fault))
    return Brief(work.person, work.when)


def _brief(row: Mapping[str, object]) -> Brief:
    person, when, fault = (row[key] for key in ("person", "when", "fault"))
    return Brief(str(person), str(when), str(fault))
