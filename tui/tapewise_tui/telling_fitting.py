"""Fittings told: symptoms, a change that was tried, what is kept; to a person or a machine."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from tapewise_core.profiles.fitted import Adjustment
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.adjusting import adjustment_told, measured_in
from tapewise_core.tasks.fitting import SYMPTOMS, Answer, Remedy, Seen, Symptom, Trial, line_of
from tapewise_core.tasks.fitting_still import still_told
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit


def symptom_lines() -> Iterable[str]:
    """Every symptom with its question, its answers below."""
    for symptom in SYMPTOMS.values():
        yield f"{symptom.key}: {symptom.says}"
        if symptom.question:
            yield f"    {symptom.question}"
            yield from (f"      {answer.key}: {answer.says}" for answer in symptom.answers)


def symptoms_json() -> list[dict[str, object]]:
    """Every symptom; lines of its drawing in hundredths of the figure, lengths in cm."""
    return [_symptom_json(symptom) for symptom in SYMPTOMS.values()]


def _symptom_json(symptom: Symptom) -> dict[str, object]:
    folds = symptom.folds
    return {
        "key": symptom.key,
        "says": symptom.says,
        "question": symptom.question or None,
        "answers": [_answer_json(answer) for answer in symptom.answers],
        "folds": {"view": folds.view.value, "figure": folds.figure, "lines": folds.lines},
    }


def _answer_json(answer: Answer) -> dict[str, object]:
    return {
        "key": answer.key,
        "says": answer.says,
        "cause": answer.cause,
        "advice": answer.advice or None,
        "changes": [_remedy_json(remedy) for remedy in answer.remedies],
    }


def _remedy_json(remedy: Remedy) -> dict[str, object]:
    change = remedy.change
    plain = {"low": remedy.low, "high": remedy.high, "unit": change.measured.value}
    return {"key": change.key, "says": change.plain, **plain}


def proposal_lines(found: Seen, trial: Trial, unit: Unit) -> Iterable[str]:
    """What was seen, why, what is proposed, and what it moves."""
    spell = Reader(unit).spell
    assert found.remedy is not None
    told = found.remedy.change.amount_told
    limits = f"{spell(told(found.remedy.low))} to {spell(told(found.remedy.high))}"
    yield f"Seen: {found.symptom.says}."
    yield f"Cause: {found.answer.cause}."
    yield from (f"No way here: {says}, because {spell(why)}" for says, why in found.passed)
    yield f"Change: {spell(trial.says)} (at one fitting {limits})."
    yield from moved_lines(trial, unit)
    for proof in trial.failing:
        yield f"Wrong: after it {proof.name} fails. {spell(proof.told)}"


def moved_lines(trial: Trial, unit: Unit) -> Iterable[str]:
    """What a change moves, before and after; lengths that stay are left out."""
    spelt = ((name, unit.spell(was), unit.spell(now)) for name, was, now in trial.moved)
    told = [f"  {name}: {was} before, {now} after" for name, was, now in spelt if was != now]
    still = [f"  {Reader(unit).spell(one)}" for one in still_told(trial)]
    yield from told or still or (UNMOVED,)


UNMOVED = (
    "  The lines move and no finished girth or length that is told; --out DIR draws both over each "
    "other."
)
"""Said where a change shows in the drawing alone."""


def proposal_json(found: Seen, trial: Trial, *, kept: bool) -> dict[str, object]:
    """The same for a machine, lengths in cm."""
    reader = trial.after.reader
    assert found.remedy is not None
    moved = {name: [round(a / 10, 2), round(b / 10, 2)] for name, a, b in trial.moved}
    return {
        "symptom": found.symptom.key,
        "answer": found.answer.key,
        "cause": found.answer.cause,
        "change": _remedy_json(found.remedy),
        "amount": trial.adjustment.amount,
        "says": reader.spell(trial.says),
        "passed": [{"says": says, "why": reader.spell(why)} for says, why in found.passed],
        "moved": moved,
        "failing": [reader.spell(proof.told) for proof in trial.failing],
        "kept": kept,
    }


def kept_lines(profile: Profile, unit: Unit, today: date) -> list[str]:
    """What is kept with a person after fittings, counted from 1."""
    spell, found = Reader(unit).spell, profile.adjustments
    if not found:
        return [f"Nothing is kept with {profile.name} after fittings."]
    rows = [f"  {number}  {spell(line_of(one, today))}" for number, one in enumerate(found, 1)]
    return [f"Kept with {profile.name}, for every garment that has a way for it:", *rows]


def kept_json(profile: Profile) -> list[dict[str, object]]:
    """The same for a machine; a length's amount in cm."""
    return [{"number": number, **adjustment_json(one)}
            for number, one in enumerate(profile.adjustments, 1)]  # fmt: skip


def adjustment_json(one: Adjustment) -> dict[str, object]:
    """One adjustment for a machine."""
    return {
        "what": one.what,
        "says": Reader(Unit.CM).spell(adjustment_told(one)),
        "amount": one.amount,
        "unit": measured_in(one),
        "date": one.date.isoformat() if one.date else None,
        "garment": one.garment,
        "symptom": one.symptom,
    }
