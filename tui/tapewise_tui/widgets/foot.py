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
        kept = [row for row, _ in at_work(self.screen)]
        while sum(map(self._wide, kept)) - 2 > self.size.width - 2 and any(r.rank for r in kept):
            kept.remove(max(reversed(kept), key=lambda row: row.rank))
        return kept

    def _named(self, row: Key) -> str:
        """The key, in a browser one that it does not keep to itself."""
        return shown(row.other if self.app.is_web and row.other else row.key)

    def _wide(self, row: Key) -> int:
        return len(self._named(row)) + len(row.word) + 3

    def render(self) -> Text:
        line, bright = Text(no_wrap=True), self.get_component_rich_style("foot--key", partial=True)
        for row in self.rows():
            line.append(self._named(row), bright).append(f" {row.word}  ")
        line.rstrip()
        return line

    async def on_click(self, event: Click) -> None:
        """Do what the key under the pointer does."""
        at = event.x - 1
        for row in self.rows():
            if 0 <= at < self._wide(row):
                await self.app.run_action(row.action, self.screen)
                return
            at -= self._wide(row)
