"""Which measures a garment cannot be drafted without, in the style asked for: all of them at once.

Nobody can tell beforehand what a style will ask of a body, so it is drafted: whatever turns out to
be missing gets a stand-in, until nothing is. The stand-ins are never shown.
"""

from __future__ import annotations

from collections.abc import Mapping
from statistics import fmean
from types import MappingProxyType

from msgspec.structs import replace

from tapewise_core.errors import MissingMeasure, TapewiseError
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.shelf import garment as on_shelf
from tapewise_core.measures.body import Body, Origin, Value
from tapewise_core.measures.catalogue import CATALOGUE
from tapewise_core.profiles.profile import Profile
from tapewise_core.style.settle import settle
from tapewise_core.tasks.people import body_of
from tapewise_core.units import Unit

STANDING = 168.0
"""The height of the grown person whose proportions stand in [cm] (our choice)."""


def missing(profile: Profile, garment: str, asked: Mapping[str, str]) -> tuple[str, ...]:
    """Return the measures still to take before a style can be drafted, in the catalogue's order.

    Raises OptionError for a garment that there is not.
    """
    page, body = on_shelf(garment), body_of(profile)[0]
    open_ones = {key for key in page.needs if key not in body}
    for _ in CATALOGUE:
        found = _asked_for(page, with_stand_ins(body, tuple(open_ones)), asked, profile.unit)
        if found is None or found in open_ones:
            break
        open_ones.add(found)
    return tuple(row.key for row in CATALOGUE if row.key in open_ones)


def refuse_wrong(profile: Profile, garment: str, asked: Mapping[str, str]) -> None:
    """Raise OptionError for options that are wrong whatever the measures still missing will be."""
    page = on_shelf(garment)
    settle(page.options, asked, page.sees(with_stand_ins(body_of(profile)[0])), profile.unit)


def _asked_for(page: Garment, body: Body, asked: Mapping[str, str], unit: Unit) -> str | None:
    """The measure that a draft stops at, or None if it comes to its end or stops elsewhere."""
    seen = page.sees(body)
    try:
        page.draft(seen, settle(page.options, asked, seen, unit))
    except MissingMeasure as stop:
        return stop.key
    except TapewiseError:
        return None
    return None


def with_stand_ins(body: Body, keys: tuple[str, ...] = ()) -> Body:
    """Return a body with stand-ins for some measures, or for all that are not there.

    They are a grown person's, as much smaller or larger as what is known of the body tells.
    """
    grown = body_of(Profile.of("stand-in").with_value("height", STANDING))[0].values
    known = [value.cm / grown[key].cm for key, value in body.values.items() if key in grown]
    times = fmean(known) if known else 1.0
    wanted = keys if keys and body.values else tuple(grown)
    new = {key: Value(grown[key].cm * times, Origin.ESTIMATED) for key in wanted if key in grown}
    return replace(body, values=MappingProxyType({**new, **body.values}))
