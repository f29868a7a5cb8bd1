"""What the app asks on its pages besides people and drafts: options, machines, things to tick."""

from __future__ import annotations

from collections.abc import Mapping

from msgspec.structs import replace

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.errors import OptionError
from tapewise_core.frozen import Frozen
from tapewise_core.garments import shelf
from tapewise_core.garments.garment import Garment
from tapewise_core.measures.body import Body, Value
from tapewise_core.profiles.profile import Profile
from tapewise_core.proofs.ledger import ledger_lines
from tapewise_core.proofs.proof import Proof as Proof
from tapewise_core.sewing.machines import Machine, read_machines
from tapewise_core.style.option import Group, Option
from tapewise_core.style.settle import read, settle
from tapewise_core.style.style import Style
from tapewise_core.tasks.missing import missing as missing
from tapewise_core.tasks.missing import refuse_wrong as refuse_wrong
from tapewise_core.tasks.missing import with_stand_ins
from tapewise_core.tasks.people import body_of
from tapewise_core.text.told import Reader
from tapewise_core.units import Length, Unit

MACHINES = {
    "overlocker": "an overlocker (serger): seams that stretch, trimmed",
    "coverstitch": "a coverstitch: hems that stretch",
    "zigzag": "a household machine with zigzag or stretch stitch",
    "straight": "a household machine with a straight stitch only",
    "hand": "no machine: all by hand",
}
"""The machines a person may have, each in words."""


FIRST = frozenset({"body-length", "skirt-length", "stretch", "cloth-width", "cowl-depth"})
"""Options that most people decide besides those of style (our choice)."""

OPEN = "worked out from measures that are still to take"
"""What is told of a default that cannot be worked out yet."""

_RANK: dict[str, int] = {group: rank for rank, group in enumerate(Group)}


class OptionRow(Frozen):
    """One option as a page shows it; ``value`` and limits are spelt in the reader's unit.

    ``choices`` is empty for what is typed. ``asked`` says that the wearer chose it, ``at_work``
    that it has something to do in this style, ``first`` that most people decide it.
    """

    group: str
    key: str
    label: str
    says: str
    value: str
    low: str
    high: str
    usual: str
    choices: tuple[str, ...]
    asked: bool
    at_work: bool = True
    first: bool = True

    @property
    def limits(self) -> str:
        """Spell the limits or the choices."""
        return ", ".join(self.choices) if self.choices else f"{self.low} to {self.high}"


def garments() -> tuple[Garment, ...]:
    """Return the garments that can be drafted."""
    return shelf.garments()


def garment(name: str) -> Garment:
    """Return a garment; raises OptionError naming the ones there are."""
    return shelf.garment(name)


def expected(profile: Profile, key: str) -> Value | None:
    """Return what the other measures say a measure is, with its 90 % interval [cm].

    None where nothing can be estimated.
    """
    body, _ = body_of(profile.without(key))
    return body.values.get(key)


def given(pattern: Pattern, unit: Unit) -> tuple[str, ...]:
    """Return what was asked and given at a pattern's levels, in a few lines."""
    return ledger_lines(pattern.facts.levels, Reader(unit, plain=True))


def machines(names: tuple[str, ...]) -> frozenset[Machine]:
    """Return the machines of those names; raises OptionError if they cannot sew a garment."""
    return read_machines(", ".join(names))


def option_rows(
    profile: Profile, name: str, asked: Mapping[str, str], unit: Unit
) -> tuple[OptionRow, ...]:
    """Return every option of a garment as a person reads it; a wrong one as it was typed.

    A default that needs a measure which is not there yet is left open.
    """
    page = shelf.garment(name)
    known = body_of(profile)[0]
    whole = all(key in known for key in page.needs)
    body = page.sees(known if whole else with_stand_ins(known))
    style = _settled(page, asked, body, unit) or settle(page.options, {}, body, unit)

    def usual(key: str) -> Style:
        """What is usual beside the other choices, not what is usual where nothing was chosen."""
        others = {other: text for other, text in asked.items() if other != key}
        return (_settled(page, others, body, unit) if key in asked else style) or style

    rows = [_row(option, style, usual(option.key), asked, unit) for option in page.options]
    if not whole:
        rows = [row if row.asked or row.choices or page.options[row.key].fixed is not None
                else replace(row, value="", usual=OPEN) for row in rows]  # fmt: skip
    return tuple(sorted(rows, key=lambda row: _RANK[row.group]))


def _settled(page: Garment, asked: Mapping[str, str], body: Body, unit: Unit) -> Style | None:
    try:
        return settle(page.options, asked, body, unit)
    except OptionError:
        return None


def _row(
    option: Option, style: Style, usual: Style, asked: Mapping[str, str], unit: Unit
) -> OptionRow:
    spell = Reader(unit, plain=True).spell
    low, high = map(spell, option.limits)
    chosen = style.chosen[option.key]
    wanted = option.key in asked
    told = asked[option.key] if wanted and not chosen.asked else spell(chosen.told)
    told_usual, way = spell(usual.chosen[option.key].told), spell(option.default_says)
    return OptionRow(
        group=option.group,
        key=option.key,
        label=option.key.replace("-", " "),
        says=spell(option.says),
        value=told,
        low=low,
        high=high,
        usual=_usually(told_usual, way),
        choices=option.words,
        asked=wanted,
        at_work=option.at_work(style),
        first=wanted or option.group is Group.STYLE or option.key in FIRST,
    )


def _usually(value: str, way: str) -> str:
    """A usual value with how it comes about, unless that begins with it.

    >>> _usually("6 cm", "ease round the arm"), _usually("6 cm", "6 cm, less where it is tight")
    ('6 cm, ease round the arm', '6 cm, less where it is tight')
    """
    if way.startswith(value):
        return way
    return f"{value}, {way}" if way else value


def plainly(name: str, key: str, text: str, unit: Unit) -> str:
    """Return what was typed for an option so that it reads the same in every unit.

    Raises OptionError saying what would be right.
    """
    options = shelf.garment(name).options
    if key not in options:
        raise OptionError(f"This garment has no option “{key}”.")
    value = read(options[key], text, unit)
    if isinstance(value, Length):
        return f"{round(value.mm / 10, 6):g} cm"
    return value if isinstance(value, str) else f"{value:g}"
