"""Widgets that draw: the figure with the tape's path, and the pieces of a pattern."""

from __future__ import annotations

import locale
import os
import sys
import textwrap
from typing import ClassVar

from rich.segment import Segment
from rich.style import Style
from textual.binding import Binding, BindingType
from textual.events import Click, Resize
from textual.message import Message
from textual.strip import Strip
from textual.widget import Widget

from tapewise_core.drafting.labels import title
from tapewise_core.drafting.piece import Piece
from tapewise_core.units import Unit
from tapewise_tui.canvas import Canvas
from tapewise_tui.figures import drawn
from tapewise_tui.pattern_canvas import Placed, draw_pattern, pairs, placed, seam_lengths

BESIDE = 64
"""Columns from which seam lengths stand beside the pieces; below them if there are fewer."""

COLUMN, LINES = 30, 3
"""How wide the list of seam lengths is beside the pieces, how high below them."""


def plain_terminal() -> bool:
    """Say whether the terminal shows nothing beyond ASCII, as far as can be known.

    A text console has no letters for dots; elsewhere the encoding tells.
    """
    if os.environ.get("TERM") in ("linux", "dumb"):
        return True
    stream = sys.__stderr__
    names = [getattr(stream, "encoding", None) or "utf-8"]
    if sys.platform != "win32":
        names.append(locale.getencoding())
    return not all(name.lower().replace("-", "").startswith("utf8") for name in names)


class _Drawn(Widget):
    """A widget that shows a canvas; every character has a style, so that it works without colour."""

    TONES: ClassVar[frozenset[str]] = frozenset()
    """Tones of the canvas that have a component class of the same name."""

    def __init__(self, *, id: str | None = None, classes: str | None = None) -> None:
        super().__init__(id=id, classes=classes)
        self._canvas: Canvas | None = None
        self._lines: list[str] = []

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

    def render_line(self, y: int) -> Strip:
        canvas, lines = self._drawn()
        ground, width = self.rich_style, self.size.width
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


class FigureView(_Drawn):
    """A person in line art with one measure's tape on it."""

    COMPONENT_CLASSES = {"drawn--tape", "drawn--hidden", "drawn--body", "drawn--label"}
    TONES = frozenset({"tape", "hidden", "body", "label"})
    DEFAULT_CSS = """
    FigureView {
        width: 1fr; height: 1fr; min-height: 6;
        & > .drawn--tape { color: $text-warning; text-style: bold; }
        & > .drawn--hidden { color: $text-warning; }
        & > .drawn--body { color: $foreground; }
        & > .drawn--label { color: $foreground; text-style: italic; }
    }
    """

    key: str = ""

    def show(self, key: str) -> None:
        """Show where the tape goes for a measure; nothing for an empty key."""
        self.key = key
        self.redraw()

    def paint(self) -> Canvas:
        width, height = self.size
        plain = plain_terminal()
        return drawn(self.key, width, height, plain) if self.key else Canvas(width, height)


class PatternView(_Drawn, can_focus=True):
    """Pieces beside each other, scaled to fit; the chosen one with its seam lengths."""

    class Selected(Message):
        """A person chose a piece by its ``name``."""

        def __init__(self, view: PatternView, name: str) -> None:
            super().__init__()
            self.view, self.name = view, name

        @property
        def control(self) -> PatternView:
            """The view it was chosen in."""
            return self.view

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("right,down", "step(1)", "Next piece"),
        Binding("left,up", "step(-1)", "Piece before", show=False),
    ]
    COMPONENT_CLASSES = {
        "drawn--stitch", "drawn--cut", "drawn--fold", "drawn--mark", "drawn--name", "drawn--chosen",
    }  # fmt: skip
    TONES = frozenset({"stitch", "cut", "fold", "mark", "name", "chosen"})
    DEFAULT_CSS = """
    PatternView {
        width: 1fr; height: 1fr; min-height: 6;
        & > .drawn--stitch { color: $foreground; }
        & > .drawn--cut { color: $foreground-muted; }
        & > .drawn--fold { color: $text-accent; }
        & > .drawn--mark { color: $foreground; }
        & > .drawn--name { color: $foreground; text-style: bold; }
        & > .drawn--chosen { color: $text-primary; text-style: bold; }
    }
    """

    pieces: tuple[Piece, ...] = ()
    selected: str | None = None
    unit: Unit = Unit.CM
    _places: tuple[Placed, ...] = ()

    def show(
        self, pieces: tuple[Piece, ...], selected: str | None = None, unit: Unit = Unit.CM
    ) -> None:
        """Show pieces, one of them chosen by its name; lengths are told in ``unit``."""
        self.pieces, self.selected, self.unit = pieces, selected, unit
        self.redraw()

    def paint(self) -> Canvas:
        width, height = self.size
        canvas = Canvas(width, height, ascii=plain_terminal())
        piece = next((piece for piece in self.pieces if piece.name == self.selected), None)
        beside = piece is not None and width >= BESIDE
        below = piece is not None and not beside
        room = (canvas.width - 2 * COLUMN * beside, canvas.height - 4 * LINES * below)
        self._places = placed(self.pieces, *room)
        draw_pattern(canvas, self._places, self.selected)
        if piece is not None and beside:
            self._list_beside(canvas, piece)
        elif piece is not None:
            self._list_below(canvas, piece)
        return canvas

    def _list_beside(self, canvas: Canvas, piece: Piece) -> None:
        column = canvas.columns - COLUMN + 1
        canvas.text(column, 0, f"{title(piece.name)}, seam lengths", "name")
        for row, line in enumerate(pairs(seam_lengths(piece, self.unit), COLUMN - 2), start=1):
            canvas.text(column, row, line, "stitch")

    def _list_below(self, canvas: Canvas, piece: Piece) -> None:
        told = ", ".join(f"{name} {length}" for name, length in seam_lengths(piece, self.unit))
        lines = textwrap.wrap(f"{title(piece.name)}: {told}", max(canvas.columns, 1))
        for row, line in enumerate(lines[:LINES], start=canvas.rows - LINES):
            canvas.text(0, row, line, "stitch")

    def on_click(self, event: Click) -> None:
        x, y = event.x * 2 + 1, event.y * 4 + 2
        for place in self._places:
            if place.holds(x, y):
                self._choose(place.piece.name)
                return

    def action_step(self, by: int) -> None:
        """Choose the next piece, or the one before."""
        names = [piece.name for piece in self.pieces]
        if not names:
            return
        now = names.index(self.selected) if self.selected in names else (-1 if by > 0 else 0)
        self._choose(names[(now + by) % len(names)])

    def _choose(self, name: str) -> None:
        self.selected = name
        self.redraw()
        self.post_message(self.Selected(self, name))
