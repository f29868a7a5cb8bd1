"""Draft a garment for a person and prove it."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from msgspec.structs import replace

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.errors import DraftError
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.shelf import garment as on_shelf
from tapewise_core.measures.body import Body
from tapewise_core.profiles.profile import Profile
from tapewise_core.proofs.all import prove
from tapewise_core.proofs.case import Case
from tapewise_core.sewing.machines import Machine, Stitching, read_machines, stitching
from tapewise_core.style.cloth import ClothStyle
from tapewise_core.style.style import Style
from tapewise_core.tasks.adjusting import Table, adjusted, left_told, used_told
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.people import body_of, for_child
from tapewise_core.tasks.posture import posture_remarks
from tapewise_core.tasks.settled import as_drawn, for_later_wash, held_back
from tapewise_core.text.told import capital, ended, joined, said
from tapewise_core.units import Unit

USUAL_MACHINES = frozenset({Machine.OVERLOCKER, Machine.COVERSTITCH})
"""The machines assumed where none were named."""


def machines_named(text: str) -> frozenset[Machine]:
    """Return the machines of a comma-separated list; raises OptionError for unknown ones."""
    return read_machines(text)


def draft(
    profile: Profile,
    garment: str,
    asked: Mapping[str, str],
    *,
    unit: Unit | None = None,
    machines: frozenset[Machine] = USUAL_MACHINES,
    made: date | None = None,
) -> Drafted:
    """Draft and prove a garment; ``asked`` maps options to what was typed.

    Raises OptionError for options that are wrong or disagree, DraftError for
    measures that are missing or cannot be drawn.
    """
    page, read = on_shelf(garment), unit or profile.unit
    whole = _whole(profile, page)
    body, when = page.sees(whole), made or date.today()
    found = adjusted(Table(page, body, asked, read), profile.adjustments)
    style, pattern, ways = found.style, found.pattern, stitching(machines)
    style, cloth = as_drawn(style, pattern.facts), cloth_of(style, ways)
    more = (*held_back(pattern.facts), *posture_remarks(whole, style), *for_child(profile))
    fitted = map(capital, used_told(found.applied, when))
    told = (
        *map(ended, fitted),
        *left_told(found.applied),
        *pattern.remarks,
        *more,
        *for_later_wash(cloth),
    )
    remarks = tuple(dict.fromkeys(told))
    pattern = replace(pattern, remarks=remarks)
    proven = prove(Case(pattern, style, cloth))
    proofs = proven.proofs, proven.silent
    return Drafted(
        page, profile.name, read, when, body, style, cloth, ways, pattern, *proofs, profile, asked,
        applied=found.applied, moved=found.moves,
    )  # fmt: skip


def _whole(profile: Profile, page: Garment) -> Body:
    """Everything known of a person, and estimates of what the garment asks for besides; raises
    DraftError where it needs more."""
    body, refused = body_of(profile, page.estimates)
    missing = [body.name(key) for key in page.needs if key not in body]
    if missing:
        raise DraftError(joined((said("Still to measure: {}.", ", ".join(missing)), refused)))
    return body


def cloth_of(style: Style, ways: Stitching) -> Cloth:
    """Return the cloth a style names; the band is cut from the same."""
    own = ClothStyle.of(style)
    return Cloth(
        own.stretch,
        ways.seam_stretch,
        own.stretch,
        own.width,
        own.shrinkage,
        own.weight,
        own.stretch_along,
        own.shrinkage_across,
        own.length,
        own.spread,
        own.nap,
        own.repeat,
        own.washed,
    )
