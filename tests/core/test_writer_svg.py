"""A drawing becomes SVG that editors, browsers and independent parsers read at full size."""

import math
import os
import re
import subprocess
import sys
from xml.etree import ElementTree

import pytest
from msgspec.structs import replace

from tapewise_core.errors import DraftError
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Dash, Drawing, Layer, Stroke, TextLine
from tapewise_core.paper.look import DARK
from tapewise_core.writers.svg import svg
from tapewise_core.writers.svg_library import check

SVG = "{http://www.w3.org/2000/svg}"
EDITOR = "{http://www.inkscape.org/namespaces/inkscape}"

CURVE = curved(Point(0, 0), Point(0, 100), Point(50.12345, 150), Point(200, 150))
SHEET = Drawing(
    "Front of Zoë",
    "One piece",
    Box(-10, -20, 240, 180),
    (
        Stroke(CURVE, Layer.STITCH, Dash.DASHED, name="side seam", part="front (left)"),
        Stroke(CURVE, Layer.STITCH, Dash.DASHED, name="side seam", part="back"),
        Stroke(ruled(Point(0, 0), Point(9, 0), Point(9, 9)), Layer.CUT, closed=True, filled=True),
        TextLine("Ελένη\x00\x07 & Œuvre <1>", Point(10, 10), anchor="middle", angle=-90, bold=True),
        TextLine("袖", Point(10, 30), part="後ろ"),
    ),
)


def parsed(drawing: Drawing = SHEET, **options: bool) -> ElementTree.Element:
    """Return a drawing written and read back."""
    return ElementTree.fromstring(svg(drawing, **options).encode())


def test_one_user_unit_is_one_millimetre() -> None:
    """Width and height are in millimetres and the view box counts the same millimetres."""
    root = parsed()
    assert (root.get("width"), root.get("height")) == ("250mm", "200mm")
    assert root.get("viewBox") == "-10 -20 250 200"


def test_the_standard_is_kept() -> None:
    """The library's own checks against the SVG standard find nothing to refuse."""
    assert svg(SHEET, debug=True) == svg(SHEET)


@pytest.mark.parametrize("wrong", ['<path d="M 1,x" />', '<path d="M1,1" colour="red" />'])
def test_what_the_standard_does_not_know_is_refused(wrong: str) -> None:
    """A line's attributes reach the library's checks: its path data as well as its names."""
    right = '<path d="M1,1 L2,2"><title>seam &amp; hem</title></path>'
    check(f"<g>{right}</g>")
    with pytest.raises((ValueError, TypeError)):
        check(f"<g>{right}{wrong}</g>")


def test_the_patterns_of_checks_are_made_where_something_is_checked() -> None:
    """Writing a drawing leaves them alone; with ``debug`` they are the library's own."""
    code = (
        "import sys; from test_writer_svg import SHEET, svg; name = 'svgwrite.data.svgparser';"
        "svg(SHEET); early = name in sys.modules; svg(SHEET, debug=True);"
        "print(early, hasattr(sys.modules[name], 'build_transferlist_parser'))"
    )
    paths = os.pathsep.join([*sys.path, os.path.dirname(__file__)])
    done = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, env={"PYTHONPATH": paths}
    )
    assert (done.stdout, done.stderr) == ("False True\n", "")


def test_layers_hold_one_group_for_each_piece() -> None:
    """Vector editors list the uses as layers; inside each, a piece is one named group."""
    layers = {g.get("id"): g for g in parsed().findall(f"{SVG}g")}
    assert list(layers) == ["stitch", "cut", "text"]
    assert layers["stitch"].get(f"{EDITOR}groupmode") == "layer"
    assert layers["stitch"].get(f"{EDITOR}label") == "stitch line"
    inside = [g.find(f"{SVG}title").text for g in layers["stitch"].findall(f"{SVG}g")]
    assert inside == ["front (left)", "back"]


def test_ids_are_safe_and_unique() -> None:
    """Whatever a piece is called, its ids are plain letters, once each."""
    ids = re.findall(r'\bid="([^"]*)"', svg(SHEET))
    assert len(ids) == len(set(ids))
    assert all(re.fullmatch(r"[a-z][a-z0-9-]*", one) for one in ids)


def test_any_script_is_kept_and_control_characters_are_not() -> None:
    """Names keep their letters; what would break the file is left out."""
    texts = [node.text for node in parsed().iter(f"{SVG}text")]
    assert texts == ["Ελένη & Œuvre <1>", "袖"]


def test_titles_tell_what_the_sheet_is() -> None:
    """A screen reader finds the title and the description first."""
    root = parsed()
    assert (root[0].tag, root[0].text) == (f"{SVG}title", "Front of Zoë")
    assert (root[1].tag, root[1].text) == (f"{SVG}desc", "One piece")


def test_line_styles_differ_without_colour() -> None:
    """Each way to break a line gives its own dashes."""
    line = ruled(Point(0, 0), Point(99, 0))
    inks = tuple(Stroke(line, Layer.CUT, dash) for dash in Dash)
    found = [
        p.get("stroke-dasharray") for p in parsed(replace(SHEET, inks=inks)).iter(f"{SVG}path")
    ]
    assert len(set(found)) == len(Dash)


def test_a_number_that_is_none_is_refused() -> None:
    """A broken line is named in a sentence instead of being written."""
    broken = Stroke(Path(ruled(Point(0, 0), Point(math.nan, 1)).segments), Layer.CUT, name="hem")
    with pytest.raises(DraftError, match="hem"):
        svg(replace(SHEET, inks=(broken,)))
    with pytest.raises(DraftError, match="here"):
        svg(replace(SHEET, inks=(TextLine("here", Point(0, math.inf)),)))


def test_numbers_are_short() -> None:
    """A thousandth of a millimetre is the finest step written, and nothing is minus zero."""
    text = svg(replace(SHEET, inks=(Stroke(CURVE, Layer.CUT),)))
    assert "50.123," in text
    assert not re.search(r"\d\.\d{4}|-0[ ,\"]", text)


def test_a_dark_sheet_has_a_ground() -> None:
    """Light lines come with the dark ground they need."""
    text = svg(SHEET, DARK)
    assert "#000000" in text
    assert text.index("<rect") < text.index("<path")


def test_inline_svg_has_no_declaration() -> None:
    """Inside a page of HTML the XML declaration is left out."""
    text = svg(SHEET, inline="a-")
    assert text.startswith("<svg")
    assert all(one.startswith("a-") for one in re.findall(r'\bid="([^"]*)"', text))
