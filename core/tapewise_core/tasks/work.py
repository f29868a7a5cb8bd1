"""What a person is making: garment, options, machines, what is ticked; kept between runs.

One JSON file a person in the folder ``work`` beside the people. It holds no
measure, so a file that cannot be read costs a few choices and stops nobody.
"""

from __future__ import annotations

import contextlib
import json
import os
from collections.abc import Mapping
from dataclasses import asdict, dataclass, field, fields, replace
from pathlib import Path
from types import MappingProxyType

from tapewise_core.errors import FilesError
from tapewise_core.profiles import store
from tapewise_core.profiles.files import reason
from tapewise_core.profiles.slug import digest, slug
from tapewise_core.tasks.asked_paper import Paper
from tapewise_core.writers.files import write_all

FORMAT, VERSION = "tapewise work", 1


@dataclass(frozen=True)
class Work:
    """One person's work; ``asked`` maps options to what was typed.

    ``overlap``, ``margin`` and ``roll_width`` say what is asked of paper, empty for
    the usual. ``page`` and ``measure`` are where the person stopped, ``when`` is when.
    """

    person: str
    garment: str = "jersey-top"
    asked: Mapping[str, str] = field(default_factory=lambda: MappingProxyType({}))
    machines: tuple[str, ...] = ("overlocker", "coverstitch")
    folder: str = ""
    formats: tuple[str, ...] = ()
    overlap: str = ""
    margin: str = ""
    roll_width: str = ""
    ticked: tuple[str, ...] = ()
    notes: str = ""
    page: str = "measure"
    measure: str = ""
    when: str = ""

    @property
    def paper(self) -> Paper:
        """What is asked of paper."""
        return Paper(self.overlap or None, self.roll_width or None, self.margin or None)

    def with_paper(self, overlap: str, margin: str, roll_width: str) -> Work:
        """Return the work with other wishes for paper, each empty for the usual."""
        return replace(self, overlap=overlap, margin=margin, roll_width=roll_width)

    def with_option(self, key: str, text: str | None) -> Work:
        """Return the work with an option chosen, or back at its usual value if None."""
        kept = {name: value for name, value in self.asked.items() if name != key}
        return replace(self, asked={**kept, key: text} if text is not None else kept)

    def toggled(self, item: str) -> Work:
        """Return the work with one thing ticked, or no longer."""
        if item in self.ticked:
            return replace(self, ticked=tuple(one for one in self.ticked if one != item))
        return replace(self, ticked=(*self.ticked, item))


def folder() -> Path:
    """Return the folder that keeps everybody's work; it need not exist yet."""
    return store.people_folder().parent / "work"


def load(person: str) -> Work:
    """Return a person's work as it was left, or a fresh start."""
    return _read(_place(person)) or Work(person)


def latest() -> Work | None:
    """Return the work that changed last, or None if there is none."""
    try:
        found = [work for place in folder().glob("*.json") if (work := _read(place))]
    except OSError:
        return None
    return max(found, key=lambda work: work.when, default=None)


def save(work: Work) -> None:
    """Keep a person's work, readable by the owner alone; raises FilesError with a sentence."""
    place = _place(work.person)
    try:
        place.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    except OSError as fault:
        raise FilesError(f"{place.parent} cannot be made: {reason(fault)}.") from fault
    content = {"format": FORMAT, "version": VERSION, **asdict(replace(work, asked={}))}
    content["asked"] = dict(work.asked)
    text = json.dumps(content, ensure_ascii=False, indent=1) + "\n"
    write_all(place.parent, {place.name: text.encode()})
    with contextlib.suppress(OSError):
        os.chmod(place, 0o600)


def _place(person: str) -> Path:
    """Two people whose names make one slug still have a file each."""
    return folder() / f"{slug(person)}-{digest(person)}.json"


def _read(place: Path) -> Work | None:
    """A file of another version, or spoilt, is as good as none."""
    try:
        content = json.loads(place.read_text("utf-8"))
        if (content.pop("format"), content.pop("version")) != (FORMAT, VERSION):
            return None
        return _checked(content)
    except (OSError, ValueError, TypeError, KeyError, AttributeError):
        return None


def _checked(content: Mapping[str, object]) -> Work:
    """Return the work that a file describes; raises TypeError if a field is no text."""
    known = {row.name for row in fields(Work)}
    values = {name: _value(name, value) for name, value in content.items() if name in known}
    return Work(**values)  # type: ignore[arg-type]


def _value(name: str, value: object) -> object:
    if name == "asked" and isinstance(value, dict):
        return MappingProxyType({_text(key): _text(text) for key, text in value.items()})
    if name in ("machines", "formats", "ticked") and isinstance(value, list):
        return tuple(_text(item) for item in value)
    return _text(value)


def _text(value: object) -> str:
    if not isinstance(value, str):
        raise TypeError("not text")
    return value
