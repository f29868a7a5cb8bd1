"""The acts of ``tapewise fitting``: symptoms, seen and tried, kept with the person or taken off."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Mapping
from datetime import date
from pathlib import Path

from tapewise_core.errors import FilesError, OptionError
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import people
from tapewise_core.tasks.drafting import machines_named
from tapewise_core.tasks.fitting import (
    SYMPTOMS,
    Seen,
    Trial,
    caution,
    kept,
    read_amount,
    seen,
    tried,
    tube_told,
    without,
)
from tapewise_core.tasks.fitting_files import write_pictures
from tapewise_core.tasks.shop import garment_list
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit
from tapewise_tui import telling_fitting as telling
from tapewise_tui.choosing_line import chosen, typed
from tapewise_tui.exits import FINE, LOOK, STOPPED
from tapewise_tui.printing import print_json, say, say_done
from tapewise_tui.settings_asked import agreed, asked, usual_machines


def symptoms(options: argparse.Namespace) -> int:
    """List what may be seen, and what each asks."""
    if options.json:
        print_json(telling.symptoms_json())
    else:
        say("\n".join(telling.symptom_lines()))
    return FINE


def listed(options: argparse.Namespace, profile: Profile) -> int:
    """List what is kept with a person."""
    if options.json:
        print_json(telling.kept_json(profile))
    else:
        say("\n".join(telling.kept_lines(profile, Unit(options.unit), date.today())))
    return FINE


def removed(options: argparse.Namespace) -> int:
    """Take one off; an earlier state of a person is brought back by “profiles restore”."""
    profile = people.store.load(options.person)
    number = options.remove.strip()
    if not number.isdecimal():
        raise OptionError(f"--remove takes a number that --list counts, not “{number}”.")
    changed, gone = without(profile, int(number[:9]))
    _save(changed, profile)
    row = telling.adjustment_json(gone)
    says = f"Taken off {profile.name}: {row['says']}. Later drafts are as they were before it."
    say_done(options, {"removed": row}, says)
    return FINE


def proposed(options: argparse.Namespace, profile: Profile) -> int:
    """Try a change for what was seen, tell it, and keep it if that is wanted."""
    there = sys.stdin.isatty() and not options.json
    style, day = asked(options.set), _day(options.date)
    found = _seen(options, profile, style, there=there)
    unit, machines = Unit(options.unit), machines_named(usual_machines())
    amount = None
    if options.amount is not None and found.remedy is not None:
        amount = read_amount(found.remedy, options.amount, unit)
    trial = tried(profile, found, amount, style, day=day, unit=unit, machines=machines)
    if not (options.json or options.quiet):
        say("\n".join(telling.proposal_lines(found, trial, unit)))
    if there and options.amount is None and not options.keep:
        trial = _amount(options, profile, found, trial)
    if options.out:
        written = write_pictures(Path(options.out), found, trial, replace=options.replace)
        if not (options.json or options.quiet):
            say(f"Wrote {', '.join(name for name, _ in written)} in {options.out}.")
    return _ended(options, profile, found, trial, there=there)


def _amount(options: argparse.Namespace, profile: Profile, found: Seen, trial: Trial) -> Trial:
    """The amount somebody at a terminal wants, tried too if it is another one."""
    unit, remedy = Unit(options.unit), found.remedy
    assert remedy is not None
    usual = Reader(unit).spell(remedy.change.amount_told(trial.adjustment.amount))
    amount = typed("How much?", usual, lambda text: read_amount(remedy, text, unit), unit)
    if amount is None:
        return trial
    day, machines = _day(options.date), machines_named(usual_machines())
    again = tried(profile, found, amount, asked(options.set), day=day, unit=unit, machines=machines)
    say("\n".join(telling.moved_lines(again, unit)))
    return again


def _ended(
    options: argparse.Namespace, profile: Profile, found: Seen, trial: Trial, *, there: bool
) -> int:
    """Keep it if that is wanted, and say how to go on."""
    keep, name = options.keep, profile.name
    if not keep and there:
        keep = agreed("Keeping it", f"Keep this with {name} for later drafts?")
        if not keep:
            say("Nothing is kept.")
            return STOPPED
    if keep:
        profile = people.store.load(options.person)
        _save(kept(profile, trial.adjustment), profile)
    if options.json:
        print_json(telling.proposal_json(found, trial, kept=keep))
    elif not options.quiet:
        say("\n".join(_next(profile, trial, keep=keep)))
    return LOOK if trial.failing else FINE


def _next(profile: Profile, trial: Trial, *, keep: bool) -> list[str]:
    after, name = trial.after, profile.name
    tube = tube_told(after)
    more = [after.reader.spell(tube)] if tube else []
    if not keep:
        return ["Tried only: --keep keeps it for later drafts.", *more]
    return [
        f"Kept with {name}. Change one thing at a time: baste it, try on again, then the next.",
        caution(profile),
        *more,
    ]


def _save(changed: Profile, before: Profile) -> None:
    on_file = people.store.on_file(before)
    if people.store.keep(changed, before if on_file else None).clashes:
        raise FilesError("Another window changed the same meanwhile; do it once more.")


def _seen(
    options: argparse.Namespace, profile: Profile, style: Mapping[str, str], *, there: bool
) -> Seen:
    """What was tried on and seen, asked for where somebody is at a terminal."""
    if options.garment is None:
        rows = [(str(row["name"]), str(row["says"])) for row in garment_list()]
        options.garment = chosen("What was tried on?", rows) if there else None
    if options.garment is None:
        raise OptionError("Name what was tried on: --garment jersey-top, for one.")
    if options.symptom is None:
        rows = [(one.key, one.says) for one in SYMPTOMS.values()]
        options.symptom = chosen("What is seen, from the top?", rows) if there else None
    if options.symptom is None:
        raise OptionError("Say what is seen: --symptom NAME; “tapewise fitting --symptoms” lists.")
    what = SYMPTOMS.get(options.symptom)
    if there and what and what.question and options.answer is None:
        answers = [(one.key, one.says) for one in what.answers]
        options.answer = chosen(what.question, answers)
    return seen(profile, options.garment, options.symptom, options.answer or "", style)


def _day(text: str | None) -> date:
    if text is None:
        return date.today()
    try:
        day = date.fromisoformat(text.strip())
    except ValueError:
        day = date.min
    if not 1900 <= day.year < 2100:
        raise OptionError(f"--date is a day such as 2026-03-03, not “{text}”.")
    if day > date.today():
        raise OptionError(f"--date is the day of the fitting; {text.strip()} is still to come.")
    return day
