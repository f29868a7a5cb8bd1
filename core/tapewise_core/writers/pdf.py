"""Sheets as PDF at exact size: one drawing of the whole pattern, seen through a window a page."""

from __future__ import annotations

from collections.abc import Sequence
from io import BytesIO
from typing import TYPE_CHECKING, Any

from msgspec.structs import replace

from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing, Ink, Layer, Stroke, TextLine
from tapewise_core.paper.look import NAMES, PRINTED, Look
from tapewise_core.paper.safe import checked
from tapewise_core.paper.sheet import Prints, Sheet, Window
from tapewise_core.writers.lettering import FONT, Lettering
from tapewise_core.writers.pdf_library import prepare
from tapewise_core.writers.pdf_pen import POINTS, PdfPen

if TYPE_CHECKING:
    from reportlab.pdfgen.canvas import Canvas


LAYERED = (1, 5)
"""The first version of the format that has layers [iso32000-1, 8.11]."""


def pdf(prints: Prints, look: Look = PRINTED) -> bytes:
    """Return the sheets as one PDF file.

    The canvas's lines are stored once, in layers, and every page shows its
    share of them; words are stored page by page, so that a search finds them
    where they are seen. The same prints give the same bytes. Raises DraftError
    for a line that is nowhere.
    """
    return _Book(prints, look).bytes()


class _Book:
    """One PDF file while it is written."""

    def __init__(self, prints: Prints, look: Look) -> None:
        prepare()
        from reportlab.pdfgen.canvas import Canvas

        self.prints = replace(prints, canvas=checked(prints.canvas))
        self.look = look
        self.file = BytesIO()
        first = prints.sheets[0]
        size = (first.width * POINTS, first.height * POINTS)
        self.lettering = Lettering()
        self.page: Canvas = Canvas(
            self.file,
            pagesize=size,
            invariant=1,
            pageCompression=1,
            pdfVersion=LAYERED,
            lang="en",
            initialFontName=FONT,  # type: ignore[arg-type]  # else one that is not in the file
        )
        self.raw: Any = self.page
        self.pen = PdfPen(self.page, look, self.lettering)

    def bytes(self) -> bytes:
        """Write everything and return the file."""
        self._information()
        self._forms()
        for sheet in self.prints.sheets:
            self.lettering.note(sheet.inks)
        for number, sheet in enumerate(self.prints.sheets):
            self._sheet(sheet, number)
        self.raw.addPageLabel(0, style="ARABIC")  # as the pages are numbered on paper
        self.page.save()
        return self.file.getvalue()

    def _information(self) -> None:
        """Document information, and a request not to scale and to print on one side."""
        prints, page = self.prints, self.page
        drawn = checked(Drawing(prints.title, prints.subject, prints.canvas.box, ()))
        page.setTitle(" – ".join(word for word in (drawn.title, prints.person) if word))
        page.setSubject(drawn.description)
        page.setAuthor("")
        page.setCreator("tapewise")
        page.setViewerPreference("PrintScaling", "None")
        page.setViewerPreference("Duplex", "Simplex")

    def _forms(self) -> None:
        """The canvas's lines once, and for each page the words it shows."""
        canvas = self.prints.canvas
        used = {ink.layer for ink in canvas.inks}
        self.layers = [layer for layer in Layer if layer in used]
        self.groups = _declared(self.page, self.layers)
        self._form("lines", [ink for ink in canvas.inks if isinstance(ink, Stroke)])
        words = [(ink, box_of(ink.corners())) for ink in canvas.inks if isinstance(ink, TextLine)]
        for number, sheet in enumerate(self.prints.sheets):
            if sheet.window:
                seen = sheet.window.seen
                self._form(f"words{number}", [ink for ink, box in words if _meet(box, seen)])

    def _form(self, name: str, inks: Sequence[Ink]) -> None:
        """Ink on the canvas; each layer can be hidden in a reader that knows layers."""
        box, raw = self.prints.canvas.box, self.raw
        left, low, right, high = (
            edge * POINTS for edge in (box.left, -box.bottom, box.right, -box.top)
        )
        raw.beginForm(name, left, low, right, high)
        for number, layer in enumerate(self.layers):
            members = [ink for ink in inks if ink.layer is layer]
            if members:
                raw._code.append(f"/OC /OC{number} BDC")
                for ink in members:
                    self.pen.draw(ink, 0.0)
                raw._code.append("EMC")
        raw.endForm(Resources=_resources(self.groups))

    def _sheet(self, sheet: Sheet, number: int) -> None:
        page, height = self.page, sheet.height
        page.setPageSize((sheet.width * POINTS, height * POINTS))
        page.bookmarkPage(f"sheet{number}")
        page.addOutlineEntry(sheet.name, f"sheet{number}")
        if self.look.paper:
            page.setFillColor(self.look.paper)
            page.rect(0, 0, sheet.width * POINTS, height * POINTS, stroke=0, fill=1)
        if sheet.window:
            self._show(sheet.window, height, number)
        drawn = checked(Drawing(sheet.name, "", self.prints.canvas.box, sheet.inks))
        for ink in drawn.inks:
            self.pen.draw(ink, height)
        if number == 0:
            self._missing(sheet)
        page.showPage()

    def _show(self, window: Window, height: float, number: int) -> None:
        page, seen, at = self.page, window.seen, window.at
        page.saveState()
        frame = page.beginPath()
        foot = height - at.y - seen.height
        frame.rect(at.x * POINTS, foot * POINTS, seen.width * POINTS, seen.height * POINTS)
        page.clipPath(frame, stroke=0, fill=0)
        page.translate((at.x - seen.left) * POINTS, (height - at.y + seen.top) * POINTS)
        page.doForm("lines")
        page.doForm(f"words{number}")
        page.restoreState()

    def _missing(self, sheet: Sheet) -> None:
        """Say on the first page which letters the printed font does not have."""
        said = self.lettering.says()
        if said:
            at = Point(10, sheet.height - 6)
            self.pen.draw(TextLine(said, at, 2.4, layer=Layer.TEXT), sheet.height)


def _meet(one: Box, other: Box) -> bool:
    across = one.left < other.right and one.right > other.left
    return across and one.top < other.bottom and one.bottom > other.top


def _declared(page: Canvas, layers: Sequence[Layer]) -> list[Any]:
    """Declare optional content groups, one a layer, and return references to them.

    The library has no public way to do this; a test counts them in the file.
    """
    from reportlab.pdfbase.pdfdoc import PDFArray, PDFDictionary, PDFName, PDFString

    raw: Any = page
    document = raw._doc
    groups = [
        document.Reference(
            PDFDictionary({"Type": PDFName("OCG"), "Name": PDFString(NAMES[layer])}), f"layer{i}"
        )
        for i, layer in enumerate(layers)
    ]
    catalog, order = document.Catalog, PDFArray(groups)
    catalog.__NoDefault__ = [*catalog.__NoDefault__, "OCProperties"]
    state = PDFDictionary({"Order": order, "ON": order})
    catalog.OCProperties = PDFDictionary({"OCGs": order, "D": state})
    return groups


def _resources(groups: Sequence[Any]) -> Any:
    """Return what a form needs to name its layers."""
    from reportlab.pdfbase.pdfdoc import PDFResourceDictionary

    resources: Any = PDFResourceDictionary()
    resources.basicFonts()
    resources.Properties = {f"OC{i}": group for i, group in enumerate(groups)}
    return resources
