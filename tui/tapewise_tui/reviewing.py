"""The review's rows: every measure with its origin, unlikely ones on top."""

from __future__ import annotations

from collections.abc import Iterable

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import WaistSite
from tapewise_core.measures.catalogue import measure
from tapewise_core.measures.finding import Finding
from tapewise_core.measures.measure import Measure
from tapewise_core.measures.order import KEYS
from tapewise_core.tasks import people
from tapewise_tui import readings_told, words
from tapewise_tui.desk import Desk

USUAL = 2
"""How a row is sorted that there is nothing to look at in."""


class Standing(Frozen):
    """One line of the table; ``finding`` is what there is to look at, if anything.

    ``apart`` are readings that do not agree.
    """

    measure: Measure
    value: str
    origin: str
    off: str
    remark: str
    finding: Finding | None
    apart: readings_told.Apart | None = None

    @property
    def cells(self) -> tuple[str, ...]:
        """The row as the table shows it."""
        return (self.measure.name, self.value, self.origin, self.off, self.remark)

    @property
    def urgent(self) -> int:
        """Sort warnings first, then hints, then the rest."""
        if self.finding is None:
            return 1 if self.apart else USUAL
        return 0 if self.finding.severity.value == "warning" else 1


def rows(desk: Desk, keys: Iterable[str] = KEYS) -> tuple[Standing, ...]:
    """Return a row for every measure, those to look at first."""
    return tuple(sorted(in_order(desk, keys), key=lambda row: row.urgent))


def in_order(desk: Desk, keys: Iterable[str]) -> tuple[Standing, ...]:
    """Return a row for each of some measures, in their order."""
    found = _found(desk.check.findings)
    return tuple(_row(desk, measure(key), found.get(key)) for key in keys)


def _found(findings: Iterable[Finding]) -> dict[str, Finding]:
    """Return each measure's finding, a warning rather than a hint."""
    found: dict[str, Finding] = {}
    for finding in sorted(findings, key=lambda one: one.severity.value != "warning"):
        for key in finding.measures:
            found.setdefault(key, finding)
    return found


def _row(desk: Desk, row: Measure, finding: Finding | None) -> Standing:
    value = desk.check.body.values.get(row.key)
    if value is None:
        return Standing(row, "–", "missing", "", "measure it", None)
    off = words.off_by(value, desk.unit)
    origin = value.origin.value
    apart = readings_told.apart(desk, row.key)
    remark = _remark(desk, row, finding, apart)
    spelt = desk.unit.number(value.cm * 10)
    return Standing(row, spelt, origin, off, remark, finding, apart)


def _remark(
    desk: Desk, row: Measure, finding: Finding | None, apart: readings_told.Apart | None
) -> str:
    read = f"readings {apart.readings}" if apart else ""
    if finding is not None:
        mark = _mark(desk, finding)
        return ": ".join(filter(None, (mark, finding.slip or read)))
    if read:
        return f"? {read}"
    kept = desk.profile.measures.get(row.key)
    if kept is not None and len(kept.readings) > 1:
        return words.count(len(kept.readings), "reading")
    return ""


def _mark(desk: Desk, finding: Finding) -> str:
    if finding.severity.value == "warning":
        return "! unlikely"
    return "? age not said" if people.asks_age(desk.profile, finding) else "? look again"


def doubts(found: Iterable[Standing]) -> str:
    """Say how many values there are to look at."""
    unlikely = [row for row in found if row.urgent == 0]
    apart = [row for row in found if row.urgent == 1]
    said = [f"! {len(unlikely)} unlikely" if unlikely else ""]
    said.append(f"{len(apart)} to look at again" if apart else "")
    told = ", ".join(filter(None, said))
    return f"{told}, on top." if told else "None unlikely."


def advice(row: Standing, desk: Desk) -> str:
    """Return the whole remark on a row, and what to do about it."""
    unsaid = desk.profile.waist_site is WaistSite.NOT_SAID and not desk.check.refused
    if row.measure.key == "waist" and unsaid:
        return f"{_advice(row, desk)} F8 asks where the elastic sits, which sharpens estimates."
    return _advice(row, desk)


def brief(row: Standing, desk: Desk) -> str:
    """Return a remark that has one line, or nothing where there is something to look at."""
    if row.urgent < USUAL:
        return ""
    value = desk.check.body.values.get(row.measure.key)
    if value is None:
        return "Nothing to estimate it from; measure it."
    if row.measure.key not in desk.check.missing:
        return "Nothing unusual. F8 shows where the tape goes."
    return f"Nine bodies in ten have {words.span(value, desk.unit)}."


def _advice(row: Standing, desk: Desk) -> str:
    read, apart = "", row.apart
    if apart:
        read = f"The readings {apart.readings} lie {apart.gap} apart. "
    if row.finding is not None:
        take = " F6 takes what is offered," if row.finding.proposed else ""
        says = desk.reader.spell(row.finding.says)
        if people.asks_age(desk.profile, row.finding):
            return f"{read}{says} F7 leaves it at that; the age is typed on page 1, by F8."
        return f"{read}{says}{take} F7 confirms it, F8 measures again."
    if read:
        return f"{read}F8 measures again, F7 confirms it."
    value = desk.check.body.values.get(row.measure.key)
    if value is None:
        return readings_told.refused(desk) or "Nothing to estimate it from; measure it."
    if row.measure.key not in desk.check.missing:
        return "Nothing unusual. A number typed takes its place; F8 shows where the tape goes."
    span = words.span(value, desk.unit)
    return f"{words.sentence(value.how)}; nine bodies in ten have {span}."


def warning(desk: Desk) -> str:
    """Say which measures look unlikely, or nothing."""
    found = [row.measure.name for row in rows(desk) if row.urgent == 0]
    if not found:
        return ""
    verb = "looks" if len(found) == 1 else "look"
    return f"! {words.sentence(words.listed(found))} {verb} unlikely: see page 3, Review."
