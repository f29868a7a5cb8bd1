"""Questions answered a line at a time at a terminal, asked again until they can be read."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TypeVar

from tapewise_core.errors import TapewiseError
from tapewise_core.text.legible import legible
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit
from tapewise_tui.printing import complain, say

T = TypeVar("T")


def chosen(question: str, rows: Sequence[tuple[str, str]]) -> str | None:
    """Ask for one of some rows, by its number or its name; None where the input ends."""
    say(question)
    say("\n".join(f"  {number:>2}  {says}" for number, (_, says) in enumerate(rows, 1)))
    names = [name for name, _ in rows]
    while True:
        text = _line(f"1 to {len(rows)}: ")
        if text is None:
            return None
        if text.isdecimal() and 1 <= int(text[:9]) <= len(rows):
            return names[int(text) - 1]
        if text in names:
            return text
        complain(f"Type a number from 1 to {len(rows)}.")


def typed(question: str, usual: str, read: Callable[[str], T], unit: Unit) -> T | None:
    """Ask for something that ``read`` reads; None where Enter alone leaves what is usual."""
    while True:
        text = _line(f"{question} [{usual}] ")
        if not text:
            return None
        try:
            return read(text)
        except TapewiseError as error:
            complain(Reader(unit).spell(error.told))


def _line(prompt: str) -> str | None:
    try:
        return input(legible(prompt)).strip()
    except EOFError:
        return None
