"""Every way onto paper by name, and the sentences for what no paper has."""

import subprocess
import sys
from functools import cache

import pytest
from making import DAY, person
from msgspec.structs import replace
from paper_samples import pattern
from shapely import LineString, MultiPoint, Polygon

from tapewise_core.errors import OptionError
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper import projector
from tapewise_core.paper.drawing import Drawing, Layer, Stroke, TextLine
from tapewise_core.paper.sizes import PageSize
from tapewise_core.tasks.contents import pattern_set
from tapewise_core.tasks.drafting import draft
from tapewise_core.writers.formats import FORMATS, render
from tapewise_core.writers.makers import PaperOptions


@cache
def rendered(name: str) -> dict[str, bytes]:
    """Return the files of a format for the sample pattern."""
    paper = PaperOptions(page=PageSize("30x42 cm", 300, 420) if name == "pdf-page" else None)
    return render(name, pattern(), paper)


def with_piece(width: float, height: float) -> Drawing:
    """Return a rectangle as a piece."""
    corners = (Point(0, 0), Point(width, 0), Point(width, height), Point(0, height), Point(0, 0))
    cut = Stroke(ruled(*corners), Layer.CUT, closed=True, name="cut", part="skirt")
    return Drawing("skirt", "", Box(0, 0, width, height), (cut,))


OTHER_SIZES = {
    "pdf-letter", "pdf-a4-letter", "pdf-a3", "pdf-legal", "pdf-tabloid", "pdf-page",
    "pdf-a2", "pdf-a1", "pdf-24x36", "pdf-36x48",
}  # fmt: skip
"""Made as pdf-a4 or pdf-a0 is, on paper of another size."""


@pytest.mark.parametrize("name", FORMATS)
def test_every_format_gives_the_files_it_names(name: str) -> None:
    """Files bear the format's ending and are not empty."""
    files = rendered(name)
    assert tuple(files) == FORMATS[name].files
    assert all(file.endswith(f".{FORMATS[name].extension}") for file in files)
    assert all(len(content) > 500 for content in files.values())


@pytest.mark.parametrize("name", [name for name in FORMATS if name not in OTHER_SIZES])
def test_a_format_made_twice_is_the_same(name: str) -> None:
    """Each way of making files once: no size of paper makes them otherwise."""
    assert rendered(name) == rendered.__wrapped__(name)


def test_file_names_of_all_formats_are_different() -> None:
    """All formats can be asked for at once without one replacing another's file."""
    names = [file for one in FORMATS.values() for file in one.files]
    assert len(names) == len(set(names))


def test_an_unknown_format_is_refused() -> None:
    """The sentence lists those there are."""
    with pytest.raises(OptionError, match=r"no format “pdf-a5”; choose pdf-a4, "):
        render("pdf-a5", pattern())


@pytest.mark.parametrize("name", ["overlap", "roll", "margin"])
@pytest.mark.parametrize("value", [float("nan"), float("inf"), -1.0])
def test_lengths_that_are_none_are_refused(name: str, value: float) -> None:
    """Not a number, no end, or below zero: said by the option's name."""
    with pytest.raises(OptionError, match=name):
        render("html", pattern(), replace(PaperOptions(), **{name: value}))


def test_a_piece_wider_than_the_roll_is_turned() -> None:
    """A piece of 1200 by 400 goes lengthways on a roll of 914."""
    sample = replace(pattern(), pieces=(with_piece(1200, 400),))
    assert render("pdf-roll", sample)["pattern-roll.pdf"].startswith(b"%PDF")


def test_a_piece_that_fits_no_way_on_the_roll_is_refused() -> None:
    """The sentence names the piece, its size, the roll, and a width that would do."""
    sample = replace(pattern(), pieces=(with_piece(1200, 1000),))
    with pytest.raises(
        OptionError, match=r"“skirt” is 1200 mm wide and 1000 mm long .* 1026 mm or"
    ):
        render("pdf-roll", sample)
    assert render("pdf-roll", sample, PaperOptions(roll=1026))


def test_a_piece_longer_than_a_page_may_be_is_refused() -> None:
    """Past the 5080 mm a page may have, pages to join are proposed."""
    sample = replace(pattern(), pieces=(with_piece(300, 5100),))
    with pytest.raises(OptionError, match="5080 mm long"):
        render("pdf-roll", sample)
    with pytest.raises(OptionError, match="take pdf-roll or pdf-a4"):
        render("svg-projector", sample)
    assert render("pdf-a4", sample)


def test_a_long_set_is_broken_into_pages_of_the_roll() -> None:
    """Pieces that together pass the limit go on a second page, none of them split."""
    import pypdfium2

    sample = replace(pattern(), pieces=tuple(with_piece(800, 2000) for _ in range(3)))
    document = pypdfium2.PdfDocument(render("pdf-roll", sample)["pattern-roll.pdf"])
    assert len(document) == 2
    assert all(page.get_height() <= 14400 for page in document)


@pytest.mark.parametrize("width", [100.0, 6000.0])
def test_a_roll_nobody_sells_is_refused(width: float) -> None:
    """Too narrow for the squares, or wider than a page may be."""
    with pytest.raises(OptionError, match="choose a width from"):
        render("pdf-roll", pattern(), PaperOptions(roll=width))


def test_naming_the_formats_loads_no_library() -> None:
    """A command line that only lists formats pays for no PDF, SVG or geometry library."""
    code = (
        "import sys, tapewise_core.writers.formats;"
        "print({'reportlab', 'svgwrite', 'shapely', 'numpy', 'bidi'} & set(sys.modules))"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "set()"


@pytest.mark.parametrize("name", ["dxf", "svg-cut", "svg-projector"])
def test_cutters_and_projectors_are_given_whole_pieces(name: str) -> None:
    """No half on the fold: the blade would follow the fold."""
    half = pattern()
    whole = replace(half, whole=lambda: half.pieces[:1])
    assert render(name, whole) == render(name, replace(half, pieces=half.pieces[:1]))


def test_pages_to_join_are_given_halves() -> None:
    """They are cut on the fold, and take less paper."""
    half = pattern()
    whole = replace(half, whole=tuple(half.pieces[:1]))
    assert render("pdf-a4", whole) == rendered("pdf-a4")


def test_a_cut_file_has_cut_lines_alone() -> None:
    """Neither words nor stitch lines nor squares."""
    text = render("svg-cut", pattern())["cut.svg"].decode()
    assert "<text" not in text
    assert text.count("<path") == len(pattern().pieces)


@pytest.mark.parametrize(
    ("name", "size"),
    [("pdf-a1", (594, 841)), ("pdf-a2", (420, 594)), ("pdf-legal", (215.9, 355.6)),
     ("pdf-tabloid", (279.4, 431.8)), ("pdf-24x36", (609.6, 914.4)),
     ("pdf-36x48", (914.4, 1219.2))],
)  # fmt: skip
def test_paper_has_the_size_its_format_names(name: str, size: tuple[float, float]) -> None:
    """Read back by pdfium, upright or lying."""
    import pypdfium2

    (data,) = rendered(name).values()
    for page in pypdfium2.PdfDocument(data):
        found = sorted(points * 25.4 / 72 for points in page.get_size())
        assert found == pytest.approx(sorted(size), abs=0.05)


def test_a_projectors_words_lie_inside_their_piece_and_off_the_arrow() -> None:
    """As large as the piece has room for, on every piece of a top with sleeves and a band."""
    made = draft(person(), "set-in-top", {}, made=DAY)
    for piece in pattern_set(made).opened:
        heavy = projector.heavy(piece)
        words = [ink for ink in heavy if isinstance(ink, TextLine)]
        assert len(words) == 3
        cut = next(i for i in heavy if isinstance(i, Stroke) and i.layer is Layer.CUT)
        inside = Polygon([(p.x, p.y) for p in cut.path.flattened(0.5)])
        arrows = [i for i in heavy if isinstance(i, Stroke) and i.name.startswith("grain")]
        for ink in words:
            box = MultiPoint([(p.x, p.y) for p in ink.corners()]).convex_hull
            assert ink.size > 5
            assert inside.contains(box)
            for arrow in arrows:
                line = LineString([(p.x, p.y) for p in arrow.corners()])
                assert line.distance(box) > 1
