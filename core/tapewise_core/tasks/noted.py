"""Notes for the next time, found again when the next garment begins."""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.tasks import work
from tapewise_core.tasks.project import Work


class Noted(Frozen):
    """What was noted while a project was sewn, and on which day (ISO)."""

    title: str
    day: str
    text: str


def noted(made: Work) -> tuple[Noted, ...]:
    """Return what a person noted for the next time, the latest first, where one begins.

    One begins where nothing is done yet, or where all of it is: then the project's own notes are
    of the garment before. Nothing while a garment is under way.
    """
    if made.ticked and not made.sewn:
        return ()
    own = (_noted(made),) if made.sewn and made.notes.strip() else ()
    return tuple(sorted((*own, *elsewhere(made)), key=lambda one: one.day, reverse=True))


def elsewhere(made: Work) -> tuple[Noted, ...]:
    """Return what a person noted in other projects, the latest first."""
    others = [one for one in work.projects(made.person) if one.title != made.title]
    latest = sorted(others, key=lambda one: one.when, reverse=True)
    return tuple(_noted(one) for one in latest if one.notes.strip())


def _noted(made: Work) -> Noted:
    return Noted(made.title, made.when[:10], " ".join(made.notes.split()))
