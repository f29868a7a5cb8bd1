"""What is set once for the user: unit, paper, machines and look, in ``settings.json``.

Where the file cannot be used, what was set before is in force, and that is said; the file is set
aside once something is set again.
"""

from __future__ import annotations

import json
import os
from pathlib import Path

from msgspec.structs import asdict, replace

from tapewise_core.errors import FilesError, OptionError
from tapewise_core.frozen import Frozen
from tapewise_core.profiles.files import aside_of, keep_beside, put, reason, why
from tapewise_core.profiles.folders import alone, data_folder
from tapewise_core.sewing.machines import Machine, read_machines
from tapewise_core.tasks.json_object import read_object
from tapewise_core.text.legible import legible
from tapewise_core.text.near import near_words
from tapewise_core.units import Unit

FORMAT, VERSION = "tapewise settings", 1
PAPERS = ("a4", "letter", "a4-letter", "a3", "a0", "roll")
LOOKS = ("chalk", "paper")
KEYS = ("unit", "paper", "machines", "look")

_NAME, _BEFORE = "settings.json", "settings.json.before"


class Settings(Frozen):
    """What is set, as text; empty where nothing is."""

    unit: str = ""
    paper: str = ""
    machines: str = ""
    look: str = ""


class Found(Frozen):
    """The settings in force, and a sentence on what is wrong with their file, if anything."""

    settings: Settings
    fault: str = ""


def settings() -> Settings:
    """Return what is set; what was set before where the file cannot be used, else nothing."""
    return found().settings


def found() -> Found:
    """Return the settings in force and what is wrong with their file."""
    try:
        data = data_folder()
    except FilesError:  # whoever needs the folder says so
        return Found(Settings())
    try:
        return _read(data / _NAME)
    except FileNotFoundError:
        return Found(Settings())
    except (OSError, ValueError) as fault:
        wrong = f"{data / _NAME} cannot be used ({legible(why(fault))})"
    try:
        good = _read(data / _BEFORE).settings
    except (OSError, ValueError):
        return Found(Settings(), f"{wrong}; nothing is set. Setting anything begins it anew.")
    told = ", ".join(f"{key}={value}" for key, value in asdict(good).items() if value)
    says = f"{wrong}; what was set before counts: {told or 'nothing'}. "
    return Found(good, f"{says}“tapewise settings --restore” takes it up again.")


def _read(place: Path) -> Found:
    """Return the settings a file holds, and what in it is none; raises OSError or ValueError."""
    now, told = Settings(), list[str]()
    for key, value in read_object(place).items():
        if key in ("format", "version"):
            continue
        try:
            now = changed(now, key, value) if isinstance(value, str) else _refused(key)
        except OptionError as error:
            told.append(str(error))
    says = f"{place} sets what there is not, which is left out: {legible(' '.join(told))}"
    return Found(now, says if told else "")


def _refused(key: str) -> Settings:
    raise OptionError(f"“{key[:24]}” must be text.")


def changed(before: Settings, key: str, text: str) -> Settings:
    """Return settings with one set, or open again if the text is empty.

    Raises OptionError for what there is not.
    """
    if key not in KEYS:
        raise OptionError(f"There is no setting “{key[:40]}”; {near_words(key, KEYS)}")
    value = " ".join(text.split()).lower()
    if key == "machines" and value:
        value = ", ".join(one for one in Machine if one in read_machines(value))
    choices = {"unit": tuple(Unit), "paper": PAPERS, "look": LOOKS}.get(key)
    if choices is not None and value and value not in choices:
        raise OptionError(f"{key} is one of {', '.join(choices)}, not “{text}”.")
    return replace(before, **{key: value})


def keep(new: Settings) -> None:
    """Keep settings, and those of before beside them; raises FilesError with a sentence."""
    text = json.dumps({"format": FORMAT, "version": VERSION, **asdict(new)}, indent=1) + "\n"
    with alone() as data:
        place = data / _NAME
        try:
            _make_room(place)
            put(place, text.encode())
        except OSError as fault:
            raise FilesError(f"The settings cannot be kept: {reason(fault)}.") from fault


def _make_room(place: Path) -> None:
    """Keep what stands in the place: as what was set before, or set aside if it is spoilt."""
    if not os.path.lexists(place):
        return
    try:
        _read(place)
    except (OSError, ValueError):
        os.replace(place, aside_of(place))
    else:
        keep_beside(place, place.with_name(_BEFORE))


def restore() -> Settings:
    """Set again what was set before; raises FilesError if nothing is known of it."""
    try:
        good = _read(data_folder() / _BEFORE).settings
    except (OSError, ValueError):
        raise FilesError("No settings of before are kept that could be taken up.") from None
    keep(good)
    return good
