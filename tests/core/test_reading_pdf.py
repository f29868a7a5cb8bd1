"""reading.pdf: what there is to read, its pictures at the size they are drawn for."""

from __future__ import annotations

import ctypes
import re
from collections.abc import Iterator
from io import BytesIO

import pypdfium2
import pypdfium2.raw as pdfium
import pytest
from making import DAY, person

from tapewise_core.paper.document import Document, Heading, Paragraph, Table
from tapewise_core.tasks.contents import contents
from tapewise_core.tasks.drafting import draft
from tapewise_core.units import Unit
from tapewise_core.writers.document_pdf import document_pdf
from tapewise_core.writers.document_tables import halves


def _sizes(page: pypdfium2.PdfPage) -> Iterator[tuple[float, str]]:
    """Every sign of a page with the height of its type as printed [points]."""
    text = page.get_textpage()
    matrix = pdfium.FS_MATRIX()
    for place in range(text.count_chars()):
        sign = text.get_text_range(place, 1)
        if sign.strip() and pdfium.FPDFText_GetMatrix(text, place, ctypes.byref(matrix)):
            size = pdfium.FPDFText_GetFontSize(text, place)
            yield size * (matrix.c**2 + matrix.d**2) ** 0.5, sign


@pytest.mark.parametrize("unit", list(Unit))
def test_no_letter_is_smaller_than_seven_points(unit: Unit) -> None:
    """In steps' pictures and everywhere else, on A4 and on Letter."""
    made = draft(person(), "jersey-top", {}, unit=unit, made=DAY)
    pdf = pypdfium2.PdfDocument(BytesIO(contents(made, ["pdf-reading"])["reading.pdf"]))
    found = [(size, sign) for page in pdf for size, sign in _sizes(page)]
    assert len(found) > 5000
    assert min(found) >= (6.99, "")


def test_steps_stand_three_in_a_row_and_leave_no_page_half_empty() -> None:
    """Sixty steps, and a checklist with a picture for each seam, take sixteen pages at most."""
    made = draft(person(), "jersey-top", {}, made=DAY)
    pdf = pypdfium2.PdfDocument(BytesIO(contents(made, ["pdf-reading"])["reading.pdf"]))
    assert len(pdf) <= 16


def test_a_long_table_begins_below_its_heading_and_runs_on() -> None:
    """It does not leave the page of its heading empty, and repeats its head on the next."""
    rows = tuple((f"name {n}", "holds", "All is well. " * 8) for n in range(60))
    blocks = (Heading("Top", 1), Paragraph("Words."), Heading("All"), Table(("a", "b", "c"), rows))
    pages = pypdfium2.PdfDocument(BytesIO(document_pdf(Document("x", blocks))))
    texts = [page.get_textpage().get_text_range() for page in pages]
    assert "name 0" in texts[0]
    assert all("a b c" in text for text in texts)
    assert len(texts) == 2


def test_a_long_list_of_pairs_stands_in_two_halves() -> None:
    """Side by side, the second half beside the first, an odd one's last place left empty."""
    table = Table(("option", "value"), tuple((f"o{n}", str(n)) for n in range(15)))
    head, *rows = halves(table)
    assert head == ("option", "value") * 2
    assert rows[0] == ("o0", "0", "o8", "8")
    assert rows[-1] == ("o7", "7", "", "")
    assert halves(Table(table.head, table.rows[:5])) == [table.head, *table.rows[:5]]


@pytest.mark.parametrize("lines", range(26, 40))
def test_what_opens_a_table_stands_above_its_first_rows(lines: int) -> None:
    """However far down the page it comes."""
    words = tuple(Paragraph(f"Line {n}.") for n in range(lines))
    table = Table(("a", "b", "c"), tuple((f"row {n}", "x", "y") for n in range(20)))
    blocks = (Heading("Top", 1), *words, Paragraph("The table opens here."), table)
    pages = pypdfium2.PdfDocument(BytesIO(document_pdf(Document("x", blocks))))
    (opened,) = (text for text in map(_text, pages) if "The table opens here." in text)
    assert re.search(r"row 1\s", opened)


def _text(page: pypdfium2.PdfPage) -> str:
    text: str = page.get_textpage().get_text_range()
    return text
