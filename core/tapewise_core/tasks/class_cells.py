"""The cells of a table of people: read one by one, each fault with its row and column."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from typing import Any

from msgspec.structs import replace

from tapewise_core.errors import ProfileError, ReadingError
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Origin, Reference, WaistSite
from tapewise_core.measures.catalogue import measure, near_measures
from tapewise_core.measures.reading import read
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.rules import LONGEST_NAME
from tapewise_core.text.typed import parse_number
from tapewise_core.units import Unit


class TableFault(Frozen):
    """What is wrong in one cell."""

    row: int
    column: str
    says: str
    name: str = ""
    """Who stands in the row, as far as that can be read."""

    def __str__(self) -> str:
        return f"row {self.row}, {self.in_row}"

    @property
    def in_row(self) -> str:
        """The fault as it is told where the row is known."""
        return f"{self.column}: {self.says.rstrip('.')}."


class Column(Frozen):
    """One column: its heading as written, what it holds, and the unit of its lengths; None where
    the heading names none, and each row's own is meant."""

    heading: str
    key: str
    unit: Unit | None = None


_HEADING = re.compile(r"(?P<key>[^\[(]+?)\s*(?:[\[(]\s*(?P<unit>[^\])]*?)\s*[\])])?")
_UNITS = {None: None, "cm": Unit.CM, "in": Unit.IN, "inch": Unit.IN, "inches": Unit.IN}
_FORMULA = ("=", "+", "-", "@", "\t", "\r")


def columns_of(head: Sequence[str], row: int = 1) -> tuple[list[Column], list[TableFault]]:
    """Return a column for each heading in its row, one nobody knows without a key, and what is
    wrong."""
    columns: list[Column] = []
    faults: list[TableFault] = []
    for heading in head:
        column, says = _column(heading)
        if says is None and column.key and column.key in {one.key for one in columns}:
            column, says = Column(heading, ""), "this column stands twice"
        columns.append(column)
        if says is not None:
            faults.append(TableFault(row, heading.strip() or "an empty heading", says))
    return columns, faults


def _column(heading: str) -> tuple[Column, str | None]:
    found = _HEADING.fullmatch(heading.strip().lower())
    if found is None:
        return Column(heading, ""), None if not heading.strip() else "is no heading"
    key, unit = re.sub(r"[\s-]+", "_", found["key"]), found["unit"]
    if unit not in _UNITS:
        return Column(heading, ""), "give its lengths in [cm] or [in]"
    if key not in _ABOUT:
        try:
            key = measure(key).key
        except ReadingError:
            who = ", ".join(one.replace("_", " ") for one in _ABOUT)
            says = f"is not a measure; {near_measures(key)}. Columns that are no measures: {who}"
            return Column(heading, ""), says
    return Column(heading.strip(), key, _UNITS[unit]), None


def of_cells(
    number: int, cells: Sequence[str], columns: Sequence[Column]
) -> tuple[Profile | None, list[TableFault]]:
    """Return the person of one row, or every fault in it."""
    about: dict[str, Any] = {}
    lengths: dict[str, float] = {}
    faults: list[TableFault] = []
    usual = _row_unit(cells, columns)
    for column, cell in zip(columns, cells, strict=False):
        try:
            _read(replace(column, unit=column.unit or usual), cell.strip(), about, lengths)
        except (ReadingError, ValueError) as fault:
            faults.append(TableFault(number, column.heading, str(fault)))
    if any(cell.strip() for cell in cells[len(columns) :]):
        faults.append(TableFault(number, "the end", "there are more cells than headings"))
    if "name" not in about:
        faults.insert(0, TableFault(number, "name", "is missing"))
    profile, wrong = (None, faults) if faults else _made(number, about, lengths)
    who = " ".join(str(about.get("name", "")).split())[:LONGEST_NAME]
    return profile, [replace(fault, name=who) for fault in wrong]


def _row_unit(cells: Sequence[str], columns: Sequence[Column]) -> Unit:
    """The unit a row says it is in; cm where it says none, or nothing that is one."""
    said = (cell for column, cell in zip(columns, cells, strict=False) if column.key == "unit")
    word = as_typed(next(said, "").strip()).lower()
    return Unit(word) if word in tuple(Unit) else Unit.CM


def _made(
    number: int, about: Mapping[str, Any], lengths: Mapping[str, float]
) -> tuple[Profile | None, list[TableFault]]:
    try:
        profile = Profile.of(about["name"]).having(**about)
        for key, cm in lengths.items():
            profile = profile.with_value(key, cm, origin=Origin.MEASURED)
    except ProfileError as error:
        told = (fault.partition(": ") for fault in error.faults)
        return None, [TableFault(number, place, says) for place, _, says in told]
    return profile, []


def _read(column: Column, cell: str, about: dict[str, Any], lengths: dict[str, float]) -> None:
    if not cell or not column.key:
        return
    if column.key in _ABOUT:
        about[column.key] = _ABOUT[column.key](as_typed(cell))
    else:
        lengths[column.key] = read(cell, measure(column.key), column.unit or Unit.CM)


def _one_of(kind: type[Unit] | type[Reference] | type[WaistSite]) -> Callable[[str], object]:
    def chosen(cell: str) -> object:
        try:
            return kind(cell.lower())
        except ValueError:
            there = " or ".join(f"“{one.value}”" for one in kind)
            raise ValueError(f"“{cell[:24]}” must be {there}") from None

    return chosen


def _groups(cell: str) -> tuple[str, ...]:
    return tuple(dict.fromkeys(part.strip() for part in cell.split(";") if part.strip()))


_ABOUT: Mapping[str, Callable[[str], object]] = {
    "name": str,
    "unit": _one_of(Unit),
    "reference": _one_of(Reference),
    "waist_site": _one_of(WaistSite),
    "age": parse_number,
    "groups": _groups,
}


def plain_text(cell: str) -> str:
    """Mark what a spreadsheet would take for a formula, so that it stays text.

    >>> plain_text("=1+1"), as_typed(plain_text("=1+1")), plain_text("Ada")
    ("'=1+1", '=1+1', 'Ada')
    """
    return f"'{cell}" if cell.startswith(_FORMULA) else cell


def as_typed(cell: str) -> str:
    """Return a text without the mark that :func:`plain_text` puts before it."""
    return cell[1:] if cell[:1] == "'" and cell[1:].startswith(_FORMULA) else cell
