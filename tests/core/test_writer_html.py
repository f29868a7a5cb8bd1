"""One page of HTML that needs nothing else: instructions, pictures, checklist, pieces."""

import re
from html.parser import HTMLParser

from paper_samples import pattern

from tapewise_core.writers.html import html

VOID = {"meta", "input"}


class Reader(HTMLParser):
    """Collects ids, links and text, and refuses tags that are not closed in order."""

    def __init__(self) -> None:
        super().__init__()
        self.open: list[str] = []
        self.ids: list[str] = []
        self.links: list[str] = []
        self.text: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag not in VOID:
            self.open.append(tag)
        self.ids += [value or "" for name, value in attrs if name == "id"]
        self.links += [value or "" for name, value in attrs if name in {"href", "src"}]

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.handle_starttag(tag, attrs)
        if tag not in VOID:
            self.handle_endtag(tag)

    def handle_data(self, data: str) -> None:
        if not self.open or self.open[-1] != "style":
            self.text.append(data)


def read(person: str = "Zoë Œhler") -> Reader:
    """Return the sample page as a browser would take it apart."""
    reader = Reader()
    reader.feed(html(pattern(person)))
    return reader


def test_the_page_is_well_formed_and_its_ids_are_unique() -> None:
    """Pictures drawn one after another do not share an id."""
    reader = read()
    assert reader.open == []
    assert len(reader.ids) == len(set(reader.ids))


def test_the_page_needs_no_network() -> None:
    """Nothing is fetched: links lead into the page, and no style or picture comes from outside."""
    page = html(pattern())
    assert all(link.startswith("#") for link in read().links)
    assert not re.search(r"url\(|@import|<link|<script|<img", page)


def test_everything_to_read_is_there() -> None:
    """Instructions with a picture each, ticks, tables, pieces, person and date."""
    page = html(pattern())
    text = " ".join(read().text)
    for words in (
        "Rule a line AB of 64 cm.",
        "2 front",
        "514",
        "neckband",
        "Zoë Œhler",
        "2026-11-02",
    ):
        assert words in text
    assert page.count('<div class="step wide">') == 2
    assert page.count("<svg") == 2 + 4
    assert page.count('<input type="checkbox">') == 2


def test_names_are_never_taken_for_markup() -> None:
    """What a person typed shows as typed and runs nothing."""
    page = html(pattern('<script>alert("x")</script>'))
    assert "<script" not in page
    assert '<script>alert("x")</script>' in " ".join(read('<script>alert("x")</script>').text)


def test_it_prints_page_by_page() -> None:
    """Steps and pictures are not torn by a page break, and navigation is left out on paper."""
    page = html(pattern())
    assert "@media print" in page
    assert "break-inside: avoid" in page
