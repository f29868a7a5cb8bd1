"""Printed sheets measured from outside.

Renderers: pdfium for PDF, resvg for SVG. Readers: ezdxf for DXF, svgelements for SVG. Sizes of
squares and marks are exact: 1 in = 25.4 mm, a PDF unit is 1/72 in [iso32000-1, 8.3.2.3], a CSS
pixel is 1/96 in [css, 5.2].
"""

import io
from functools import cache
from itertools import pairwise

import ezdxf
import numpy as np
import pytest
import resvg_py
from msgspec.structs import replace
from paper_pixels import (
    Patch,
    areas_put_together,
    cells_found,
    cut_lines,
    ink_of,
    level,
    middle,
    opened,
    page_size,
    upright,
)
from paper_samples import EDGES, cut_area, pattern
from PIL import Image
from scipy import ndimage
from svgelements import SVG
from svgelements import Path as ParsedPath

from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Vector
from tapewise_core.paper import sizes
from tapewise_core.paper.drawing import Drawing, Stroke
from tapewise_core.paper.look import LIGHT
from tapewise_core.paper.packing import ink_box
from tapewise_core.paper.projector import projected
from tapewise_core.paper.roll import rolled
from tapewise_core.paper.scale import squares
from tapewise_core.paper.sheet import Prints, Sheet
from tapewise_core.paper.sizes import A0, A3, A4, A4_OR_LETTER, LETTER
from tapewise_core.paper.tiling import large, tiled
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit
from tapewise_core.writers.dxf import cutter_dxf, plain_dxf
from tapewise_core.writers.pdf import pdf
from tapewise_core.writers.svg import svg

MAKERS = {
    "pdf-a4": lambda: tiled(pattern(), A4, 10.0, 12.0),
    "pdf-letter": lambda: tiled(pattern(), LETTER, 10.0, 12.0),
    "pdf-a3": lambda: tiled(pattern(), A3, 10.0, 12.0),
    "pdf-a4-letter": lambda: tiled(pattern(), A4_OR_LETTER, 10.0, 12.0),
    "pdf-a0": lambda: large(pattern(times=3), A0, 10.0, 12.0),
    "pdf-roll": lambda: rolled(pattern(), sizes.ROLL, 10.0),
}
NAMES = list(MAKERS)


@cache
def made(name: str) -> tuple[Prints, bytes]:
    """Return the sheets of one format and the file they give."""
    prints = MAKERS[name]()
    return prints, pdf(prints)


def line_box(sheet: Sheet, prints: Prints, name: str) -> Box | None:
    """Return where on a sheet a line of this name should lie [mm], if it is there."""
    for ink in sheet.inks:
        if isinstance(ink, Stroke) and ink.name == name:
            return box_of(ink.corners())
    for ink in prints.canvas.inks if sheet.window else ():
        if isinstance(ink, Stroke) and ink.name == name and sheet.window:
            box, seen, at = box_of(ink.corners()), sheet.window.seen, sheet.window.at
            across = seen.left <= box.left and box.right <= seen.right
            if across and seen.top <= box.top and box.bottom <= seen.bottom:
                x, y = at.x - seen.left, at.y - seen.top
                return Box(box.left + x, box.top + y, box.right + x, box.bottom + y)
    return None


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize(("label", "side"), [("100 mm by 100 mm", 100.0), ("4 in by 4 in", 101.6)])
def test_squares_measure_what_they_say(name: str, label: str, side: float) -> None:
    """Both squares are right to a tenth of a millimetre, across and down, as pdfium draws them."""
    prints, data = made(name)
    found = 0
    for number, sheet in enumerate(prints.sheets):
        box = line_box(sheet, prints, label)
        if box:
            found += 1
            low, high = box.top + 60, box.top + 95
            across = [upright(data, number, x, low, high) for x in (box.left, box.right)]
            down = [
                level(data, number, y, box.left + 60, box.left + 95) for y in (box.top, box.bottom)
            ]
            assert across[1] - across[0] == pytest.approx(side, abs=0.1)
            assert down[1] - down[0] == pytest.approx(side, abs=0.1)
    assert found == 1


@pytest.mark.parametrize("name", NAMES)
def test_every_page_carries_a_true_mark(name: str) -> None:
    """The 50 mm mark stands on each page of the pattern and measures 50 mm."""
    prints, data = made(name)
    for number, sheet in enumerate(prints.sheets):
        if sheet.window:
            box = line_box(sheet, prints, "50 mm")
            assert box
            ends = [
                upright(data, number, x, box.top + 0.6, box.top + 1.8)
                for x in (box.left, box.right)
            ]
            assert ends[1] - ends[0] == pytest.approx(50, abs=0.1)


@pytest.mark.parametrize("name", NAMES[:4])
def test_rules_measure_200(name: str) -> None:
    """The rules on the first page are 200 mm long, across and down."""
    prints, data = made(name)
    across = line_box(prints.sheets[0], prints, "200 mm across")
    down = line_box(prints.sheets[0], prints, "200 mm down")
    assert across
    assert down
    xs = [
        upright(data, 0, x, across.top - 2.5, across.top - 0.5) for x in (across.left, across.right)
    ]
    ys = [level(data, 0, y, down.left - 2.5, down.left - 0.5) for y in (down.top, down.bottom)]
    assert xs[1] - xs[0] == pytest.approx(200, abs=0.1)
    assert ys[1] - ys[0] == pytest.approx(200, abs=0.1)


@pytest.mark.parametrize("name", NAMES)
def test_pages_have_the_size_they_are_sold_in(name: str) -> None:
    """ISO 216, ANSI, the smaller of both, and a roll's width within the format's 5080 mm."""
    wanted = {
        "pdf-a4": {210.0, 297.0},
        "pdf-letter": {215.9, 279.4},
        "pdf-a3": {297.0, 420.0},
        "pdf-a4-letter": {210.0, 279.4},
        "pdf-a0": {841.0, 1189.0},
    }
    prints, data = made(name)
    for number in range(len(prints.sheets)):
        width, height = page_size(data, number)
        if name == "pdf-roll":
            assert width == pytest.approx(914, abs=0.01)
            assert height <= 5080
        else:
            assert sorted((width, height)) == pytest.approx(sorted(wanted[name]), abs=0.01)


FINE = 12.0
"""Pixels a millimetre when a single line is looked for."""


def straight(path: Path, at: float) -> bool:
    """Say whether a path goes on without a corner a millimetre either way."""
    before, here, after = (path.at(at + step)[0] for step in (-1.0, 0.0, 1.0))
    return (here - before).angle_to(after - here) < 2


@pytest.mark.parametrize("name", NAMES[:4])
def test_pages_laid_cross_on_cross_give_the_pattern_back(name: str) -> None:
    """Every cut line, looked for on its page from the crosses found there, is within 0.2 mm; where
    no page follows, on the strip beyond its cell too."""
    prints, data = made(name)
    grid = [size - 12 for size in (prints.sheets[1].width - 20, prints.sheets[1].height - 29)]
    cuts = cut_lines(prints)
    steps = [(cut.path, at) for cut in cuts for at in np.arange(3, cut.path.length() - 1, 7.0)]
    ways = [path.at(at) for path, at in steps if straight(path, at)]
    seen, places = 0, cells_found(prints, data)
    filled = {(row, column) for _, row, column, _ in places}
    for number, row, column, cell in places:
        right = grid[0] - 1 if (row, column + 1) in filled else grid[0] + 8
        below = grid[1] - 1 if (row + 1, column) in filled else grid[1] + 8
        across, down = cell.width / grid[0], cell.height / grid[1]
        assert (across, down) == pytest.approx((1, 1), abs=1e-3)
        picture = ink_of(data, number, Box(0, 0, *page_size(data, number)), FINE)
        for point, along in ways:
            x, y = point.x - column * grid[0], point.y - row * grid[1]
            if 1 < x < right and 1 < y < below:
                found = aside(picture, cell.left + x * across, cell.top + y * down, along)
                seen += 1
                assert abs(found) < 0.2, (number, point)
    assert seen > 0.9 * len(ways)


def aside(page: Patch, x: float, y: float, along: Vector) -> float:
    """Return how far the middle of the line lies from a place [mm], square to its direction."""
    pixels = (page.ink.shape[1] / page.box.width, page.ink.shape[0] / page.box.height)
    left, top = round((x - 0.7) * pixels[0]), round((y - 0.7) * pixels[1])
    side = round(1.4 * FINE)
    patch = page.ink[top : top + side, left : left + side]
    assert patch.sum() > FINE, "no line here"
    middle_x = (left + middle(patch.sum(axis=0))) / pixels[0]
    middle_y = (top + middle(patch.sum(axis=1))) / pixels[1]
    return float(along.cross(Vector(middle_x - x, middle_y - y)))


@pytest.mark.parametrize("name", ["pdf-a4", "pdf-letter"])
def test_pieces_put_together_keep_their_area(name: str) -> None:
    """Each piece has its drafted area, as near as a tenth of a millimetre along its cut line."""
    areas = areas_put_together(*made(name))
    assert set(areas) == set(EDGES)
    for part, (area, outline) in areas.items():
        assert area == pytest.approx(cut_area(EDGES[part]), abs=outline * 0.1)


def test_a_cutter_file_keeps_areas_and_passes_the_audit() -> None:
    """Read by ezdxf: no faults, millimetres, a block a piece, cut line closed, y up, area kept."""
    drawing = ezdxf.read(io.StringIO(cutter_dxf(pattern().pieces).decode("ascii"), newline=None))
    audit = drawing.audit()
    assert (audit.errors, audit.fixes) == ([], [])
    assert drawing.units == 4
    for name, edges in EDGES.items():
        lines = list(drawing.blocks.get(name.upper()).query("POLYLINE"))
        by_layer = {layer: [x for x in lines if x.dxf.layer == layer] for layer in ("1", "14", "7")}
        assert [line.is_closed for line in by_layer["1"]] == [True]
        assert [line.is_closed for line in by_layer["14"]] == [True]
        assert len(by_layer["7"]) == 1
        corners = [(v.dxf.location.x, v.dxf.location.y) for v in by_layer["1"][0].vertices]
        twice = sum(a[0] * b[1] - b[0] * a[1] for a, b in pairwise([*corners, corners[0]]))
        assert -twice / 2 == pytest.approx(cut_area(edges), rel=1e-6)


def test_a_plain_drawing_file_passes_the_audit() -> None:
    """Read by ezdxf: no faults, millimetres, named layers, every cut line of its drafted area."""
    drawing = ezdxf.read(io.StringIO(plain_dxf(pattern().pieces).decode("ascii"), newline=None))
    audit = drawing.audit()
    assert (audit.errors, audit.fixes) == ([], [])
    assert drawing.units == 4
    cuts = drawing.modelspace().query('POLYLINE[layer=="CUT"]')
    areas = []
    for line in cuts:
        corners = [(v.dxf.location.x, v.dxf.location.y) for v in line.vertices]
        areas.append(
            -sum(a[0] * b[1] - b[0] * a[1] for a, b in pairwise([*corners, corners[0]])) / 2
        )
    assert areas == pytest.approx([cut_area(edges) for edges in EDGES.values()], rel=1e-6)


def test_svg_read_back_keeps_lengths() -> None:
    """Read by svgelements at 96 units an inch: every edge is as long as it was drafted."""
    piece = pattern().pieces[0]
    parsed = SVG.parse(io.StringIO(svg(piece)), ppi=25.4)
    lengths = {
        str(shape.id): shape.length(error=1e-6)
        for shape in parsed.elements()
        if isinstance(shape, ParsedPath) and shape.id
    }
    for name, (path, _) in EDGES["front"].items():
        key = f"stitch-front-stitch-{name.replace('_', '-')}"
        assert lengths[key] == pytest.approx(path.length(), abs=0.01)


def test_svg_squares_measure_what_they_say() -> None:
    """Rendered by resvg at 254 dpi, a square of 100 mm is 1000 pixels wide and high."""
    drawing = squares()
    data = resvg_py.svg_to_bytes(svg_string=svg(drawing), dpi=254)
    picture = np.asarray(Image.open(io.BytesIO(bytes(data))).convert("RGBA"))[..., 3] / 255
    left, top = -drawing.box.left * 10, -drawing.box.top * 10
    row = picture[int(top) + 500]
    near = [row[int(left + x) - 20 : int(left + x) + 20] for x in (0, 1000)]
    edges = [float((strip * np.arange(40)).sum() / strip.sum()) for strip in near]
    assert 1000 + edges[1] - edges[0] == pytest.approx(1000, abs=1.0)


@pytest.mark.parametrize(("unit", "step"), [(Unit.CM, 50.0), (Unit.IN, 50.8)])
def test_the_projector_grid_is_as_wide_as_it_says(unit: Unit, step: float) -> None:
    """Lines of its two pages' grids lie 5 cm or 2 in apart as pdfium draws them, as is written."""
    prints = projected(replace(pattern(), reader=Reader(unit)))
    data = pdf(prints, LIGHT)
    for page, sheet in enumerate(prints.sheets):
        width, height = page_size(data, page)
        assert (width, height) == pytest.approx((sheet.width, sheet.height), abs=0.01)
        ink = ink_of(data, page, Box(10, 2, width - 10, 4), 4.0).ink
        lines, count = ndimage.label(ink.mean(axis=0) > 0.1)
        middles = ndimage.center_of_mass(ink.mean(axis=0), lines, range(1, count + 1))
        gaps = np.diff([m[0] for m in middles]) / 4.0
        assert gaps == pytest.approx(step, abs=0.15)
        assert count == round(width / step) - 1
        words = " ".join(opened(data)[page].get_textpage().get_text_range().split())
        assert ("5 cm" if unit is Unit.CM else "2 in") in words


def test_the_square_to_set_a_projector_up_by_measures_what_it_says() -> None:
    """20 in for who reads inches, 50 cm for others, as pdfium draws it."""
    for unit, side in ((Unit.CM, 500.0), (Unit.IN, 508.0)):
        prints = projected(replace(pattern(), reader=Reader(unit)))
        data = pdf(prints, LIGHT)
        lines = [ink for ink in prints.sheets[0].inks if isinstance(ink, Stroke)]
        near = box_of(next(ink for ink in lines if ink.name == "square").corners())
        xs = [upright(data, 0, x, near.top + 20, near.top + 40, 4) for x in (near.left, near.right)]
        assert xs[1] - xs[0] == pytest.approx(side, abs=0.1)


def test_text_is_found_where_it_is_seen() -> None:
    """pdfium finds a piece's name on the pages that show it, and only there."""
    prints, data = made("pdf-a4")
    document = opened(data)
    shown = [
        number
        for number in range(1, len(document))
        if "neckband" in document[number].get_textpage().get_text_range()
    ]
    words = next(ink for ink in prints.canvas.inks if getattr(ink, "text", "") == "neckband")
    box = ink_box(Drawing("", "", prints.canvas.box, (words,)))
    expected = [
        number
        for number, sheet in enumerate(prints.sheets)
        if sheet.window
        and sheet.window.seen.left < box.right
        and sheet.window.seen.right > box.left
        and sheet.window.seen.top < box.bottom
        and sheet.window.seen.bottom > box.top
    ]
    assert shown == expected
