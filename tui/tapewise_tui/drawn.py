"""What widgets that draw have in common."""

from __future__ import annotations

from typing import ClassVar

from rich.segment import Segment
from rich.style import Style
from textual.events import Resize
from textual.geometry import Region
from textual.strip import Strip
from textual.widget import Widget

from tapewise_tui.canvas import Canvas


class Drawn(Widget):
    """A widget that shows a canvas; each character has a style, as NO_COLOR needs."""

    TONES: ClassVar[frozenset[str]] = frozenset()
    """Tones of the canvas that have a component class of the same name."""

    def __init__(self, *, id: str | None = None, classes: str | None = None) -> None:
        super().__init__(id=id, classes=classes)
        self._canvas: Canvas | None = None
        self._lines: list[str] = []
        self._ground: Style | None = None

    def paint(self) -> Canvas:
        """Return the drawing at the widget's present size."""
        raise NotImplementedError

    def redraw(self) -> None:
        """Draw afresh at the next refresh."""
        self._canvas = None
        self.refresh()

    def on_resize(self, event: Resize) -> None:
        self.redraw()

    def text(self) -> str:
        """Return what is drawn as text."""
        return "\n".join(self._drawn()[1])

    def _drawn(self) -> tuple[Canvas, list[str]]:
        if self._canvas is None:
            self._canvas = self.paint()
            self._lines = self._canvas.lines()
        return self._canvas, self._lines

    def render_lines(self, crop: Region) -> list[Strip]:
        """Draw some lines, all on the same ground, which takes long to look up."""
        self._ground = self.rich_style
        return super().render_lines(crop)

    def render_line(self, y: int) -> Strip:
        canvas, lines = self._drawn()
        ground, width = self._ground or self.rich_style, self.size.width
        if y >= len(lines):
            return Strip.blank(width, ground)
        strip = Strip(self._segments(canvas, lines[y], y, ground), len(lines[y]))
        return strip.adjust_cell_length(width, ground)

    def _segments(self, canvas: Canvas, line: str, y: int, ground: Style) -> list[Segment]:
        """Runs of characters with one tone; blanks go with what is before them."""
        runs: list[tuple[str, list[str]]] = []
        for column, letter in enumerate(line):
            tone = canvas.tones.get((column, y), "")
            if runs and (letter == " " or runs[-1][0] == tone):
                runs[-1][1].append(letter)
            else:
                runs.append((tone, [letter]))
        return [Segment("".join(letters), self._style(tone, ground)) for tone, letters in runs]

    def _style(self, tone: str, ground: Style) -> Style:
        if tone not in self.TONES:
            return ground
        return self.get_component_rich_style(f"drawn--{tone}")
