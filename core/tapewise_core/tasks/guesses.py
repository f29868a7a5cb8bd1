"""What estimates do to a garment, and which missing measure is worth taking first."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import TYPE_CHECKING

from tapewise_core.errors import TapewiseError
from tapewise_core.frozen import Frozen
from tapewise_core.garments.shelf import garment as on_shelf
from tapewise_core.measures.body import Body
from tapewise_core.measures.catalogue import CATALOGUE, NAMES
from tapewise_core.measures.order import ordered
from tapewise_core.profiles.profile import Profile
from tapewise_core.style.settle import settle
from tapewise_core.tasks.people import body_of
from tapewise_core.units import Unit

if TYPE_CHECKING:
    from tapewise_core.garments.garment import Garment
    from tapewise_core.statistics.worth import Worth

SLIGHT = 0.3
"""What moves a garment by less is not worth a sentence [cm] (common practice)."""


class Effect(Frozen):
    """An estimate's uncertainty [± cm, 90 %] at one place of the garment."""

    measure: str
    place: str
    plus_minus: float

    def tell(self, unit: Unit) -> str:
        """Return it as a few words, such as “the waist line ± 2.1 cm”."""
        return f"{self.place} ± {unit.spell(self.plus_minus * 10)}"


def effects(page: Garment, body: Body, estimated: tuple[str, ...]) -> tuple[Effect, ...]:
    """Return where estimates leave a garment uncertain, the most uncertain first."""
    found = []
    for key in estimated:
        factor, place = page.moves.get(key, (0.0, ""))
        off = (body.values[key].plus_minus or 0.0) * factor
        if off >= SLIGHT:
            found.append(Effect(key, place, off))
    return tuple(sorted(found, key=lambda effect: -effect.plus_minus))


def effect_words(found: tuple[Effect, ...], unit: Unit) -> str:
    """Say in one sentence what estimates leave uncertain; empty if nothing much."""
    told = [effect.tell(unit) for effect in found]
    return f"So these are uncertain: {', '.join(told)}." if told else ""


UNSAID = "taken as an estimate earlier, on grounds not kept"
"""Said of an estimate in a person's file that can't be drawn afresh."""


def grounds_words(body: Body, estimated: tuple[str, ...]) -> str:
    """Say in one sentence what each estimate was drawn from; empty if there is none."""
    told = "; ".join(f"{body.name(key)} {body.values[key].how or UNSAID}" for key in estimated)
    return f"{told[:1].upper()}{told[1:]}." if told else ""


def next_measure(profile: Profile, garment: str, unit: Unit) -> str:
    """Say which one missing measure would improve a garment most; empty if none would.

    Raises OptionError for an unknown garment.
    """
    best = helps_most(profile, garment)
    if best is None:
        return ""
    now, then = unit.number(best.now * 10), unit.spell(best.then * 10)
    return (
        f"Of what is missing, the {NAMES[best.key]} helps most: measured, it brings the line that "
        f"follows it from ± {now} to ± {then}."
    )


def helps_most(
    profile: Profile, garment: str, asked: Mapping[str, str] = MappingProxyType({})
) -> Worth | None:
    """Return the missing measure that would improve a garment in a style most, or None if none
    would.

    Raises OptionError for an unknown garment.
    """
    from tapewise_core.statistics.worth import worth

    page = on_shelf(garment)
    at_work = used(garment, asked, profile, profile.unit)
    needs = {key: factor for key, (factor, _) in page.moves.items() if key in at_work}
    ranked = worth(
        profile.read_off(),
        needs,
        profile.reference,
        profile.waist_site,
        profile.confirmed(),
        profile.age,
    )
    return ranked[0] if ranked and ranked[0].gain >= SLIGHT / 3 else None


def used(garment: str, asked: Mapping[str, str], profile: Profile, unit: Unit) -> tuple[str, ...]:
    """Return the measures that a garment in a style makes use of, in the order of taking them.

    Height is among them, whatever is made: all that is not measured is estimated from it. Raises
    OptionError for an unknown garment.
    """
    page = on_shelf(garment)
    wanted = {"height", *page.needs, *page.helps}
    try:
        style = settle(page.options, asked, page.sees(body_of(profile)[0]), unit)
    except TapewiseError:  # a choice that cannot be, or a default that waits for a measure
        return ordered(wanted)
    return ordered(wanted.difference(page.idle(style)))


def unused(garment: str) -> tuple[str, ...]:
    """Return the measures a garment makes no use of, so that nobody takes them for nothing."""
    page = on_shelf(garment)
    used = {*page.needs, *page.helps}
    return tuple(row.key for row in CATALOGUE if row.key not in used)
