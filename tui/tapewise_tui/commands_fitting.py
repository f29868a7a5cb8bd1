"""What ``tapewise fitting`` does; who tried it on is looked at before all else is read."""

from __future__ import annotations

import argparse

from tapewise_core.errors import OptionError
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import people


def fitting(options: argparse.Namespace) -> int:
    """List, propose, keep or take off what a fitting found."""
    profile = None if options.symptoms else _person(options)

    from tapewise_tui import fitting_acts as acts  # a wrong name is told sooner

    if profile is None:
        return acts.symptoms(options)
    if options.list:
        return acts.listed(options, profile)
    if options.remove is not None:
        return acts.removed(options)
    return acts.proposed(options, profile)


def _person(options: argparse.Namespace) -> Profile:
    """Return whoever tried it on; from then on everything is told in her unit."""
    if options.person is None:
        raise OptionError("Name who tried it on: tapewise fitting PERSON --garment NAME.")
    profile = people.person(options.person)
    options.unit = options.unit or profile.unit.value
    return profile
