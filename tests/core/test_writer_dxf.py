"""DXF files: layers cutting rooms read, names of plain letters, y upwards."""

import io
from itertools import combinations

import ezdxf
import ezdxf.bbox
import pytest
from ezdxf.document import Drawing as Dxf
from paper_samples import EDGES, pattern, piece

from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Dash, Drawing, Layer, Stroke, TextLine
from tapewise_core.writers.dxf import cutter_dxf, plain_dxf
from tapewise_core.writers.dxf_2000 import cut_dxf, modern_dxf
from tapewise_core.writers.dxf_pairs import ascii_words


def read(data: bytes) -> Dxf:
    """Return a file as ezdxf reads it."""
    return ezdxf.read(io.StringIO(data.decode("ascii"), newline=None))


def test_each_piece_is_a_block_placed_once() -> None:
    """Blocks bear the pieces' names; two of the same name are told apart."""
    front = piece("Front (left)", EDGES["front"])
    drawing = read(cutter_dxf([front, front]))
    inserts = [insert.dxf.name for insert in drawing.modelspace().query("INSERT")]
    assert inserts == ["FRONT-LEFT", "FRONT-LEFT-2", "100-MM-SQUARE"]


def test_marks_go_to_their_layers() -> None:
    """Notch 4, fold 6, grain 7, other lines 8, text 15; brackets and arrowheads are left out."""
    a, b = Point(0, 0), Point(0, 100)
    inks = (
        Stroke(ruled(b, a), Layer.STITCH, Dash.CHAIN, name="stitch centre"),
        Stroke(ruled(Point(50, 0), Point(50, -7)), Layer.MARKS, name="notch 2"),
        Stroke(ruled(Point(20, 10), Point(20, 90)), Layer.MARKS, name="grain"),
        Stroke(ruled(Point(20, 10), Point(18, 14)), Layer.MARKS, name="grain"),
        Stroke(ruled(Point(12, 10), Point(12, 90)), Layer.MARKS, name="fold"),
        Stroke(ruled(Point(30, 30), Point(60, 30)), Layer.MARKS, name="pocket"),
        TextLine("Front", Point(5, 50)),
    )
    block = read(cutter_dxf([Drawing("f", "", Box(0, -7, 60, 100), inks)])).blocks.get("F")
    found = sorted((entity.dxftype(), entity.dxf.layer) for entity in block)
    assert found == [
        ("POINT", "4"),
        ("POLYLINE", "14"),
        ("POLYLINE", "6"),
        ("POLYLINE", "7"),
        ("POLYLINE", "8"),
        ("TEXT", "15"),
    ]
    point = next(iter(block.query("POINT")))
    assert tuple(point.dxf.location) == (50, 0, 0)


def test_y_runs_up() -> None:
    """What lies lower on the paper has the smaller y."""
    drawing = read(cutter_dxf(pattern().pieces))
    words = list(drawing.blocks.get("FRONT").query("TEXT"))
    name, owner = (word.dxf.insert.y for word in words)
    assert name > owner


def test_plain_lines_lie_on_named_layers() -> None:
    """A drawing program lists cut, stitch, marks, text and the square, the stitch line broken."""
    drawing = read(plain_dxf(pattern().pieces))
    space = drawing.modelspace()
    assert {e.dxf.layer for e in space} == {"STITCH", "CUT", "MARKS", "TEXT", "SCALE"}
    assert {e.dxf.linetype for e in space.query('POLYLINE[layer=="STITCH"]')} == {"DASHED"}
    assert len(space.query('POLYLINE[layer=="CUT"]')) == len(EDGES)


def test_the_file_is_plain_letters_only() -> None:
    """The release knows no Unicode: accents are dropped, other letters spelt by number."""
    assert ascii_words("Zoë Œhler × 2") == "Zoe Oehler * 2"
    assert b"for Zoe Oehler" in cutter_dxf(pattern().pieces)


def test_the_same_pieces_give_the_same_bytes() -> None:
    """No time, no random handle is in the file."""
    assert cutter_dxf(pattern().pieces) == cutter_dxf(pattern().pieces)


def test_pieces_of_the_cutter_file_lie_apart() -> None:
    """No block lies over another, and a square of 100 tells the unit."""
    drawing = read(cutter_dxf(pattern().pieces))
    boxes = [ezdxf.bbox.extents(insert.virtual_entities()) for insert in
             drawing.modelspace().query("INSERT")]  # fmt: skip
    assert len(boxes) == len(pattern().pieces) + 1
    assert not any(one.has_overlap(other) for one, other in combinations(boxes, 2))
    (square,) = drawing.blocks.get("100-MM-SQUARE").query("POLYLINE")
    assert tuple(ezdxf.bbox.extents([square]).size) == pytest.approx((100, 100, 0))


def test_release_2000_says_its_unit() -> None:
    """Millimetres, the same lines, nothing to mend; and made twice it is the same."""
    data = modern_dxf(pattern().pieces)
    drawing = read(data)
    assert drawing.dxfversion == "AC1015"
    assert drawing.units == 4
    assert len(drawing.modelspace().query('LWPOLYLINE[layer=="CUT"]')) == len(pattern().pieces)
    assert data == modern_dxf(pattern().pieces)


def test_a_cut_file_holds_nothing_but_closed_cut_lines() -> None:
    """As many as there are pieces, none over another."""
    space = read(cut_dxf(pattern().pieces)).modelspace()
    assert {entity.dxftype() for entity in space} == {"LWPOLYLINE"}
    assert all(line.is_closed for line in space)
    boxes = [ezdxf.bbox.extents([line]) for line in space]
    assert len(boxes) == len(pattern().pieces)
    assert not any(one.has_overlap(other) for one, other in combinations(boxes, 2))
