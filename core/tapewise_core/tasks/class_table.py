"""A class in one table: a row a person, headings such as ``name`` and ``bust [cm]``.

Spreadsheets write such tables as CSV. Commas, semicolons or tabs between cells are understood,
decimal commas too; what looks like a formula stays text. Every fault is told by its row, as a
spreadsheet counts them, and its column; the rows without one are taken.
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable, Iterator, Sequence
from pathlib import Path

from tapewise_core.errors import FilesError
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Origin
from tapewise_core.measures.catalogue import CATALOGUE
from tapewise_core.profiles.files import LARGEST_FILE, file_bytes
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.class_cells import Column, TableFault, columns_of, of_cells, plain_text

ABOUT = ("name", "unit", "reference", "waist_site", "age", "groups")
"""The columns before the measures."""

HEADINGS = (*ABOUT, *(f"{row.key} [cm]" for row in CATALOGUE))
"""The headings of a template."""

_SEPARATOR = re.compile('"?sep=([,;\t])"?(?:\n|$)', re.IGNORECASE)
"""A first line that some spreadsheets write, to say what is between cells."""


class Row(Frozen):
    """One person of a table, and the row she stands in."""

    number: int
    profile: Profile
    given: tuple[str, ...]


class Table(Frozen):
    """What a table holds: its good rows, and every fault of the others."""

    rows: tuple[Row, ...]
    faults: tuple[TableFault, ...]


def template() -> str:
    """Return a table with headings and nobody in it."""
    return _spelt([HEADINGS])


def read_table(path: Path) -> Table:
    """Return the people a CSV file holds.

    Raises FilesError if the file cannot be read as a table with names.
    """
    lines = _lines(_text(path), path)
    number, head = next(lines, (1, []))
    columns, faults = columns_of(head, number)
    if "name" not in {column.key for column in columns}:
        raise FilesError(
            f"{path} has no column “name”; “tapewise profiles copy-in --template” prints the "
            "headings."
        )
    rows: dict[str, Row] = {}
    for number, cells in lines:
        _take(number, cells, columns, rows, faults)
    return Table(tuple(rows.values()), tuple(faults))


def _take(
    number: int,
    cells: Sequence[str],
    columns: Sequence[Column],
    rows: dict[str, Row],
    faults: list[TableFault],
) -> None:
    """Add one row to the good ones, or what is wrong with it to the faults."""
    profile, wrong = of_cells(number, cells, columns)
    if profile is not None and profile.name.casefold() in rows:
        first = rows[profile.name.casefold()].number
        wrong = [
            TableFault(
                number, "name", f"{profile.name} stands in row {first} already", profile.name
            )
        ]
    if wrong or profile is None:
        faults += wrong
        return
    filled = zip(columns, cells, strict=False)
    given = tuple(column.key for column, cell in filled if cell.strip() and column.key)
    rows[profile.name.casefold()] = Row(number, profile, given)


def table_of(people: Iterable[Profile]) -> str:
    """Return a table of people, lengths in cm; estimates that were taken are left open."""
    return _spelt([HEADINGS, *map(_cells, people)])


def _cells(profile: Profile) -> list[str]:
    age = "" if profile.age is None else f"{profile.age:g}"
    about = [profile.name, profile.unit.value, profile.reference.value, profile.waist_site.value]
    cells = [*about, age, "; ".join(profile.groups)]
    for row in CATALOGUE:
        kept = profile.measures.get(row.key)
        taken = kept is not None and kept.origin is not Origin.ESTIMATED
        cells.append(f"{kept.value:.10g}" if kept and taken else "")
    return [plain_text(cell) for cell in cells]


def _spelt(rows: Iterable[Sequence[str]]) -> str:
    out = io.StringIO()
    csv.writer(out, lineterminator="\n").writerows(rows)
    return out.getvalue()


def _text(path: Path) -> str:
    content = file_bytes(path)
    if len(content) > LARGEST_FILE:
        raise FilesError(f"{path} is larger than 1 MB; split the class.")
    try:
        return content.decode(
            "utf-16" if content[:2] in (b"\xff\xfe", b"\xfe\xff") else "utf-8-sig"
        )
    except UnicodeDecodeError:
        raise FilesError(f"{path} is not text in UTF-8; save it as “CSV UTF-8”.") from None


def _lines(text: str, path: Path) -> Iterator[tuple[int, list[str]]]:
    """Yield each row that is not empty with its number."""
    text = text.replace("\r\n", "\n").replace("\r", "\n")
    said = _SEPARATOR.match(text)
    number, rest = (1, text[said.end() :]) if said else (0, text)
    head = rest.partition("\n")[0]
    between = said[1] if said else max(",;\t", key=head.count)
    reader = csv.reader(io.StringIO(rest), delimiter=between)
    while True:
        number += 1
        try:
            cells = next(reader)
        except StopIteration:
            return
        except csv.Error as fault:
            raise FilesError(f"{path}, row {number}, cannot be read as a table: {fault}.") from None
        if any(cell.strip() for cell in cells):
            yield number, cells
