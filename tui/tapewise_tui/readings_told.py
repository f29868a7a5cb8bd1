"""What stands for a measure at present, in words: its readings, doubts about them, estimates."""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Origin
from tapewise_core.measures.catalogue import measure
from tapewise_core.measures.finding import Finding
from tapewise_core.measures.reading import Agreement, compare_readings
from tapewise_core.tasks import wizard
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit
from tapewise_tui import words
from tapewise_tui.desk import Desk


def readings(desk: Desk, key: str) -> tuple[float, ...]:
    """Return the readings [cm] kept of a measure; a value without any is its own."""
    kept = desk.profile.measures.get(key)
    if kept is None:
        return ()
    return kept.readings or (kept.value,)


def spelt(desk: Desk, key: str) -> tuple[str, ...]:
    """Return the readings as the person types them, an estimate taken left out."""
    kept = desk.profile.measures.get(key)
    if kept is None or kept.origin is Origin.ESTIMATED:
        return ()
    return tuple(desk.unit.number(cm * 10) for cm in readings(desk, key))


class Apart(Frozen):
    """Readings of one measure that do not agree, spelt, and how far they lie apart."""

    readings: str
    gap: str


def apart(desk: Desk, key: str) -> Apart | None:
    """Return the readings that do not agree; None if they do, or are confirmed."""
    kept = desk.profile.measures.get(key)
    if kept is None or kept.origin is not Origin.MEASURED or len(kept.readings) < 2:
        return None
    if compare_readings(measure(key), kept.readings) is Agreement.AGREE:
        return None
    spelt = words.listed([desk.unit.number(cm * 10) for cm in kept.readings])
    return Apart(spelt, desk.unit.spell((max(kept.readings) - min(kept.readings)) * 10))


def standing(desk: Desk, key: str) -> str:
    """Say what stands for a measure at present."""
    kept, unit = desk.profile.measures.get(key), desk.unit
    if kept is None:
        return "Not measured yet."
    when = f", {words.day(kept.taken)}" if kept.taken else ""
    return f"{unit.spell(kept.value * 10)}, {kept.origin.value}{when}."


def findings(desk: Desk, key: str) -> tuple[Finding, ...]:
    """Return what there is to look at about one measure."""
    return tuple(finding for finding in desk.check.findings if key in finding.measures)


def refused(desk: Desk) -> str:
    """Say why nothing is estimated, or nothing."""
    return Reader(desk.unit).spell(desk.check.refused)


def others(desk: Desk, key: str) -> tuple[str, str]:
    """Say what others of this build read, and what is taken if the measure is skipped."""
    value = wizard.expected(desk.profile, key)
    if value is None:
        return "", refused(desk) or "Nothing can be estimated here yet."
    unit: Unit = desk.unit
    known = len(desk.profile.measures.keys() - {key})
    build = "Others of this build read" if known >= 2 else "Most people read"
    middle = f"{unit.spell(value.cm * 10)} {words.off_by(value, unit)}".strip()
    return f"{build} {words.span(value, unit)}.", f"If skipped: {middle}, {value.how}."
