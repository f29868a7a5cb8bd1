"""PDF pages: the same bytes twice, small, searchable, layered, never scaled, in any script."""

import io
import math
import re
from collections.abc import Callable
from functools import cache

import pikepdf
import pypdfium2
import pytest
from msgspec.structs import replace
from paper_samples import pattern

from tapewise_core.errors import DraftError
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.document import Document, Paragraph
from tapewise_core.paper.drawing import Layer, Stroke
from tapewise_core.paper.look import DARK
from tapewise_core.paper.projector import projected
from tapewise_core.paper.sizes import A4
from tapewise_core.paper.tiling import tiled
from tapewise_core.writers.document_pdf import document_pdf
from tapewise_core.writers.lettering import Lettering
from tapewise_core.writers.pdf import pdf


def written(person: str = "Zoë Œhler", times: int = 1) -> bytes:
    """Return the sample pattern on A4."""
    return pdf(tiled(pattern(person, times), A4, 10.0, 12.0))


usual = cache(written)
"""The same, made once for all tests that only read it."""


def named(person: str) -> str:
    """Return the words of the first page of a band alone for somebody."""
    band = pattern(person)
    made = tiled(replace(band, pieces=band.pieces[-1:]), A4, 10.0, 12.0)
    return text_of(pdf(made))


def text_of(data: bytes, page: int = 0) -> str:
    """Return the text pdfium finds on a page."""
    return str(pypdfium2.PdfDocument(data)[page].get_textpage().get_text_range())


def test_the_same_draft_gives_the_same_bytes() -> None:
    """Two files made one after the other do not differ in a single byte."""
    assert usual() == written()


def test_a_large_set_stays_small() -> None:
    """More than 24 pages of A4 take less than 100 kB."""
    data = written(times=2)
    assert len(pypdfium2.PdfDocument(data)) >= 25
    assert len(data) < 100_000


def test_readers_are_asked_not_to_scale() -> None:
    """The file asks for no print scaling and one side, and says what it is."""
    data = usual()
    assert b"/PrintScaling /None" in data
    assert b"/Duplex /Simplex" in data
    information = pypdfium2.PdfDocument(data).get_metadata_dict()
    assert information["Title"] == "Jersey top – Zoë Œhler"
    assert information["Subject"] == "A close top in jersey"


def test_layers_are_declared_and_used() -> None:
    """A reader that knows layers lists those the pattern has ink on, by readable names."""
    data = usual()
    groups = re.findall(rb"/Name \((.*?)\) /Type /OCG", data)
    assert groups == [b"stitch line", b"cut line", b"marks", b"text"]
    assert len(re.findall(rb"/OCGs \[", data)) == 1
    listed = re.search(rb"/ON \[(.*?)\]", data)
    assert listed
    assert len(re.findall(rb"\d+ 0 R", listed[1])) == 4


def document() -> bytes:
    """Return a document of several pages."""
    return document_pdf(Document("Checklist", tuple(Paragraph("Cut once.") for _ in range(90))))


def opened(data: bytes) -> pikepdf.Pdf:
    """Return a file opened by qpdf."""
    return pikepdf.open(io.BytesIO(data))


@pytest.mark.parametrize("made", [usual, document], ids=["pattern", "document"])
def test_a_checker_finds_nothing_to_say(made: Callable[[], bytes]) -> None:
    """qpdf reads every object; the file says its language, and its pages have printed numbers."""
    data = made()
    file = opened(data)
    assert file.check_pdf_syntax() == []
    assert file.Root.Lang == "en"
    labels = [pypdfium2.PdfDocument(data).get_page_label(n) for n in range(len(file.pages))]
    assert labels == [str(n) for n in range(1, len(file.pages) + 1)]
    assert len(labels) > 1


@pytest.mark.parametrize("made", [usual, document], ids=["pattern", "document"])
def test_every_font_is_in_the_file(made: Callable[[], bytes]) -> None:
    """Nothing depends on fonts of the reader's machine."""
    file = opened(made())
    named = [one for one in file.objects if isinstance(one, pikepdf.Dictionary)]
    fonts = [one for one in named if one.get("/Type") == "/Font"]
    assert fonts
    for font in fonts:
        assert "DejaVuSans" in str(font.BaseFont)
        assert "/FontFile2" in font.FontDescriptor


@pytest.mark.parametrize("name", ["Ελένη Ζωγράφου", "Жанна Щукина", "Nguyễn Thị", "Łukasz Żółć"])
def test_names_in_other_alphabets_are_printed_and_found(name: str) -> None:
    """Greek, Cyrillic and accented Latin names are text that a search finds."""
    text = named(name)
    assert name in text
    assert "spelt in Latin" not in text


@pytest.mark.parametrize("name", ["שרה לוי", "فاطمة"])
def test_names_written_from_the_right_have_their_letters(name: str) -> None:
    """Hebrew and Arabic letters are in the font, in the order and joined as they are drawn."""
    lettering = Lettering()
    drawn = lettering.shaped(name)
    assert drawn != name
    assert "?" not in drawn
    assert lettering.says() == ""


def test_a_date_beside_a_name_from_the_right_keeps_its_order() -> None:
    """Only the name is turned round, not the date after it."""
    drawn = Lettering().shaped("Jersey top · فاطمة · 2026-11-02")
    assert drawn.startswith("Jersey top · ")
    assert drawn.endswith(" · 2026-11-02")


@pytest.mark.parametrize(("name", "sound"), [
    ("王小明", "WangXiaoMing"), ("김민지", "GimMinJi"), ("अनीता", "anita"), ("สมหญิง", "smhying"),
    ("🌸", ":cherry_blossom:"), ("प्रिया शर्मा", "priya srma"), ("ประยุทธ์", "prayuthth"),
])  # fmt: skip
def test_letters_the_font_lacks_are_spelt_by_their_sound(name: str, sound: str) -> None:
    """A class can tell its patterns apart in any script, and the first page says what was done."""
    text = named(name)
    assert sound in text
    assert "??" not in text
    assert "spelt in Latin ones" in " ".join(text.split())


def test_a_line_that_is_nowhere_is_refused() -> None:
    """A broken line is named in a sentence, and no file is made."""
    broken = Stroke(ruled(Point(0, 0), Point(math.nan, 1)), Layer.CUT, name="hem", part="front")
    prints = tiled(pattern(), A4, 10.0, 12.0)
    canvas_ = replace(prints.canvas, inks=(*prints.canvas.inks, broken))
    with pytest.raises(DraftError, match="front hem"):
        pdf(replace(prints, canvas=canvas_))


def test_a_projector_page_is_dark_to_its_edges() -> None:
    """Light on dark covers the whole page, so no white border dazzles."""
    data = pdf(projected(pattern()), DARK)
    pixels = pypdfium2.PdfDocument(data)[1].render(scale=0.2, grayscale=True).to_numpy()
    assert pixels[3:-3, 3:-3].mean() < 80
    assert sorted(set(re.findall(rb"/PrintScaling /(\w+)", data))) == [b"None"]
