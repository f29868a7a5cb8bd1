"""Words of a fitting for the app: the lines to choose from, and what a change tried says."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.tasks import wizard
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.fitting import SYMPTOMS, Seen, Symptom, Trial, line_of, tried, tube_told
from tapewise_core.tasks.fitting_still import still_told
from tapewise_tui import drafting, words
from tapewise_tui.desk import Desk
from tapewise_tui.line import Line

TUBE, KEPT = "tube", "kept-"
"""Keys of the lines that are no symptoms."""


def lines(desk: Desk) -> Iterator[Line]:
    """Return all that may be seen, from the shoulders down, then what is kept."""
    if tube(desk):
        yield Line(TUBE, "Nothing cut yet? First a tube of cheap jersey")
    for one in SYMPTOMS.values():
        yield Line(one.key, one.says)
    if desk.profile.adjustments:
        yield Line(None, f"Kept with {desk.profile.name}")
    for number, row in enumerate(desk.profile.adjustments, 1):
        yield Line(f"{KEPT}{number}", desk.reader.spell(line_of(row, desk.today)))


def tube(desk: Desk) -> str:
    """Return the advice of a tube test, where estimates decide; nothing elsewhere."""
    made = drafting.drafted(desk)
    return desk.reader.spell(tube_told(made)) if isinstance(made, Drafted) else ""


def about(key: str, desk: Desk) -> str:
    """Say what a line is about."""
    one = SYMPTOMS.get(key)
    if one is not None:
        return f"{words.sentence(one.says)}. {one.question}"
    return tube(desk) if key == TUBE else "Later drafts of any garment use it."


def answered(symptom: Symptom, key: str) -> str:
    """Say what an answer speaks for."""
    return f"{symptom.question} {words.sentence(symptom.answer(key).cause)}."


def trial_of(desk: Desk, found: Seen, amount: float | None = None) -> Trial:
    """Try a change on what lies on the desk; raises what :func:`tried` raises."""
    return tried(
        desk.profile, found, amount, desk.work.asked, day=desk.today, unit=desk.unit,
        machines=wizard.machines(desk.work.machines),
    )  # fmt: skip


def moved(trial: Trial, desk: Desk) -> Iterator[Line]:
    """Return what a change moves, a line to read for each length that is told otherwise."""
    for name, before, after in trial.moved:
        was, now = desk.unit.spell(before), desk.unit.spell(after)
        if was != now:
            yield Line(None, f"{name}: {was} → {now}")
    yield from (Line(None, desk.reader.spell(one)) for one in still_told(trial))


def says(found: Seen, trial: Trial, desk: Desk) -> str:
    """Say why a change is proposed, how much is usual, and what would fail after it."""
    spell, remedy = desk.reader.spell, found.remedy
    assert remedy is not None, "what was tried was proposed"
    told = remedy.change.amount_told
    limits = f"{spell(told(remedy.low))} to {spell(told(remedy.high))}"
    whole = f"{words.sentence(found.answer.cause)}. Dotted is before. At one fitting {limits}:"
    for proof in trial.failing:
        whole = f"! After it {proof.name} fails. {whole}"
    return whole
