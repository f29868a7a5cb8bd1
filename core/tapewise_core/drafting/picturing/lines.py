"""The lines of a step on a picture: what is there thin, what it adds heavy."""

from __future__ import annotations

from tapewise_core.drafting.picturing.scene import Scene
from tapewise_core.drafting.picturing.sheet import Flattened, Sheet
from tapewise_core.paper.drawing import Dash, Layer


def draw_lines(scene: Scene, sheet: Sheet, flat: Flattened) -> None:
    """Draw old guides and lines, then the step's own."""
    for path in scene.guides:
        sheet.draw(path, flat, Layer.GUIDE, Dash.DOTTED, 0.15)
    for path in scene.lines:
        sheet.draw(path, flat, Layer.STITCH, width=0.35)
    for path in scene.new_guides:
        sheet.draw(path, flat, Layer.GUIDE, Dash.DASHED, 0.35)
    for path in scene.new_lines:
        sheet.draw(path, flat, Layer.STITCH, width=0.8)
