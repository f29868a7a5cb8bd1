"""The text of the file that keeps a project.

It is read strictly: one that this program could not have written, or can no longer use,
raises ValueError with the reason, as the end of a sentence. A choice that there is no longer,
such as an option, is left out and named; the rest is kept.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any

from msgspec.structs import asdict, replace

from tapewise_core.garments import shelf
from tapewise_core.sewing.machines import Machine
from tapewise_core.tasks.json_object import object_of
from tapewise_core.tasks.project import PLACES, Work
from tapewise_core.text.legible import legible

FORMAT, VERSION = "tapewise project", 1
_READABLE = ((FORMAT, VERSION), ("tapewise work", 1))
"""Formats that can be read; the older one has no name, cloth or drafts."""


def text_of(work: Work) -> str:
    """Return the text of the file that keeps some work."""
    content = {"format": FORMAT, "version": VERSION, **asdict(replace(work, asked={}, drafts=()))}
    content |= {"asked": dict(work.asked), "drafts": [dict(row) for row in work.drafts]}
    return json.dumps(content, ensure_ascii=False, indent=1) + "\n"


def work_of(text: str) -> tuple[Work, tuple[str, ...]]:
    """Return the work that a file's text holds, and what of it there is no longer.

    Raises ValueError with the reason if it cannot be used.
    """
    content = object_of(text)
    if (content.pop("format", None), content.pop("version", None)) not in _READABLE:
        raise ValueError(f"it is not of the format “{FORMAT}”, version {VERSION}")
    if "person" not in content:
        raise ValueError("it does not say whose it is")
    names = [name for name in Work.__struct_fields__ if name in content]
    values: dict[str, Any] = {n: _READ.get(n, _text)(n, content[n]) for n in names}
    work = Work(**values)
    if work.garment not in shelf.PAGES:
        raise ValueError(f"there is no garment “{_short(work.garment)}”")
    return _without_unknown(work)


def _without_unknown(work: Work) -> tuple[Work, tuple[str, ...]]:
    """Leave out what no page could show, so that nobody could take it out either."""
    told: list[str] = []
    page = _known("page", (work.page,), PLACES, told)
    machines = _known("machine", work.machines, tuple(Machine), told)
    formats = _known("format", work.formats, _formats(), told)
    options = _known("option", tuple(work.asked), _options(work.garment), told)
    asked = MappingProxyType({key: work.asked[key] for key in options})
    kept = replace(work, page=page[0] if page else "measure", machines=machines, formats=formats)
    return replace(kept, asked=asked), tuple(told)


def _known(
    what: str, names: tuple[str, ...], there_are: tuple[str, ...], told: list[str]
) -> tuple[str, ...]:
    for name in names:
        if name not in there_are:
            from tapewise_core.style.settle import measured_now  # for the rare file alone

            now = measured_now(name)
            told.append(f"the {what} “{_short(name)}”{f' ({now})' if now else ''}")
    return tuple(name for name in names if name in there_are)


def _formats() -> tuple[str, ...]:
    from tapewise_core.writers.formats import FORMATS

    return tuple(FORMATS)


def _options(garment: str) -> tuple[str, ...]:
    return tuple(option.key for option in shelf.garment(garment).options)


def _text(name: str, value: object) -> str:
    """Pass text that can be written again and shown; half a pair of surrogates can be neither."""
    if not isinstance(value, str):
        raise ValueError(f"its “{_short(name)}” must be text")
    try:
        value.encode()
    except UnicodeEncodeError:
        raise ValueError(f"its “{name}” holds a sign that is none") from None
    return legible(value)


def _texts(name: str, value: object) -> tuple[str, ...]:
    if not isinstance(value, list):
        raise ValueError(f"its “{name}” must be a list")
    return tuple(_text(name, item) for item in value)


def _mapping(name: str, value: object) -> Mapping[str, str]:
    if not isinstance(value, dict):
        raise ValueError(f"its “{name}” must be an object")
    return MappingProxyType({_text(name, key): _text(key, text) for key, text in value.items()})


def _rows(name: str, value: object) -> tuple[Mapping[str, str], ...]:
    if not isinstance(value, list):
        raise ValueError(f"its “{name}” must be a list")
    return tuple(_mapping(name, row) for row in value)


_READ: Mapping[str, Callable[[str, object], object]] = {
    "asked": _mapping,
    "machines": _texts,
    "formats": _texts,
    "ticked": _texts,
    "drafts": _rows,
}
"""How a field is read that is not plain text."""


def _short(text: str) -> str:
    """A name short enough for a sentence, on one line."""
    plain = " ".join(text.split())
    return plain if len(plain) <= 40 else plain[:39] + "…"
