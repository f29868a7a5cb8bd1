"""A real draft on paper: what renderers and readers find agrees with the record of the draft.

Renderer: pdfium. Readers: ezdxf, svgelements. The record's cut lines are within 0.1 mm of the
true curve; areas may differ by what that is along the outline.
"""

import io
from datetime import date
from functools import cache
from itertools import pairwise

import ezdxf
import pytest
from paper_pixels import areas_put_together, level, opened, upright
from svgelements import SVG
from svgelements import Path as ParsedPath

from tapewise_core.geometry.outline import box_of
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Stroke
from tapewise_core.paper.sheet import Prints
from tapewise_core.paper.sizes import A4, LETTER, PageSize
from tapewise_core.paper.tiling import tiled
from tapewise_core.profiles.examples import DEMO, example
from tapewise_core.tasks.contents import pattern_set
from tapewise_core.tasks.documents import drawings_of
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.record import record
from tapewise_core.writers.dxf import cutter_dxf
from tapewise_core.writers.formats import render
from tapewise_core.writers.pdf import pdf
from tapewise_core.writers.svg import svg


def anew() -> Drafted:
    """Draft the demo's top on a fixed day."""
    return draft(example(DEMO), "jersey-top", {}, made=date(2026, 11, 2))


drafted = cache(anew)


@cache
def on_pages(page: PageSize) -> tuple[Prints, bytes]:
    """Return its pages and the file they give."""
    prints = tiled(pattern_set(drafted()), page, 10.0, 12.0)
    return prints, pdf(prints)


def area(corners: list[tuple[float, float]]) -> float:
    """Return the area inside a closed list of places, whichever way it runs."""
    return abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in pairwise([*corners, corners[0]]))) / 2


def length(corners: list[tuple[float, float]]) -> float:
    """Return the length of a closed list of places."""
    return sum(
        ((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2) ** 0.5
        for a, b in pairwise([*corners, corners[0]])
    )


@cache
def recorded() -> dict[str, list[tuple[float, float]]]:
    """Return each piece's cut line by name as the record has it [mm]."""
    pieces = record(drafted(), [])["pieces"]
    assert isinstance(pieces, list)
    return {piece["name"]: [(x * 10, y * 10) for x, y in piece["cut_line"]] for piece in pieces}


@pytest.mark.parametrize("page", [A4, LETTER], ids=lambda page: page.name)
def test_joined_pages_have_the_recorded_areas(page: PageSize) -> None:
    """Pages laid cross on cross and painted inside the cut lines give the record's areas."""
    found = areas_put_together(*on_pages(page))
    assert set(found) == set(recorded())
    for name, corners in recorded().items():
        assert found[name][0] == pytest.approx(area(corners), abs=0.1 * length(corners))


def test_the_cutter_file_has_the_recorded_areas() -> None:
    """Cut lines read back by ezdxf enclose what the record says."""
    text = cutter_dxf(pattern_set(drafted()).pieces).decode("ascii")
    drawing = ezdxf.read(io.StringIO(text, newline=None))
    assert (drawing.audit().errors, drawing.audit().fixes) == ([], [])
    for name, corners in recorded().items():
        (line,) = drawing.blocks.get(name.replace("_", "-").upper()).query('POLYLINE[layer=="1"]')
        places = [(v.dxf.location.x, v.dxf.location.y) for v in line.vertices]
        assert line.is_closed
        assert area(places) == pytest.approx(area(corners), abs=0.1 * length(corners))


def test_the_svg_has_the_recorded_areas() -> None:
    """Cut lines read back by svgelements enclose what the record says."""
    for name, piece in zip(recorded(), drawings_of(drafted()), strict=True):
        parsed = SVG.parse(io.StringIO(svg(piece)), ppi=25.4)
        (cut,) = (
            shape
            for shape in parsed.elements()
            if isinstance(shape, ParsedPath) and str(shape.id).endswith("-cut")
        )
        places = [(point.x, point.y) for point in cut.as_points()]
        corners = recorded()[name]
        assert area(places) == pytest.approx(area(corners), abs=0.1 * length(corners))


def test_the_first_page_proves_the_scale() -> None:
    """The 100 mm square of a real draft's map page measures 100 mm across and down."""
    prints, data = on_pages(A4)
    square = next(
        ink
        for ink in prints.sheets[0].inks
        if isinstance(ink, Stroke) and ink.name == "100 mm by 100 mm"
    )
    box = box_of(square.corners())
    xs = [upright(data, 0, x, box.top + 75, box.top + 95) for x in (box.left, box.right)]
    ys = [level(data, 0, y, box.left + 70, box.left + 95) for y in (box.top, box.bottom)]
    assert xs[1] - xs[0] == pytest.approx(100, abs=0.1)
    assert ys[1] - ys[0] == pytest.approx(100, abs=0.1)


def test_necklines_of_a_real_draft_are_whole() -> None:
    """Front and back neckline each lie inside one cell of the pages."""
    prints, _ = on_pages(A4)
    cells = [(sheet.window.seen, sheet.name) for sheet in prints.sheets if sheet.window]
    necks = [
        box_of(ink.corners())
        for ink in prints.canvas.inks
        if isinstance(ink, Stroke) and ink.name == "stitch neckline" and ink.part != "neckband"
    ]
    assert len(necks) == 2
    for box in necks:
        corners = (Point(box.left, box.top), Point(box.right, box.bottom))
        holding = [
            name
            for seen, name in cells
            if all(
                seen.left + 3 <= p.x <= seen.right - 9 and seen.top + 3 <= p.y <= seen.bottom - 9
                for p in corners
            )
        ]
        assert len(holding) == 1


def test_the_estimates_are_printed() -> None:
    """What was estimated and not measured stands on the first page of paper and in the HTML."""
    files = render("html", pattern_set(drafted()))
    assert drafted().estimated
    first = " ".join(opened(on_pages(A4)[1])[0].get_textpage().get_text_range().split())
    for words in drafted().estimated:
        assert words in first
        assert words in files["pattern.html"].decode()


def test_the_same_draft_gives_the_same_files() -> None:
    """Every format of a draft of a fixed date is the same when drafted and made again."""
    first, again = pattern_set(drafted()), pattern_set(anew())
    for name in ("pdf-a4", "pdf-a0", "pdf-roll", "pdf-projector", "dxf", "html"):
        assert render(name, first) == render(name, again)
