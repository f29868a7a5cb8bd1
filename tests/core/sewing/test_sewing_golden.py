"""The sewing order of every way to make a seam, on every set of machines, word for word.

After a wanted change renew them with ``RENEW_GOLDEN=1 pytest
tests/core/sewing/test_sewing_golden.py`` and read what the version control shows.
"""

from __future__ import annotations

import os
from importlib import import_module
from pathlib import Path
from pkgutil import walk_packages

import pytest
from machine_sets import SETS
from seams_made_up import SAMPLES

import tapewise_core
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.sewing.machines import read_machines, stitching
from tapewise_core.sewing.notions import notions
from tapewise_core.sewing.order import operations, words
from tapewise_core.sewing.way import Way
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

FOLDER = Path(__file__).with_name("golden")


def told(pattern: Pattern, machines: str, unit: Unit) -> str:
    """Return the order as a numbered list, with the tapes and elastics it takes."""
    reader, ways = Reader(unit), stitching(read_machines(machines))
    chain = operations(pattern, ways)
    order = enumerate(map(words, chain), start=1)
    lines = [
        f"# {machines}, in {unit}",
        *(f"needs {reader.spell(said)}" for said in notions(pattern, chain, ways.machines)),
    ]
    return "\n".join([*lines, *(f"{number}. {reader.spell(said)}" for number, said in order)])


@pytest.mark.parametrize("name", SAMPLES)
def test_an_order_reads_as_it_did(name: str) -> None:
    """Every sentence on every set of machines is that of the file kept; once in inches too."""
    sections = [told(SAMPLES[name], machines, Unit.CM) for machines in SETS]
    shown = "\n\n".join([*sections, told(SAMPLES[name], "zigzag", Unit.IN)]) + "\n"
    kept = FOLDER / f"{name}.txt"
    if os.environ.get("RENEW_GOLDEN"):
        FOLDER.mkdir(exist_ok=True)
        kept.write_text(shown, "utf-8")
    assert shown == kept.read_text("utf-8")


def test_every_making_and_every_file_has_a_sample() -> None:
    """No way of making a seam is without a file, and no file is left of a sample gone."""
    made = {seam.making.name for pattern in SAMPLES.values() for seam in pattern.seams}
    assert {way.name for way in ways()} <= made
    assert {file.stem for file in FOLDER.glob("*.txt")} == set(SAMPLES)


def ways() -> set[Way]:
    """Return every way of making a seam that any module of the core has."""
    modules = walk_packages(tapewise_core.__path__, "tapewise_core.")
    there = [vars(import_module(one.name)).values() for one in modules if _may_sew(one.name)]
    return {value for values in there for value in values if isinstance(value, Way)}


def _may_sew(name: str) -> bool:
    """Say whether a module lies where seams are made; others are not imported for this."""
    return name.split(".")[1] in ("sewing", "parts", "blocks", "garments")
