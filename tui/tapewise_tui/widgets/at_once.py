"""Keys that act before the next one is looked at, so that typing ahead mixes nothing up.

A key that is no letter would rise through the page to the app before it acts; what is typed
meanwhile would still land where it was.
"""

from __future__ import annotations

from textual.events import Key
from textual.widget import Widget


def passed_on(widget: Widget, event: Key) -> bool:
    """Give a key to what lies over the page by now, or to the page turned to; say whether it was
    pressed for that."""
    if widget.screen is widget.app.screen:
        return False
    no_more(event)
    widget.app.post_message(Key(event.key, event.character))
    return True


async def acted(widget: Widget, event: Key) -> bool:
    """Do what a key that is no letter is bound to; say whether that is a binding of the widget."""
    active = None if event.is_printable else widget.screen.active_bindings.get(event.key)
    if active is None:
        return False
    no_more(event)
    if active.enabled:
        await widget.app.run_action(active.binding.action, active.node)
    return active.node is widget


def no_more(event: Key) -> None:
    """Let nobody else act on a key."""
    event.stop()
    event.prevent_default()
