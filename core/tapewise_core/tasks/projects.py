"""Projects by the names people give them."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.errors import OptionError
from tapewise_core.garments.shelf import garment as on_shelf
from tapewise_core.profiles import store
from tapewise_core.profiles.slug import slug
from tapewise_core.tasks import damaged, work
from tapewise_core.tasks.damaged import Damaged
from tapewise_core.tasks.work import Work
from tapewise_core.text.near import near_words


def found(name: str, person: str | None = None) -> Work:
    """Return the project of a name, of one person if several have one of that name.

    Raises OptionError with the near names if there is none, or with the people if there are
    several.
    """
    whose = store.find(person).name if person is not None else None
    there = work.projects(whose)
    fitting = [one for one in there if _same(one.title, name)]
    if not fitting:
        for one in spoilt(name, whose):
            raise OptionError(one.says)
        names = list(dict.fromkeys(one.title for one in there))
        hint = near_words(name, names) if names else "there are no projects yet."
        raise OptionError(f"There is no project “{name}”; {hint}")
    if len(fitting) > 1:
        people = ", ".join(one.person for one in fitting)
        raise OptionError(f"“{name}” is a project of {people}; say whose is meant.")
    return fitting[0]


def spoilt(name: str, person: str | None = None) -> tuple[Damaged, ...]:
    """Return the projects of a name that cannot be used; one without a good state is known by
    its file alone."""
    return tuple(
        one
        for one in damaged.projects(person)
        if _same(one.title, name) or (one.good is None and one.place.stem == slug(name))
    )


def restored(name: str, person: str | None = None) -> str:
    """Take up the last good state of a spoilt project, or bring back a deleted one; say which.

    Raises OptionError with the near names if there is none, FilesError if it cannot be done.
    """
    whose = store.find(person).name if person is not None else None
    for one in spoilt(name, whose):
        return damaged.take_good(one)
    deleted = work.gone(whose)
    fitting = [one for one in deleted if _same(one.name, name)]
    if not fitting:
        names = list(dict.fromkeys(one.name for one in deleted))
        hint = near_words(name, names) if names else "no project was deleted within a day."
        raise OptionError(f"No project “{name}” can be restored; {hint}")
    if len({one.person for one in fitting}) > 1:
        people = ", ".join(dict.fromkeys(one.person for one in fitting))
        raise OptionError(f"“{name}” was a project of {people}; say whose is meant.")
    back = work.bring_back(fitting[0])
    return f"Restored {back.title} for {back.person}."


def _same(title: str, name: str) -> bool:
    return title.casefold() == name.strip().casefold()


def begun(name: str, person: str | None, garment: str) -> Work:
    """Return a project of a name to go on with, or a new one; its garment is as said.

    Raises OptionError if it is of another garment, or nobody is named.
    """
    if person is None:
        raise OptionError("A new project needs PERSON and GARMENT.")
    on_shelf(garment)
    own = _named(name)
    who = store.find(person).name
    there = next((one for one in work.projects(who) if one.title == own), None)
    if there is None:
        return replace(work.fresh(who), garment=garment, name=own, owner=store.id_of(who))
    if there.garment != garment:
        raise OptionError(f"{own} is a {there.garment}; give the {garment} another name.")
    return there


def copied(name: str, to: str, person: str | None = None) -> Work:
    """Save a second project with the choices of one; raises OptionError if the name is taken."""
    one = found(name, person)
    own = _named(to)
    if any(_same(there.title, own) for there in work.projects(one.person)):
        raise OptionError(f"{one.person} has a project “{own}” already; choose another name.")
    made = replace(one, name=own, drafts=(), folder="", ticked=(), tried="", sewn="", notes="")
    work.save(made)
    return made


def _named(name: str) -> str:
    """A name that a file and a line can bear; raises OptionError for any other."""
    from tapewise_core.profiles.rules import line

    try:
        return line(name)
    except ValueError as fault:
        raise OptionError(f"The name of a project {fault}.") from None
