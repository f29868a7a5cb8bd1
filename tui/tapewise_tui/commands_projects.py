"""What ``tapewise projects`` and ``tapewise settings`` do, and a draft of a project."""

from __future__ import annotations

import argparse
import json
from collections.abc import Callable, Mapping
from datetime import datetime
from pathlib import Path

from msgspec.structs import asdict, replace

from tapewise_core.errors import OptionError
from tapewise_core.tasks import projects as tasks
from tapewise_core.tasks import settings as kept
from tapewise_core.tasks import work
from tapewise_core.tasks.basis import plain_key
from tapewise_core.tasks.work import Work
from tapewise_core.units import Unit
from tapewise_tui import telling_states
from tapewise_tui.exits import FINE, STOPPED
from tapewise_tui.printing import complain, print_json, say, say_done
from tapewise_tui.settings_asked import agreed

Act = Callable[[argparse.Namespace], int]


def projects(options: argparse.Namespace) -> int:
    """Do one act with projects."""
    acts: Mapping[str, Act] = {
        "list": _list,
        "show": _show,
        "copy": _copy,
        "delete": _delete,
        "restore": _restore,
    }
    return acts[options.act or "list"](options)


def _list(options: argparse.Namespace) -> int:
    from tapewise_core.tasks import damaged

    person = getattr(options, "person", None)
    found, spoilt = work.projects(person), damaged.projects(person)
    if options.json:
        rows = ({"name": one.title, "person": one.person, "fault": one.says} for one in spoilt)
        print_json([*(_json(one) for one in found), *rows])
        return FINE
    if found or not spoilt:
        say("\n".join(_line(one) for one in found) or "There are no projects yet.")
    for one in spoilt:
        complain(one.says)
    return FINE


def _line(one: Work) -> str:
    drafts = f", {_many(len(one.drafts), 'draft')} written" if one.drafts else ""
    options = _many(len(one.asked), "option")
    return f"{one.title} for {one.person}: {one.garment}, {options} set{drafts}"


def _many(number: int, what: str) -> str:
    return f"{number} {what}" if number == 1 else f"{number} {what}s"


def _json(one: Work) -> dict[str, object]:
    cloth = {key: one.asked[option] for key, option in _CLOTH.items() if option in one.asked}
    return {
        "name": one.title,
        "person": one.person,
        "garment": one.garment,
        "options": dict(one.asked),
        "cloth": {"name": one.cloth, **cloth},
        "machines": list(one.machines),
        "formats": list(one.formats),
        "folder": one.folder,
        "ticked": list(map(plain_key, one.ticked)),
        "notes": one.notes,
        "when": one.when,
        "drafts": [dict(row) for row in one.drafts],
    }


_CLOTH = {
    "width": "cloth-width", "weight": "cloth-weight", "stretch": "stretch",
    "shrinkage": "shrinkage",
}  # fmt: skip
"""What a cloth is, and the option that says it."""


def _show(options: argparse.Namespace) -> int:
    one = tasks.found(options.name, options.person)
    if options.json:
        print_json(_json(one))
        return FINE
    lines = [f"{one.title} for {one.person}: {one.garment}"]
    lines += [f"  {key}: {text}" for key, text in one.asked.items()]
    told = {"cloth": one.cloth, "folder": one.folder, "notes": one.notes}
    lines += [f"  {what}: {text}" for what, text in told.items() if text]
    lines += [f"  ticked: {', '.join(map(plain_key, one.ticked))}"] if one.ticked else []
    lines += [f"  {_draft_line(row)}" for row in one.drafts]
    say("\n".join(lines))
    return FINE


def _draft_line(row: Mapping[str, str]) -> str:
    mark = f", {row['fingerprint']}" if row.get("fingerprint") else ""
    return f"drafted {row.get('when', '')} into {row.get('folder', '')}{mark}"


def _copy(options: argparse.Namespace) -> int:
    made = tasks.copied(options.name, options.to, options.person)
    say_done(options, {"saved": made.title}, f"Saved {made.title} for {made.person}.")
    return FINE


def _delete(options: argparse.Namespace) -> int:
    one = tasks.found(options.name, options.person)
    what = f"{one.title} for {one.person}"
    if not (options.yes or agreed(f"Deleting {what}", f"Delete {what}?")):
        say(f"{one.title} stays.")
        return STOPPED
    work.delete(one)
    says = f"Deleted {what}; “tapewise projects restore” undoes it today."
    say_done(options, {"deleted": one.title}, says)
    return FINE


def _restore(options: argparse.Namespace) -> int:
    if options.name is None:
        rows = work.gone()
        nothing = "No project was deleted within a day."
        if options.json:
            print_json(telling_states.gone_json(rows))
        else:
            say("\n".join(telling_states.gone_lines(rows)) or nothing)
        return FINE
    says = tasks.restored(options.name, options.person)
    say_done(options, {"restored": options.name}, says)
    return FINE


def taken_up(options: argparse.Namespace, asked: Mapping[str, str]) -> Work:
    """Fill in what a project knows and was not said anew; with a garment it is a new project."""
    if options.garment is not None:
        one = tasks.begun(options.project, options.person, options.garment)
        for spoilt in tasks.spoilt(one.title, one.person):
            complain(spoilt.begun_anew)
    else:
        one = tasks.found(options.project, options.person)
    one = replace(one, asked={**one.asked, **asked}, folder=options.out or one.folder)
    if options.machines is not None:
        one = replace(one, machines=tuple(options.machines.split(",")))
    one = replace(one, formats=tuple(dict.fromkeys((*one.formats, *options.format))))
    if not one.folder:
        raise OptionError(f"{one.title} has no folder yet; name one by --out DIR.")
    options.person, options.garment, options.out = one.person, one.garment, one.folder
    options.set = [f"{key}={text}" for key, text in one.asked.items()]
    options.machines, options.format = ",".join(one.machines), list(one.formats)
    options.overlap = options.overlap or one.paper.overlap
    options.roll_width = options.roll_width or one.paper.roll_width
    options.page_margin = options.page_margin or one.paper.margin
    return one


def noted(one: Work, unit: Unit) -> None:
    """Keep a project with the draft that was written just now.

    What was typed is kept with its unit, so that whoever draws it again reads the same.
    """
    from tapewise_core.tasks.wizard import plainly

    asked = {key: plainly(one.garment, key, text, unit) for key, text in one.asked.items()}
    when = datetime.now().isoformat(timespec="seconds")
    record = json.loads((Path(one.folder) / "draft.json").read_text("utf-8"))
    mark = str(record.get("fingerprint") or "")
    kept = work.with_draft(one, Path(one.folder), mark, when)
    work.save(replace(kept, asked=asked, when=when))


def settings(options: argparse.Namespace) -> int:
    """Show what is set, set it, or take up what was set before."""
    if options.restore:
        kept.restore()
    found = kept.found()
    now, fault = found.settings, found.fault
    for setting in options.setting:
        key, equals, value = setting.partition("=")
        if not equals:
            raise OptionError(f"“{setting}” is not SETTING=VALUE, such as unit=in.")
        now = kept.changed(now, key.strip(), value)
    if options.setting:
        kept.keep(now)
    if fault:
        complain(fault)
    if options.json:
        print_json({key: value or None for key, value in asdict(now).items()})
    else:
        say("\n".join(f"{key}: {value or 'not set'}" for key, value in asdict(now).items()))
    return FINE
