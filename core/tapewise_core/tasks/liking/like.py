"""Draft to the ease of a garment that fits, level by level, in another cloth."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from msgspec.structs import replace

from tapewise_core.errors import DraftError
from tapewise_core.frozen import Frozen
from tapewise_core.garments.shelf import garment as on_shelf
from tapewise_core.profiles.fitted import Loved
from tapewise_core.profiles.profile import Profile
from tapewise_core.sewing.machines import Machine
from tapewise_core.style.settle import settle
from tapewise_core.style.style import Style
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import USUAL_MACHINES, draft
from tapewise_core.tasks.liking.fitting import CHOSEN, EASES, Fitting
from tapewise_core.tasks.liking.hems import HEMS, hem_settings
from tapewise_core.tasks.liking.nearing import neared
from tapewise_core.tasks.loved.keeping import loved_of
from tapewise_core.tasks.loved.likeness import Want, likeness
from tapewise_core.tasks.loved.noticing import odd
from tapewise_core.tasks.people import body_of
from tapewise_core.text.told import Told
from tapewise_core.units import Unit, mm

SETTLED = frozenset({*EASES.values(), "waist-shaping"})
"""Options that only drafts settle."""

DECIDED = frozenset(
    {*EASES.values(), *CHOSEN.values(), *HEMS.values(), "ease", "waist-shaping", "cowl-depth"}
)
"""Options that a garment that fits decides, if enough is known of it."""


class Like(Frozen):
    """What a garment that fits asks of another: settings as they would be typed."""

    loved: Loved
    settings: Mapping[str, str]
    wants: tuple[Want, ...]
    cloth: tuple[Told, Told]


def like(
    profile: Profile, garment: str, name: str, asked: Mapping[str, str], unit: Unit | None = None
) -> Like:
    """Return what a person's garment asks of a garment on the shelf; what is ``asked`` stays.

    Raises OptionError for a name that is not on file or options that are wrong.
    """
    loved, page = loved_of(profile, name), on_shelf(garment)
    body, read = body_of(profile)[0], unit or profile.unit

    def settled(more: Mapping[str, str]) -> Style:
        return settle(page.options, {**more, **asked}, page.sees(body), read)

    first = Fitting(loved, page.options, body, settled({}), mm(0))
    wide = {key: text for key, text in first.settings().items() if key == CHOSEN["neck"]}
    rise = settled(wide).length("neck-rise", mm(0))  # it follows the neck's width
    fitting = replace(first, rise=rise)
    return Like(loved, fitting.settings(), fitting.wants(), fitting.cloth())


def draft_like(
    profile: Profile,
    garment: str,
    name: str,
    asked: Mapping[str, str],
    *,
    unit: Unit | None = None,
    machines: frozenset[Machine] = USUAL_MACHINES,
    made: date | None = None,
) -> Drafted:
    """Draft and prove a garment like one that fits, and say what differs from it and why.

    Raises what :func:`like` and :func:`tapewise_core.tasks.drafting.draft` raise.
    """

    found = like(profile, garment, name, asked, unit)
    settled = dict(found.settings)

    def drafted(settings: Mapping[str, str]) -> Drafted:
        settled.update(settings)
        whole = {**settled, **asked}
        return draft(profile, garment, whole, unit=unit, machines=machines, made=made)

    try:
        first = drafted({})
    except DraftError:  # a cap's width is an armhole's, and may be no sleeve's
        if settled.pop(EASES["upper_arm"], None) is None:
            raise
        first = drafted({})
    first = neared(first, found.wants, drafted)
    settled.update({key: text for key, text in first.asked.items() if key in SETTLED})
    hems = hem_settings(found.wants, first)
    return beside(drafted(hems) if hems else first, found)


def as_free(asked: Mapping[str, str]) -> dict[str, str]:
    """Return what was chosen without what a garment that fits decides, so that one may."""
    return {key: text for key, text in asked.items() if key not in DECIDED}


def beside(drafted: Drafted, found: Like) -> Drafted:
    """Return a draft with how it compares with the garment it was wanted like."""
    pattern, name = drafted.pattern, found.loved.name
    told = likeness(name, found.wants, found.cloth, pattern, drafted.style)
    doubts = tuple(one.says for one in odd(found.loved, drafted.body))
    remarks = (*pattern.remarks, *doubts, *told.told)
    return replace(drafted, pattern=replace(pattern, remarks=remarks), like=told)
