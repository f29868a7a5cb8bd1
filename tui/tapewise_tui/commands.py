"""What each command does: ask the core's tasks, then print for a person or a machine."""

from __future__ import annotations

import argparse
import json
import shlex
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from tapewise_core.errors import OptionError
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import people
from tapewise_core.units import Unit
from tapewise_tui import telling
from tapewise_tui.exits import FINE, LOOK

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
    }
    return acts[options.command](options)


def _person(options: argparse.Namespace) -> Profile:
    """Return whoever is named; from then on everything, errors too, is told in her unit."""
    profile = people.person(options.person)
    options.unit = options.unit or profile.unit.value
    return profile


def demo(options: argparse.Namespace) -> int:
    """Draft the jersey top for the example person into ./tapewise-demo."""
    made = {"person": people.DEMO, "garment": "jersey-top", "out": "tapewise-demo", "set": []}
    usual: dict[str, object] = {"unit": None, "machines": "overlocker,coverstitch", "format": []}
    usual |= {"replace": False, "unfolded": False, "no_allowances": False, "piece": []}
    usual |= {"no_pages": False}
    paper = dict.fromkeys(("overlap", "roll_width", "page_margin", "page"))
    return draft(argparse.Namespace(**made, **usual, **paper, json=options.json))


def draft(options: argparse.Namespace) -> int:
    """Draft, prove, write and tell."""
    from tapewise_core.tasks.asked_paper import Paper, Shown
    from tapewise_core.tasks.drafting import draft as drafted_for
    from tapewise_core.tasks.drafting import machines_named
    from tapewise_core.tasks.files import save
    from tapewise_core.tasks.paper_asked import refuse_idle, with_pages

    profile = _person(options)
    drafted = drafted_for(
        profile,
        options.garment,
        _asked(options.set),
        unit=_unit(options),
        machines=machines_named(options.machines),
    )
    findings = people.check(profile, drafted.unit).about(drafted.used)
    shown = Shown(options.unfolded, not options.no_allowances, tuple(options.piece))
    paper = Paper(
        options.overlap, options.roll_width, options.page_margin, options.page, shown=shown
    )
    formats = with_pages(options.format, paper, drafted.unit, pages=not options.no_pages)
    refuse_idle(formats, paper)
    written = save(drafted, Path(options.out), formats, paper, replace=options.replace)
    if options.json:
        _print_json(telling.draft_json(drafted, findings, options.out, written))
    else:
        print("\n".join(telling.draft_lines(drafted, findings, options.out, written)))
    loud = any(finding.severity.value == "warning" for finding in findings)
    return LOOK if drafted.failing or loud or written.failed else FINE


def _asked(settings: list[str]) -> dict[str, str]:
    """Turn OPTION=VALUE into a mapping; raises OptionError for anything else."""
    asked: dict[str, str] = {}
    for setting in settings:
        key, equals, value = setting.partition("=")
        if not equals or not key.strip() or not value.strip():
            raise OptionError(
                f"--set takes OPTION=VALUE, such as sleeve-length=25, not “{setting}”."
            )
        if key.strip() in asked:
            raise OptionError(f"--set names {key.strip()} twice; name it once.")
        asked[key.strip()] = value.strip()
    return asked


def _unit(options: argparse.Namespace) -> Unit:
    return Unit(options.unit) if options.unit else Unit.CM


def check(options: argparse.Namespace) -> int:
    """List what is missing, estimated and unlikely."""
    from tapewise_core.tasks.check_record import CHECK, Checked
    from tapewise_core.text.told import Reader

    profile, unit = _person(options), _unit(options)
    found = people.check(profile, unit)
    gain = _gain(profile, options.garment, unit)
    if options.json:
        _print_json(CHECK.of(Checked(found, Reader(unit), gain)))
    else:
        print("\n".join(telling.check_lines(profile.name, found, unit)))
        if gain:
            print("\n".join(telling.gain_lines(gain)))
    return LOOK if found.unlikely else FINE


def _gain(profile: Profile, garment: str | None, unit: Unit) -> Gain | None:
    """What one garment would gain from measuring, and what it makes no use of."""
    if garment is None:
        return None
    from tapewise_core.tasks.check_record import Gain
    from tapewise_core.tasks.guesses import next_measure, unused

    return Gain(next_measure(profile, garment, unit), unused(garment))


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
        _print_json(shop.garment_sheet(options.name))
        return FINE
    else:
        print("\n".join(shop.garment_lines(options.name, _unit(options))))
        return FINE
    if options.json:
        _print_json(rows)
    else:
        print("\n".join(f"{row['name']}: {row['says']}" for row in rows))
    return FINE


def _sources(options: argparse.Namespace) -> int:
    """List the publications one garment rests on."""
    from tapewise_core.tasks import shop

    if options.name is None:
        raise OptionError("--sources needs a garment: tapewise garments jersey-top --sources.")
    if options.json:
        _print_json(shop.garment_sources(options.name))
    else:
        print("\n".join(shop.source_lines(options.name)))
    return FINE


def profiles(options: argparse.Namespace) -> int:
    """Do one act with the people on file."""
    act = options.act or "list"
    if act == "list":
        entries = people.store.listing()
        if options.json:
            _print_json([telling.entry_json(entry) for entry in entries])
        else:
            print("\n".join(telling.entry_lines(entries)))
        return FINE
    if act == "show":
        profile = _person(options)
        if options.json:
            print(profile.text(), end="")
        else:
            print("\n".join(telling.profile_lines(profile, _unit(options))))
        return FINE
    return _keep(act, options)


def _keep(act: str, options: argparse.Namespace) -> int:
    """Copy in, copy out or delete, and say what was done."""
    if act == "copy-in":
        name = people.store.copy_in(Path(options.file), replace=options.replace).name
        done = {"saved": name}
        says = f"Saved {name}."
    elif act == "copy-out":
        path = people.store.copy_out(options.person, Path(options.to), replace=options.replace)
        done = {"written": str(path)}
        says = f"Wrote {path}."
    else:
        path = people.store.delete(options.person)
        done = {"deleted": str(path)}
        says = f"Deleted {options.person}."
    if options.json:
        _print_json(done)
    else:
        print(says)
    return FINE


def measure(options: argparse.Namespace) -> int:
    """Print the measuring sheet, or write it to a file."""
    from tapewise_core.tasks.sheet import measuring_sheet
    from tapewise_core.tasks.sheet_files import sheet_text, write_sheet

    sheet = measuring_sheet(options.garment, _unit(options))
    if options.out is not None:
        write_sheet(sheet, Path(options.out), replace=options.replace)
        print(f"Wrote {options.out}.")
    else:
        print(sheet_text(sheet), end="")
    return FINE


def schema(options: argparse.Namespace) -> int:
    """Print the JSON schema of what a machine reads or writes."""
    from tapewise_core.tasks.schemas import schema as schema_of

    _print_json(schema_of(options.name))
    return FINE


def serve(options: argparse.Namespace) -> int:
    """Show the app in a browser on this machine only, until it is stopped."""
    if not 1 <= options.port <= 65535:
        raise OptionError(f"--port is a number from 1 to 65535, not {options.port}.")
    try:
        from textual_serve.server import Server
    except ModuleNotFoundError:
        raise OptionError(
            "Serving needs one more package: .venv/bin/pip install '.[serve]' brings it."
        ) from None
    command = shlex.join([sys.executable, "-m", "tapewise_tui"])
    Server(command, host="127.0.0.1", port=options.port, title="Tapewise").serve()
    return FINE


def _print_json(value: object) -> None:
    print(json.dumps(value, ensure_ascii=False, indent=1, allow_nan=False))
