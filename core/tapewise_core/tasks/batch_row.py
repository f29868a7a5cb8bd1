"""One person of a batch: drafted, proved and spelt, from plain values to plain values.

What is asked and what comes of it can be sent to another process or another machine.
"""

from __future__ import annotations

import traceback
from collections.abc import Mapping
from datetime import date
from pathlib import Path

from msgspec.structs import replace

from tapewise_core.errors import TapewiseError
from tapewise_core.frozen import Frozen
from tapewise_core.profiles.profile import Profile
from tapewise_core.proofs.proof import SURE_ENOUGH
from tapewise_core.tasks.asked_paper import USUAL_PAPER, Paper
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

MADE, LOOK, FAILED = "made", "proof fails", "failed"
"""What can come of a row."""


class Order(Frozen):
    """What is asked for one person; ``person`` is the text of her file, ``made`` the day."""

    row: int
    folder: str
    person: str
    garment: str
    made: date
    asked: tuple[tuple[str, str], ...] = ()
    formats: tuple[str, ...] = ()
    machines: str = "overlocker,coverstitch"
    unit: str = ""
    paper: Paper = USUAL_PAPER
    steps: bool = False


class Result(Frozen):
    """What came of it: ``failing`` proofs, ``unlikely`` measures, ``says`` why it failed or what
    to do where a proof is uncertain; ``sure`` is the least of any proof.

    ``trace`` is for whoever mends the program, where it was at fault itself.
    """

    row: int
    folder: str
    name: str
    result: str
    failing: tuple[str, ...] = ()
    unlikely: tuple[str, ...] = ()
    estimated: tuple[str, ...] = ()
    says: str = ""
    trace: str = ""
    sure: float = 1.0

    @property
    def uncertain(self) -> bool:
        """Whether it was made, but a proof is not to be trusted yet."""
        return self.result == MADE and self.sure < SURE_ENOUGH

    @property
    def ready(self) -> bool:
        """Whether it may be cut: made, sure enough, from measures none of which is unlikely."""
        return self.result == MADE and not self.uncertain and not self.unlikely


def drafted_row(order: Order) -> tuple[Result, dict[str, bytes]]:
    """Draft for one person and return what came of it, with the files; never raises."""
    name = ""
    try:
        profile = Profile.from_text(order.person)
        name = profile.name
        return _drafted(order, profile)
    except TapewiseError as error:
        unit = Unit(order.unit) if order.unit else Unit.CM
        return _failed(order, name, Reader(unit).spell(error.told)), {}
    except Exception as error:  # one person's fault must not stop the others
        says = f"something went wrong inside the program ({type(error).__name__})"
        trace = "".join(traceback.format_exception(error))
        return replace(_failed(order, name, says), trace=trace), {}


def written_row(order: Order, out: str) -> Result:
    """Draft for one person and write her folder; never raises."""
    result, files = drafted_row(order)
    return put_files(result, files, out)


def put_files(result: Result, files: Mapping[str, bytes], out: str) -> Result:
    """Write a person's folder in place of what an earlier run left there; never raises."""
    from tapewise_core.tasks.record_read import listed
    from tapewise_core.writers.whole_set import finish, write_set

    folder = Path(out) / result.folder
    try:
        if files:
            finish(folder)
            write_set(folder, files, [name for name in listed(folder) if name not in files])
    except TapewiseError as error:
        return replace(result, result=FAILED, says=str(error))
    return result


def _failed(order: Order, name: str, says: str) -> Result:
    return Result(order.row, order.folder, name, FAILED, says=says)


def _drafted(order: Order, profile: Profile) -> tuple[Result, dict[str, bytes]]:
    from tapewise_core.tasks.drafting import draft, machines_named
    from tapewise_core.tasks.judging import judged
    from tapewise_core.tasks.people import check

    drafted = judged(
        draft(
            profile,
            order.garment,
            dict(order.asked),
            unit=Unit(order.unit) if order.unit else None,
            machines=machines_named(order.machines),
            made=order.made,
        )
    )
    found = check(profile, drafted.unit).about(drafted.used)
    unlikely = (f.says for f in found if f.severity.value == "warning")
    spell, verdict = drafted.reader.spell, drafted.verdict
    assert verdict is not None
    result = Result(
        order.row,
        order.folder,
        profile.name,
        LOOK if drafted.failing else MADE,
        tuple(spell(proof.told) for proof in drafted.failing),
        tuple(map(spell, unlikely)),
        drafted.estimated_keys,
        says=spell(verdict.says) if verdict.uncertain else "",
        sure=round(verdict.sure, 3),
    )
    return result, _files(drafted, order)


def _files(drafted: object, order: Order) -> dict[str, bytes]:
    from tapewise_core.tasks.contents import contents, short_contents
    from tapewise_core.tasks.drafted import Drafted

    assert isinstance(drafted, Drafted)
    make = contents if order.steps else short_contents
    files: Mapping[str, bytes] = make(drafted, order.formats, order.paper)
    return dict(files)
