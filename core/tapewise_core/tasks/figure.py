"""Whose figure the app draws."""

from __future__ import annotations

from tapewise_core.measures.body import Body, Reference
from tapewise_core.measures.build import Build, Kind, build_of
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.people import for_child

_KINDS = {Reference.WOMEN: Kind.WOMAN, Reference.MEN: Kind.MAN, Reference.NOT_SAID: Kind.ANYBODY}


def figure_of(profile: Profile, body: Body) -> Build:
    """Return a person's build: as measured, and as estimated where that can be."""
    kind = Kind.CHILD if for_child(profile) else _KINDS[profile.reference]
    return build_of(kind, {key: value.cm for key, value in body.values.items()})
