"""Results as lines for a person, and as plain values for a machine."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date
from typing import TYPE_CHECKING

from tapewise_core.measures.body import Origin
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.measures.finding import Finding
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.store import Entry
from tapewise_core.tasks.people import Check
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit
from tapewise_tui import words

if TYPE_CHECKING:
    from tapewise_core.tasks.check_record import Gain
    from tapewise_core.tasks.drafted import Drafted
    from tapewise_core.tasks.files import Written


def draft_lines(
    drafted: Drafted, findings: Sequence[Finding], folder: str, written: Written
) -> Iterator[str]:
    """Say what was made, what was guessed, what fails and what is unlikely."""
    from tapewise_core.tasks.guesses import effect_words
    from tapewise_core.tasks.verdicts import verdict_lines

    yield f"{drafted.garment.title} for {drafted.person}, in {folder}:"
    steps = [name for name, _ in written.files if name.startswith("steps/")]
    for purpose, files in written.by_purpose().items():
        yield from (f"{purpose.capitalize()} this:",) if files else ()
        yield from (f"  {name}  ({words.size(many)})" for name, many in files)
    yield f"  steps/ with {len(steps)} pictures"
    yield f"Every sheet says “{drafted.fingerprint}”; sheets that say another are another draft's."
    yield from filter(None, (written.removed_words(),))
    yield from written.failed_words(drafted.reader)
    yield ""
    if drafted.estimated:
        yield f"Estimated, not measured: {', '.join(drafted.estimated)}."
        yield from filter(None, (effect_words(drafted.effects, drafted.unit),))
    else:
        yield "Every measure used was taken on the body."
    yield from drafted.given
    yield from map(drafted.reader.spell, drafted.pattern.remarks)
    yield from (f"Unlikely: {drafted.reader.spell(finding.says)}" for finding in findings)
    yield from verdict_lines(drafted)


def wrong_lines(drafted: Drafted, findings: Sequence[Finding]) -> Iterator[str]:
    """Say only what wants a look: measures that are unlikely, proofs that fail or are uncertain."""
    from tapewise_core.tasks.verdicts import verdict_lines

    yield from unlikely_lines(findings, drafted.reader)
    if drafted.failing or drafted.uncertain:
        yield from verdict_lines(drafted)


def unlikely_lines(findings: Sequence[Finding], reader: Reader) -> Iterator[str]:
    """Say which measures are unlikely, and why."""
    loud = (finding for finding in findings if finding.severity.value == "warning")
    yield from (f"Unlikely: {reader.spell(finding.says)}" for finding in loud)


def draft_json(
    drafted: Drafted, findings: Sequence[Finding], folder: str, written: Written
) -> dict[str, object]:
    """Return the same for a machine."""
    from tapewise_core.tasks.check_record import findings_json
    from tapewise_core.tasks.files import purpose
    from tapewise_core.tasks.record_proofs import proofs_json, silent_json, verdict_json

    return {
        "garment": drafted.garment.name,
        "person": drafted.person,
        "folder": folder,
        "fingerprint": drafted.fingerprint,
        "files": [
            {"name": name, "bytes": size, "for": purpose(name)} for name, size in written.files
        ],
        "removed": list(written.removed),
        "not_written": [
            {"format": one.format, "says": drafted.reader.spell(one.told)} for one in written.failed
        ],
        "estimated": list(drafted.estimated_keys),
        "remarks": [drafted.reader.spell(remark) for remark in drafted.pattern.remarks],
        "findings": findings_json(findings, drafted.reader),
        "proofs": proofs_json(drafted),
        "silent": silent_json(drafted),
        "verdict": verdict_json(drafted),
        "holds": not drafted.failing,
    }


def check_lines(name: str, found: Check, unit: Unit) -> Iterator[str]:
    """Return a check for a person: unlikely first, then missing, then what is there."""
    yield f"{name}:"
    reader = Reader(unit)
    for finding in found.findings:
        if finding.says != found.refused:
            word = "unlikely" if finding.severity.value == "warning" else "a little unusual"
            yield f"  {word}: {reader.spell(finding.says)}"
    if not (found.findings or found.refused):
        yield "  nothing looks unlikely."
    if found.refused:
        yield f"  {reader.spell(found.refused)}"
    yield from (f"  {reader.spell(caution)}" for caution in found.for_child)
    if found.oldest is not None and found.too_old(date.today()):
        yield f"  oldest reading: {found.oldest.isoformat()}; measure again, for bodies change."
    missing = [found.body.name(key) for key in found.missing]
    yield f"  missing: {', '.join(missing)}." if missing else "  nothing is missing."
    yield ""
    for key, value in found.body.values.items():
        off = value.plus_minus
        spelt = unit.spell(value.cm * 10)
        if value.origin is Origin.ESTIMATED and off is not None:
            spelt = f"{unit.number(value.cm * 10)} ± {unit.spell(off * 10)}"
        told = value.origin is Origin.ESTIMATED and value.how  # “estimated from …” says both
        grounds = [value.how] if told else [value.origin.value, value.how]
        yield f"  {found.body.name(key)}: {spelt} ({', '.join(filter(None, grounds))})"
    if any(value.origin is Origin.ESTIMATED for value in found.body.values.values()):
        yield from ("", "About the estimates:")
        yield from (f"  {caution}" for caution in found.cautions)


def gain_lines(gain: Gain) -> Iterator[str]:
    """Return what a garment would gain from measuring, what it makes no use of, and what the
    measures suggest for it."""
    if gain.next:
        yield f"\n{gain.next}"
    if gain.unused:
        yield f"Not used by this garment: {', '.join(NAMES[key] for key in gain.unused)}."
    yield from gain.posture


def entry_json(entry: Entry) -> dict[str, object]:
    """Return one person on file for a machine."""
    return {
        "name": entry.name,
        "file": str(entry.path),
        "example": entry.shipped,
        "id": entry.known.id or None,
        "measures": entry.known.measures,
        "groups": list(entry.known.groups),
        "fault": entry.fault or None,
    }


def entry_lines(entries: Sequence[Entry]) -> Iterator[str]:
    """Return everyone on file, a line each."""
    for entry in entries:
        kind = "example" if entry.shipped else "saved"
        known = entry.known
        if entry.fault:
            from tapewise_core.tasks import damaged

            yield f"{entry.name}: cannot be used: {damaged.person_says(entry)}"
        else:
            groups = f"; {', '.join(known.groups)}" if known.groups else ""
            count = f"{known.measures} of {len(NAMES)} measures"
            yield f"{entry.name}: {kind}, {count}, in {known.unit}{groups}"


def profile_lines(profile: Profile, unit: Unit) -> Iterator[str]:
    """Return a person's measures, a line each."""
    drawn, site = profile.reference.value, profile.waist_site.value
    yield f"{profile.name}: estimates drawn from {drawn}; waist found: {site}"
    for key, reading in profile.measures.items():
        when = f", {reading.taken.isoformat()}" if reading.taken else ""
        yield f"  {NAMES[key]}: {unit.spell(reading.value * 10)} ({reading.origin.value}{when})"
    if profile.adjustments:
        from tapewise_core.tasks.adjustments import line_of  # with all that a draft is

        for one in profile.adjustments:
            yield f"  {Reader(unit).spell(line_of(one, date.today()))}"
