"""One page of HTML that needs nothing else: instructions, pictures, checklist, pieces."""

import re
from html.parser import HTMLParser

from paper_samples import pattern

from tapewise_core.geometry.outline import Box
from tapewise_core.paper.document import Document, NumberedStep
from tapewise_core.paper.drawing import Drawing
from tapewise_core.writers.html import html, page
from tapewise_core.writers.html_style import STYLE

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
    whole = html(pattern())
    assert all(link.startswith("#") for link in read().links)
    assert not re.search(r"url\(|@import|<link|<script|<img", whole)


def test_everything_to_read_is_there() -> None:
    """Instructions with a picture each, ticks, tables, pieces, person and date."""
    whole = html(pattern())
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
    assert whole.count('<div class="step wide">') == 2
    assert whole.count("<svg") == 2 + 4
    assert whole.count('<input type="checkbox">') == 2


def test_names_are_never_taken_for_markup() -> None:
    """What a person typed shows as typed and runs nothing."""
    whole = html(pattern('<script>alert("x")</script>'))
    assert "<script" not in whole
    assert '<script>alert("x")</script>' in " ".join(read('<script>alert("x")</script>').text)


def test_it_prints_page_by_page() -> None:
    """Steps and pictures are not torn by a page break, and navigation is left out on paper."""
    whole = html(pattern())
    assert "@media print" in whole
    assert "break-inside: avoid" in whole


def test_pictures_keep_their_size_on_paper_and_fit_a_telephone() -> None:
    """On paper nothing stretches or shrinks a step's picture, so that its letters stay as large as
    drawn; on a narrow screen nothing asks for more than the screen is wide."""
    screen, printed = STYLE.split("@media print")
    assert ".step svg { width: auto; max-width: 100%; }" in printed
    assert not re.search(r"svg[^}]*\bheight: \d", printed)
    assert "svg { display: block; max-width: 100%; height: auto; }" in screen
    assert "minmax(min(100%, 15rem), 1fr)" in screen
    assert "overflow-wrap: anywhere" in screen
    assert 'content="width=device-width' in html(pattern())
    least = re.findall(r"(?<![-\w(])(?:min-)?width: (\d+)(rem|px|mm)", screen.split("@media")[0])
    assert all(float(many) * {"rem": 16, "px": 1, "mm": 3.78}[of] <= 328 for many, of in least)


def test_a_wide_picture_has_a_row_to_itself() -> None:
    """Small ones stand beside each other, between it and the next."""
    small = Drawing("small", "", Box(0, 0, 50, 40), ())
    large = Drawing("large", "", Box(0, 0, 98, 90), ())
    steps = tuple(NumberedStep(n, "Do.", p) for n, p in enumerate((small, small, large, small), 1))
    text = page(Document("x", steps))
    rows = re.findall(r'class="(steps|step wide|step)"', text)
    assert rows == ["steps", "step", "step", "step wide", "steps", "step"]
