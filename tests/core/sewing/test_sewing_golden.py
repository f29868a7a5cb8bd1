"""The sewing order of every way to make a seam, on every set of machines, word for word.

After a wanted change renew them with ``RENEW_GOLDEN=1 pytest
tests/core/sewing/test_sewing_golden.py`` and read what the version control shows.
"""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from seams_made_up import SAMPLES

from tapewise_core.drafting.making import How
from tapewise_core.drafting.piece import Pattern
from tapewise_core.sewing.machines import read_machines, stitching
from tapewise_core.sewing.notions import stays
from tapewise_core.sewing.order import sewing_order
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

FOLDER = Path(__file__).with_name("golden")

SETS = (
    "overlocker, coverstitch",
    "overlocker",
    "zigzag",
    "overlocker, zigzag",
    "coverstitch, zigzag",
    "overlocker, coverstitch, zigzag",
)
"""Every set of machines that can sew a garment."""


def told(pattern: Pattern, machines: str, unit: Unit) -> str:
    """Return the order as a numbered list, with the tapes and elastics it takes."""
    reader, ways = Reader(unit), stitching(read_machines(machines))
    order = enumerate(sewing_order(pattern, ways), start=1)
    lines = [
        f"# {machines}, in {unit}",
        *(f"needs {reader.spell(said)}" for said in stays(pattern)),
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
    made = {seam.making.how for pattern in SAMPLES.values() for seam in pattern.seams}
    assert made == set(How)
    assert {file.stem for file in FOLDER.glob("*.txt")} == set(SAMPLES)
