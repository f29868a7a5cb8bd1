"""What happens when a reading is typed: kept, compared with the one before, remarked on."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.errors import ReadingError
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Origin
from tapewise_core.measures.catalogue import measure
from tapewise_core.measures.finding import Finding
from tapewise_core.measures.reading import Agreement, compare_readings, read, settled
from tapewise_core.tasks import wizard
from tapewise_tui import words
from tapewise_tui.desk import Desk
from tapewise_tui.readings_told import findings, readings, refused, spelt


class Outcome(Frozen):
    """What to say, and which reading is wanted next; None if the measure is settled."""

    says: str
    wanted: int | None
    wrong: bool = False
    kept: str = ""


def take(desk: Desk, key: str, index: int, text: str) -> Outcome:
    """Keep a reading and say what follows; raises ReadingError or FilesError with a sentence."""
    row = measure(key)
    cm = read(text, row, desk.unit)
    before = _of_now(desk, key, index)
    taken = (*before[:index], cm, *before[index + 1 :])
    value = settled(taken)
    says = f"{words.sentence(row.name)} {desk.unit.spell(value * 10)}"
    desk.value(key, taken, value, Origin.MEASURED, says)
    return replace(_compared(desk, key, taken, value), kept=f"{says} is kept.")


def _of_now(desk: Desk, key: str, index: int) -> tuple[float, ...]:
    """Return the readings [cm] that stay beside a new one: the first of a new day begins anew."""
    kept = desk.profile.measures.get(key)
    if kept is None or not spelt(desk, key):
        return ()
    again = index == 0 and kept.taken is not None and kept.taken != desk.today
    return () if again else readings(desk, key)


def _compared(desk: Desk, key: str, taken: tuple[float, ...], value: float) -> Outcome:
    row, unit = measure(key), desk.unit
    kept = f"{words.sentence(row.name)}: {unit.spell(value * 10)} is kept."
    doubt = next((desk.reader.spell(one.says) for one in findings(desk, key)), "")
    match compare_readings(row, taken):
        case Agreement.ONE:
            ask = "Take the tape off, lay it on again, read once more; Enter alone goes on."
            return Outcome(doubt or f"{kept} {ask}", 1, bool(doubt))
        case Agreement.AGREE:
            agree = "The readings agree." if len(taken) == 2 else "Two of the three agree."
            return Outcome(doubt or f"{kept} {agree}", None, bool(doubt))
    apart = unit.spell((max(taken) - min(taken)) * 10)
    if len(taken) >= 3:
        middle = f"{kept} The readings lie up to {apart} apart; the middle one counts."
        return Outcome(f"{middle} {doubt}".strip(), None, bool(doubt))
    third = f"The two lie {apart} apart: a third reading is due. Enter alone goes on."
    return Outcome(f"{third} {doubt}".strip(), 2, bool(doubt))


def take_offered(desk: Desk, key: str) -> str:
    """Take the value proposed for a slip; with nothing measured, leave it to the estimate.

    Returns what to say; raises ReadingError where nothing is offered.
    """
    offer = next((one for one in findings(desk, key) if one.proposed), None)
    return left_open(desk, key) if offer is None else correct(desk, offer)


def left_open(desk: Desk, key: str) -> str:
    """Say what stands in for a measure that is not measured; raises ReadingError if it is.

    Nothing is kept: what stands in is estimated anew whenever anything else changes.
    """
    name = words.sentence(measure(key).name)
    if key not in desk.check.missing:
        kept = desk.unit.spell(desk.profile.measures[key].value * 10)
        raise ReadingError(f"{name} is measured, {kept}, and stays; empty its field to open it.")
    value = wizard.expected(desk.profile, key)
    if value is None:
        raise ReadingError(refused(desk) or "There is nothing to estimate it from yet.")
    return f"{name} stays open; {desk.unit.spell(value.cm * 10)} stands in, as an estimate."


def correct(desk: Desk, finding: Finding) -> str:
    """Take the correction that a finding offers; return what to say."""
    proposed = finding.proposed or {}
    profile = desk.profile
    for key, cm in proposed.items():
        profile = profile.with_value(key, cm, readings=(cm,), taken=desk.today)
    named = [f"{measure(k).name} {desk.unit.spell(cm * 10)}" for k, cm in proposed.items()]
    says = words.sentence(words.listed(named))
    desk.change(says, profile)
    return f"{says} taken instead."


def confirm(desk: Desk, keys: tuple[str, ...]) -> str:
    """Mark measures as read again and right; return what to say."""
    profile = desk.profile
    for key in keys:
        kept = profile.measures[key]
        profile = profile.with_value(
            key, kept.value, origin=Origin.CONFIRMED, readings=kept.readings, taken=kept.taken
        )
    said = f"{words.sentence(words.listed([measure(key).name for key in keys]))} confirmed"
    desk.change(said, profile)
    return f"{said}; no more is said about it."


def drop(desk: Desk, key: str) -> str:
    """Take a measure off the list; return what to say."""
    name = words.sentence(measure(key).name)
    desk.change(f"{name} taken off", desk.profile.without(key))
    return f"{name} is open again. Ctrl+Z brings it back."


def removed(desk: Desk, key: str, index: int) -> str:
    """Take one reading off, and with the last one the measure; return what to say."""
    kept = readings(desk, key)
    left = (*kept[:index], *kept[index + 1 :])
    if not left:
        return drop(desk, key)
    name, unit = words.sentence(measure(key).name), desk.unit
    value = settled(left)
    desk.value(key, left, value, Origin.MEASURED, f"{name}: a reading taken off")
    gone, stands = unit.spell(kept[index] * 10), unit.spell(value * 10)
    return f"{name}: the reading of {gone} is taken off, {stands} stands. Ctrl+Z brings it back."


def replaced(desk: Desk, key: str, text: str) -> str:
    """Put one new reading in place of all; an empty text takes the measure off."""
    if not text:
        return drop(desk, key)
    row = measure(key)
    cm = read(text, row, desk.unit)
    says = f"{words.sentence(row.name)} {desk.unit.spell(cm * 10)}"
    desk.value(key, (cm,), cm, Origin.MEASURED, says)
    return f"{says} is kept."
