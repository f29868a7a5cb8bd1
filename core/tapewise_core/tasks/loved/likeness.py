"""A draft beside the garment it is to wear like: what is the same, what differs and why."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.drafting.facts import Level
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.frozen import Frozen
from tapewise_core.parts.bare_style import is_bare
from tapewise_core.parts.neck_style import NeckStyle
from tapewise_core.parts.sleeve_style import SleeveStyle
from tapewise_core.style.style import Style
from tapewise_core.tasks.loved.flat import Flat
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

NEAR = 3.0
"""Closer than this a garment is as the other [mm]: what a tape on cloth can tell (our choice)."""


class Want(Frozen):
    """One measure of a garment that fits [mm]: as it is there, and as it is wanted here.

    ``otherwise`` says that the wearer chose something else; ``held`` why no more or less can be
    asked for, and nothing where it can.
    """

    row: Flat
    there: float
    here: float
    otherwise: bool = False
    held: Told = ()


class Row(Frozen):
    """One measure there and as it was drafted [mm]; None where this garment has no such place."""

    row: Flat
    there: float
    wanted: float
    given: float | None
    why: Told = ()

    @property
    def same(self) -> bool:
        """Whether both are as wide or long."""
        return self.given is not None and abs(self.given - self.there) <= NEAR


class Likeness(Frozen):
    """A draft beside a garment that fits, measure by measure; ``cloth`` is what is said of its."""

    name: str
    rows: tuple[Row, ...]
    cloth: Told = ()

    @property
    def told(self) -> tuple[Told, ...]:
        """What is the same, then each difference with its reason, then what can't be compared."""
        same = [row.row.name for row in self.rows if row.same]
        away = [row.row.name for row in self.rows if row.given is None]
        alike = said("As “{}”: {}.", self.name, ", ".join(same)) if same else ()
        apart = said("Not part of this garment: {}.", ", ".join(away)) if away else ()
        differs = (
            _differs(self.name, row, row.given)
            for row in self.rows
            if row.given is not None and not row.same
        )
        return tuple(filter(None, (alike, self.cloth, *differs, apart)))


def _differs(name: str, row: Row, given: float) -> Told:
    opening, whole = row.row.name.capitalize(), " all round" if row.row.round else ""
    says = said(f"{{}}: {{}}{whole}, “{{}}” has {{}}: ", opening, mm(given), name, mm(row.there))
    stop = () if str(row.why[-1]).endswith(".") else (".",)
    return (*says, *row.why, *stop)


def likeness(
    name: str, wants: tuple[Want, ...], cloth: tuple[Told, Told], pattern: Pattern, style: Style
) -> Likeness:
    """Return how a draft compares with what was wanted of it; ``cloth`` holds what is said of
    the other's, and the reason where it makes a difference."""
    unknown, because = cloth
    rows = []
    for want in wants:
        given = given_of(want.row.key, pattern, style)
        rows.append(
            Row(want.row, want.there, want.here, given, _why(want, pattern, given, because))
        )
    return Likeness(name, tuple(rows), unknown)


OWN = said("this garment’s own shape decides it")


def _why(want: Want, pattern: Pattern, given: float | None, because: Told) -> Told:
    """The first reason that holds: the level's own, the wearer, a limit, the other cloth."""
    if given is not None and abs(given - want.here) <= NEAR:
        return because
    level = _level(want.row.key, pattern)
    if level and level.held_back:
        return level.held_back
    return said("it was chosen so") if want.otherwise else want.held or OWN


def _level(key: str, pattern: Pattern) -> Level | None:
    return next((one for one in pattern.facts.levels if one.name == key), None)


def given_of(key: str, pattern: Pattern, style: Style) -> float | None:
    """Return what a draft has for a flat measure, whole [mm]; None where it has no such place."""
    level = _level(key, pattern)
    return level.given if level else next(_found(key, pattern, style), None)


def _found(key: str, pattern: Pattern, style: Style) -> Iterator[float]:
    yield from (one.garment for one in pattern.girths if one.name.replace(" ", "_") == key)
    lengths, neck = pattern.lengths, pattern.facts.neck
    if key == "length" and "centre back length" in lengths:
        yield lengths["centre back length"] + lengths.get("skirt length", 0.0)
    if key == "neck" and neck and neck.half_width is not None:
        yield neck.half_width * 2
    if key == "neck_depth" and "neck-depth" in style.chosen:
        own = NeckStyle.of(style)
        yield own.cowl_depth.mm if own.cowl else own.depth.mm + own.rise.mm
    if key == "sleeve" and "sleeve-length" in style.chosen and not is_bare(style):
        yield SleeveStyle.of(style).length.mm
    for name in _LENGTHS.get(key, ()):
        if name in lengths:
            yield lengths[name]
    if key == "hem":
        yield from _hem(pattern)


def _hem(pattern: Pattern) -> Iterator[float]:
    """The hem of two halves on the fold, straight across."""
    halves = [one for one in pattern.pieces if one.on_fold and "hem_side" in one.points]
    if len(halves) == 2:
        yield 2 * sum(one.points["hem_side"].x for one in halves)


_LENGTHS = {
    "skirt_length": ("skirt length",),
    "shoulder": ("shoulder length",),
    "hem": ("hem round", "hem"),
}
"""Flat measures and the lengths that a pattern tells them by."""
