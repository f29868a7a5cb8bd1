"""What is set once for the user: unit, paper, machines and look, in ``settings.json``.

A file that cannot be used is as none; what is set again replaces it.
"""

from __future__ import annotations

import json
from dataclasses import asdict, dataclass, replace

from tapewise_core.errors import FilesError, OptionError
from tapewise_core.profiles.files import put, reason
from tapewise_core.profiles.folders import alone, data_folder
from tapewise_core.sewing.machines import read_machines
from tapewise_core.text.near import near_words
from tapewise_core.units import Unit

FORMAT, VERSION = "tapewise settings", 1
PAPERS = ("a4", "letter", "a4-letter", "a3", "a0", "roll")
LOOKS = ("chalk", "paper")
KEYS = ("unit", "paper", "machines", "look")


@dataclass(frozen=True, slots=True)
class Settings:
    """What is set, as text; empty where nothing is."""

    unit: str = ""
    paper: str = ""
    machines: str = ""
    look: str = ""


def settings() -> Settings:
    """Return what is set; nothing where there is no file, or none that can be used."""
    try:
        content = json.loads((data_folder() / "settings.json").read_text("utf-8"))
        pairs = {key: content[key] for key in KEYS if isinstance(content.get(key), str)}
    except (OSError, ValueError, AttributeError, RecursionError, FilesError):
        return Settings()
    found = Settings()
    for key, value in pairs.items():
        try:
            found = changed(found, key, value)
        except OptionError:  # written by hand, or by another version
            continue
    return found


def changed(before: Settings, key: str, text: str) -> Settings:
    """Return settings with one set, or open again if the text is empty.

    Raises OptionError for what there is not.
    """
    if key not in KEYS:
        raise OptionError(f"There is no setting “{key}”; {near_words(key, KEYS)}")
    value = " ".join(text.split()).lower()
    if key == "machines" and value:
        value = ", ".join(sorted(read_machines(value)))
    choices = {"unit": tuple(Unit), "paper": PAPERS, "look": LOOKS}.get(key)
    if choices is not None and value and value not in choices:
        raise OptionError(f"{key} is one of {', '.join(choices)}, not “{text}”.")
    return replace(before, **{key: value})


def keep(new: Settings) -> None:
    """Keep settings; raises FilesError with a sentence."""
    text = json.dumps({"format": FORMAT, "version": VERSION, **asdict(new)}, indent=1) + "\n"
    with alone() as data:
        try:
            put(data / "settings.json", text.encode())
        except OSError as fault:
            raise FilesError(f"The settings cannot be kept: {reason(fault)}.") from fault
