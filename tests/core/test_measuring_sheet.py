"""The measuring sheet: the garment's measures, how to take them, lines to write on."""

from io import BytesIO

import pypdfium2
import pytest
from pictures_seen import POINT

from tapewise_core.errors import FilesError, OptionError
from tapewise_core.garments.shelf import PAGES, garment
from tapewise_core.measures.catalogue import CATALOGUE
from tapewise_core.measures.order import ORDER
from tapewise_core.paper.document import BLANK, Document, FillIn, Heading, Ticks
from tapewise_core.paper.drawing import TextLine
from tapewise_core.tasks.sheet import measuring_sheet
from tapewise_core.tasks.sheet_files import sheet_text, write_sheet
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit
from tapewise_core.writers.document_blocks import BESIDE
from tapewise_core.writers.document_pdf import document_pdf
from tapewise_core.writers.html import page
from tapewise_core.writers.pdf_pen import POINTS


def _steps(document: Document) -> list[FillIn]:
    return [block for block in document.blocks if isinstance(block, FillIn)]


def _names(document: Document) -> list[str]:
    return [step.text.split(".")[0].lower() for step in _steps(document)]


def test_without_a_garment_every_measure_is_there_once():
    """The sheet is derived from the table of measures, numbered through."""
    sheet = measuring_sheet(None, Unit.CM)
    assert sorted(_names(sheet)) == sorted(row.name for row in CATALOGUE)
    assert [step.number for step in _steps(sheet)] == list(range(1, len(CATALOGUE) + 1))


@pytest.mark.parametrize("name", PAGES)
def test_for_a_garment_only_its_measures_are_asked(name):
    """What a garment does not use is not on its sheet; what it can do without says so."""
    sheet, shop = measuring_sheet(name, Unit.CM), garment(name)
    used = {"height", *shop.needs, *shop.helps}
    assert set(_names(sheet)) == {row.name for row in CATALOGUE if row.key in used}
    spared = [step for step in _steps(sheet) if "may be left out" in step.text]
    assert len(spared) == len(set(shop.helps))


def test_what_needs_a_helper_comes_last_and_together():
    """After the helper's heading there are helper's measures and nothing else, all of them."""
    sheet = measuring_sheet(None, Unit.CM)
    place = sheet.blocks.index(Heading("With a helper"))
    after = _names(Document("", sheet.blocks[place:]))
    assert after == [row.name for row in ORDER if row.helper]


@pytest.mark.parametrize("unit", list(Unit))
def test_each_measure_has_lines_for_its_readings_and_its_tolerance(unit):
    """Two lines, and a third with what they may differ by in the reader's unit."""
    sheet = measuring_sheet(None, unit)
    for step, row in zip(_steps(sheet), ORDER, strict=True):
        first, second, third = step.lines
        assert (first, second) == ("first reading", "second reading")
        assert third.endswith(f"differ by more than {unit.spell(row.agree * 10)}")


def test_the_sheet_has_the_order_of_the_app():
    """So that it can be typed from top to bottom."""
    assert _names(measuring_sheet(None, Unit.CM)) == [row.name for row in ORDER]


def test_a_person_is_told_what_to_see_to_first():
    """Clothes, elastic, stickers, posture, breath and tape come before the first measure."""
    sheet = measuring_sheet(None, Unit.CM)
    first = next(block for block in sheet.blocks if isinstance(block, Ticks))
    assert sheet.blocks.index(first) < sheet.blocks.index(_steps(sheet)[0])
    text = " ".join(first.items).lower()
    for word in ("underwear", "elastic", "stickers", "feet together", "breathe", "ruler"):
        assert word in text


def test_the_waist_asks_where_the_elastic_sits():
    """A waist means nothing until one knows how it was found."""
    asked = [step for step in _steps(measuring_sheet(None, Unit.CM)) if step.ticks]
    (waist,) = asked
    assert waist.text.startswith("Waist.")
    assert len(waist.ticks) == 3
    assert all("elastic sits" in tick for tick in waist.ticks)


def test_an_unknown_garment_is_refused():
    """One sentence names what there is."""
    with pytest.raises(OptionError, match="There is no garment “tent”"):
        measuring_sheet("tent", Unit.CM)


def test_as_text_it_needs_no_other_file():
    """Printed to a terminal the sheet points to no picture."""
    text = sheet_text(measuring_sheet(None, Unit.CM))
    assert "![" not in text
    assert text.startswith("# Measuring sheet: every measure\n")
    assert text.count(BLANK) >= 3 * len(CATALOGUE)


def test_markdown_is_written_with_the_pictures_it_points_to(tmp_path):
    """Every picture named in the file lies beside it."""
    write_sheet(measuring_sheet(None, Unit.CM), tmp_path / "sheet.md")
    text = (tmp_path / "sheet.md").read_text(encoding="utf-8")
    pictures = sorted(path.name for path in (tmp_path / "figures").iterdir())
    assert len(pictures) == len(CATALOGUE)
    assert all(f"](figures/{name})" in text for name in pictures)


def test_html_holds_its_pictures():
    """One file, one picture a measure, nothing fetched."""
    text = page(measuring_sheet(None, Unit.CM))
    assert text.count("<svg") == len(CATALOGUE)
    assert not any(word in text for word in ("src=", 'href="http', "url(", "@import"))
    assert text.count('type="checkbox"') >= 7


def test_the_pdf_holds_every_measure_and_is_the_same_each_time():
    """All names can be found in the pages; the bytes do not depend on the day."""
    sheet = measuring_sheet(None, Unit.IN)
    content = document_pdf(sheet)
    assert content == document_pdf(sheet)
    pages = pypdfium2.PdfDocument(BytesIO(content))
    text = " ".join(page.get_textpage().get_text_bounded() for page in pages)
    for step in _steps(sheet):
        assert f"{step.number}. {step.text.split('.')[0]}" in text
    assert text.count("first reading") == len(CATALOGUE)


def test_a_step_and_its_lines_are_on_one_page():
    """Nobody turns the sheet between reading how and writing what."""
    reader = Reader(Unit.CM)
    pages = pypdfium2.PdfDocument(BytesIO(document_pdf(measuring_sheet(None, Unit.CM))))
    for sheet in pages:
        text = sheet.get_textpage().get_text_bounded()
        told = [(row.name.capitalize(), reader.spell(row.landmarks)) for row in CATALOGUE]
        started = sum(text.count(f"{name}. {landmarks[:12]}") for name, landmarks in told)
        assert text.count("first reading") == started


def test_another_ending_is_refused(tmp_path):
    """The sentence names the endings there are, and nothing is written."""
    with pytest.raises(FilesError, match=r"ends in none of \.md, \.html, \.pdf"):
        write_sheet(measuring_sheet(None, Unit.CM), tmp_path / "sheet.doc")
    assert list(tmp_path.iterdir()) == []


def test_where_the_elastic_sits_is_asked_on_the_waist_s_page():
    """The boxes to tick stand below the waist's own lines, not on the next page."""
    pages = pypdfium2.PdfDocument(BytesIO(document_pdf(measuring_sheet(None, Unit.CM))))
    texts = [sheet.get_textpage().get_text_bounded() for sheet in pages]
    asked = next(text for text in texts if "My elastic sits" in text)
    assert "Waist. Tie on a narrow elastic" in asked
    assert asked.count("My elastic sits") == 3


def test_every_page_of_the_sheet_says_its_name_and_number() -> None:
    """Loose sheets find together again."""
    pages = pypdfium2.PdfDocument(BytesIO(document_pdf(measuring_sheet(None, Unit.CM))))
    title = measuring_sheet(None, Unit.CM).title
    for number, sheet in enumerate(pages, 1):
        assert f"{title} · page {number}" in sheet.get_textpage().get_text_range()


@pytest.mark.parametrize("unit", list(Unit))
@pytest.mark.parametrize("name", [None, *PAGES])
def test_the_sheet_is_six_pages_at_most(name, unit):
    """All measures there are, on paper that A4 and Letter share."""
    pages = pypdfium2.PdfDocument(BytesIO(document_pdf(measuring_sheet(name, unit))))
    assert len(pages) <= 6
    assert all("Name ....." in sheet.get_textpage().get_text_range() for sheet in pages)


def test_the_figures_names_are_seven_points_or_more_on_paper():
    """At the size that the page shows a figure in, beside its words."""
    for step in _steps(measuring_sheet(None, Unit.CM)):
        assert step.picture is not None
        shrunk = min(1.0, BESIDE / POINTS / step.picture.box.width)
        for ink in step.picture.inks:
            if isinstance(ink, TextLine):
                assert ink.size * shrunk >= 7 * POINT, step.text


def test_the_page_of_html_has_a_column_to_write_in_and_none_on_a_telephone():
    """Figure, words and lines beside each other on paper; below each other where it is narrow."""
    text = page(measuring_sheet(None, Unit.CM))
    assert text.count('<p class="line">') == 3 * len(CATALOGUE)
    narrow = text[text.index("@media screen and (max-width") :]
    assert ".fill { display: block; }" in narrow[: narrow.index("@media print")]
