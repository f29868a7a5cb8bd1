"""Garments, options and formats as they are told to a person or a machine."""

from __future__ import annotations

import pytest

from tapewise_core.errors import OptionError
from tapewise_core.garments.shelf import garment, garments
from tapewise_core.tasks.shop import (
    format_list,
    formats,
    garment_lines,
    garment_list,
    garment_sheet,
)
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit


def test_every_garment_is_listed() -> None:
    """By name, with its title and a sentence."""
    told = [{"name": page.name, "title": page.title, "says": page.says} for page in garments()]
    assert garment_list() == told
    assert all(row["title"] and str(row["says"]).endswith(".") for row in garment_list())


@pytest.mark.parametrize("name", [page.name for page in garments()])
def test_a_sheet_holds_every_option_with_what_it_takes(name: str) -> None:
    """Words to choose from, or limits; never both, and a default that is among them."""
    sheet = garment_sheet(name)
    options = sheet["options"]
    assert isinstance(options, list)
    assert [row["key"] for row in options] == [option.key for option in garment(name).options]
    for row in options:
        assert bool(row["choices"]) is (row["low"] is None), row["key"]
        if row["default"] is None:
            continue
        if row["choices"]:
            assert row["default"] in row["choices"]
        else:
            assert row["low"] <= row["default"] <= row["high"]


@pytest.mark.parametrize("name", [page.name for page in garments()])
def test_lines_tell_every_option_and_what_is_needed(name: str) -> None:
    """A person reads the same as a machine."""
    lines = garment_lines(name, Unit.CM)
    assert lines[0].startswith(f"{name}: ")
    for option in garment(name).options:
        assert any(line.startswith(f"  {option.key}: ") for line in lines)
        assert f"      {Reader(Unit.CM).spell(option.says)}" in lines
    assert any(line.startswith("Needs: ") for line in lines)


def test_lengths_are_told_in_the_readers_unit() -> None:
    """Defaults and limits alike; percentages stay."""
    (metric,) = [line for line in garment_lines("jersey-top", Unit.CM) if "  hem-allow" in line]
    (inch,) = [line for line in garment_lines("jersey-top", Unit.IN) if "  hem-allow" in line]
    assert "2.5 cm" in metric
    assert "1 in" in inch
    assert "cm" not in inch
    stretch = next(x for x in garment_lines("jersey-top", Unit.IN) if x.startswith("  stretch:"))
    assert "50 %" in stretch


def test_an_unknown_garment_is_refused_with_those_there_are() -> None:
    """The sentence names what could be meant."""
    for told in (garment_sheet, lambda name: garment_lines(name, Unit.CM)):
        with pytest.raises(OptionError, match="jersey-top"):
            told("ball-gown")


def test_formats_are_told_to_both() -> None:
    """The same names and sentences."""
    assert [tuple(row.values()) for row in format_list()] == list(formats())
    assert {"dxf", "html", "pdf-a4"} <= {name for name, _ in formats()}
