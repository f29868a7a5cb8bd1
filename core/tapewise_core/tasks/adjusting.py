"""What fittings taught about a person, used in a draft where the garment has a way for it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import date
from functools import cached_property

from msgspec import field
from msgspec.structs import replace

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.errors import DraftError, OptionError
from tapewise_core.fitting.change import Change, Measured
from tapewise_core.fitting.changes import CHANGES
from tapewise_core.frozen import Frozen
from tapewise_core.garments.garment import Garment
from tapewise_core.measures.body import Body
from tapewise_core.profiles.fitted import Adjustment
from tapewise_core.style.settle import settle
from tapewise_core.style.style import Style
from tapewise_core.text.told import Told, ended, joined, said
from tapewise_core.units import Unit

UNKNOWN = "this Tapewise knows no change of that name."
"""Why an adjustment that another version may have written is left alone."""

MONTHS = (
    "January", "February", "March", "April", "May", "June", "July", "August", "September",
    "October", "November", "December",
)  # fmt: skip


class Applied(Frozen):
    """An adjustment and one draft; ``why`` says why that draft does without it, if so."""

    adjustment: Adjustment
    why: Told = ()

    @property
    def used(self) -> bool:
        """Whether the draft has it."""
        return not self.why

    @property
    def change(self) -> Change | None:
        """What is changed; None where this version does not know it."""
        return CHANGES.get(self.adjustment.what)

    @property
    def says(self) -> Told:
        """The change with its amount, such as “back neck raised 0.5 cm”."""
        return adjustment_told(self.adjustment)


def adjustment_told(one: Adjustment) -> Told:
    """Return what an adjustment changes and by how much."""
    change = CHANGES.get(one.what)
    return change.told(one.amount) if change else said("{} {}", one.what, f"{one.amount:g}")


class Adjusted(Frozen):
    """A draft with the adjustments it has a use for, and all of them with why not; ``moves`` is
    by how much they moved each option [mm, percent, degrees]."""

    style: Style
    pattern: Pattern
    applied: tuple[Applied, ...] = ()
    moves: Mapping[str, float] = field(default_factory=dict)


class Table(Frozen, dict=True):
    """Where one garment is drafted for one body as it was asked for."""

    page: Garment
    body: Body
    asked: Mapping[str, str]
    unit: Unit

    def drawn(self, moves: Mapping[str, float]) -> Adjusted:
        """Draft with some options moved.

        Raises OptionError for options that are wrong or disagree, DraftError for measures that
        cannot be drawn.
        """
        page, own = self.page, [key for key in self.page.fitted.keys if key in moves]
        options = page.options + page.fitted.only(*own) if own else page.options
        style = settle(options, self.asked, self.body, self.unit, moves)
        faults = page.agree(self.body, style)
        if faults:
            raise OptionError(joined(faults))
        return Adjusted(style, page.draft(self.body, style), moves=moves)

    @cached_property
    def at_work(self) -> frozenset[str]:
        """The options that have something to do in the style that was asked for.

        Raises OptionError for options that are wrong.
        """
        style = settle(self.page.options, self.asked, self.body, self.unit)
        options = (*self.page.options, *self.page.fitted)
        return frozenset(option.key for option in options if option.at_work(style))

    def moves(self, one: Adjustment) -> dict[str, float] | Told:
        """Return what an adjustment moves here, or why nothing."""
        change = CHANGES.get(one.what)
        if change is None:
            return (UNKNOWN,)
        found = change.moves(one.amount, self.at_work)
        return self.lacking(change) if found is None else found

    def lacking(self, change: Change) -> Told:
        """Say why the garment has no way for a change; nothing where it has one."""
        if change.moves(1.0, self.at_work) is not None:
            return ()
        return (f"the {self.page.title.lower()} {change.lacks}.",)


def adjusted(table: Table, adjustments: Sequence[Adjustment]) -> Adjusted:
    """Draft with every adjustment that the garment has a way for and that can be drawn.

    Raises what a draft without any raises.
    """
    if not adjustments:
        return table.drawn({})
    found = [(one, table.moves(one)) for one in adjustments]
    usable = [moves for _, moves in found if isinstance(moves, dict)]
    try:
        whole = table.drawn(_summed(usable))
    except (OptionError, DraftError):
        return _one_by_one(table, found)
    applied = (Applied(one, () if isinstance(moves, dict) else moves) for one, moves in found)
    return replace(whole, applied=tuple(applied))


def _one_by_one(
    table: Table, found: Sequence[tuple[Adjustment, dict[str, float] | Told]]
) -> Adjusted:
    """As many adjustments as can be drawn together, the first ones first."""
    kept: list[dict[str, float]] = []
    whole, applied = table.drawn({}), []
    for one, moves in found:
        why = moves if isinstance(moves, tuple) else ()
        if isinstance(moves, dict):
            try:
                whole = table.drawn(_summed([*kept, moves]))
                kept.append(moves)
            except (OptionError, DraftError) as error:
                why = error.told  # type: ignore[assignment]
        applied.append(Applied(one, why))
    return replace(whole, applied=tuple(applied))


def _summed(moves: Iterable[Mapping[str, float]]) -> dict[str, float]:
    whole: dict[str, float] = {}
    for one in moves:
        for key, by in one.items():
            whole[key] = whole.get(key, 0.0) + by
    return whole


def day_words(day: date | None, today: date) -> str:
    """Say which fitting it was, the year only where it is another one.

    >>> day_words(date(2026, 3, 3), date(2026, 5, 1)), day_words(None, date(2026, 5, 1))
    ('the fitting of 3 March', 'a fitting')
    """
    if day is None:
        return "a fitting"
    year = "" if day.year == today.year else f" {day.year}"
    return f"the fitting of {day.day} {MONTHS[day.month - 1]}{year}"


def used_told(applied: Sequence[Applied], today: date) -> tuple[Told, ...]:
    """Return a sentence for each fitting whose adjustments a draft has."""
    used = [one for one in applied if one.used]
    days = dict.fromkeys(one.adjustment.date for one in used)
    return tuple(
        said(
            "after {}: {}",
            day_words(day, today),
            joined([one.says for one in used if one.adjustment.date == day], ", "),
        )
        for day in days
    )


def left_told(applied: Sequence[Applied]) -> tuple[Told, ...]:
    """Return a sentence for each adjustment that a draft does without."""
    words = "Found at a fitting and not used here: {}, because {}"
    return tuple(ended(said(words, one.says, one.why)) for one in applied if not one.used)


def measured_in(one: Adjustment) -> str:
    """Return what an adjustment's amount is measured in."""
    change = CHANGES.get(one.what)
    return (change.measured if change else Measured.LENGTH).value
