"""Where pages take their drawings from."""

from __future__ import annotations

from textual.widgets import Static

from tapewise_core.drafting.piece import Piece


class FigureView(Static):
    """A body with the tape's path."""

    def __init__(self, measure_key: str) -> None:
        super().__init__(measure_key)

    def show(self, key: str) -> None:
        self.update(key)


class PatternView(Static):
    """The pattern's pieces."""

    def show(self, pieces: tuple[Piece, ...], selected: str | None) -> None:
        self.update(", ".join(piece.name for piece in pieces))
