"""The line of keys at the foot: help and leaving first, then what the page can do, as room allows.

One widget that draws a line, since a page turns the quicker the fewer widgets it has.
"""

from __future__ import annotations

from rich.text import Text
from textual.events import Click
from textual.screen import Screen
from textual.widget import Widget

from tapewise_tui.keys import Key, at_work, shown


class Foot(Widget):
    """The keys that work now; each can be clicked."""

    COMPONENT_CLASSES = {"foot--key"}
    DEFAULT_CSS = """
    Foot {
        height: 1; background: $footer-background; color: $foreground; padding: 0 1;
        & > .foot--key { color: $footer-key-foreground; text-style: bold; }
    }
    """

    def on_mount(self) -> None:
        self.screen.bindings_updated_signal.subscribe(self, self._changed)

    def _changed(self, screen: Screen[object]) -> None:
        self.refresh()

    def rows(self) -> list[Key]:
        """The keys that work now, those that must be there first."""
        return _fitting([row for row, _ in at_work(self.screen)], self.size.width - 2)

    def render(self) -> Text:
        line, bright = Text(no_wrap=True), self.get_component_rich_style("foot--key", partial=True)
        for row in self.rows():
            line.append(shown(row.key), bright).append(f" {row.word}  ")
        line.rstrip()
        return line

    async def on_click(self, event: Click) -> None:
        """Do what the key under the pointer does."""
        at = event.x - 1
        for row in self.rows():
            if 0 <= at < _wide(row):
                await self.app.run_action(row.action, self.screen)
                return
            at -= _wide(row)


def _fitting(rows: list[Key], width: int) -> list[Key]:
    """As many keys as have room, those of the lowest rank."""
    kept = list(rows)
    while sum(map(_wide, kept)) - 2 > width and any(row.rank for row in kept):
        kept.remove(max(reversed(kept), key=lambda row: row.rank))
    return kept


def _wide(row: Key) -> int:
    return len(shown(row.key)) + len(row.word) + 3
