"""How ink looks: a colour and a broken line for each use, told apart without colour too."""

from __future__ import annotations

from collections.abc import Mapping

from tapewise_core.frozen import Frozen
from tapewise_core.paper.drawing import Dash, Layer

FAMILY = "'DejaVu Sans', Verdana, 'Liberation Sans', Arial, Helvetica, sans-serif"
"""Faces that at least one of every common system has, widest script coverage first."""

NAMES: Mapping[Layer, str] = {
    Layer.GRID: "grid",
    Layer.GUIDE: "help lines",
    Layer.STITCH: "stitch line",
    Layer.CUT: "cut line",
    Layer.MARKS: "marks",
    Layer.TEXT: "text",
    Layer.SCALE: "proof of scale",
}
"""What people see in the list of layers."""

_DASHES: Mapping[Dash, tuple[float, ...]] = {
    Dash.SOLID: (),
    Dash.DASHED: (6.0, 3.0),
    Dash.DOTTED: (1.0, 2.0),
    Dash.CHAIN: (12.0, 2.5, 2.0, 2.5),
}


class Look(Frozen):
    """Colours as ``#rrggbb``; ``paper`` is None where the paper itself is the ground."""

    inks: Mapping[Layer, str]
    paper: str | None = None


PRINTED = Look(
    {
        Layer.GRID: "#9a9a9a",
        Layer.GUIDE: "#6a6a6a",
        Layer.STITCH: "#17406d",
        Layer.CUT: "#000000",
        Layer.MARKS: "#000000",
        Layer.TEXT: "#000000",
        Layer.SCALE: "#000000",
    }
)
"""Dark on white; every ink stays dark enough on a black-and-white printer."""

DARK = Look(
    dict.fromkeys(Layer, "#ffffff")
    | {Layer.GRID: "#4f6f5f", Layer.STITCH: "#ffe08a", Layer.GUIDE: "#b0b0b0"},
    "#000000",
)
"""Light on dark, for a projector on pale cloth in a darkened room."""

LIGHT = Look(
    dict.fromkeys(Layer, "#000000")
    | {Layer.GRID: "#a8c0b4", Layer.STITCH: "#7a1f1f", Layer.GUIDE: "#606060"},
    "#ffffff",
)
"""Dark on light, for a projector on dark cloth."""


def dashes(dash: Dash, width: float) -> tuple[float, ...]:
    """Return lengths drawn and left out in turn [mm]; a heavier line is broken more coarsely."""
    times = max(1.0, width / 0.5)
    return tuple(length * times for length in _DASHES[dash])
