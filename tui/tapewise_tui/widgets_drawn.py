"""Widgets that draw: the figure with the tape's path, and the pieces of a pattern."""

from __future__ import annotations

import textwrap
from typing import ClassVar

from textual.binding import Binding, BindingType
from textual.events import Click
from textual.message import Message

from tapewise_core.drafting.facts import Level
from tapewise_core.drafting.labels import title
from tapewise_core.drafting.piece import Piece
from tapewise_core.measures.build import Build
from tapewise_core.units import Unit
from tapewise_tui.canvas import Canvas
from tapewise_tui.drawn import Drawn
from tapewise_tui.figures import drawn
from tapewise_tui.pattern_body import draw_body
from tapewise_tui.pattern_canvas import draw_pattern, pairs, seam_lengths
from tapewise_tui.pattern_places import Placed, placed
from tapewise_tui.terminal import ascii_only

BESIDE = 64
"""Columns from which seam lengths stand beside the pieces; below them if there are fewer."""

COLUMN, LINES = 30, 3
"""How wide the list of seam lengths is beside the pieces, how high below them."""


class FigureView(Drawn):
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
    build: Build | None = None

    def show(self, key: str, build: Build | None = None) -> None:
        """Show where the tape goes for a measure, on somebody of a build; nothing for no key."""
        if (key, build) != (self.key, self.build):
            self.key, self.build = key, build
            self.redraw()

    def paint(self) -> Canvas:
        width, height = self.size
        plain = ascii_only()
        return (
            drawn(self.key, width, height, plain, self.build) if self.key else Canvas(width, height)
        )


class PatternView(Drawn, can_focus=True):
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
        Binding("right", "step(1)", "Next piece"),
        Binding("left", "step(-1)", "Piece before", show=False),
    ]
    COMPONENT_CLASSES = {
        "drawn--stitch", "drawn--cut", "drawn--fold", "drawn--mark", "drawn--name", "drawn--chosen",
        "drawn--body",
    }  # fmt: skip
    TONES = frozenset({"stitch", "cut", "fold", "mark", "name", "chosen", "body"})
    DEFAULT_CSS = """
    PatternView {
        width: 1fr; height: 1fr; min-height: 6;
        & > .drawn--stitch { color: $foreground; }
        & > .drawn--cut { color: $foreground-muted; }
        & > .drawn--fold { color: $text-accent; }
        & > .drawn--mark { color: $foreground; }
        & > .drawn--name { color: $foreground; text-style: bold; }
        & > .drawn--chosen { color: $text-primary; text-style: bold; }
        & > .drawn--body { color: $text-warning; }
    }
    """

    pieces: tuple[Piece, ...] = ()
    selected: str | None = None
    unit: Unit = Unit.CM
    levels: tuple[Level, ...] = ()
    _places: tuple[Placed, ...] = ()

    def show(
        self,
        pieces: tuple[Piece, ...],
        selected: str | None = None,
        unit: Unit = Unit.CM,
        levels: tuple[Level, ...] = (),
    ) -> None:
        """Show pieces, one of them chosen by its name, and the body at its levels; lengths are
        told in ``unit``."""
        self.pieces, self.selected, self.unit, self.levels = pieces, selected, unit, levels
        self.redraw()

    def paint(self) -> Canvas:
        width, height = self.size
        canvas = Canvas(width, height, ascii=ascii_only())
        piece = next((piece for piece in self.pieces if piece.name == self.selected), None)
        beside = piece is not None and width >= BESIDE
        below = piece is not None and not beside
        room = (canvas.width - 2 * COLUMN * beside, canvas.height - 4 * LINES * below)
        self._places = placed(self.pieces, *room)
        draw_body(canvas, self._places, self.levels)
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
