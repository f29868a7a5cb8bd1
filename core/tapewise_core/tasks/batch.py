"""A garment for everyone in a table: a folder a person, and one summary for whoever teaches.

Rows are worked on in several processes, a few at a time, so that memory stays flat. What is done
is written down at once; begun again after a break, only the rest is made.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from datetime import date
from pathlib import Path

from msgspec.structs import asdict, replace

from tapewise_core import __version__
from tapewise_core.errors import FilesError
from tapewise_core.frozen import Frozen
from tapewise_core.profiles.files import put, reason
from tapewise_core.profiles.identity import id_of_name
from tapewise_core.profiles.slug import marked_slug, slug
from tapewise_core.tasks.batch_asked import refuse_for_all
from tapewise_core.tasks.batch_pool import results
from tapewise_core.tasks.batch_row import FAILED, LOOK, Order, Result
from tapewise_core.tasks.batch_told import sheet, summary
from tapewise_core.tasks.class_cells import TableFault
from tapewise_core.tasks.class_table import Table

JOURNAL, SUMMARY, SHEET = "batch.jsonl", "summary.csv", "teacher.md"
"""The files of a batch beside the folders: what is done, what came of it, and in words."""

Run = Callable[[Sequence[Order], str], Iterator[Result]]
Tell = Callable[[int, int, str], object]


class Batch(Frozen):
    """What came of a batch, row by row; ``skipped`` were made in a run before."""

    results: tuple[Result, ...]
    skipped: int

    @property
    def failed(self) -> tuple[Result, ...]:
        """The rows that were not made, or whose proofs fail."""
        return tuple(one for one in self.results if one.result in (FAILED, LOOK))


def orders(table: Table, usual: Order) -> tuple[Order, ...]:
    """Return what is asked for each row of a table, a folder each.

    Raises OptionError for a garment, an option, a value or a format that nobody could have.
    """
    refuse_for_all(usual, {row.profile.unit for row in table.rows})
    taken: set[str] = set()
    made = []
    for row in table.rows:
        folder = _free(row.profile.name, taken)
        taken.add(folder)
        person = row.profile.having(id=id_of_name(row.profile.name)).text()  # the same each run
        made.append(replace(usual, row=row.number, folder=folder, person=person))
    return tuple(made)


def _free(name: str, taken: Iterable[str]) -> str:
    plain = slug(name)
    return plain if plain not in taken else marked_slug(name)


def run(
    table: Table, asked: Sequence[Order], out: Path, *, jobs: int = 1, work: Run | None = None,
    tell: Tell = lambda done, total, name: None,
) -> Batch:  # fmt: skip
    """Draft, prove and write every row that is not done yet; a row that fails stops no other.

    ``work`` runs the rows elsewhere, such as on a cluster; ``tell`` hears how many are done.
    Raises FilesError if the folder cannot be written to.
    """
    _made(out)
    done = _done(out)
    kept = [done[mark] for order in asked if (mark := mark_of(order)) in done]
    rest = [order for order in asked if mark_of(order) not in done]
    faulty = _faulty(table.faults)
    found = [*kept, *faulty]
    marks = {order.folder: mark_of(order) for order in rest}
    tell(len(kept), len(asked), "")
    for result in (work or results(jobs))(rest, str(out)):
        _note(out, marks[result.folder], result)
        found.append(result)
        tell(len(found) - len(faulty), len(asked), result.name)
    batch = Batch(tuple(sorted(found, key=lambda one: one.row)), len(kept))
    _tell(out, batch, asked[0].garment if asked else "", date.today())
    return batch


def _faulty(faults: Iterable[TableFault]) -> list[Result]:
    """A row of the table that cannot be read is one row here, with all that is wrong in it."""
    rows: dict[int, list[TableFault]] = {}
    for fault in faults:
        rows.setdefault(fault.row, []).append(fault)
    return [
        Result(row, "", told[0].name, FAILED, says=" ".join(f.in_row for f in told))
        for row, told in rows.items()
    ]


def mark_of(order: Order) -> str:
    """Return what stands for all that decides a row's files but the day it is made."""
    told = json.dumps(asdict(replace(order, made=date.min, row=0)), default=str)
    return hashlib.sha256(f"{__version__} {told}".encode()).hexdigest()[:16]


def _made(out: Path) -> None:
    try:
        out.mkdir(mode=0o700, parents=True, exist_ok=True)
    except (OSError, ValueError) as fault:
        raise FilesError(f"{out} cannot be made: {reason(fault)}.") from fault


def _done(out: Path) -> Mapping[str, Result]:
    """What was made before and still lies there; failed rows are tried again."""
    done = {}
    for line in _lines(out / JOURNAL):
        try:
            row = json.loads(line)
            lists = {key: tuple(row["result"][key]) for key in ("failing", "unlikely", "estimated")}
            result = Result(**{**row["result"], **lists})
            mark = str(row["mark"])
        except (ValueError, KeyError, TypeError):  # cut off by a crash: made again
            continue
        if result.result != FAILED and (out / result.folder / "draft.json").is_file():
            done[mark] = result
    return done


def _lines(place: Path) -> list[str]:
    try:
        return place.read_text("utf-8", errors="replace").splitlines()
    except FileNotFoundError:
        return []
    except OSError as fault:
        raise FilesError(f"{place} cannot be read: {reason(fault)}.") from fault


def _note(out: Path, mark: str, result: Result) -> None:
    line = json.dumps({"mark": mark, "result": asdict(replace(result, trace=""))})
    try:
        with (out / JOURNAL).open("a", encoding="utf-8") as file:
            file.write(f"{line}\n")
    except OSError as fault:
        raise FilesError(f"{out / JOURNAL} cannot be written: {reason(fault)}.") from fault


def _tell(out: Path, batch: Batch, garment: str, today: date) -> None:
    texts = {SUMMARY: summary(batch.results), SHEET: sheet(batch.results, garment, today)}
    for name, text in texts.items():
        try:
            put(out / name, text.encode("utf-8-sig" if name == SUMMARY else "utf-8"))
        except OSError as fault:
            raise FilesError(f"{out / name} cannot be written: {reason(fault)}.") from fault
