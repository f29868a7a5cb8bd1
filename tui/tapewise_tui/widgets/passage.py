"""A text that changes often, and seldom the room it takes."""

from __future__ import annotations

from textual.visual import VisualType
from textual.widgets import Static


class Passage(Static):
    """The page is laid out anew only where the text takes other rows than before."""

    def __init__(self, id: str) -> None:
        super().__init__("", id=id, markup=False)
        self._rows = -1

    def update(self, content: VisualType = "", *, layout: bool = True) -> None:
        """Show another text."""
        super().update(content, layout=False)
        width, before = self.size.width, self._rows
        self._rows = self.get_content_height(self.size, self.size, width) if width else -1
        if layout and (self._rows != before or not width):
            self.refresh(layout=True)
