"""The ledger: what was asked and what is given at every level, and why where they differ."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.drafting.facts import Level
from tapewise_core.paper.document import Table
from tapewise_core.proofs.levels import WORTH_A_WORD
from tapewise_core.text.told import LineName, Reader, Told, ended, said
from tapewise_core.units import mm

HEAD = ("level", "body", "asked", "given", "why")


def ledger(levels: Sequence[Level], reader: Reader) -> Table:
    """Return every level with its girths, from the top down; nothing was asked where none is."""
    return Table(HEAD, tuple(_row(level, reader) for level in levels))


def _row(level: Level, reader: Reader) -> tuple[str, ...]:
    asked = "" if level.asked is None else reader.spell((mm(level.asked),))
    body, given = (reader.spell((mm(girth),)) for girth in (level.body, level.given))
    return str(LineName(level.name)), body, asked, given, reader.spell(level.held_back or ())


def ledger_lines(levels: Sequence[Level], reader: Reader) -> tuple[str, ...]:
    """Return the same in a few lines: first what is as asked, then what is not, with its reason."""
    asked = [level for level in levels if level.asked is not None]
    kept = [level for level in asked if not _off(level)]
    told = ", ".join(reader.spell(_girth(level)) for level in kept)
    return (
        *([f"As wide as asked: {told}."] if kept else []),
        *(reader.spell(_apart(level)) for level in asked if _off(level)),
    )


def _off(level: Level) -> float:
    """How far given lies beyond what was asked where it is worth a word, else 0 [mm]."""
    off = level.given - (level.asked or 0.0)
    return off if abs(off) > WORTH_A_WORD else 0.0


def _girth(level: Level) -> Told:
    return said("{} {}", LineName(level.name), mm(level.given))


def _apart(level: Level) -> Told:
    name = str(LineName(level.name)).capitalize()
    says = said(f"{name}: {{}} asked, {{}} given", mm(level.asked or 0.0), mm(level.given))
    return ended((*says, ": ", *level.held_back) if level.held_back else says)
