"""The bibliography: what is cited exists, what exists is cited, and people can read it."""

import ast
import re
from collections.abc import Iterator, Mapping
from functools import cache
from importlib import import_module
from pathlib import Path

import pytest
from making import DAY, MIDDLE, person

from tapewise_core.garments.shelf import PAGES, garment
from tapewise_core.paper.document import Bullets, Heading
from tapewise_core.sources import GROUNDS, SOURCES, citations
from tapewise_core.tasks.documents import instructions_of
from tapewise_core.tasks.drafting import draft

HOUSE = Path(__file__).parents[2]
FLOORS = ("garments", "blocks", "parts", "style")
"""Where a garment's numbers stand; what lies below serves every garment alike."""

KEY = re.compile(r"(?<![\w\]})\"`.])\[([a-z][a-z0-9-]+)(?:, [^\]]+)?\]")
EXAMPLE = re.compile(r"^ *>>> .*?(?:\n *\n|\Z)", re.MULTILINE | re.DOTALL)
UNITS = {
    "mm",
    "cm",
    "kg",
    "years",
    "degrees",
    "radians",
    "tan",
    "points",
    "dots",
    "bytes",
    "seconds",
    "pixels",
    "characters",
}
"""What else stands in brackets in a docstring."""


def docstrings(path: Path) -> Iterator[str]:
    """Every string that stands alone in a file: docstrings of modules, functions and constants."""
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        alone = node.value if isinstance(node, ast.Expr) else None
        if isinstance(alone, ast.Constant) and isinstance(alone.value, str):
            yield alone.value


@cache
def cited_in(path: Path) -> set[str]:
    """The keys that a file's docstrings cite."""
    prose = (EXAMPLE.sub("", said) for said in docstrings(path))
    return {key for said in prose for key in KEY.findall(said)} - UNITS


def files() -> list[Path]:
    """Every file of code and tests."""
    return [path for part in ("core", "tui", "tests") for path in (HOUSE / part).rglob("*.py")]


def test_every_key_that_is_cited_is_listed() -> None:
    """No docstring in the house sends its reader to an entry that is not there."""
    known = {*SOURCES, *GROUNDS}
    lost = {str(path.relative_to(HOUSE)): cited_in(path) - known for path in files()}
    assert {path: keys for path, keys in lost.items() if keys} == {}


def test_every_publication_is_cited() -> None:
    """The bibliography lists what is used, nothing else."""
    cited = set[str]().union(*(cited_in(path) for path in files()))
    options = {option.source for name in PAGES for option in garment(name).options}
    assert set(SOURCES) - cited - options == set()


def test_a_book_has_one_entry_and_a_title() -> None:
    """One title, one entry; a title is more than the name of who wrote it."""
    titles = [source.title for source in SOURCES.values()]
    assert len(set(titles)) == len(titles)
    assert all(len(title.split()) > 2 for title in titles)


def modules_of(name: str) -> set[Path]:
    """The files of a garment's page and of all it imports from the garments' own floors."""
    page, _ = PAGES[name]
    waiting, found = [f"tapewise_core.garments.{page}.page"], set[Path]()
    while waiting:
        module = import_module(waiting.pop())
        path = Path(str(module.__file__))
        if path in found or path.name in ("shelf.py", "garment.py"):
            continue
        found.add(path)
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.ImportFrom) and node.module:
                floor = node.module.removeprefix("tapewise_core.").partition(".")[0]
                waiting += [node.module] if floor in FLOORS else []
    return found


@pytest.mark.parametrize("name", PAGES)
def test_a_garment_declares_what_its_page_and_parts_cite(name: str) -> None:
    """Whoever reads a garment's sources reads all of them, and no others."""
    page = garment(name)
    cited = set[str]().union(*(cited_in(path) for path in modules_of(name))) - set(GROUNDS)
    assert set(page.sources) == cited
    assert set(page.cited) <= {*SOURCES, *GROUNDS}


def test_citations_are_spelt_once_each_and_grounds_are_none() -> None:
    """A list for people: no keys, no repetition, no entry for common practice."""
    told = citations(["practice", "baldt", "exact", "baldt", "ansur1"])
    assert [line.partition(" ")[0] for line in told] == ["Baldt,", "Gordon,"]
    with pytest.raises(KeyError):
        citations(["nobody"])


def told(garment_name: str, measures: Mapping[str, float] = MIDDLE) -> tuple[str, ...]:
    """The entries in the last section of a garment's instructions."""
    drafted = draft(person(measures), garment_name, {}, made=DAY)
    blocks = instructions_of(drafted).blocks
    last = max(at for at, block in enumerate(blocks) if isinstance(block, Heading))
    assert blocks[last] == Heading("Where the numbers come from")
    return next((b.items for b in blocks[last:] if isinstance(b, Bullets)), ())


def test_the_instructions_end_with_the_sources_of_the_garment() -> None:
    """The set-in top's book is named there, and not in the grown-on top's instructions."""
    assert str(SOURCES["baldt"]) in told("set-in-top")
    assert str(SOURCES["baldt"]) not in told("jersey-top")
    bare = draft(person(MIDDLE), "jersey-top", {"sleeve": "none"}, made=DAY)
    assert str(SOURCES["baldt"]) in bare.sources


def test_an_estimate_brings_its_surveys() -> None:
    """Whoever has a measure guessed for her reads what the guess rests on."""
    measured = {"waist": 74.0, "hip": 99.0, "waist_to_knee": 59.0, "waist_to_floor": 104.0}
    assert str(SOURCES["nhanes"]) in told("circle-skirt", {**MIDDLE, "height": 168.0})
    assert told("circle-skirt", {**MIDDLE, **measured}) == ()
