"""Pieces as DXF, release 2000, which says its unit; and nothing but the lines to cut.

The release needs handles, owners and tables that a library knows; it is loaded only here.
"""

from __future__ import annotations

from collections.abc import Sequence
from io import StringIO
from typing import Any

from tapewise_core.paper.drawing import Drawing, Layer, Stroke
from tapewise_core.paper.safe import checked
from tapewise_core.writers.dxf import COLOURS, TOLERANCE, scale_square
from tapewise_core.writers.dxf import apart as laid_apart
from tapewise_core.writers.dxf_pairs import CAPITALS, ascii_words

MILLIMETRES = 4
"""The number the format has for the unit."""


def modern_dxf(pieces: Sequence[Drawing]) -> bytes:
    """Return the pieces beside each other, every line on a layer of its own kind, in mm."""
    return _file([*pieces, scale_square()], tuple(Layer))


def cut_dxf(pieces: Sequence[Drawing], remark: str = "") -> bytes:
    """Return nothing but the lines to cut, closed, the pieces beside each other, in mm.

    The remark stands in the file, where no machine cuts it.
    """
    said = f"999\n{ascii_words(remark)}\n".encode("ascii") if remark else b""
    return said + _file(pieces, (Layer.CUT,))


def _file(pieces: Sequence[Drawing], layers: Sequence[Layer]) -> bytes:
    from ezdxf import filemanagement
    from ezdxf._options import options
    from ezdxf.enums import TextEntityAlignment as Align

    aligned = {"start": Align.LEFT, "middle": Align.CENTER, "end": Align.RIGHT}
    options.write_fixed_meta_data_for_testing = True  # the same pieces give the same bytes
    document = filemanagement.new("R2000", units=MILLIMETRES)
    for layer in layers:
        document.layers.add(layer.value.upper(), color=COLOURS[layer])
    space: Any = document.modelspace()
    for piece in laid_apart([checked(piece) for piece in pieces]):
        for ink in piece.inks:
            where = {"layer": ink.layer.value.upper()}
            if ink.layer not in layers:
                continue
            if isinstance(ink, Stroke):
                points = [(p.x, -p.y) for p in ink.path.flattened(TOLERANCE)]
                points = points[:-1] if ink.closed and points[0] == points[-1] else points
                space.add_lwpolyline(points, close=ink.closed, dxfattribs=where)
            else:
                text = space.add_text(ascii_words(ink.text), dxfattribs=where)
                text.dxf.height, text.dxf.rotation = ink.size * CAPITALS, -ink.angle % 360
                text.set_placement((ink.at.x, -ink.at.y), align=aligned[ink.anchor])
    out = StringIO()
    document.write(out)
    return out.getvalue().encode("ascii", "replace")
