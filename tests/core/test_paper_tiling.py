"""A pattern over many pages: nothing lost, nothing empty, and the pages find each other."""

import re
from collections import Counter
from collections.abc import Iterable
from functools import cache
from itertools import combinations, pairwise, product

import pytest
from msgspec.structs import replace
from paper_samples import EDGES, pattern, piece

from tapewise_core.errors import OptionError
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.path import curved, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper import sizes
from tapewise_core.paper.drawing import Drawing, Ink, Layer, Stroke, TextLine
from tapewise_core.paper.grid import Grid, carrying, line_of
from tapewise_core.paper.packing import GAP, ink_box
from tapewise_core.paper.paging import Paging
from tapewise_core.paper.placing import placed
from tapewise_core.paper.scale import RULE, WRONG, rule_name
from tapewise_core.paper.shapes import Shape, kept_whole
from tapewise_core.paper.sheet import Prints, Sheet
from tapewise_core.paper.sizes import A0, A3, A4, A4_OR_LETTER, LETTER, PageSize
from tapewise_core.paper.solid import solid
from tapewise_core.paper.tiling import large, tiled
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

PAGES = [A4, LETTER, A3, A4_OR_LETTER]


@cache
def made(page: PageSize = A4, overlap: float = 12.0, margin: float = 10.0) -> Prints:
    """Return the sample pattern on pages."""
    return tiled(pattern(), page, margin, overlap)


def shapes(pieces: Iterable[Drawing]) -> list[Shape]:
    """Return pieces as the search for their places sees them."""
    return [Shape(one) for one in pieces]


def paging_of(prints: Prints, page: PageSize, overlap: float = 12.0) -> Paging:
    """Return how the pages lie, upright or on their side, as they were printed."""
    lying = prints.sheets[1].width != page.width
    return Paging(page.turned() if lying else page, 10.0, overlap)


def ink_points(inks: Iterable[Ink]) -> Iterable[Point]:
    """Return points every half millimetre along everything drawn."""
    for ink in inks:
        for a, b in pairwise(line_of(ink, 0.05)):
            steps = max(1, int((b - a).length() / 0.5))
            yield from (a.toward(b, i / steps) for i in range(steps + 1))


def words_on(sheet: Sheet) -> list[str]:
    """Return every text a sheet has of its own."""
    return [ink.text for ink in sheet.inks if isinstance(ink, TextLine)]


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_every_bit_of_ink_is_on_some_page(page: PageSize) -> None:
    """No part of a line falls between pages or past the last one."""
    prints = made(page)
    windows = [sheet.window.seen for sheet in prints.sheets if sheet.window]
    for point in ink_points(prints.canvas.inks):
        assert any(
            seen.left - 1e-6 <= point.x <= seen.right + 1e-6
            and seen.top - 1e-6 <= point.y <= seen.bottom + 1e-6
            for seen in windows
        )


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_no_page_is_empty(page: PageSize) -> None:
    """Each page after the map has ink of the pattern in its own cell."""
    prints = made(page)
    grid = paging_of(prints, page).grid()
    with_ink = {grid.cell(point) for point in ink_points(prints.canvas.inks)}
    for sheet in prints.sheets[1:]:
        row, column = map(int, re.findall(r"\d+", sheet.name))
        assert (row - 1, column - 1) in with_ink


def test_ink_in_the_glue_zone_asks_for_no_page() -> None:
    """A line that shows on the strip beyond the last page's cell needs no page of its own."""
    grid = Grid(100, 100, 9)
    assert carrying([Stroke(ruled(Point(10, 10), Point(108, 10)), Layer.CUT)], grid) == [(0, 0)]
    assert carrying([Stroke(ruled(Point(10, 10), Point(110, 10)), Layer.CUT)], grid) == [
        (0, 0),
        (0, 1),
    ]


def test_ink_under_the_border_of_another_page_asks_for_one() -> None:
    """What shows on the page above is covered where the page to the left has blank paper."""
    above = Stroke(ruled(Point(95, 50), Point(105, 50), Point(105, 95)), Layer.CUT)
    left = Stroke(ruled(Point(50, 150), Point(95, 150)), Layer.CUT)
    grid = Grid(100, 100, 9, 10)
    far, near = (Stroke(ruled(Point(x, 95), Point(x, 108)), Layer.CUT) for x in (130, 115))
    assert carrying([above, left, far], grid) == [(0, 0), (0, 1), (1, 0)]
    assert carrying([above, left, near], grid) == [(0, 0), (0, 1), (1, 0), (1, 1)]


def test_a_line_that_only_cuts_a_corner_is_not_lost() -> None:
    """A cell touched by a fraction of a millimetre of a long line is printed."""
    grid = Grid(100, 100)
    corner = Stroke(ruled(Point(99.9, 50), Point(100.3, 99.95), Point(40, 130)), Layer.CUT)
    assert carrying([corner], grid) == [(0, 0), (0, 1), (1, 0), (1, 1)]


def test_a_bulge_beyond_the_last_point_is_seen() -> None:
    """A curve that swings into the next cell between its ends asks for that page."""
    bulge = curved(Point(95, 10), Point(110, 30), Point(110, 60), Point(95, 90))
    assert carrying([Stroke(bulge, Layer.CUT)], Grid(100, 100)) == [(0, 0), (0, 1)]


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_pieces_do_not_touch(page: PageSize) -> None:
    """Room for scissors is left between any two pieces."""
    paging = Paging(page, 10.0, 12.0)
    laid = placed(shapes(pattern(times=2).pieces), paging.grid()).pieces
    for one, other in combinations((solid(drawing.inks) for drawing in laid), 2):
        assert one.distance(other) >= GAP - 1e-6


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_necklines_are_not_split(page: PageSize) -> None:
    """Front and back neckline each lie inside one cell, on every size of paper."""
    paging = Paging(page, 10.0, 12.0)
    grid = paging.grid()
    layout = placed(shapes(pattern().pieces), grid)
    boxes = [box for one in layout.pieces for box in kept_whole(one)]
    assert len(boxes) == 2
    for box in boxes:
        assert grid.cell(Point(box.left, box.top)) == grid.cell(Point(box.right, box.bottom))


def test_a_neckline_larger_than_a_page_is_placed_all_the_same() -> None:
    """What can't be kept whole is split without complaint."""
    wide = Stroke(ruled(Point(0, 0), Point(400, 40)), Layer.STITCH, name="stitch neckline")
    drawing = Drawing("wide", "", ink_box(pattern().pieces[0]), (wide,))
    assert placed([Shape(drawing)], Paging(A4, 10.0, 12.0).grid()).splits == 0


def test_placing_saves_pages() -> None:
    """Pieces share pages: fewer are printed than if each began on a page of its own."""
    grid = Paging(A4, 10.0, 12.0).grid()
    pieces = pattern().pieces
    together = len(made().sheets) - 1
    alone = sum(len(carrying(placed([Shape(one)], grid).pieces[0].inks, grid)) for one in pieces)
    assert together < alone


def cut(*corners: tuple[float, float]) -> Drawing:
    """Return a piece that is nothing but its cut line."""
    points = [Point(x, y) for x, y in corners]
    line = Stroke(ruled(*points, points[0]), Layer.CUT, closed=True, part="piece")
    return Drawing("piece", "", box_of(points), (line,))


def test_pieces_share_pages_by_their_outlines() -> None:
    """Two halves of a square lie as near as scissors allow, where their boxes would lie apart."""
    grid = Paging(A4, 10.0, 12.0).grid()
    lower = cut((0, 0), (0, 500), (500, 500))
    upper = cut((0, 0), (500, 0), (500, 500))
    whole = cut((0, 0), (515, 0), (515, 515), (0, 515))
    together = placed([Shape(lower), Shape(upper)], grid).pages
    assert together <= placed([Shape(whole)], grid).pages
    assert placed([Shape(whole), Shape(whole)], grid).pages >= together + 6


def test_a_band_lies_in_the_hollow_of_a_ring() -> None:
    """It asks for no page of its own."""
    ring = cut((0, 0), (700, 0), (700, 700), (0, 700), (0, 640), (640, 640), (640, 60), (0, 60))
    band = cut((0, 0), (400, 0), (400, 40), (0, 40))
    grid = Paging(A4, 10.0, 12.0).grid()
    assert placed([Shape(ring), Shape(band)], grid).pages == placed([Shape(ring)], grid).pages


@pytest.mark.parametrize("left", [40.0, 42.0, 44.0, 46.0])
def test_a_piece_settles_where_it_just_fits(left: float) -> None:
    """Only 3 of 178 mm of ways there are keep this neckline whole; the piece is moved there."""
    grid = Paging(A4, 10.0, 12.0).grid()
    piece, side = cut((0, 0), (400, 0), (400, 400), (0, 400)), grid.width - 3
    neck = Box(left, left, left + side, left + side)
    assert placed([Shape(replace(piece, whole=(neck,)))], grid).splits == 0


def test_no_page_is_printed_for_a_sliver() -> None:
    """A piece a little longer than two pages is moved so that its ends share them."""
    grid = Paging(A4, 10.0, 12.0).grid()
    long = cut((0, 0), (150, 0), (150, 2 * grid.height + 12), (0, 2 * grid.height + 12))
    layout = placed([Shape(long)], grid)
    (piece,) = layout.pieces
    top, bottom = ink_box(piece).top, ink_box(piece).bottom
    assert layout.pages == 3
    assert min(grid.height - top % grid.height, bottom % grid.height) > 0.02 * grid.height


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_every_page_has_its_crosses_on_the_grid(page: PageSize) -> None:
    """The four crosses of a page are exactly the corners of its cell on the canvas."""
    prints = made(page)
    grid = paging_of(prints, page).grid()
    for sheet in prints.sheets[1:]:
        row, column = (int(n) - 1 for n in re.findall(r"\d+", sheet.name))
        assert sheet.window
        seen, at = sheet.window.seen, sheet.window.at
        arms = [ink for ink in sheet.inks if isinstance(ink, Stroke) and ink.name == "cross"]
        middles = {arm.path.start.toward(arm.path.end, 0.5) for arm in arms}
        on_canvas = {
            (round(m.x - at.x + seen.left, 6), round(m.y - at.y + seen.top, 6)) for m in middles
        }
        xs = {round(grid.width * n, 6) for n in (column, column + 1)}
        ys = {round(grid.height * n, 6) for n in (row, row + 1)}
        assert on_canvas == {(x, y) for x in xs for y in ys}


def test_letters_pair() -> None:
    """Each letter stands on exactly two pages, at the same place of their common edge."""
    prints = made()
    seen: Counter[str] = Counter()
    places: dict[str, set[tuple[float, float]]] = {}
    for sheet in prints.sheets[1:]:
        assert sheet.window
        window = sheet.window
        for ink in sheet.inks:
            if isinstance(ink, Stroke) and ink.name.startswith("join"):
                seen[ink.name] += 1
                middle = ink.path.start.toward(ink.path.end, 0.5)
                x = middle.x - window.at.x + window.seen.left
                y = middle.y - window.at.y + window.seen.top
                places.setdefault(ink.name, set()).add((round(x, 6), round(y, 6)))
    assert seen
    assert set(seen.values()) == {2}
    assert all(len(spots) == 1 for spots in places.values())


def test_every_page_says_its_place_and_what_it_is() -> None:
    """Its number as a reader of the file counts, row, column, paper, garment, person and date."""
    prints = made()
    count = len(prints.sheets)
    for number, sheet in enumerate(prints.sheets, 1):
        text = " ".join(words_on(sheet))
        assert f"page {number} of {count}" in text
    for sheet in prints.sheets[1:]:
        text = " ".join(words_on(sheet))
        assert sheet.name in text
        assert "A4 at 100 %" in text
        assert "Jersey top · Zoë Œhler · 2026-11-02" in text
        assert "50 mm" in words_on(sheet)


def test_trim_lines_and_glue_zones_stand_where_a_neighbour_follows() -> None:
    """A page is trimmed exactly where another is glued below it, and nowhere else."""
    prints = made()
    sheets = {sheet.name: sheet for sheet in prints.sheets[1:]}

    def trims(name: str) -> int:
        return sum(isinstance(i, Stroke) and i.name == "trim" for i in sheets[name].inks)

    assert trims("row 1, column 1") == 0
    assert trims("row 1, column 2") == 1
    assert trims("row 2, column 2") == 2
    assert words_on(sheets["row 1, column 1"]).count("glue the next page here") == 2


def test_the_map_page_comes_first_and_tells_the_scale() -> None:
    """Both squares, both rules, the table of wrong squares and every cell are on page one."""
    prints = made()
    first = prints.sheets[0]
    lines = {ink.name for ink in first.inks if isinstance(ink, Stroke)}
    assert {"100 mm by 100 mm", "4 in by 4 in", "200 mm across", "200 mm down"} <= lines
    texts = words_on(first)
    for measured, _ in WRONG[Unit.CM][:-1]:
        assert measured in texts


def test_the_map_shows_numbers_letters_and_pieces() -> None:
    """Whoever holds page 7 finds it, its joins and its piece on the map."""
    prints = made()
    texts = words_on(prints.sheets[0])
    numbers = {re.findall(r"page (\d+) of", " ".join(words_on(s)))[0] for s in prints.sheets[1:]}
    joins = {
        ink.name.removeprefix("join ")
        for sheet in prints.sheets
        for ink in sheet.inks
        if isinstance(ink, Stroke) and ink.name.startswith("join ")
    }
    assert numbers | joins | {"front", "back"} <= set(texts)


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_names_on_the_map_lie_on_no_number_and_no_letter(page: PageSize) -> None:
    """Each piece is named where there is room, beside it if it is too narrow."""
    texts = [ink for ink in made(page).sheets[0].inks if isinstance(ink, TextLine)]
    names = {one for one in texts if one.text in EDGES}
    assert {one.text for one in names} == set(EDGES)
    for one, other in product(names, texts):
        if one is not other:
            here, there = box_of(one.corners()), box_of(other.corners())
            apart = (
                here.right <= there.left, there.right <= here.left,
                here.bottom <= there.top, there.bottom <= here.top,
            )  # fmt: skip
            assert any(apart), (one.text, other.text)


@pytest.mark.parametrize("unit", Unit)
def test_the_long_rule_tells_one_hundredth_apart(unit: Unit) -> None:
    """What it says when it is wrong is told in the reader's unit, and each row is another one."""
    prints = tiled(replace(pattern(), reader=Reader(unit)), LETTER, 10.0, 12.0)
    rules = [
        ink
        for ink in prints.sheets[0].inks
        if isinstance(ink, Stroke) and ink.name.startswith(rule_name(unit))
    ]
    assert [ink.path.length() for ink in rules] == pytest.approx([RULE[unit]] * 2)
    assert all(
        0 < end.x < LETTER.width and 0 < end.y < LETTER.height
        for ink in rules
        for end in (ink.path.start, ink.path.end)
    )
    told = [measured for measured, _ in WRONG[unit]]
    assert set(told[:-1]) <= set(words_on(prints.sheets[0]))
    assert ("mm" in " ".join(told)) is (unit is Unit.CM)


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_all_that_is_printed_lies_inside_the_corner_marks(page: PageSize) -> None:
    """Four marks on every page; if all are seen, nothing of the pattern was cut off."""
    for sheet in made(page).sheets:
        marks = [i for i in sheet.inks if isinstance(i, Stroke) and i.name == "corner"]
        assert len(marks) == 4
        box = box_of(point for ink in marks for point in ink.corners())
        assert 8 < box.left < 10
        assert 8 < sheet.height - box.bottom < 10
        if sheet.window:
            at, seen = sheet.window.at, sheet.window.seen
            assert box.left <= at.x
            assert at.x + seen.width <= box.right
            assert box.top <= at.y
            assert at.y + seen.height <= box.bottom


def test_a_row_of_pages_has_a_length_to_check() -> None:
    """Errors that add up are found: the map tells what a row measures from cross to cross."""
    text = " ".join(words_on(made().sheets[0]))
    assert "a page is 178.0 mm wide and 256.0 mm high" in text
    found = re.search(r"a row of (\d) measures\s+(\d+\.\d) mm", text)
    assert found
    assert int(found[1]) > 1
    assert float(found[2]) == int(found[1]) * 178.0


@pytest.mark.parametrize("overlap", [0.0, 3.9, 96.0, 190.0, 500.0])
def test_an_overlap_the_page_can_not_have_is_refused(overlap: float) -> None:
    """The sentence says what was wrong and what would be right."""
    with pytest.raises(OptionError, match=r"choose one from 4 to 95 mm"):
        made(overlap=overlap)


def test_margins_that_eat_the_page_are_refused() -> None:
    """A page with no room left is refused with the largest margin that works."""
    with pytest.raises(OptionError, match="choose margins up to 45 mm"):
        made(margin=60.0)


def test_large_sheets_split_only_what_is_larger() -> None:
    """On A0 every piece that fits a sheet lies on one sheet, and such sheets are not joined."""
    prints = large(pattern(times=3), A0, 10.0, 12.0)
    assert len(prints.sheets) > 1
    assert not [t for sheet in prints.sheets for t in words_on(sheet) if "glue" in t]
    windows = [sheet.window.seen for sheet in prints.sheets if sheet.window]
    for ink in prints.canvas.inks:
        if ink.layer is Layer.CUT:
            box = ink_box(Drawing("", "", windows[0], (ink,)))
            assert sum(seen.left <= box.left and seen.right >= box.right
                       and seen.top <= box.top and seen.bottom >= box.bottom
                       for seen in windows) == 1  # fmt: skip


def test_a_piece_larger_than_a_large_sheet_is_joined() -> None:
    """A skirt of 1.4 m goes over several A0 sheets with letters to join them."""
    huge = piece("skirt", {name: (path, w) for name, (path, w) in EDGES["front"].items()})
    side = ruled(Point(0, 0), Point(1400, 0), Point(1400, 1400), Point(0, 1400), Point(0, 0))
    drawing = Drawing("skirt", "", huge.box, (Stroke(side, Layer.CUT, closed=True),))
    sample = pattern()
    whole = type(sample)(sample.title, "", "", "", (drawing,), sample.by_hand, sample.checklist)
    prints = large(whole, A0, 10.0, 12.0)
    assert len(prints.sheets) == 4
    assert any("glue the next page here" in words_on(sheet) for sheet in prints.sheets)


def test_sizes_are_those_of_the_standards() -> None:
    """ISO 216 and ANSI sizes, and the size that suits both: as wide as A4, as high as Letter."""
    found = [(size.width, size.height) for size in (A4, A3, A0, LETTER)]
    assert found == [(210, 297), (297, 420), (841, 1189), (215.9, 279.4)]
    room = (A4_OR_LETTER.width - 2 * sizes.MARGIN, A4_OR_LETTER.height - 2 * sizes.MARGIN)
    assert room == pytest.approx((190, 259.4))
