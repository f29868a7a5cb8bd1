"""What ``demo``, ``draft`` and ``check`` do."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from msgspec.structs import replace

from tapewise_core.errors import OptionError
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import people
from tapewise_core.units import Unit
from tapewise_tui import telling
from tapewise_tui.closer import checked, laid
from tapewise_tui.exits import FINE, LOOK
from tapewise_tui.printing import complain, print_json, say
from tapewise_tui.settings_asked import asked, unit_of, usual_machines, with_length

if TYPE_CHECKING:
    from tapewise_core.measures.finding import Finding
    from tapewise_core.tasks.check_record import Gain
    from tapewise_core.tasks.drafted import Drafted
    from tapewise_core.tasks.work import Work


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
    usual |= {"cloth_length": None, "closer_lay": None}
    usual |= {
        "like": None,
        "hand": False,
        "no_pages": False,
        "json": options.json,
        "quiet": options.quiet,
    }
    paper = dict.fromkeys(("overlap", "roll_width", "page_margin", "page"))
    return draft(argparse.Namespace(**made, **usual, **paper))


def draft(options: argparse.Namespace) -> int:
    """Draft, prove, write and tell."""
    project = _asked_for(options)
    profile = _person(options)

    from tapewise_core.tasks.asked_paper import Paper, Shown  # a slip until here is told sooner
    from tapewise_core.tasks.contents import hand_sheet
    from tapewise_core.tasks.files import save
    from tapewise_core.tasks.judging import judged
    from tapewise_core.tasks.paper_asked import refuse_idle, with_pages

    drafted = _drafted(options, profile)
    if options.closer_lay is not None:
        drafted = laid(drafted, options)
    drafted = judged(drafted)
    findings = people.check(profile, drafted.unit).about(drafted.used)
    if options.hand:
        say(hand_sheet(drafted))
    if options.hand or (options.quiet and not options.json):
        for line in telling.wrong_lines(drafted, findings):
            complain(line)
    if not options.out:
        return _wants_a_look(drafted, findings)
    shown = Shown(options.unfolded, not options.no_allowances, tuple(options.piece))
    drafted = drafted.on_sheets(shown)
    paper = Paper(
        options.overlap, options.roll_width, options.page_margin, options.page, shown=shown
    )
    formats = with_pages(options.format, paper, drafted.unit, pages=not options.no_pages)
    refuse_idle(formats, paper)
    written = save(drafted, Path(options.out), formats, paper, replace=options.replace)
    if project is not None:
        from tapewise_tui.commands_projects import noted

        noted(replace(project, asked=dict(drafted.asked)), drafted.unit)
    if options.json:
        print_json(telling.draft_json(drafted, findings, options.out, written))
    elif not (options.quiet or options.hand):
        say("\n".join(telling.draft_lines(drafted, findings, options.out, written)))
    return LOOK if written.failed else _wants_a_look(drafted, findings)


def _wants_a_look(drafted: Drafted, findings: Sequence[Finding]) -> int:
    loud = any(finding.severity.value == "warning" for finding in findings)
    return LOOK if drafted.failing or drafted.uncertain or loud else FINE


def _asked_for(options: argparse.Namespace) -> Work | None:
    """Look whether all is there, and return the project that is drawn, if one is named.

    Fills in what the project and ``--cloth-length`` say; raises OptionError for what is missing or
    does not go together.
    """
    if options.cloth_length is not None:
        with_length(asked(options.set), options.cloth_length)
        options.set = [*options.set, f"cloth-length={options.cloth_length}"]
    checked(options)
    project = _project(options)
    if None in (options.person, options.garment) or not (options.out or options.hand):
        raise OptionError("A draft needs PERSON, GARMENT and --out DIR, or a --project NAME.")
    if options.hand and options.json:
        raise OptionError("--hand prints a sheet to write in, and --json a record; leave one out.")
    return project


def _drafted(options: argparse.Namespace, profile: Profile) -> Drafted:
    """Draft what is asked for, like a garment that fits where one is named."""
    from tapewise_core.tasks.drafting import draft as drafted_for
    from tapewise_core.tasks.drafting import machines_named

    machines = machines_named(options.machines or usual_machines())
    settings, unit = asked(options.set), unit_of(options.unit)
    if options.like is None:
        return drafted_for(profile, options.garment, settings, unit=unit, machines=machines)
    from tapewise_core.tasks.liking.like import draft_like

    named = options.garment, options.like
    return draft_like(profile, *named, settings, unit=unit, machines=machines)


def _project(options: argparse.Namespace) -> Work | None:
    """The project that is drawn, its choices filled in; None where none is named."""
    if not options.project:
        return None
    from tapewise_tui.commands_projects import taken_up

    return taken_up(options, asked(options.set))


def check(options: argparse.Namespace) -> int:
    """List what is missing, estimated and unlikely."""
    from tapewise_core.tasks.check_record import CHECK, Checked
    from tapewise_core.text.told import Reader

    profile, unit = _person(options), unit_of(options.unit)
    found = people.check(profile, unit)
    gain = _gain(profile, options.garment, unit)
    if options.json:
        print_json(CHECK.of(Checked(found, Reader(unit), gain)))
    elif not options.quiet:
        say("\n".join(telling.check_lines(profile.name, found, unit)))
        if gain:
            say("\n".join(telling.gain_lines(gain)))
    else:
        for line in telling.unlikely_lines(found.findings, Reader(unit)):
            complain(line)
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
