"""What ``tapewise loved`` does: garments that fit, by what they measure flat."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator

from tapewise_core.errors import FilesError, OptionError, ReadingError
from tapewise_core.profiles.fitted import Loved
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import people
from tapewise_core.tasks.loved.flat import BY_KEY, FLAT
from tapewise_core.tasks.loved.keeping import loved_of, with_loved, without_loved
from tapewise_core.tasks.loved.noticing import odd
from tapewise_core.text.legible import legible
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit
from tapewise_tui.exits import FINE, LOOK
from tapewise_tui.printing import complain, print_json, say, say_done


def loved(options: argparse.Namespace) -> int:
    """List, show, keep or take off a person's garments that fit."""
    if options.measures:
        return _measures(options)
    _refuse_half(options)
    profile = people.store.load(options.person)
    options.unit = options.unit or profile.unit.value
    if options.name is None:
        return _told(options, profile, profile.loved)
    if options.remove:
        return _removed(options, profile)
    settings = options.setting or _asked(options, profile)
    if settings:
        profile = _kept(with_loved(profile, options.name, settings, Unit(options.unit)), profile)
    return _told(options, profile, (loved_of(profile, options.name),))


def _measures(options: argparse.Namespace) -> int:
    """List what is measured on a garment, and how."""
    if options.json:
        print_json([{"key": row.key, "name": row.name, "says": row.says} for row in FLAT])
    else:
        say("\n".join(f"  {row.key}: {row.name}, {row.says}" for row in FLAT))
    return FINE


def _refuse_half(options: argparse.Namespace) -> None:
    """Raise OptionError for a command that leaves out whose garment is meant, or which."""
    if options.person is None:
        raise OptionError("Say whose garment it is: tapewise loved PERSON GARMENT bust=46 …")
    nameless = options.name is not None and "=" in options.name
    if nameless or (options.remove and options.name is None):
        rest = "--remove" if options.remove else options.name
        how = f"tapewise loved {options.person!r} GARMENT {rest}".replace("'", '"')
        raise OptionError(f"Say what the garment is called: {how}")


def _removed(options: argparse.Namespace, profile: Profile) -> int:
    """Take a garment off; a change is undone by “tapewise profiles restore”."""
    if options.setting:
        raise OptionError("--remove takes the whole garment off; leave out what it measures.")
    gone = loved_of(profile, options.name).name
    _kept(without_loved(profile, gone), profile)
    says = f"Took off {gone}; “tapewise profiles history” has what was before."
    say_done(options, {"removed": gone}, says)
    return FINE


def _kept(changed: Profile, before: Profile) -> Profile:
    on_file = people.store.on_file(before)
    kept = people.store.keep(changed, before if on_file else None)
    if kept.clashes:
        raise FilesError("Another window changed the same meanwhile; set it once more.")
    return kept.profile


def _asked(options: argparse.Namespace, profile: Profile) -> list[str]:
    """What somebody at a terminal says of a garment that is not known yet, asked in order."""
    known = any(one.name.casefold() == options.name.strip().casefold() for one in profile.loved)
    if known or options.json or not sys.stdin.isatty():
        return []
    say("Lay it flat, closed, without stretching. Enter alone leaves a measure out.")
    rows = ((row.key, f"{row.name} ({row.says})") for row in FLAT)
    asked = (*rows, ("stretch", "how far its cloth stretches across, in %"))
    return [found for key, question in asked for found in _answer(options, profile, key, question)]


def _answer(
    options: argparse.Namespace, profile: Profile, key: str, question: str
) -> Iterator[str]:
    """One answer, asked again until it can be read."""
    mark = "%" if key == "stretch" else options.unit
    while True:
        try:
            text = input(legible(f"{question} [{mark}]: ")).strip()
        except EOFError:
            return
        if not text:
            return
        try:
            trial = [f"{key}={text}", *(["bust=1"] if key == "stretch" else [])]
            with_loved(profile, options.name, trial, Unit(options.unit))
        except (ReadingError, OptionError) as error:
            complain(Reader(Unit(options.unit)).spell(error.told))
            continue
        yield f"{key}={text}"
        return


def _told(options: argparse.Namespace, profile: Profile, rows: tuple[Loved, ...]) -> int:
    """Tell some garments; one that cannot be right deserves a look."""
    body, reader = people.body_of(profile)[0], Reader(Unit(options.unit))
    doubts = {one.name: odd(one, body) for one in rows}
    if options.json:
        print_json([_json(one, profile, reader) for one in rows])
    elif not rows:
        say(f"{profile.name} has no garment that fits on file yet.")
    else:
        lines = [line for one in rows for line in _lines(one, reader)]
        says = (f"Unlikely: {reader.spell(one.says)}" for all_ in doubts.values() for one in all_)
        say("\n".join((*lines, *says)))
    return LOOK if any(doubts.values()) else FINE


def _lines(one: Loved, reader: Reader) -> Iterator[str]:
    known = one.stretch is not None
    stretch = f"stretches by {one.stretch:g} %" if known else "its cloth's stretch not known"
    yield f"{one.name}, {stretch}"
    for key, cm in one.flat.items():
        name = BY_KEY[key].name if key in BY_KEY else key
        yield f"  {name}: {reader.unit.spell(cm * 10)}"


def _json(one: Loved, profile: Profile, reader: Reader) -> dict[str, object]:
    """One garment in cm, with what is unlikely about it."""
    return {
        "name": one.name,
        "stretch": one.stretch,
        "flat": dict(one.flat),
        "findings": [
            {"measure": found.key, "proposed": found.proposed, "says": reader.spell(found.says)}
            for found in odd(one, people.body_of(profile)[0])
        ],
    }
