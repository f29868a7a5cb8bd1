"""What each command does: ask the core's tasks, then print for a person or a machine."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from tapewise_core.errors import OptionError
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import people
from tapewise_core.units import Unit
from tapewise_tui import commands_about, telling
from tapewise_tui.commands_batch import batch
from tapewise_tui.commands_people import profiles
from tapewise_tui.commands_projects import noted, projects, settings, taken_up
from tapewise_tui.exits import FINE, LOOK
from tapewise_tui.printing import print_json, say
from tapewise_tui.settings_asked import asked, usual_machines, usual_unit

if TYPE_CHECKING:
    from tapewise_core.tasks.check_record import Gain


def run(options: argparse.Namespace) -> int:
    """Run the command that was parsed; returns the exit code."""
    acts = {
        "demo": demo,
        "draft": draft,
        "check": check,
        "garments": garments,
        "profiles": profiles,
        "measure": measure,
        "schema": schema,
        "serve": serve,
        "batch": batch,
        "projects": projects,
        "settings": settings,
    }
    about: dict[str, Callable[[], int]] = {
        "doctor": lambda: commands_about.doctor(options),
        "help": lambda: commands_about.help_on(options, options.top),
        "completion": lambda: commands_about.completion(options, options.top),
        "man": lambda: commands_about.man(options.top),
    }
    if options.command in about:
        return about[options.command]()
    return acts[options.command](options)


def _person(options: argparse.Namespace) -> Profile:
    """Return whoever is named; from then on everything, errors too, is told in her unit."""
    profile = people.person(options.person)
    options.unit = options.unit or profile.unit.value
    return profile


def demo(options: argparse.Namespace) -> int:
    """Draft the jersey top for the example person into ./tapewise-demo."""
    made = {"person": people.DEMO, "garment": "jersey-top", "out": "tapewise-demo", "set": []}
    usual: dict[str, object] = {"unit": None, "machines": None, "format": [], "project": None}
    usual |= {"replace": False, "unfolded": False, "no_allowances": False, "piece": []}
    usual |= {"hand": False, "no_pages": False, "json": options.json, "quiet": options.quiet}
    paper = dict.fromkeys(("overlap", "roll_width", "page_margin", "page"))
    return draft(argparse.Namespace(**made, **usual, **paper))


def draft(options: argparse.Namespace) -> int:
    """Draft, prove, write and tell."""
    from tapewise_core.tasks.asked_paper import Paper, Shown
    from tapewise_core.tasks.drafting import draft as drafted_for
    from tapewise_core.tasks.drafting import machines_named
    from tapewise_core.tasks.files import hand_sheet, save
    from tapewise_core.tasks.judging import judged
    from tapewise_core.tasks.paper_asked import refuse_idle, with_pages

    project = taken_up(options, asked(options.set)) if options.project else None
    if None in (options.person, options.garment) or not (options.out or options.hand):
        raise OptionError("A draft needs PERSON, GARMENT and --out DIR, or a --project NAME.")
    if options.hand and options.json:
        raise OptionError("--hand prints a sheet to write in, and --json a record; leave one out.")
    profile = _person(options)
    drafted = judged(
        drafted_for(
            profile,
            options.garment,
            asked(options.set),
            unit=_unit(options),
            machines=machines_named(options.machines or usual_machines()),
        )
    )
    if options.hand:
        say(hand_sheet(drafted))
    if not options.out:
        return FINE
    findings = people.check(profile, drafted.unit).about(drafted.used)
    shown = Shown(options.unfolded, not options.no_allowances, tuple(options.piece))
    paper = Paper(
        options.overlap, options.roll_width, options.page_margin, options.page, shown=shown
    )
    formats = with_pages(options.format, paper, drafted.unit, pages=not options.no_pages)
    refuse_idle(formats, paper)
    written = save(drafted, Path(options.out), formats, paper, replace=options.replace)
    if project is not None:
        noted(project, drafted.unit)
    if options.json:
        print_json(telling.draft_json(drafted, findings, options.out, written))
    elif not (options.quiet or options.hand):
        say("\n".join(telling.draft_lines(drafted, findings, options.out, written)))
    loud = any(finding.severity.value == "warning" for finding in findings)
    unproved = drafted.failing or drafted.uncertain
    return LOOK if unproved or loud or written.failed else FINE


def _unit(options: argparse.Namespace) -> Unit:
    """The unit asked for, else the person's, else the one set for the user."""
    return Unit(options.unit or usual_unit())


def check(options: argparse.Namespace) -> int:
    """List what is missing, estimated and unlikely."""
    from tapewise_core.tasks.check_record import CHECK, Checked
    from tapewise_core.text.told import Reader

    profile, unit = _person(options), _unit(options)
    found = people.check(profile, unit)
    gain = _gain(profile, options.garment, unit)
    if options.json:
        print_json(CHECK.of(Checked(found, Reader(unit), gain)))
    elif not options.quiet:
        say("\n".join(telling.check_lines(profile.name, found, unit)))
        if gain:
            say("\n".join(telling.gain_lines(gain)))
    return LOOK if found.unlikely else FINE


def _gain(profile: Profile, garment: str | None, unit: Unit) -> Gain | None:
    """What one garment would gain from measuring, and what the measures suggest for it."""
    if garment is None:
        return None
    from tapewise_core.tasks.check_record import Gain
    from tapewise_core.tasks.guesses import next_measure, unused
    from tapewise_core.tasks.posture import posture_of

    told = posture_of(profile, garment, unit)
    return Gain(next_measure(profile, garment, unit), unused(garment), told)


def garments(options: argparse.Namespace) -> int:
    """List garments, or one with its options."""
    from tapewise_core.tasks import shop

    if options.sources:
        return _sources(options)
    if options.formats:
        rows = shop.format_list()
    elif options.name is None:
        rows = shop.garment_list()
    elif options.json:
        print_json(shop.garment_sheet(options.name))
        return FINE
    else:
        say("\n".join(shop.garment_lines(options.name, _unit(options))))
        return FINE
    if options.json:
        print_json(rows)
    else:
        say("\n".join(f"{row['name']}: {row['says']}" for row in rows))
    return FINE


def _sources(options: argparse.Namespace) -> int:
    """List the publications one garment rests on."""
    from tapewise_core.tasks import shop

    if options.name is None:
        raise OptionError("--sources needs a garment: tapewise garments jersey-top --sources.")
    if options.json:
        print_json(shop.garment_sources(options.name))
    else:
        say("\n".join(shop.source_lines(options.name)))
    return FINE


def measure(options: argparse.Namespace) -> int:
    """Print the measuring sheet, or write it to a file."""
    from tapewise_core.tasks.sheet import measuring_sheet
    from tapewise_core.tasks.sheet_files import sheet_text, write_sheet

    sheet = measuring_sheet(options.garment, _unit(options))
    if options.out is not None:
        write_sheet(sheet, Path(options.out), replace=options.replace)
        say(f"Wrote {options.out}.")
    else:
        say(sheet_text(sheet))
    return FINE


def schema(options: argparse.Namespace) -> int:
    """Print the JSON schema of what a machine reads or writes."""
    from tapewise_core.tasks.schemas import schema as schema_of

    print_json(schema_of(options.name))
    return FINE


def serve(options: argparse.Namespace) -> int:
    """Show the app in a browser on this machine only, until it is stopped."""
    if not 1 <= options.port <= 65535:
        raise OptionError(f"--port is a number from 1 to 65535, not {options.port}.")
    try:
        from tapewise_tui import serving
    except ModuleNotFoundError:
        raise OptionError(
            "Serving needs one more package: .venv/bin/pip install '.[serve]' brings it."
        ) from None
    try:
        serving.serve(options.port)
    except OSError as error:
        reason = (error.strerror or "the system gives no reason").lower()
        raise OptionError(f"Port {options.port} cannot be used: {reason}.") from None
    return FINE
